// The words of Write up.

export const write = {
  lead: "Cada sesión deja aquí su registro por sí sola.",
  onItsWay: "Buscando tus sesiones…",
  empty:
    "Todavía no hay sesiones. En cuanto empiece una, quedará aquí por sí sola: la hoja de trabajo, cuándo se pulsó en cada paso y sitio para anotar qué ha salido.",
  toLightsOut: "Ir a Apagar la luz",
  refused:
    "Este navegador no guarda nada de una visita a otra: no se pueden mostrar las sesiones anteriores, y las de abajo se pierden al cerrar la página. Guárdalas en un archivo.",
  onlyHere: (count: number) =>
    count === 1
      ? "Este navegador no ha guardado una de estas sesiones, o lo que se dijo de ella: se pierde al cerrar la página. Guárdalo todo en un archivo."
      : `Este navegador no ha guardado ${count} de estas sesiones, o lo que se dijo de ellas: se pierde al cerrar la página. Guárdalo todo en un archivo.`,
  unread: (count: number) =>
    count === 1
      ? "Hay una sesión más, guardada con otra versión, que no se puede mostrar. Se queda como está."
      : `Hay ${count} sesiones más, guardadas con otra versión, que no se pueden mostrar. Se quedan como están.`,
  saveAll: "Guardar todo en un archivo",
  saved: (name: string) => `Guardado como ${name}.`,
  file: "tankside-sesiones.json",
  untitled: "Sesión sin nombre",
  films: "Películas",
  film: (label: string, size: string, count: number) =>
    count === 1 ? `${label}, ${size}` : `${count} × ${label}, ${size}`,
  rating: (at: number, box: number | undefined) =>
    box === undefined || box === at ? `medida a ${at}` : `medida a ${at}, ISO de la caja ${box}`,
  /** A film, and what it was metered at. */
  rated: (film: string, rating: string) => `${film}, ${rating}`,
  developer: "Revelador",
  /** In place of a dilution. */
  stock: "stock",
  developed: "Revelado",
  bath: (time: string, temperature: string) => `${time} a ${temperature}`,
  ended: "Final",
  endings: {
    done: "hecha hasta el final",
    left: (after: string) => `dejada después de: ${after}`,
    leftAtOnce: "dejada antes de la primera pulsación",
    open: "aún no, o se cortó",
  },
  presses: (count: number) => (count === 1 ? "1 pulsación" : `${count} pulsaciones`),
  step: "Paso",
  at: "Pulsado a las",
  after: "Tras el anterior",
  note: "Qué ha salido",
  noteHint: "¿Débil, bueno, denso? ¿Parejo? ¿Qué cambiarías?",
  noteKept: "Guardado.",
  noteNotKept: "Este navegador no lo ha guardado. Guárdalo todo en un archivo antes de salir.",
  again: "Hacerla otra vez",
  takeOut: "Quitar",
  takenOut: (title: string) => `Quitada: «${title}».`,
  notTakenOut: (title: string) => `Este navegador no ha quitado «${title}». Sigue aquí.`,
  notPutBack: (title: string) =>
    `Este navegador no ha podido devolver «${title}» con sus imágenes. Se puede volver a intentar mientras la página siga abierta.`,
  undo: "Deshacer",
  /** Read on from the words of a button, by those who listen to the page. */
  of: (title: string, begun: string) => ` (${title}, ${begun})`,
};

/** Steps that are no bath, by id. */
export const steps = {
  "lay-out": "Preparar el material",
  dry: "Espirales secas",
  "wet-side": "La zona húmeda",
  temper: "Temperatura",
  quiet: "Modo avión",
  lamps: "Tapar las lámparas",
  volume: "Volumen",
  screen: "Pantalla",
  "lights-out": "Apagar la luz",
  wait: "Buscar luz",
  open: "Sacar la película",
  cut: "Cortar la lengüeta",
  feed: "Meter el extremo",
  wind: "Cargar la espiral",
  spool: "Fuera del carrete",
  tape: "La cinta",
  others: "Las otras espirales",
  count: "Contar las placas",
  holders: "Colocar las placas",
  core: "Eje y espirales",
  close: "Cerrar el tanque",
  everyone: "Todos listos",
  light: "Encender la luz",
  "stay-dark": "Aún a oscuras",
  hang: "Colgar a secar",
};
