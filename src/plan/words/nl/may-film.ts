// What the fields of the films, the developer and the tank may hold, in Dutch, by the checker's English.
import type { Mays } from "../words.ts";

export const filmMays: Mays = {
  "a worksheet": "een werkkaart",
  "1, the version of worksheet that this is": "1, de versie van de werkkaart",
  "what you call this development": "hoe je deze ontwikkeling noemt",
  'a language tag (BCP 47) such as "en" or "de-AT"': "een taalcode (BCP 47) zoals “en” of “de-AT”",
  '"bw-negative": the process': "“bw-negative”: het proces",
  "the films in the tank": "de films in de tank",
  "a film, or several alike": "een film, of een aantal gelijke",
  "what you call the film": "hoe je de film noemt",
  'a size such as "135-36", "120", "220", "4x5in" or "9x12cm"':
    "een formaat zoals “135-36”, “120”, “220”, “4x5in” of “9x12cm”",
  "how many of them": "hoeveel het er zijn",
  "the ISO speed printed on the box": "de ISO die op het doosje staat",
  "the speed it was metered at, if not the box speed":
    "waarop hij belicht is, als dat niet de ISO op het doosje is",
  "the developer": "de ontwikkelaar",
  "what you call the developer": "hoe je de ontwikkelaar noemt",
  '"stock", or parts of stock plus parts of water such as "1+3"':
    "“stock” voor onverdund, of delen stock plus delen water zoals “1+3”",
  "times with their temperatures, read off the leaflet":
    "tijden met hun temperaturen, uit de bijsluiter",
  "a time that the leaflet gives": "een tijd uit de bijsluiter",
  "the row's temperature": "de temperatuur van de rij",
  "degrees Celsius": "graden Celsius",
  "degrees Fahrenheit": "graden Fahrenheit",
  "the row's time": "de tijd van de rij",
  "the rating that the leaflet gives this row for":
    "de belichtingsindex waarvoor de bijsluiter deze rij geeft",
  "measured in the mixed bath, now": "nu gemeten in het gemengde bad",
  "a number above 0, up to 1: by how much ln(time) falls for each °C":
    "een getal boven 0, tot en met 1: hoeveel ln(tijd) per °C daalt",
  '"pull" and "push", the fraction of the time for a stop':
    "“pull” en “push”, het deel van de tijd per stop",
  "the fraction taken off for a stop over": "het deel dat er per stop overbelichting af gaat",
  "the fraction added for a stop under": "het deel dat er per stop onderbelichting bij komt",
  "the least stock that 80 sq in of film needs":
    "de minste stock die 80 vierkante inch film nodig heeft",
  millilitres: "milliliter",
  "US fluid ounces": "Amerikaanse fluid ounces",
  "films of 80 sq in that this solution has developed already":
    "films van 80 vierkante inch die deze oplossing al heeft ontwikkeld",
  "the fraction of the time added for each of those films":
    "het deel van de tijd dat er voor elk van die films bij komt",
  "a time for which the temperature is asked": "een tijd waarvoor de temperatuur gezocht wordt",
  "thermometer readings taken while it develops":
    "metingen met de thermometer tijdens het ontwikkelen",
  "a thermometer reading": "een meting met de thermometer",
  "when it was read, on the developer's own clock":
    "wanneer er gemeten is, op de klok van de ontwikkelaar zelf",
  "what it said in the tank": "wat de thermometer in de tank aanwees",
  "films of 80 sq in that a litre serves in all":
    "films van 80 vierkante inch waar een liter in totaal goed voor is",
  "the bottle on the shelf that it is poured from": "de fles op de plank waaruit het wordt gegoten",
  "how much of it there is, if not the tank's volume":
    "hoeveel er is, als dat niet de inhoud van de tank is",
  "replenisher due for each film of 80 sq in": "regenerator per film van 80 vierkante inch",
  "the tank": "de tank",
  "what you call the tank": "hoe je de tank noemt",
  '"inversion", "twist", "rotary", "tray" or "hanger": how it is agitated':
    "“inversion”, “twist”, “rotary”, “tray” of “hanger”: hoe er bewogen wordt",
  "what it takes to cover the film": "hoeveel de film bedekt",
  "seconds to fill it": "seconden om in te gieten",
  "seconds to empty it": "seconden om uit te gieten",
  'a clock time such as "3:00", from 0:00 up to 30:00: how long to look for light in the dark':
    "een tijd zoals “3:00”, van 0:00 tot 30:00: hoe lang in het donker naar licht wordt gezocht",
  "seconds from empty to the next pour-in": "seconden van leeg tot het volgende ingieten",
  "factor on the development time for this method": "factor op de ontwikkeltijd bij deze methode",
  "what the tank drifts toward": "waar de tank naartoe gaat",
  "minutes in which it goes half-way there": "minuten waarin hij de helft van die weg aflegt",
  "your own times with this tank, as measured": "je eigen tijden met deze tank, zoals gemeten",
  "seconds, one entry a try: to fill it": "seconden, één per poging: om in te gieten",
  seconds: "seconden",
  "seconds, one entry a try: to empty it": "seconden, één per poging: om uit te gieten",
  "seconds, one entry a try: for one inversion and back":
    "seconden, één per poging: om één keer te kantelen, heen en terug",
};
