// The words of what is measured and reckoned at the bench: a leaflet pasted, water mixed and tempered,
// hands timed, tanks kept.

export const paste = {
  more: "Pegar la tabla de la ficha",
  label: "Las filas tal como están en la ficha",
  why: "Una línea por fila: una temperatura y un tiempo, en °C o °F, con tabuladores, comas o espacios. Si la fila es para una sensibilidad, escríbela detrás de EI. Los encabezados se pasan por alto.",
  fill: "Rellenar con estas filas",
  nothing: "Todavía no hay ninguna fila.",
  fault: (line: number, text: string, may: string) =>
    `Línea ${line}: «${text}» no sirve. Aquí vale ${may}.`,
  filled: (rows: number) =>
    rows === 1
      ? "Puesta 1 fila de la ficha. «Deshacer» devuelve las que había."
      : `Puestas ${rows} filas de la ficha. «Deshacer» devuelve las que había.`,
};

export const mixing = {
  take: "Juntar",
  stock: (volume: string) => `${volume} de stock`,
  cold: (volume: string) => `${volume} de agua fría`,
  hot: (volume: string) => `${volume} de agua caliente`,
};

export const tempering = {
  sink: "Leer junto a la pila",
  sinkHint: "teclas grandes, y al pulsar queda apuntada la hora",
  title: "El revelador en su baño maría",
  noTarget: "Di primero a qué temperatura tiene que llegar.",
  hindered: (field: string) => `Antes hay que corregir o rellenar «${field}».`,
  afresh:
    "Se ha empezado de nuevo: las lecturas que había no tenían hora del día. «Deshacer» las devuelve.",
};

export const hands = {
  measure: "Medirlo",
  /** Read on from that, by those who listen to the page. */
  of: (label: string) => `: ${label}`,
  kept: (label: string, seconds: string) => `${label}: ${seconds}, la mediana de tres.`,
};

export const tanks = {
  choose: "Tanques guardados",
  none: "elige uno",
  keep: "Guardar este tanque",
  forget: "Olvidarlo",
  isKept: (label: string) => `«${label}» queda guardado con sus tiempos.`,
  taken: (label: string) => `Puesto «${label}». «Deshacer» devuelve el tanque anterior.`,
  forgotten: (label: string) => `«${label}» ya no está guardado.`,
  bringBack: (label: string) => `Recuperar «${label}»`,
  needsName: "Ponle antes un nombre al tanque; con él se guarda.",
  notKept:
    "Este navegador no guarda los tanques de una visita a otra. Guarda la hoja en un archivo.",
};

export const latePart = {
  notFetched: "No se ha podido traer esta parte.",
};
