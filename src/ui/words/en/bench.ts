// The words of what is measured and reckoned at the bench: a leaflet pasted, water mixed and tempered,
// hands timed, tanks kept.

export const paste = {
  more: "Paste the leaflet’s table",
  label: "The rows as they stand in the leaflet",
  why: "A line a row: a temperature and a time, in °C or °F, with tabs, commas or spaces. A rating behind EI, if the row is for one. Headings are passed over.",
  fill: "Fill in these rows",
  nothing: "There is no row in it yet.",
  fault: (line: number, text: string, may: string) =>
    `Line ${line}: “${text}” cannot be used. It may hold ${may}.`,
  filled: (rows: number) =>
    rows === 1
      ? "1 row of the leaflet is filled in. Undo brings the others back."
      : `${rows} rows of the leaflet are filled in. Undo brings the others back.`,
};

export const mixing = {
  take: "Pour together",
  stock: (volume: string) => `${volume} of stock`,
  cold: (volume: string) => `${volume} cold`,
  hot: (volume: string) => `${volume} hot`,
};

export const tempering = {
  sink: "Read at the sink",
  sinkHint: "big keys, and a press stamps the time",
  title: "The developer in its bath",
  noTarget: "Say first what it shall come to.",
  hindered: (field: string) => `“${field}” wants mending or filling in first.`,
  afresh: "Begun afresh: the readings that stood there had no time of day. Undo brings them back.",
};

export const hands = {
  measure: "Time it",
  /** Read on from that, by those who listen to the page. */
  of: (label: string) => `: ${label}`,
  kept: (label: string, seconds: string) => `${label}: ${seconds}, the middle of three.`,
};

export const tanks = {
  choose: "Kept tanks",
  none: "choose one",
  keep: "Keep this tank",
  forget: "Forget it",
  isKept: (label: string) => `“${label}” is kept with its times.`,
  taken: (label: string) => `“${label}” is filled in. Undo brings the last tank back.`,
  forgotten: (label: string) => `“${label}” is no longer kept.`,
  bringBack: (label: string) => `Bring back “${label}”`,
  needsName: "Give the tank a name first; it is kept under that.",
  notKept: "This browser will not keep tanks between visits. Save the worksheet to a file instead.",
};

export const latePart = {
  notFetched: "This part could not be fetched.",
};
