// What is asked of how negatives look, what it was, and what to change.

export const negatives = {
  name: "Como estão os negativos?",
  hint: "Segure-os secos contra uma luz, não contra o sol. Responda o que vê: por baixo está o que foi e o que mudar.",
  density: "Contra a luz estão",
  densities: {
    clear: "claros como vidro",
    thin: "finos e sem contraste",
    good: "bons",
    dense: "densos e escuros",
  },
  edge: "Os números da margem",
  edges: {
    none: "não estão lá",
    faint: "são ténues",
    usual: "são os de sempre",
    heavy: "são grossos e pretos",
  },
  mark: "E há",
  marks: {
    milky: "um véu leitoso",
    purple: "um tom roxo ou azul",
    drying: "auréolas ou escorridos de gotas secas",
    grey: "um cinzento igual, também entre as imagens",
    streaks: "riscas a partir das perfurações",
    spots: "pintas claras, pequenas e redondas",
    moons: "meias-luas, escuras ou claras",
    patches: "uma zona que não revelou",
  },
  unsaid: "sem resposta",
  mend: "Isto ainda se pode corrigir.",
  change: "A mudar:",
  causes: {
    well: {
      was: "Bem exposto e bem revelado.",
      change: "nada. Faça outra vez como está escrito aqui.",
    },
    "not-exposed": {
      was: "A margem tem os seus números, logo o revelador trabalhou: a este filme não chegou imagem nenhuma.",
      change: "veja se o filme avança na câmara e se o obturador abre.",
    },
    "not-developed": {
      was: "Nem os números vieram: o revelador estava esgotado ou faltou, ou o fixador foi primeiro.",
      change:
        "numere os recipientes pela ordem e experimente, à luz, uma gota de revelador numa ponta cortada de filme: tem de escurecer.",
    },
    "under-exposed": {
      was: "Os números são fortes, logo não foi a revelação: chegou pouca luz ao filme. Nenhum tempo mais longo devolve as sombras.",
      change: "meça com um índice mais baixo.",
    },
    "under-developed": {
      was: "Os números também são ténues: revelação a menos. Curta, fria, fraca ou esgotada.",
      change:
        "leia o termómetro no tanque no princípio e no fim, verifique a diluição e junte um décimo a um quinto do tempo.",
    },
    "over-exposed": {
      was: "Os números são os de sempre, logo foi a exposição: luz a mais.",
      change: "meça com um índice mais alto, ou verifique a objetiva e o fotómetro.",
    },
    "over-developed": {
      was: "Os números também são grossos: revelação a mais. Longa, quente, forte ou muito agitada.",
      change: "verifique a temperatura e a diluição, e tire um décimo a um quinto do tempo.",
    },
    "clear-either": {
      was: "Sem os números não se sabe: não exposto ou não revelado.",
      change: "olhe para a margem. Com números foi a câmara; sem eles, o revelador.",
    },
    "thin-either": {
      was: "Sem os números não se sabe: pouca luz ou pouca revelação.",
      change:
        "olhe para a margem. Números ténues apontam para a revelação; fortes, para a exposição.",
    },
    "dense-either": {
      was: "Sem os números não se sabe: luz a mais ou revelação a mais.",
      change:
        "olhe para a margem deste filme ou do próximo. Números grossos apontam para a revelação.",
    },
    milky: {
      was: "Não está fixado até ao fim.",
      change:
        "de novo, à luz, em fixador fresco pelo dobro do tempo de clareamento, e lave outra vez. Teste o fixador antes do próximo filme.",
    },
    purple: {
      was: "Ficou-lhe corante; em alguns filmes um pouco é normal.",
      change: "fixe um pouco mais em fixador fresco e lave mais tempo, com água não muito fria.",
    },
    drying: {
      was: "As gotas secaram onde estavam.",
      change:
        "lave-o outra vez e dê-lhe um agente molhante em água macia ou destilada. Pendure-o longe do pó.",
    },
    grey: {
      was: "Chegou-lhe luz fora da câmara, ou química velha velou-o.",
      change:
        "espere mais tempo às escuras e procure fugas de luz, apalpe o eixo e o fecho da tampa, e use revelador fresco.",
    },
    streaks: {
      was: "Agitado com força a mais, ou sempre do mesmo modo.",
      change: "inverta com mais suavidade, com um quarto de volta entre elas.",
    },
    spots: {
      was: "Bolhas de ar ficaram agarradas.",
      change: "bata o tanque com firmeza depois de cada agitação e verta sem parar.",
    },
    moons: {
      was: "Foi vincado ao carregar.",
      change: "carregue sem força, numa espiral seca; se prender, uma volta atrás.",
    },
    patches: {
      was: "Duas voltas tocavam-se na espiral e nada lhes chegou.",
      change: "sinta as duas margens de cada volta ao carregar; pratique à luz com um filme velho.",
    },
  },
};
