// The Portuguese words of the rehearsal with water. What the voice says stands in audio-scripts/.

export const rehearse = {
  title: "Ensaiar com água",
  lead: "A sessão inteira de ouvido, à luz: água em cada recipiente e um filme que já não importe. Encher, despejar e agitar duram o de sempre; só os repousos ficam mais curtos.",
  press:
    "Pressione ao começar a encher e ao começar a despejar; se quiser, também ao começar a agitar. No fim ouve o que vale a pena treinar.",
  keeps:
    "Nada fica entre as sessões, e nenhum banho envelhece com isto. Acaba quando a página se fecha.",
  rests: "Repousos",
  /** What is left of a rest. */
  factors: {
    whole: "inteiros",
    half: "metade",
    quarter: "um quarto",
    least: "tão curtos quanto as palavras deixam",
  },
  why: "Dizer porquê antes de cada banho, e como em cada passo do carregamento",
  begin: "Começar o ensaio",
  beginHint: (clock: string) => `${clock} de relógio`,
  overHint: "O que vale a pena treinar está em Percorrer, com segundos.",
  back: "Voltar a Percorrer",
  found: "O último ensaio",
  unmarked: "Não se pressionou ao verter, por isso não há nada a comparar.",
  well: (n: number, of: number, seconds: string) =>
    `${n} de ${of} momentos correram bem: a menos de ${seconds}.`,
  practise: "Vale a pena treinar, o mais importante primeiro",
  all: "Tudo o que se desviou",
  late: (seconds: string) => `${seconds} tarde`,
  early: (seconds: string) => `${seconds} cedo`,
  missed: "sem pressionar",
};
