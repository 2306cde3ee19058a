// The words of what comes up in the middle of a run, of a run that was left, and of what went otherwise than
// planned. Times and temperatures come ready written.

export const midRun = {
  more: "Mais",
  wrong: "Algo correu mal",
  takeBack: "Desfazer",
  hush: "Silêncio",
  speak: "Falar",
  poured: "Só agora deitado",
  emptied: "Vazio agora",
  /** To the other way, by which is gone now. */
  way: { room: "Para o bolso", pocket: "Para o altifalante" },
  silent: "Sem som",
  silentHint: "Pressione em qualquer ponto para voltar a ouvir. O relógio do tanque continua.",
  notKept:
    "Este navegador não guarda nada desta sessão. Fique nesta página: se fechar, a sessão não se recupera.",
};

export const leftRun = {
  title: (when: string) => `Uma sessão de ${when} não terminou`,
  hint: "A página fechou-se a meio. Pode continuar onde estaria agora.",
  goOn: "Continuar",
  drop: "Fechá-la",
  dropped: "Está fechada. O que se fez está em Anotar.",
};

export const otherwise = {
  title: "O que foi diferente",
  /** Each stands behind the name of its bath. */
  pouredLate: (time: string) => `deitado com ${time} de atraso`,
  emptiedLate: (time: string) => `vazio com ${time} de atraso`,
  emptiedEarly: (time: string) => `vazio ${time} antes do tempo`,
  read: (temperature: string, time: string) =>
    `${temperature} no tanque, ${time} depois de pressionar`,
  developed: (real: string, planned: string) =>
    `Revelado durante ${real}; estavam previstos ${planned}.`,
  lost: {
    closed: (time: string) => `Sem se ouvir ${time}: a página estava fechada.`,
    frozen: (time: string) => `Sem se ouvir ${time}: a página parou.`,
    asleep: (time: string) => `Sem se ouvir ${time}: o aparelho dormia.`,
    silent: (time: string) => `Sem se ouvir ${time}: o som parou.`,
  },
  /** What was told of as wrong. */
  wrong: {
    eye: "Salpicou para um olho.",
    light: "Acendeu-se uma luz.",
    bath: "Entrou um banho errado.",
    leak: "A tampa pingava.",
    clock: "Perdeu-se a conta ao tempo.",
  },
  clockSet: (time: string) => `O relógio do aparelho foi mudado em ${time}.`,
};
