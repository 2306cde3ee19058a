// The words of "Who speaks" and of the sheet on which a voice is recorded. "Frase" stands for what is
// recorded in one go, and for the whole sentence too.
import type { LateWords } from "../words.ts";

export const speaker: LateWords["speaker"] = {
  who: "Quién habla en este aparato",
  bundled: "La voz que viene con Tankside",
  own: (recorded, of) => `Mi propia voz (${recorded} de ${of} frases grabadas)`,
  ownHint:
    "Una frase se oye en tu voz cuando está grabada entera; hasta entonces la dice la voz que viene con Tankside.",
  /** What a saved voice is called within its file. */
  packName: "Mi propia voz",
  record: "Grabar tu voz",
  goOn: "Seguir grabando tu voz",
  export: "Guardar tu voz en un archivo",
  import: "Abrir una voz de un archivo",
  removeAll: "Borrar todo lo grabado",
  undo: "Deshacer",
  choiceNotKept: "Este navegador no guarda la elección: vale hasta que se cierre la página.",
  opening: "Trayendo el guion…",
  notOpened: "No se ha podido traer el guion. Hace falta red una vez, la primera.",
  saved: (name) => `Guardado como ${name}.`,
  nothingToSave: "Todavía no hay nada grabado.",
  imported: (clips, unknown) =>
    clips === 1
      ? `Se ha añadido 1 frase. ${leftOut(unknown)}«Deshacer» la quita.`
      : `Se han añadido ${clips} frases. ${leftOut(unknown)}«Deshacer» las quita.`,
  removedAll: "Se ha borrado todo lo grabado. «Deshacer» lo devuelve.",
  undone: "Deshecho.",
  notKept:
    "Este navegador no lo guarda: dura hasta que se cierre la página. Guarda antes tu voz en un archivo.",
  notRead: "No se ha podido leer en este navegador lo que grabaste otras veces.",
};

function leftOut(unknown: readonly string[]): string {
  if (unknown.length === 0) return "";
  const named = unknown
    .slice(0, 3)
    .map((text) => `«${text}»`)
    .join(", ");
  if (unknown.length === 1) return `No se ha añadido, porque aquí no se dice nunca: ${named}. `;
  return unknown.length <= 3
    ? `No se han añadido, porque aquí no se dicen nunca: ${named}. `
    : `No se han añadido ${unknown.length}, porque aquí no se dicen nunca: ${named} y otras. `;
}

export const deviceVoice: LateWords["deviceVoice"] = {
  device: "Una voz de este aparato",
  hint: "Habla a su propio ritmo, y solo mientras esta página está a la vista. Si falla dos veces seguidas, la releva la voz que viene con Tankside. Las señales nunca dependen de ella.",
  which: "Qué voz",
  measure: "Oírla y medirla",
  measuring: "Está diciendo unas frases, para medirla…",
  first: "Antes de guiar una sesión, hay que oírla y medirla.",
  runOn: "Hay una sesión en marcha. Para medir, espera a que termine.",
  measured: (delay, letters) => `Tarda ${delay} en empezar y dice ${letters} letras por segundo.`,
  refused: {
    "never-starts":
      "Esta voz no ha empezado a hablar en 3 segundos, así que no puede guiar una sesión.",
    "never-ends":
      "Esta voz no avisa de cuándo ha terminado, así que no puede guiar una sesión: podría seguir hablando en el momento de actuar.",
    failed: "Esta voz no ha podido hablar.",
    "too-slow":
      "Esta voz tarda más de 10 segundos en decir una frase, así que no puede guiar una sesión.",
  },
};

