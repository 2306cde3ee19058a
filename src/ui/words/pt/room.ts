// The words of the house's lists, and of what stands at Gullrock Light, in Portuguese.

export const room = {
  title: "As listas da sala",
  lead: "Abrir, fechar, e para onde vai o que se gastou: escritas pela casa, para a casa.",
  lists: {
    opening: "Abrir a sala",
    closing: "Fechar a sala",
    waste: "Para onde vai o gasto",
  },
  invite: {
    opening:
      "Ainda nada está escrito. O que se liga, se verifica e se prepara antes de alguém começar?",
    closing: "Ainda nada está escrito. O que se lava, se desliga e se fecha antes de sair?",
    waste:
      "Ainda nada está escrito. Que recipiente recebe o quê, e quem o leva? Decidem as regras do lugar e as fichas dos fabricantes.",
  },
  edit: "Escrever esta lista",
  hint: "Uma linha para cada ponto.",
  keep: "Guardar a lista",
  cancel: "Desistir",
  reset: "Tirar todos os sinais",
  print: "Imprimir as listas",
  demo: "Preencher com as listas de Gullrock Light",
  kept: "A lista está guardada.",
  notKept: "Este navegador não quis guardá-la: perde-se ao fechar a página.",
  ticked: (done: number, all: number) => `${done} de ${all} feitos`,
};

export const gullrockRoom = {
  bottles: {
    stock: "Kelp MQ de estoque",
    stop: "Paragem, jarro castanho",
    fixer: "Fixador B",
    powder: "pó para 1 l",
    concentrate: "concentrado",
  },
  opening: [
    "Ventoinha ligada, estore descido",
    "Sino do sinal de nevoeiro desprendido",
    "Lado molhado: banho de água cheio, toalhas à mão",
    "Cartão da porta virado para ESCURO",
  ],
  closing: [
    "Banhos ainda bons de volta às garrafas, filmes anotados",
    "Tinas e provetas enxaguadas e viradas para baixo",
    "Torneiras, ventoinha e aquecedor desligados",
    "Chave no gancho da casa da lâmpada",
  ],
  waste: [
    "Fixador gasto: bidão azul junto à porta, com a data de início",
    "Revelador gasto: bidão cinzento; a faroleira leva os dois para terra",
  ],
};
