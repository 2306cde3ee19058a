// The Portuguese words of what is heard before a run: the test with the tap running, and headphones that play
// late.

export const hearFirst = {
  title: "Ouça primeiro",
  how: "Abra a torneira como a vai ter e ponha-se onde vai trabalhar. Deixe correr a água enquanto ouve.",
  ask: "Ouviu tudo, com a água a correr?",
  play: "Ouvir o ensaio",
  playAgain: "Ouvir outra vez",
  playHint: "alguns sinais e uma frase, tão altos como na sessão",
  playing: "A tocar…",
  listen: "Ouça agora, com a água a correr.",
  failed: "Não se conseguiu tocar o ensaio. É preciso rede uma vez, a primeira, para a voz.",
  heard: "Ouvi",
  notHeard: "Não ouvi",
  good: "Bem. A sessão vai soar tão alto como isto.",
  mend: "Então é quase sempre uma destas coisas; depois, ouça outra vez:",
  advice: [
    "O volume: suba-o à mão, no aparelho e no altifalante ou nos auscultadores.",
    "O botão de silêncio: alguns aparelhos têm um de lado, ou um modo sem som.",
    "Por onde sai: pode estar ligado um altifalante noutra divisão, ou uns auscultadores numa gaveta.",
    "A água: um fio mais fino, o aparelho mais perto, ou auscultadores.",
  ],
  begin: "Começar sem ter ouvido",
  beginHint: "para quem sente os sinais no corpo, ou lê as palavras",
};

export const tapAlong = {
  ask: "Auscultadores sem fios?",
  why: "Tocam com atraso, muitas vezes um quarto de segundo, e com eles chega tarde o sinal de despejar. Toque ao ritmo de umas batidas, e tudo o que soa na sessão sai mais cedo outro tanto.",
  kept: (delay: string) => `Neste aparelho, o som sai ${delay} mais cedo.`,
  noneKept: "Neste aparelho, nada sai mais cedo.",
  notKept: "Este navegador não o guarda entre visitas.",
  measure: "Medir tocando ao ritmo",
  none: "Sem atraso",
  name: "Com quanto atraso tocam os auscultadores",
  advice:
    "Ponha os auscultadores. Três batidas e uma pausa, uma e outra vez, durante vinte segundos.",
  start: "Pressione para ouvir as batidas",
  fetching: "A ir buscar as batidas…",
  tap: "Toque aqui a cada batida",
  tapHint: "ou pressione a barra de espaços; nas pausas, não",
  taps: (count: number) => `Toques: ${count}`,
  failed:
    "Não se conseguiu tocar as batidas. É preciso rede uma vez, a primeira. Pressione para tentar de novo.",
  late: (delay: string) => `${delay} de atraso`,
  notLate: "Nenhum atraso que conte",
  sure: (apart: string) => `Metade dos toques está a ${apart} disso, ou menos.`,
  keep: (delay: string) => `Ficar com ${delay}`,
  keepNone: "Ficar sem atraso",
  again: "Outra vez",
  leave: "Sair",
  refused: {
    few: "Poucos toques para se saber. Outra vez: um toque a cada batida.",
    uneven:
      "Os toques variam demais para se saber. Outra vez: apanhe primeiro o ritmo, depois toque com ele.",
    unclear: "Isso serve para dois atrasos. Outra vez: três toques, e nenhum na pausa.",
    far: "É mais de um segundo, mais do que se pode compensar. Servem uns auscultadores com fio ou o altifalante do aparelho.",
  },
};

export const byEar = {
  open: "Calcular de ouvido",
  name: "Calcular de ouvido",
  hint: "Qualquer tecla ou toque aceita o que se oferece, ou segue. Para cima e para baixo levam de campo em campo, esquerda e direita percorrem os valores a escolher, Enter aceita um; os algarismos e as letras de um nome entram ao digitar, Enter fixa-os, C ou F, M ou O nessa unidade, uma vírgula separa as mudas de uma lavagem, um espaço os degraus de uma cunha, Backspace tira um, Escape fecha.",
  end: "O conjunto",
  previous: "Anterior",
  next: "Seguinte",
  close: "Fechar",
  notHeard: "Não foi possível obter a voz. Procure uma rede e pressione de novo.",
};
