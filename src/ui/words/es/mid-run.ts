// The words of what comes up in the middle of a run, of a run that was left, and of what went otherwise than
// planned. Times and temperatures come ready written.

export const midRun = {
  more: "Más",
  wrong: "Algo va mal",
  takeBack: "Deshacer",
  hush: "Silencio",
  speak: "Hablar",
  poured: "Lleno solo ahora",
  emptied: "Vacío ahora",
  /** To the other way, by which is gone now. */
  way: { room: "Al bolsillo", pocket: "Al altavoz" },
  silent: "Sin sonido",
  silentHint: "Pulsa en cualquier punto para volver a oír. El reloj del tanque sigue.",
  notKept:
    "Este navegador no guarda nada de esta sesión. Quédate en esta página: si se cierra, la sesión no se puede recuperar.",
};

export const leftRun = {
  title: (when: string) => `Una sesión del ${when} no terminó`,
  hint: "La página se cerró a la mitad. Puede seguir donde estaría ahora.",
  goOn: "Seguir con ella",
  drop: "Cerrarla",
  dropped: "Está cerrada. Lo hecho está en «Anotar».",
};

export const otherwise = {
  title: "Lo que fue de otro modo",
  /** Each stands behind the name of its bath. */
  pouredLate: (time: string) => `llenado ${time} tarde`,
  emptiedLate: (time: string) => `vacío ${time} tarde`,
  emptiedEarly: (time: string) => `vacío ${time} antes de tiempo`,
  read: (temperature: string, time: string) =>
    `${temperature} en el tanque, ${time} después de pulsar`,
  developed: (real: string, planned: string) =>
    `Revelado durante ${real}; estaba previsto ${planned}.`,
  lost: {
    closed: (time: string) => `Sin oírse ${time}: la página estaba cerrada.`,
    frozen: (time: string) => `Sin oírse ${time}: la página se detuvo.`,
    asleep: (time: string) => `Sin oírse ${time}: el aparato dormía.`,
    silent: (time: string) => `Sin oírse ${time}: el sonido se detuvo.`,
  },
  /** What was told of as wrong. */
  wrong: {
    eye: "Algo salpicó a un ojo.",
    light: "Se encendió una luz.",
    bath: "Entró un baño equivocado.",
    leak: "La tapa perdía.",
    clock: "Se perdió la cuenta del tiempo.",
  },
  clockSet: (time: string) => `El reloj del aparato se cambió en ${time}.`,
};
