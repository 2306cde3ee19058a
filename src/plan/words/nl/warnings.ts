// The warnings about time, mix, hands, baths and voice, in Dutch.
import type { WarningWords } from "../warning-words.ts";

const than = (warmer: boolean) => (warmer ? "warmer" : "kouder");

export const warnings: WarningWords = {
  extrapolated: ({ by, row, bath, warmer, tooFar }) =>
    `De ontwikkelaar is ${by} ${than(warmer)} dan de dichtstbijzijnde rij van de bijsluiter (${row}), ${
      tooFar
        ? "zo ver van de rijen dat de tijd niet te vertrouwen is"
        : "en hoe de tijd daar verandert, is niet bekend"
    }. Breng hem dichter bij ${row}, of vul de rij uit de bijsluiter voor ${bath} in.`,
  driftExtrapolated: ({ end, by, row, bath, warmer }) =>
    `De tank is aan het eind op ${end}, ${by} ${than(warmer)} dan de dichtstbijzijnde rij van de bijsluiter (${row}). Hoe de tijd daar verandert, is niet bekend, en dat treft het laatste deel. Zet de tank in water van ${bath}.`,
  readingExtrapolated: ({ reading, by, row, warmer }) =>
    `In de tank was het ${reading}, ${by} ${than(warmer)} dan de dichtstbijzijnde rij van de bijsluiter (${row}). Hoe de tijd daar verandert, is niet bekend, en dat treft dit deel.`,
  tooCold: ({ bath }) =>
    `De ontwikkelaar is ${bath}. Onder 15,6 °C (60 °F) verliest een ontwikkelaar met hydrochinon snel zijn kracht, en meer tijd maakt dat niet goed. Verwarm het bad.`,
  tooWarm: ({ bath }) =>
    `De ontwikkelaar is ${bath}. Boven 26,7 °C (80 °F) wordt de gelatine zacht en is de tijd te kort om goed aan te houden. Koel het bad.`,
  shortDevelopment: ({ time, least }) =>
    `De ontwikkeling duurt ${time}. Onder ${least} worden de delen die het eerst nat worden zichtbaar dichter. Sterker verdund of in een koeler bad duurt het langer.`,
  leastAt: ({ least, temperature }) =>
    `Volgens deze bijsluiter wordt het ${least} bij ${temperature}.`,
  rowOutOfLine: ({ time, temperature, expected }) =>
    `Eén rij van de bijsluiter wijkt af van de andere: ${time} bij ${temperature}, terwijl die op ongeveer ${expected} wijzen. Kijk nog eens: een cijfer is zo verkeerd gelezen.`,
  soughtNowhere: ({ time }) =>
    `Voor ${time} is geen temperatuur te noemen: de tijden van de bijsluiter worden niet overal korter naarmate het warmer wordt.`,
  soughtBeyond: ({ time, temperature, by }) =>
    `${time} zou uitkomen bij ${temperature}, maar dat ligt ${by} buiten de rijen van de bijsluiter. Hoe de tijd daar verandert, is niet bekend.`,
  readingsPastEnd: ({ done, read }) =>
    `Volgens de metingen in de tank was de ontwikkeling klaar op ${done}, nog voor de meting op ${read}. Iets te lang doet weinig kwaad; giet nu uit en noteer het.`,
  longerThanADay: ({ hours }) =>
    `Voor de ontwikkeling komt er ${hours} uit; dat is afgekapt op 24:00:00, en dat is niet de uitgerekende tijd. Zoek naar een vergissing in de rijen van de bijsluiter, de temperaturen of de belichting.`,
  /** "uur" has no plural behind a number. */
  hours: ({ count }) => `${count} uur`,
  moreHours: ({ count }) => `meer dan ${count} uur`,
  mixedRatings: ({ films, first }) =>
    `De films zijn niet op dezelfde waarde belicht: ${films}. Elk heeft zijn eigen tijd nodig, en een tijd ertussenin klopt voor geen van alle; dit plan is alleen voor “${first}”. Ontwikkel de andere apart.`,
  ratedFilm: ({ film, rating }) => `“${film}” op ${rating}`,
  ratedFilmOfSpeed: ({ film, rating, box }) => `“${film}” op ${rating} (ISO ${box} op het doosje)`,
  unratedFilm: ({ film }) => `“${film}” zonder opgave`,
  leafletBackwards: ({ warmer, colder }) =>
    `De tijden van de bijsluiter worden korter naarmate het kouder wordt: ${warmer}, maar ${colder}. Een kouder bad werkt langzamer, dus een van de twee is verkeerd gelezen. Verbeter die rij.`,
  stockShort: ({ tank, dilution, stock, needed, films, wanted, served }) =>
    `In ${tank} (${dilution}) zit ${stock} stock, maar er is ${needed} nodig voor ${films} van 80 vierkante inch: de ontwikkelaar zou uitgewerkt zijn voordat de film klaar is. Met ${wanted} in de tank gaat het wel; ${tank} is goed voor ${served} van 80 vierkante inch.`,
  bathTooShort: ({ bath, time, pouring, least }) =>
    `${bath}: bij ${time} zou je moeten uitgieten voordat de tank vol is, want het gieten neemt ${pouring} van die tijd. Geef dat bad ${least} of meer, giet sneller, of tel de tijd vanaf een volle tank.`,
  temperatureStep: ({ bath, temperature, by, most, warmer }) =>
    `${bath}: ${temperature}, dat is ${by} ${than(warmer)} dan de ontwikkelaar. Door een sprong van meer dan ${most} kan de gelatine rimpelen. Breng de baden dichter bij elkaar.`,
  languageUnavailable: ({ language }) =>
    `Voor de taal “${language}” is er nog geen stem, dus de stem spreekt Engels.`,
  fixerSpent: ({ times }) =>
    `Het fixeer doet er ${times} keer zo lang over als toen het vers was om de film helder te maken; bij twee keer is het uitgewerkt, en film die erin gefixeerd is blijft niet goed. Lever het in voor het zilver en maak vers aan.`,
  clearedQuicker:
    "De filmsnipper werd sneller helder dan in vers fixeer, en dat kan niet. Was het warmer, was het een andere film, of is een van de twee tijden verkeerd gelezen?",
  fixerShort: ({ given, asked, twice }) =>
    `Het fixeer krijgt ${given}, maar ${twice ? "twee keer" : "drie keer"} de klaringstijd is ${asked}. Geef het minstens zoveel, of laat de tijd leeg.`,
  washShort: ({ left, limit, cure }) =>
    `Als je alleen met verdunning rekent, laat deze spoeling ${left} thiosulfaat op de film achter, meer dan de ${limit} die mag blijven. ${cure}`,
  moreChanges: ({ count }) =>
    count === 1 ? "Er is 1 waterwisseling nodig." : `Er zijn ${count} waterwisselingen nodig.`,
  moreRunning: ({ time }) => `Laat het water ${time} stromen.`,
  pastCapacity: ({ bath, before, now, all, developer }) =>
    `${bath}: ${before} eerder en ${now} nu is meer dan de ${all} van 80 vierkante inch waar het bad goed voor is. ${
      developer
        ? "De ontwikkelaar zou uitgewerkt zijn voordat de film klaar is. Neem verse, of minder films."
        : "Tellen bewijst niets: probeer het uit op een filmsnipper, en maak vers aan als het niet voldoet."
    }`,
  replenishedTwice:
    "Voor elke eerdere film wordt meer tijd gevraagd, en ook regenerator. Met regenerator blijft de tijd gelijk: een van de twee is genoeg.",
  unevenHands: ({ what, spread, median }) =>
    `${what}: de tijden liggen ${spread} uit elkaar, rond ${median}. Oefen het met water: gelijkmatig telt meer dan snel.`,
  notAsMeasured: ({ what, used, median }) =>
    `${what} is gerekend op ${used}, maar je eigen handen deden er ${median} over.`,
};
