// The words of taking a session along, of a worksheet that comes with a link, and of a class that starts together.

export const take = {
  title: "Para llevar",
  lead: "Toda la sesión en archivos: para oírla en cualquier reproductor, para leerla, para pasarla a otros. Se hacen en este dispositivo y no se envía nada. Habla la voz incluida, o la tuya si la has grabado.",
  notDevice:
    "La voz de este dispositivo, que está elegida aquí, no se puede poner en un archivo: allí habla en su lugar la incluida.",
  track: "La pista",
  waits: "Donde habría que pulsar",
  /** Each with what a plain player makes of it. */
  kinds: {
    pass: "Sigue sola tras una espera",
    stay: "Espera, en reproductores que pueden repetir un capítulo",
  },
  kindsHow: {
    pass: "Un archivo no se puede pulsar. Avisa medio minuto y diez segundos antes de seguir; quien necesite más tiempo pone el reproductor en pausa.",
    stay: "Cada espera es un capítulo propio y, en un archivo WAV, un bucle. La mayoría de los reproductores no repite nada por sí sola: sigue tras la espera y no lo dice. Pon el reproductor en pausa en cada espera, o haz que repita ese capítulo.",
  },
  gap: "Segundos de espera",
  gapMay: (most: string) => `Admite segundos enteros de 0 a ${most}.`,
  sizes:
    "Un archivo MP3 ocupa medio megabyte por minuto; uno WAV, tres. Ambos llevan un capítulo por paso y las palabras.",
  makes: {
    mp3: "Hacer un archivo MP3",
    wav: "Hacer un archivo WAV",
    vtt: "Subtítulos, WebVTT",
    srt: "Subtítulos, SubRip",
    ssml: "El guion hablado, SSML",
    txt: "Todo como texto, 40 columnas",
    ics: "Entrada para el calendario",
  },
  making: (share: string) => `En curso: ${share}`,
  cancel: "Cancelar",
  cancelled: "Cancelado. No se ha guardado nada.",
  saved: (name: string) => `Guardado como ${name}.`,
  failed: "Aquí no se ha podido hacer.",
  tooLong: "Es más largo de lo que puede ser un archivo así: un día, más o menos.",
  texts: "Para leer, y para otros programas",
  plannedFor: "Un día y una hora para ello",
  planned: "Día y hora",
  wantsTime: "Elige primero el día y la hora.",
  isPast: "Esa hora ya ha pasado. Elige una que esté por venir.",
  link: "Como enlace",
  linkLead:
    "El enlace lleva toda la hoja, con su título y los nombres de tus películas: quien tenga el enlace puede leerlos. No pasa por ningún servidor y se abre sin red en un dispositivo que ya haya abierto Tankside.",
  together: "Una clase empieza a la vez, el día y a la hora de arriba",
  togetherHow:
    "Cada teléfono abre el enlace, usa la hoja y pulsa «Todo listo» en «Apagar la luz»; en ese minuto su primer paso empieza solo. Los relojes de los teléfonos difieren, por lo común hasta en uno o dos segundos.",
  copy: "Copiar el enlace",
  copied: "Copiado.",
  notCopied: "No se ha podido copiar. Aquí está entero:",
  share: "Pasar el enlace",
  code: "El enlace como código para una cámara",
  codeTooLong:
    "Esta hoja es demasiado larga para un código que una cámara pueda leer. El enlace la lleva igualmente.",
  linkTooLong:
    "Esta hoja es demasiado larga para un enlace. Guárdala mejor en un archivo, en «Calcular».",
};

export const brought = {
  title: "Con el enlace ha llegado una hoja",
  named: (title: string) => `Se llama ${title}.`,
  starts: (time: string) => `Su clase empieza a las ${time}.`,
  keeps: "La tuya queda como está hasta que uses esta; después, Deshacer la trae de vuelta.",
  use: "Usar esta hoja",
  leave: "Dejarla",
  broken:
    "El enlace está cortado, cambió por el camino o es de otra versión. Aquí no ha cambiado nada.",
  /** What a notice calls it. */
  name: "La hoja del enlace",
};

export const classStart = {
  title: "Una clase empieza a la vez",
  at: (time: string) => `Empieza a las ${time}.`,
  left: (clock: string) => `faltan ${clock}`,
  ready: "Todo listo",
  notReady: "Todavía no",
  putAside: "No esperar a la clase",
  waits: "El primer paso empieza solo. Deja esta página abierta y a la vista.",
  clocks:
    "Los relojes de los teléfonos difieren, por lo común hasta en uno o dos segundos: cuenta el de cada uno.",
  passed: "Esa hora ya ha pasado. Empieza como siempre.",
  stopFirst: "Mira primero el aviso de arriba y acéptalo.",
};
