// What the fields of the hands, the baths and the questions beside may hold, in German, by the checker's English.
import type { Mays } from "../words.ts";

export const benchMays: Mays = {
  "how the film is agitated": "wie der Film bewegt wird",
  "seconds without a break once the tank is full": "Sekunden ohne Pause, sobald die Dose voll ist",
  "seconds from one bout's beginning to the next one's":
    "Sekunden vom Beginn einer Bewegung bis zum Beginn der nächsten",
  'seconds a bout lasts; 0 to let it stand, as many as "every" to go on throughout':
    "Sekunden, die eine Bewegung dauert; 0 heißt stehen lassen, so viel wie „every“ heißt durchgehend",
  "seconds for one inversion and back": "Sekunden für einmal Kippen, hin und zurück",
  "taps after each bout": "wie oft nach jeder Bewegung aufgeklopft wird",
  "when a bath's time begins and ends": "wann die Zeit eines Bades beginnt und endet",
  '"pour-in" or "full": the first drop in, or a full tank':
    "„pour-in“ oder „full“: beim ersten Tropfen, oder wenn die Dose voll ist",
  '"pour-out" or "empty": the pour-out\'s beginning, or an empty tank':
    "„pour-out“ oder „empty“: wenn das Ausgießen beginnt, oder wenn die Dose leer ist",
  "baths by id, each with what it shall be":
    "Bäder nach ihrem Kürzel, jedes mit dem, was es sein soll",
  "what this bath shall be": "was dieses Bad sein soll",
  "the bath's time": "die Zeit des Bades",
  "true or false: true leaves the bath out": "true oder false: true lässt das Bad aus",
  "the bath's temperature": "die Temperatur des Bades",
  '"drain", "waste" or "return": where the bath goes afterwards':
    "„drain“, „waste“ oder „return“: wohin das Bad danach kommt",
  "what the developer shall be, besides developer itself":
    "was der Entwickler sein soll, außer dem, was unter developer selbst steht",
  "nothing: the developer's time comes from the leaflet":
    "nichts, denn die Zeit des Entwicklers kommt aus dem Datenblatt",
  "nothing: nothing develops without a developer": "nichts, denn ohne Entwickler entwickelt nichts",
  "films of 80 sq in that it has served before this one":
    "Filme zu 80 Quadratzoll, die schon durch dieses Bad gegangen sind",
  "what the fixer shall be": "was das Fixierbad sein soll",
  "the clearing time of a snip of film": "die Klärzeit eines Filmschnipsels",
  "how long it took to clear": "wie lange er zum Klären brauchte",
  "how long it took when the bath was fresh": "wie lange er im frischen Bad brauchte",
  "2 or 3: fix for so many times the clearing time": "2 oder 3: so viele Klärzeiten lang fixieren",
  "what the wash shall be": "was die Wässerung sein soll",
  "the inversions in each fill of fresh water":
    "wie oft in jeder Füllung frischen Wassers gekippt wird",
  "inversions in this fill": "wie oft in dieser Füllung gekippt wird",
  "what stays behind at each emptying": "was nach jedem Ausgießen zurückbleibt",
  "running water, the volume a minute": "fließendes Wasser, das Volumen je Minute",
  "g/l of thiosulfate in the fixer before the wash":
    "g/l Thiosulfat im Fixierbad vor der Wässerung",
  "stock and two taps, to be mixed to a temperature":
    "Vorratslösung und zwei Wasserhähne, auf Temperatur zu mischen",
  "what the mix shall have": "was der Ansatz haben soll",
  "the stock's": "die der Vorratslösung",
  "the cold tap's": "die des kalten Wasserhahns",
  "the hot tap's": "die des heißen Wasserhahns",
  "from one mark of the graduate to the next": "von einem Strich des Messzylinders zum nächsten",
  "a developer in its water bath": "ein Entwickler in seinem Wasserbad",
  "what the developer shall come to": "worauf der Entwickler kommen soll",
  "thermometer readings with their times": "Thermometerwerte mit ihren Zeiten",
  "when it was read, on one clock from 0:00": "wann gemessen wurde, auf einer einzigen Uhr ab 0:00",
  "what it said in the developer": "was das Thermometer im Entwickler zeigte",
  "the water bath's temperature": "die Temperatur des Wasserbads",
  "the water in the water bath": "das Wasser im Wasserbad",
  'a time of day such as "19:05" or "19:05:30"': "eine Uhrzeit wie „19:05“ oder „19:05:30“",
  "what test films showed": "was Testfilme gezeigt haben",
  "test films": "Testfilme",
  "a test film": "ein Testfilm",
  "how long it was developed": "wie lange er entwickelt wurde",
  "its mean gradient": "sein mittlerer Gradient",
  "the wedge's densities, the least exposed step first":
    "die Dichten des Keils, die am wenigsten belichtete Stufe zuerst",
  "a step's density": "die Dichte einer Stufe",
  "the density of the unexposed, developed film":
    "die Dichte des unbelichteten, entwickelten Films",
  "the mean gradient wanted": "der gewünschte mittlere Gradient",
  "log10 of the exposure from one step to the next":
    "log10 der Belichtung von einer Stufe zur nächsten",
  "log10 of the first step's exposure in lux seconds":
    "log10 der Belichtung der ersten Stufe in Luxsekunden",
  "how the voice speaks": "wie die Stimme spricht",
  '"done": whether the film is in the closed tank already':
    '"done": ob der Film schon in der geschlossenen Dose ist',
  '"full", "brief" or "tones": how much is said':
    "„full“, „brief“ oder „tones“: wie viel gesagt wird",
  "the pace of speech, 1 as recorded": "das Sprechtempo, 1 wie aufgenommen",
  'a clock time such as "9:30" or "1:02:00"': "eine Zeit wie „9:30“ oder „1:02:00“",
  'a time such as "9:30", "9 min 30 s", "9.5 min" or "90 s"':
    "eine Zeit wie „9:30“, „9 min 30 s“, „9,5 min“ oder „90 s“",
  'a temperature with its unit, such as "20 °C", "20.5 C" or "68 °F"':
    "eine Temperatur mit Einheit, etwa „20 °C“, „20,5 C“ oder „68 °F“",
  'a volume with its unit, such as "600 ml", "0.6 l" or "20 fl oz" (US)':
    "ein Volumen mit Einheit, etwa „600 ml“, „0,6 l“ oder „20 fl oz“ (US)",
  'a worksheet: a JSON object that begins with { "tankside": 1':
    'ein Arbeitsblatt: ein JSON-Objekt, das mit { "tankside": 1 beginnt',
  "minutes, since tank.room is given: both or neither":
    "Minuten, weil tank.room angegeben ist: beides oder keines",
  'a temperature such as { "c": 20 }, since tank.halfway is given: both or neither':
    'eine Temperatur wie { "c": 20 }, weil tank.halfway angegeben ist: beides oder keines',
  'a temperature such as { "c": 20 }, since tempering.bathVolume is given':
    'eine Temperatur wie { "c": 20 }, weil tempering.bathVolume angegeben ist',
  "log10 of the exposure from one step to the next, such as 0.15, since densities are given":
    "log10 der Belichtung von einer Stufe zur nächsten, etwa 0,15, weil Dichten angegeben sind",
  "its mean gradient such as 0.6, or densities": "sein mittlerer Gradient, etwa 0,6, oder Dichten",
  "nothing beside densities, which give it": "nichts neben den Dichten, die ihn ergeben",
  "the density of the unexposed, developed film, such as 0.3, since densities are given":
    "die Dichte des unbelichteten, entwickelten Films, etwa 0,3, weil Dichten angegeben sind",
  'a temperature and a time, such as "68 °F 10:00", "20 °C 11½ min" or "20; 9:30; EI 400"':
    "eine Temperatur und eine Zeit, etwa „68 °F 10:00“, „20 °C 11½ min“ oder „20; 9:30; EI 400“",
};