export const recording: LateWords["recording"] = {
  name: "Grabar tu voz",
  progress: (recorded, of) => `${recorded} de ${of}`,
  recorded: "frases grabadas",
  forWorksheet: (recorded, of) =>
    recorded === of
      ? "Todo lo que dice la hoja de esta página está grabado."
      : `De lo que dice la hoja de esta página: ${recorded} de ${of}.`,
  say: "Di",
  isRecorded: "Esta frase está grabada.",
  level: "Nivel",
  levels: { none: "no se oye nada", soft: "flojo", good: "bien", loud: "muy fuerte" },
  record: "Grabar",
  stop: "Parar",
  keep: "Guardar y seguir",
  again: "Grabar de nuevo",
  hear: "Oír lo grabado",
  sayIt: "Léemela",
  back: "Anterior",
  skip: "Siguiente",
  remove: "Borrar esta",
  undo: "Deshacer",
  leave: "Salir",
  keys: {
    press: "Espacio",
    keep: "Intro",
    hear: "H",
    say: "R",
    back: "←",
    skip: "→",
    remove: "Supr",
    undo: "U",
    leave: "Esc",
  },
  opening: "Pidiendo el micrófono…",
  ready:
    "Habla como a alguien que tienes al lado, a cuatro dedos del micrófono. Si usas un lector de pantalla, ponte auriculares: si no, también se grabaría.",
  recording: "Grabando. Di la frase y después para.",
  taken: (seconds) => `Grabada: ${seconds}. Óyela, guárdala o grábala de nuevo.`,
  told: {
    kept: "Guardada.",
    "not-kept":
      "Este navegador no la guarda: sigue aquí hasta que se cierre la página. Guarda antes tu voz en un archivo.",
    removed: "Borrada. «Deshacer» la devuelve.",
    undone: "Deshecho.",
    "run-on": "Hay una sesión en marcha. Para grabar, espera a que termine.",
    "no-sound": "Aquí no se ha podido iniciar el sonido.",
  },
};

/** Why there is nothing to keep of what was recorded. */
export const unusable: LateWords["unusable"] = {
  "too-quiet":
    "Se oye demasiado bajo para que sirva. Acércate al micrófono o sube su nivel, y graba de nuevo.",
  clipped:
    "Demasiado fuerte para el micrófono: se satura. Aléjate un poco o baja su nivel, y graba de nuevo.",
  noise:
    "Las palabras no se distinguen del ruido de la sala. Acércate o busca un sitio más tranquilo, y graba de nuevo.",
  "too-short":
    "Demasiado corto para ser la frase. Pulsa, habla y vuelve a pulsar cuando hayas terminado.",
  "too-long": (lasts, most) =>
    `Dura ${lasts} y solo hay sitio para ${most}. Dila más deprisa y graba de nuevo.`,
};

export const microphone: LateWords["microphone"] = {
  denied:
    "Aquí no está permitido usar el micrófono. Permítelo para esta página en los ajustes del navegador y vuelve a pulsar.",
  none: "No se ha encontrado ningún micrófono. Conecta uno y vuelve a pulsar.",
  busy: "No se ha podido usar el micrófono: quizá lo tenga ocupado otro programa. Ciérralo y vuelve a pulsar.",
  unable: "Este navegador no puede grabar en esta página.",
};

/** Why a voice's file was refused; `name` is the file's own. */
export const noPack: LateWords["noPack"] = {
  foreign: (name) => `${name} no es una voz guardada por Tankside. Aquí no ha cambiado nada.`,
  "other-version": (name) =>
    `${name} se guardó con un Tankside más nuevo, y este no sabe leerlo. Aquí no ha cambiado nada.`,
  damaged: (name) =>
    `${name} está dañado: le falta algo o se ha alterado. Aquí no ha cambiado nada.`,
  "too-large": (name) =>
    `${name} contiene más de lo que cabe en una voz. Aquí no ha cambiado nada.`,
  "other-language": (name, language) =>
    `${name} habla otro idioma (${language}). Aquí no ha cambiado nada.`,
  "other-sound": (name, file) =>
    `${file}, dentro de ${name}, no es un WAV sin comprimir de 24 kHz, 16 bits y un canal. Aquí no ha cambiado nada.`,
};
