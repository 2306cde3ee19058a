// What the fields of the bench are called in Portuguese, by the pattern of their paths, and why they are
// asked.

const bathFields = {
  "baths.*.clearing.time": {
    label: "Um pedaço clareia em",
    why: "Um pedaço de filme por revelar, dentro do fixador e à luz, até ficar transparente. Dá o tempo do fixador quando não há nenhum escrito.",
  },
  "baths.*.clearing.fresh": {
    label: "Em banho novo, em",
    why: "Quanto demorou o mesmo ensaio no banho novo. Ao dobro disso, o fixador está esgotado.",
  },
  "baths.*.clearing.times": { label: "Fixar durante" },
  "baths.*.carryOver": {
    label: "Fica lá dentro ao despejar",
    why: "O líquido que fica no tanque, nas espirais e no filme. Despeje como sempre e pese o tanque: um grama é um mililitro.",
  },
  "baths.*.flow": {
    label: "Água corrente por minuto",
    why: "Quanta água corre num minuto: segure uma proveta debaixo da mangueira dez segundos e multiplique por seis.",
  },
  "baths.*.thiosulfate": {
    label: "Tiossulfato no fixador, g/l",
    why: "Vazio, vale 108: um fixador simples com 240 g de cristais por litro.",
  },
  "baths.*.filmsPerLitre": {
    label: "Filmes por litro",
    why: "Em filmes de 80 polegadas quadradas (516 cm²), segundo a ficha do fabricante.",
  },
  "baths.*.filmsBefore": { label: "Filmes que já serviu" },
  "baths.*.bottle": { label: "Garrafa da prateleira" },
  "baths.*.kept": { label: "Quanto há", why: "Vazio, vale o que chega para cobrir o filme." },
};

export const benchFields = {
  ...bathFields,
  process: { label: "Processo" },
  "developer.soughtTime": {
    label: "Que temperatura daria",
    why: "Um tempo que lhe agrade. Pergunta-se ao folheto que temperatura o dá, e qual dá o mínimo, 5:00.",
  },
  "developer.readings[].at": {
    label: "Aos",
    why: "No relógio do próprio revelador. As leituras tomam o lugar da deriva e acertam o fim.",
  },
  "developer.readings[].temperature": { label: "No tanque" },
  "developer.filmsPerLitre": bathFields["baths.*.filmsPerLitre"],
  "developer.kept": bathFields["baths.*.kept"],
  "developer.bottle": bathFields["baths.*.bottle"],
  "developer.replenishPerFilm": { label: "Reforçador por filme" },
  "tank.label": {
    label: "Nome deste tanque",
    why: "Por exemplo, «aço, duas espirais». O volume e os seus tempos com ele ficam guardados com este nome.",
  },
  "tank.measured.pourIn": { label: "Encher demorou, s" },
  "tank.measured.pourOut": { label: "Despejar demorou, s" },
  "tank.measured.perInversion": { label: "Uma inversão demorou, s" },
  "mixing.target": { label: "Mistura a" },
  "mixing.stock": { label: "Solução-mãe a" },
  "mixing.cold": { label: "Torneira fria a" },
  "mixing.hot": { label: "Torneira quente a" },
  "mixing.mark": {
    label: "Traços da proveta",
    why: "De um traço ao seguinte. Vazio, vale 5 ml, ou um quarto de onça fluida.",
  },
  "tempering.target": { label: "Deve chegar a" },
  "tempering.bath": {
    label: "Banho-maria a",
    why: "Sabendo a temperatura dele, bastam duas leituras; sem ela, são precisas três. Mexa a água e leia-a com o mesmo termómetro.",
  },
  "tempering.bathVolume": {
    label: "Água no banho-maria",
    why: "Para calcular o gelo, se for preciso.",
  },
  "tempering.readings[].at": {
    label: "Aos",
    why: "Num relógio à parte, que arranca com a primeira leitura: por exemplo, 3:30.",
  },
  "tempering.readings[].temperature": { label: "No revelador" },
  "tempering.began": { label: "Horas em 0:00" },
  "contrast.tests[].time": { label: "Revelado durante" },
  "contrast.tests[].gradient": {
    label: "Gradiente médio",
    why: "A densidade ganha sobre o log da exposição, tal como a deu o densitómetro ou uma cunha.",
  },
  "contrast.tests[].densities": {
    label: "Ou as densidades da cunha",
    why: "Com base e véu incluídos, o degrau menos exposto primeiro, separadas por espaços.",
  },
  "contrast.tests[].baseFog": {
    label: "Base e véu",
    why: "A densidade do filme revelado que nunca foi exposto.",
  },
  "contrast.wanted": {
    label: "Gradiente desejado",
    why: "Vazio, vale 0,615: 0,80 sobre 1,30, como manda a ISO 6.",
  },
  "contrast.stepLog": {
    label: "Log da exposição por degrau",
    why: "0,15 para meios pontos, 0,30 para pontos inteiros.",
  },
  "contrast.firstLog": {
    label: "Log da exposição no 1.º degrau",
    why: "log10 dos lux-segundos, se o souber: então daí sai uma sensibilidade.",
  },
};
