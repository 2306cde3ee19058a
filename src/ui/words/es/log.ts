// The words of what Write up does with many runs, and of what a person adds to one, in Spanish.

export const find = {
  search: "Buscar",
  film: "Película",
  developer: "Revelador",
  year: "Año",
  stars: "Estrellas",
  /** No choice made. */
  all: "todo",
  /** A choice, and how many runs it would leave. */
  choice: (name: string, count: number) => `${name} (${count})`,
  count: (shown: number, all: number) =>
    shown === all ? (all === 1 ? "1 sesión" : `${all} sesiones`) : `${shown} de ${all} sesiones`,
  none: "No hay ninguna sesión así.",
  clear: "Mostrar todas las sesiones",
  more: (count: number) => `Mostrar ${count} más`,
};

export const stars = {
  asks: "¿Cómo han salido los negativos?",
  unsaid: "sin decir",
  words: {
    1: "no se pueden copiar",
    2: "flojos",
    3: "aprovechables",
    4: "buenos",
    5: "como se querían",
  },
  each: (stars: number, word: string) => `${stars}: ${word}`,
};

export const pictures = {
  name: (count: number) =>
    count === 0 ? "Fotos de los negativos" : `Fotos de los negativos: ${count}`,
  hint: "Se reducen, se guardan en este navegador y pierden el lugar y la hora que una cámara escribe en ellas.",
  add: "Añadir fotos, de la cámara o de archivos",
  alt: "Qué se ve en ella",
  unnamed: "Una foto que nadie ha descrito",
  remove: "Quitar esta foto",
  removed: "La foto está quitada.",
  notRemoved: "Este navegador no ha quitado la foto. Sigue aquí.",
  notPicture: (name: string) => `«${name}» no es una imagen que este navegador sepa leer.`,
  noRoom: "No queda sitio para la foto. Nada más ha cambiado.",
  notKept: "Este navegador no ha guardado la foto.",
};

export const dictate = {
  start: "Dictar",
  stop: "Dejar de dictar",
  listening: "Escuchando. Lo que se entiende va detrás de lo escrito.",
  away: "Puede que este navegador envíe lo que oye a otras máquinas, donde se convierte en palabras. El micrófono sigue apagado si no aceptas.",
  agree: "Aceptar y dictar",
  decline: "Mejor no",
  failed: "El navegador no ha escuchado, o no ha entendido nada. Lo escrito se queda.",
};

export const again = {
  asks: "Temperatura del revelador hoy",
  hint: (was: string) =>
    `Entonces era ${was}. El prospecto, el método y los tiempos se quedan; lo que se midió aquel día se deja fuera.`,
  make: "Calcular",
  leave: "Ahora no",
};

export const beside = {
  choose: "Comparar",
  chosen: "Elegida para comparar",
  hint: "Elige otra sesión para comparar.",
  name: "Lado a lado",
  what: "Qué",
  differed: "Lo que fue distinto",
  same: "Lo que fue igual",
  leave: "Cerrar",
  begun: "Empezada",
  title: "Nombre",
  temperature: "Temperatura",
  planned: "Revelado previsto",
  done: "Revelado real",
  method: "Método",
  tank: "Tanque",
  agitated: "Agitación",
  pressed: "Pulsaciones, contadas desde la primera",
  agitation: (first: string, every: string, lasts: string) =>
    `primero ${first}, luego cada ${every} durante ${lasts}`,
};

export const overTime = {
  name: "A lo largo de los meses",
  hint: "Un punto es el centro de las sesiones de un mes; un trazo va del valor menor al mayor.",
  temperature: "Temperatura del revelador",
  late: (bath: string) => `${bath}: vaciado con retraso`,
  table: "Lo mismo en tablas",
  month: "Mes",
  runs: "Sesiones",
  /** Heads the column of what the table is about. */
  figure: "Centro, y de menor a mayor",
  span: (middle: string, least: string, most: string) => `${middle} (de ${least} a ${most})`,
};

export const everything = {
  table: "Guardar una tabla de las sesiones",
  tableFile: "tankside-sesiones.csv",
  choose: "Incorporar un archivo",
  hint: "El archivo lleva sesiones, fotos, tanques, botellas, las listas del cuarto, la hoja de trabajo y los ajustes de este aparato. Tu propia voz tiene un archivo aparte.",
  notSaved:
    "No todo lo guardado aquí ha podido pasar a un archivo, así que no se ha guardado ninguno. No ha cambiado nada.",
  unreadable: (name: string) => `Este navegador no ha podido leer «${name}». No ha cambiado nada.`,
  foreign: (name: string) =>
    `«${name}» no es un archivo de sesiones guardado aquí. No ha cambiado nada.`,
  newer: (name: string) =>
    `«${name}» lo guardó una versión más nueva, que sabe más. No ha cambiado nada.`,
  damaged: (name: string, path: string) =>
    `«${name}» está dañado en ${path}, así que no se usa nada de él. No ha cambiado nada.`,
  nothingNew: (name: string) => `Todo lo que hay en «${name}» ya está aquí.`,
  offer: (name: string) => `¿Incorporar «${name}»?`,
  rule: "De dos que son la misma sesión, foto o tanque se queda lo más nuevo; de una botella, todo lo que esté anotado aquí o allí. La hoja de trabajo, las listas del cuarto y los ajustes de aquí se quedan.",
  kind: "Qué",
  adds: "nuevo",
  replaces: "cambiado por lo más nuevo",
  skips: "se queda como está",
  kinds: {
    runs: "Sesiones",
    pictures: "Fotos",
    tanks: "Tanques",
    worksheets: "Hoja de trabajo",
    bottles: "Botellas",
    rooms: "Listas del cuarto",
    settings: "Ajustes",
  },
  take: "Incorporarlo",
  leave: "Dejarlo",
  taken: "Está incorporado. Los ajustes del aparato valen desde la próxima visita.",
  takenBack: (stayed: number) =>
    stayed === 0
      ? "Deshecho: todo está como antes del archivo."
      : stayed === 1
        ? "Deshecho, salvo una cosa que ha cambiado desde entonces."
        : `Deshecho, salvo ${stayed} cosas que han cambiado desde entonces.`,
  notTakenBack: "Este navegador no lo ha deshecho. No ha cambiado nada.",
  noRoom: "No hay sitio para ello en este navegador. No ha cambiado nada.",
  refused: "Este navegador no lo ha incorporado. No ha cambiado nada.",
};
