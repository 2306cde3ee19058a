// What the fields of the development are called in Portuguese, by the pattern of their paths, and why
// they are asked.

export const fields = {
  language: { label: "A voz fala" },
  title: { label: "Nome desta folha" },
  "films[].label": { label: "Filme" },
  "films[].size": { label: "Formato" },
  "films[].count": { label: "Quantos" },
  "films[].boxSpeed": { label: "ISO da caixa" },
  "films[].exposureIndex": {
    label: "Exposto a",
    why: "A sensibilidade marcada no fotómetro. Vazio, vale o ISO da caixa. Todos os filmes de um tanque recebem o mesmo tempo: convém que sejam iguais nisto.",
  },
  "developer.label": { label: "Revelador" },
  "developer.dilution": {
    label: "Diluição",
    why: "Partes de solução-mãe, depois partes de água: 1+3 é uma de solução-mãe e três de água. Escreva «stock» para a solução-mãe sem água. 1:3 não serve, porque há quem o leia de duas maneiras.",
  },
  "developer.leaflet[].temperature": { label: "Temperatura" },
  "developer.leaflet[].time": { label: "Tempo" },
  "developer.leaflet[].exposureIndex": { label: "Se exposto a" },
  "developer.temperature": {
    label: "Agora, no banho pronto",
    why: "O que diz o termómetro dentro do próprio banho, mesmo antes de o usar. É para esta temperatura que se calcula o tempo.",
  },
  "developer.perDegree": {
    label: "Mudança por °C",
    why: "O k em tempo × e^(−k × °C), para um folheto com uma só linha. Vazio, vale 0,099.",
  },
  "developer.perStop.pull": {
    label: "Ao reduzir, por ponto, %",
    why: "O tempo que se tira por cada ponto de sobre-exposição. Vazio, vale 10.",
  },
  "developer.perStop.push": {
    label: "Ao puxar, por ponto, %",
    why: "O tempo que se junta por cada ponto de subexposição. Vazio, vale 40.",
  },
  "developer.stockPerFilm": {
    label: "Solução-mãe por filme",
    why: "O mínimo: o que gastam 80 polegadas quadradas (516 cm²): um 135-36, um 120 ou quatro chapas de 4×5 polegadas. Vem na ficha do fabricante. Se ficar vazio, ninguém o confere.",
  },
  "developer.filmsBefore": { label: "Filmes que já revelou" },
  "developer.perFilmBefore": { label: "Tempo a mais por cada um, %" },
  "tank.method": { label: "Método" },
  "tank.volume": { label: "Para cobrir o filme" },
  "tank.pourIn": {
    label: "Encher demora",
    why: "Cronometre-se com água. O relógio é acertado por isto.",
  },
  "tank.pourOut": { label: "Despejar demora" },
  "tank.handover": { label: "De vazio ao banho seguinte" },
  "tank.timeFactor": {
    label: "Tempo vezes",
    why: "Para este método. Vazio, vale 1; num tambor, 0,85.",
  },
  "tank.room": {
    label: "A sala",
    why: "O tanque vai-se chegando à temperatura da sala. Com esta e o meio caminho, a resposta conta com isso.",
  },
  "tank.halfway": {
    label: "A meio caminho em",
    why: "Minutos que um tanque com água leva a fazer metade do caminho entre a sua temperatura e a da sala.",
  },
  "agitation.first": { label: "De início, sem parar" },
  "agitation.every": { label: "Depois, a cada" },
  "agitation.for": {
    label: "Durante",
    why: "Com 0, o banho repousa; se for tanto como «a cada», ou mais, nunca para.",
  },
  "agitation.perInversion": { label: "Uma inversão demora" },
  "agitation.taps": { label: "Pancadas por série" },
  "clock.starts": { label: "O relógio arranca" },
  "clock.ends": { label: "O tempo acaba" },
  "baths.*.use": { label: "Usa-se" },
  "baths.*.time": { label: "Tempo" },
  "baths.*.temperature": { label: "Temperatura" },
  "baths.*.agitation.first": { label: "De início, sem parar" },
  "baths.*.agitation.every": { label: "Depois, a cada" },
  "baths.*.agitation.for": { label: "Durante" },
  "baths.*.agitation.perInversion": { label: "Uma inversão demora" },
  "baths.*.agitation.taps": { label: "Pancadas por série" },
  "baths.*.afterwards": { label: "Depois de despejado, vai" },
  "baths.*.fills": {
    label: "Por mudas de água",
    why: "Em vez de um tempo: as inversões em cada muda de água limpa, como 5, 10, 20.",
  },
  darkWait: {
    label: "Esperar às escuras",
    why: "Para procurar luz antes de tirar o filme. Vazio são 3:00, como é habitual; 0:00 deixa-o de fora. Os olhos levam meia hora a ver tudo.",
  },
  loading: { label: "O filme" },
  "voice.detail": { label: "Quanto se diz" },
  "voice.rate": {
    label: "Ritmo",
    why: "1 é como foi gravado; 0,8 é o mais lento, 1,6 o mais rápido.",
  },
};
