// What the fields of the films, the developer and the tank may hold, in German, by the checker's English.
import type { Mays } from "../words.ts";

export const filmMays: Mays = {
  "a worksheet": "ein Arbeitsblatt",
  "1, the version of worksheet that this is": "1, die Fassung des Arbeitsblatts",
  "what you call this development": "wie diese Entwicklung heißen soll",
  'a language tag (BCP 47) such as "en" or "de-AT"':
    "ein Sprachkürzel (BCP 47) wie „en“ oder „de-AT“",
  '"bw-negative": the process': "„bw-negative“: der Prozess",
  "the films in the tank": "die Filme in der Dose",
  "a film, or several alike": "ein Film, oder mehrere gleiche",
  "what you call the film": "wie der Film heißt",
  'a size such as "135-36", "120", "220", "4x5in" or "9x12cm"':
    "ein Format wie „135-36“, „120“, „220“, „4x5in“ oder „9x12cm“",
  "how many of them": "wie viele davon",
  "the ISO speed printed on the box": "die ISO-Empfindlichkeit auf der Packung",
  "the speed it was metered at, if not the box speed":
    "worauf er belichtet wurde, wenn nicht auf die Nennempfindlichkeit",
  "the developer": "der Entwickler",
  "what you call the developer": "wie der Entwickler heißt",
  '"stock", or parts of stock plus parts of water such as "1+3"':
    "„stock“ für unverdünnt, oder Teile Vorratslösung plus Teile Wasser wie „1+3“",
  "times with their temperatures, read off the leaflet":
    "Zeiten mit ihren Temperaturen, aus dem Datenblatt",
  "a time that the leaflet gives": "eine Zeit aus dem Datenblatt",
  "the row's temperature": "die Temperatur der Zeile",
  "degrees Celsius": "Grad Celsius",
  "degrees Fahrenheit": "Grad Fahrenheit",
  "the row's time": "die Zeit der Zeile",
  "the rating that the leaflet gives this row for":
    "der Belichtungsindex, für den das Datenblatt diese Zeile angibt",
  "measured in the mixed bath, now": "jetzt im fertigen Bad gemessen",
  "a number above 0, up to 1: by how much ln(time) falls for each °C":
    "eine Zahl über 0, höchstens 1: um wie viel ln(Zeit) je °C fällt",
  '"pull" and "push", the fraction of the time for a stop':
    "„pull“ und „push“, der Anteil der Zeit je Blende",
  "the fraction taken off for a stop over": "der Anteil, der je Blende mehr Licht abgeht",
  "the fraction added for a stop under": "der Anteil, der je Blende weniger Licht dazukommt",
  "the least stock that 80 sq in of film needs":
    "die Vorratslösung, die 80 Quadratzoll Film mindestens brauchen",
  millilitres: "Milliliter",
  "US fluid ounces": "US-Flüssigunzen",
  "films of 80 sq in that this solution has developed already":
    "Filme zu 80 Quadratzoll, die diese Lösung schon entwickelt hat",
  "the fraction of the time added for each of those films":
    "der Anteil der Zeit, der für jeden dieser Filme dazukommt",
  "a time for which the temperature is asked": "eine Zeit, zu der die Temperatur gesucht wird",
  "thermometer readings taken while it develops":
    "Thermometerwerte, während des Entwickelns gemessen",
  "a thermometer reading": "ein Thermometerwert",
  "when it was read, on the developer's own clock":
    "wann gemessen wurde, auf der Uhr des Entwicklers",
  "what it said in the tank": "was das Thermometer in der Dose zeigte",
  "films of 80 sq in that a litre serves in all":
    "Filme zu 80 Quadratzoll, für die ein Liter insgesamt reicht",
  "the bottle on the shelf that it is poured from":
    "die Flasche im Regal, aus der es eingegossen wird",
  "how much of it there is, if not the tank's volume":
    "wie viel davon da ist, wenn nicht so viel, wie die Dose fasst",
  "replenisher due for each film of 80 sq in": "Regenerator für jeden Film zu 80 Quadratzoll",
  "the tank": "die Dose",
  "what you call the tank": "wie die Dose heißen soll",
  '"inversion", "twist", "rotary", "tray" or "hanger": how it is agitated':
    "„inversion“, „twist“, „rotary“, „tray“ oder „hanger“: wie bewegt wird",
  "what it takes to cover the film": "wie viel den Film bedeckt",
  "seconds to fill it": "Sekunden zum Einfüllen",
  "seconds to empty it": "Sekunden zum Ausgießen",
  'a clock time such as "3:00", from 0:00 up to 30:00: how long to look for light in the dark':
    "eine Zeit wie „3:00“, von 0:00 bis 30:00: wie lange im Dunkeln nach Licht gesucht wird",
  "seconds from empty to the next pour-in": "Sekunden von leer bis zum nächsten Einfüllen",
  "factor on the development time for this method":
    "Faktor auf die Entwicklungszeit bei diesem Verfahren",
  "what the tank drifts toward": "worauf die Dose zuwandert",
  "minutes in which it goes half-way there":
    "Minuten, in denen sie den halben Weg dorthin zurücklegt",
  "your own times with this tank, as measured": "die eigenen Zeiten mit dieser Dose, wie gemessen",
  "seconds, one entry a try: to fill it": "Sekunden, ein Eintrag je Versuch: zum Einfüllen",
  seconds: "Sekunden",
  "seconds, one entry a try: to empty it": "Sekunden, ein Eintrag je Versuch: zum Ausgießen",
  "seconds, one entry a try: for one inversion and back":
    "Sekunden, ein Eintrag je Versuch: für einmal Kippen, hin und zurück",
};
