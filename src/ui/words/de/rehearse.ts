// The German words of the rehearsal with water. What the voice says stands in audio-scripts/.

export const rehearse = {
  title: "Mit Wasser proben",
  lead: "Der ganze Durchgang nach Gehör, bei Licht: Wasser in jedem Gefäß und ein Film, der nicht mehr zählt. Einfüllen, Ausgießen und Bewegen dauern so lange wie sonst; nur die Pausen dazwischen sind kürzer.",
  press:
    "Zu Beginn jedes Einfüllens und jedes Ausgießens drücken, wer will, auch zu Beginn jeder Bewegung. Danach wird gesagt, was sich zu üben lohnt.",
  keeps:
    "Unter den Durchgängen bleibt davon nichts stehen, und kein Bad wird dadurch älter. Mit der Seite ist die Probe zu Ende.",
  rests: "Pausen",
  /** What is left of a rest. */
  factors: {
    whole: "ganz",
    half: "halb",
    quarter: "ein Viertel",
    least: "so kurz, wie die Worte es zulassen",
  },
  why: "Vor jedem Bad sagen, warum, und beim Einlegen, wie",
  begin: "Probe beginnen",
  beginHint: (clock: string) => `${clock} nach der Uhr`,
  overHint: "Was sich zu üben lohnt, steht mit Sekunden unter „Durchspielen“.",
  back: "Zurück zu „Durchspielen“",
  found: "Die letzte Probe",
  unmarked: "Beim Gießen wurde nicht gedrückt, also gibt es nichts zu vergleichen.",
  well: (n: number, of: number, seconds: string) =>
    `${n} von ${of} Zeitpunkten sind gelungen: auf ${seconds} genau.`,
  practise: "Zu üben lohnt sich, das Wichtigste zuerst",
  all: "Alles, was daneben lag",
  late: (seconds: string) => `${seconds} zu spät`,
  early: (seconds: string) => `${seconds} zu früh`,
  missed: "nicht gedrückt",
};
