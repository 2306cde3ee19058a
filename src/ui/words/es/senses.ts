// The words of how a run reaches a person (heard, read out, felt, read), and of the statement on accessibility.

export const senses = {
  title: "¿Quién habla?",
  why: "Dos voces se pisarían, así que hay una sola. Se puede cambiar aquí antes de cada sesión.",
  hear: "Oír la pregunta",
  hearHint: "o responde ya: teclas 1, 2 y 3",
  notHeard: "No se pudo cargar la voz. La primera vez hace falta red.",
  names: {
    program: "Habla el programa",
    reader: "Habla mi lector de pantalla",
    tones: "Solo señales",
  },
  hints: {
    program:
      "Lo que hay que decir sale solo de esta página; durante la sesión no da nada que decir al lector de pantalla.",
    reader:
      "Durante la sesión las palabras llegan a su hora, como texto, al lector de pantalla; las señales siguen.",
    tones: "La sesión da sus señales y no dice nada hasta que se lo pidas.",
  },
  change: "Cambiar",
  also: "Para sentir y leer",
  vibrates: "Vibrar con cada señal",
  vibratesHint:
    "También a oscuras. Lleva el aparato pegado al cuerpo y pruébalo aquí: desde esta página no se puede saber si tiene motor.",
  noMotor: "Este navegador no puede hacer vibrar un aparato.",
  feel: "Sentir las señales",
  captions: "Escribir lo que se dice",
  captionsHint:
    "En grande en la pantalla de la sesión mientras haya luz. Lo que se dirá a oscuras aparece antes de apagarla.",
  darkAhead: "A oscuras se dirá:",
  /** The two halves of a turn, as large as the beat is short. */
  turns: { over: "Ida", back: "Vuelta" },
};

export const statement = {
  built: (standard: string, point: string) =>
    `Tankside está hecho según ${standard}: el nivel AA entero, y el AAA salvo en una cosa, el tiempo (${point}).`,
  time: "El reloj de un tanque no se puede parar ni alargar. A cambio:",
  instead: [
    "Cada momento se anuncia, se cuenta y después suena, y además se puede sentir y leer.",
    "Entre los pasos con reloj, la sesión espera tu pulsación el tiempo que quieras.",
    "Una pulsación se puede deshacer durante tres segundos, y un retraso se puede decir: lo que queda se calcula de nuevo.",
    "Cuánto tardas en verter y a qué paso habla la voz lo decides tú.",
  ],
  ways: "Una sesión se puede hacer de oído, con lector de pantalla, con señales, con vibración o, mientras haya luz, leyendo; con una tecla, un dedo o un pedal. Todo lo que se mantiene pulsado o se pulsa dos o tres veces tiene también su propio botón.",
  measured:
    "Las pruebas miden en cada cambio: texto sobre fondo a 7 a 1 o mejor, en los dos papeles; botones de la sesión de 88 píxeles o más; páginas de 320 píxeles de ancho sin desplazarse de lado; texto espaciado; colores forzados; y que axe-core no encuentra nada en ningún lugar.",
  limits:
    "Límites conocidos: un lector de pantalla lleva su propio paso y puede seguir hablando cuando llega una señal; en el bolsillo, con el aparato bloqueado, no tiene nada que leer y solo se oyen señales.",
  trials:
    "No ha habido pruebas con personas ciegas, sordas o que trabajan con una mano. Lo que hay aquí sigue las normas y se ofrece para probarlo.",
};
