// What the fields of the hands, the baths and the questions beside may hold, in Dutch, by the checker's English.
import type { Mays } from "../words.ts";

export const benchMays: Mays = {
  "how the film is agitated": "hoe de film bewogen wordt",
  "seconds without a break once the tank is full": "seconden zonder pauze zodra de tank vol is",
  "seconds from one bout's beginning to the next one's":
    "seconden van het begin van een beurt tot het begin van de volgende",
  'seconds a bout lasts; 0 to let it stand, as many as "every" to go on throughout':
    "seconden die een beurt duurt; 0 is laten staan, zoveel als “every” is aan één stuk door",
  "seconds for one inversion and back": "seconden om één keer te kantelen, heen en terug",
  "taps after each bout": "hoe vaak je na elke beurt tikt",
  "when a bath's time begins and ends": "wanneer de tijd van een bad begint en eindigt",
  '"pour-in" or "full": the first drop in, or a full tank':
    "“pour-in” of “full”: bij de eerste druppel, of bij een volle tank",
  '"pour-out" or "empty": the pour-out\'s beginning, or an empty tank':
    "“pour-out” of “empty”: als het uitgieten begint, of bij een lege tank",
  "baths by id, each with what it shall be": "baden bij hun korte naam, elk met wat het moet zijn",
  "what this bath shall be": "wat dit bad moet zijn",
  "the bath's time": "de tijd van het bad",
  "true or false: true leaves the bath out": "true of false: true slaat het bad over",
  "the bath's temperature": "de temperatuur van het bad",
  '"drain", "waste" or "return": where the bath goes afterwards':
    "“drain”, “waste” of “return”: waar het bad daarna heen gaat",
  "what the developer shall be, besides developer itself":
    "wat de ontwikkelaar moet zijn, naast wat er onder developer zelf staat",
  "nothing: the developer's time comes from the leaflet":
    "niets, want de tijd van de ontwikkelaar komt uit de bijsluiter",
  "nothing: nothing develops without a developer":
    "niets, want zonder ontwikkelaar ontwikkelt er niets",
  "films of 80 sq in that it has served before this one":
    "films van 80 vierkante inch die er al door zijn",
  "what the fixer shall be": "wat het fixeer moet zijn",
  "the clearing time of a snip of film": "de klaringstijd van een filmsnipper",
  "how long it took to clear": "hoe lang het duurde tot hij helder was",
  "how long it took when the bath was fresh": "hoe lang het duurde toen het bad vers was",
  "2 or 3: fix for so many times the clearing time": "2 of 3: zo veel keer de klaringstijd fixeren",
  "what the wash shall be": "wat de eindspoeling moet zijn",
  "the inversions in each fill of fresh water": "hoe vaak je bij elke vulling vers water kantelt",
  "inversions in this fill": "hoe vaak je bij deze vulling kantelt",
  "what stays behind at each emptying": "wat er na elk uitgieten achterblijft",
  "running water, the volume a minute": "stromend water, het volume per minuut",
  "g/l of thiosulfate in the fixer before the wash":
    "g/l thiosulfaat in het fixeer voor het spoelen",
  "stock and two taps, to be mixed to a temperature":
    "stock en twee kranen, om op temperatuur te mengen",
  "what the mix shall have": "wat het mengsel moet worden",
  "the stock's": "die van de stock",
  "the cold tap's": "die van de koude kraan",
  "the hot tap's": "die van de warme kraan",
  "from one mark of the graduate to the next":
    "van het ene streepje van de maatcilinder tot het volgende",
  "a developer in its water bath": "een ontwikkelaar in zijn waterbad",
  "what the developer shall come to": "wat de ontwikkelaar moet worden",
  "thermometer readings with their times": "metingen met de thermometer, met hun tijden",
  "when it was read, on one clock from 0:00": "wanneer er gemeten is, op één klok vanaf 0:00",
  "what it said in the developer": "wat de thermometer in de ontwikkelaar aanwees",
  "the water bath's temperature": "de temperatuur van het waterbad",
  "the water in the water bath": "het water in het waterbad",
  'a time of day such as "19:05" or "19:05:30"': "een tijdstip zoals “19:05” of “19:05:30”",
  "what test films showed": "wat testfilms lieten zien",
  "test films": "testfilms",
  "a test film": "een testfilm",
  "how long it was developed": "hoe lang hij ontwikkeld is",
  "its mean gradient": "zijn gemiddelde gradiënt",
  "the wedge's densities, the least exposed step first":
    "de dichtheden van de wig, de minst belichte trap eerst",
  "a step's density": "de dichtheid van een trap",
  "the density of the unexposed, developed film":
    "de dichtheid van de onbelichte, ontwikkelde film",
  "the mean gradient wanted": "de gewenste gemiddelde gradiënt",
  "log10 of the exposure from one step to the next":
    "log10 van de belichting van de ene trap tot de volgende",
  "log10 of the first step's exposure in lux seconds":
    "log10 van de belichting van de eerste trap in luxseconden",
  "how the voice speaks": "hoe de stem spreekt",
  '"done": whether the film is in the closed tank already':
    '"done": of de film al in de gesloten tank zit',
  '"full", "brief" or "tones": how much is said':
    "“full”, “brief” of “tones”: hoeveel er gezegd wordt",
  "the pace of speech, 1 as recorded": "het spreektempo, 1 zoals opgenomen",
  'a clock time such as "9:30" or "1:02:00"': "een tijd zoals “9:30” of “1:02:00”",
  'a time such as "9:30", "9 min 30 s", "9.5 min" or "90 s"':
    "een tijd zoals “9:30”, “9 min 30 s”, “9,5 min” of “90 s”",
  'a temperature with its unit, such as "20 °C", "20.5 C" or "68 °F"':
    "een temperatuur met de eenheid erbij, zoals “20 °C”, “20,5 C” of “68 °F”",
  'a volume with its unit, such as "600 ml", "0.6 l" or "20 fl oz" (US)':
    "een volume met de eenheid erbij, zoals “600 ml”, “0,6 l” of “20 fl oz” (VS)",
  'a worksheet: a JSON object that begins with { "tankside": 1':
    'een werkkaart: een JSON-object dat begint met { "tankside": 1',
  "minutes, since tank.room is given: both or neither":
    "minuten, want tank.room is opgegeven: allebei of geen van beide",
  'a temperature such as { "c": 20 }, since tank.halfway is given: both or neither':
    'een temperatuur zoals { "c": 20 }, want tank.halfway is opgegeven: allebei of geen van beide',
  'a temperature such as { "c": 20 }, since tempering.bathVolume is given':
    'een temperatuur zoals { "c": 20 }, want tempering.bathVolume is opgegeven',
  "log10 of the exposure from one step to the next, such as 0.15, since densities are given":
    "log10 van de belichting van de ene trap tot de volgende, zoals 0,15, want er zijn dichtheden opgegeven",
  "its mean gradient such as 0.6, or densities":
    "zijn gemiddelde gradiënt, zoals 0,6, of dichtheden",
  "nothing beside densities, which give it": "niets naast dichtheden, want daaruit volgt hij al",
  "the density of the unexposed, developed film, such as 0.3, since densities are given":
    "de dichtheid van de onbelichte, ontwikkelde film, zoals 0,3, want er zijn dichtheden opgegeven",
  'a temperature and a time, such as "68 °F 10:00", "20 °C 11½ min" or "20; 9:30; EI 400"':
    "een temperatuur en een tijd, zoals “68 °F 10:00”, “20 °C 11½ min” of “20; 9:30; EI 400”",
};
