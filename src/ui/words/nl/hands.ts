// The words for what the hands use beside the one press, in Dutch: a thermometer, a pedal, a knock.

export const reading = {
  name: "Thermometer",
  typed: "Temperatuur in de tank",
  taken: (temperature: string) => `${temperature} overgenomen.`,
  range: (least: string, most: string) =>
    `Een ontwikkelaar in de tank heeft ${least} tot ${most}. Er is niets veranderd.`,
  connect: "Een thermometer verbinden",
  hint: "Een met bluetooth verschuift het einde dan vanzelf. Nodig is het nooit.",
  connecting: "Er wordt een thermometer gezocht…",
  disconnect: "Verbreken",
  nameless: "Thermometer",
  on: (name: string, temperature: string) => `${name}: ${temperature}.`,
  nothingYet: (name: string) => `${name}: verbonden, nog geen meting.`,
  out: (name: string, temperature: string) =>
    `${name}: ${temperature}. Hij lijkt niet in de tank te zitten, dus dit telt niet mee.`,
  lost: (name: string) => `${name}: verbinding verloren, wordt gezocht.`,
  last: (temperature: string) => `Laatste meting: ${temperature}.`,
  refused: {
    none: "Er is geen thermometer gekozen. Zet hem aan, houd hem dichtbij en druk opnieuw.",
    denied:
      "Bluetooth mag hier niet gebruikt worden. Sta het toe in de instellingen en druk opnieuw.",
    unreachable:
      "De thermometer gaf geen antwoord. Breng hem dichterbij of maak hem los van een ander apparaat en druk opnieuw.",
    unfit: "Deze geeft geen temperatuur die hier te lezen is.",
    unable: "Deze browser kan op deze pagina geen bluetooth gebruiken.",
  },
};

export const pedal = {
  name: "Bladomslaander, pedaal of andere knop",
  hint: "Alles wat toetsen naar dit apparaat stuurt, kan in een sessie drukken. Het wordt geleerd door erop te drukken.",
  learn: "Er een leren",
  capture: "Druk er nu op: één keer kort, dan nog een keer een seconde lang. Escape breekt het af.",
  again: "Ontvangen. Nu nog een keer, een seconde lang.",
  calledOff: "Er is niets geleerd.",
  nothing: "Er kwam geen toets binnen. Staat de knop aan, en is hij gekoppeld met dit apparaat?",
  learnt: "Geleerd.",
  notKept: "Deze browser kan het niet bewaren: het geldt tot de pagina wordt gesloten.",
  known: "Tot nu toe geleerd",
  holds: (key: string) => `${key}: om te drukken en vast te houden`,
  taps: (key: string) => `${key}: om te drukken, niet om vast te houden`,
  keyboard:
    "In een sessie drukken deze toetsen waar ze ook vandaan komen, ook van een toetsenbord.",
  refused: {
    moves: "Tab en Escape blijven wat ze zijn: wie zich met toetsen verplaatst, heeft ze nodig.",
    modifier: "Deze toets betekent alleen niets, dus kan hij niet drukken.",
    nameless: "Deze toets heeft geen naam waaraan hij te herkennen is.",
  },
  try: "Proberen",
  trying: "Druk zoals in een sessie. Escape beëindigt het.",
  meanings: {
    once: "Eén keer: gaat verder, of zegt waar we zijn.",
    twice: "Twee keer: zegt waar we zijn.",
    thrice: "Drie keer: laat de stem zwijgen, of weer spreken.",
    held: "Vastgehouden: neemt terug, of biedt aan wat er nog meer kan.",
  },
  tried: "De proef is klaar.",
  forget: (key: string) => `${key} vergeten`,
  forgotten: "Vergeten.",
  keys: { space: "Spatie", enter: "Enter", pageUp: "Page Up", pageDown: "Page Down" },
};

export const knocks = {
  hear: "Luisteren naar kloppen op de tafel (microfoon)",
  hint: "Wat hij hoort, wordt niet bewaard en verlaat dit apparaat nooit. Nodig is het nooit: een druk doet hetzelfde.",
};
