// The warnings about time, mix, hands, baths and voice, in English.
import type { WarningWords } from "../warning-words.ts";

const than = (warmer: boolean) => (warmer ? "warmer" : "colder");

export const warnings: WarningWords = {
  extrapolated: ({ by, row, bath, warmer, tooFar }) =>
    `The developer is ${by} ${than(warmer)} than the leaflet's nearest row (${row}), ${
      tooFar
        ? "so far from the rows that the time cannot be trusted"
        : "so the time follows a slope that is not known there"
    }. Bring it nearer to ${row}, or add the leaflet's row for ${bath}.`,
  driftExtrapolated: ({ end, by, row, bath, warmer }) =>
    `The tank drifts to ${end} by the end, ${by} ${than(warmer)} than the leaflet's nearest row (${row}), so the last part of the time follows a slope that is not known there. Stand the tank in water at ${bath}.`,
  readingExtrapolated: ({ reading, by, row, warmer }) =>
    `In the tank it was ${reading}, ${by} ${than(warmer)} than the leaflet's nearest row (${row}), so that part of the time follows a slope that is not known there.`,
  tooCold: ({ bath }) =>
    `The developer is at ${bath}. Below 15.6 °C (60 °F) a developer with hydroquinone rapidly loses power, and more time does not make up for it. Warm the bath.`,
  tooWarm: ({ bath }) =>
    `The developer is at ${bath}. Above 26.7 °C (80 °F) the gelatin softens and the time is too short to keep well. Cool the bath.`,
  shortDevelopment: ({ time, least }) =>
    `Development takes ${time}. In less than ${least} the parts wetted first come out visibly denser. A weaker dilution or a cooler bath takes longer.`,
  leastAt: ({ least, temperature }) => `By this leaflet it takes ${least} at ${temperature}.`,
  rowOutOfLine: ({ time, temperature, expected }) =>
    `One row of the leaflet is out of line with the others: ${time} at ${temperature}, where they point to about ${expected}. Look at it again: a digit is soon misread.`,
  soughtNowhere: ({ time }) =>
    `No temperature can be named for ${time}: the leaflet's times do not fall all the way as it gets warmer.`,
  soughtBeyond: ({ time, temperature, by }) =>
    `${time} would come at ${temperature}, but that is ${by} beyond the leaflet's rows, where its slope is not known.`,
  readingsPastEnd: ({ done, read }) =>
    `By the readings in the tank the development was done at ${done}, before the reading at ${read}. A little over does little harm; pour out now and note it.`,
  longerThanADay: ({ hours }) =>
    `Development works out at ${hours} and is cut to 24:00:00, which is not what was worked out. Look for a slip in the leaflet's rows, the temperatures or the ratings.`,
  hours: ({ count }) => `${count} hours`,
  moreHours: ({ count }) => `more than ${count} hours`,
  mixedRatings: ({ films, first }) =>
    `The films do not share one rating: ${films}. Each needs a time of its own, and a time between them is right for none; this plan is for "${first}" alone. Develop the others by themselves.`,
  ratedFilm: ({ film, rating }) => `"${film}" at ${rating}`,
  ratedFilmOfSpeed: ({ film, rating, box }) => `"${film}" at ${rating} (box speed ${box})`,
  unratedFilm: ({ film }) => `"${film}" with no speed given`,
  leafletBackwards: ({ warmer, colder }) =>
    `The leaflet's times get shorter as it gets colder: ${warmer}, but ${colder}. A colder bath works more slowly, so one of the two was misread. Correct that row.`,
  stockShort: ({ tank, dilution, stock, needed, films, wanted, served }) =>
    `${tank} of ${dilution} holds ${stock} of stock, but ${needed} is needed for ${films} of 80 sq in: the developer would be used up before the film is done. A tank volume of ${wanted} would do; ${tank} serves ${served} of 80 sq in.`,
  bathTooShort: ({ bath, time, pouring, least }) =>
    `${bath}: in ${time} the pour-out would begin before the tank is full, since pouring takes ${pouring} of that time. Give it ${least} or more, pour faster, or count the time from a full tank.`,
  temperatureStep: ({ bath, temperature, by, most, warmer }) =>
    `${bath} is at ${temperature}, ${by} ${than(warmer)} than the developer. A step of more than ${most} can wrinkle the gelatin. Bring the baths closer together.`,
  languageUnavailable: ({ language }) =>
    `There is no voice for the language "${language}" yet, so the voice speaks English.`,
  fixerSpent: ({ times }) =>
    `The fixer takes ${times} times as long to clear as when it was fresh; at twice it is spent, and film fixed in it does not last. Hand it in for its silver and mix fresh.`,
  clearedQuicker:
    "The snip cleared quicker than in the fresh fixer, which cannot be. Was it warmer, another film, or one of the two times misread?",
  fixerShort: ({ given, asked, twice }) =>
    `The fixer is given ${given}, but ${twice ? "twice" : "three times"} the clearing time is ${asked}. Give it at least that, or leave its time empty.`,
  washShort: ({ left, limit, cure }) =>
    `By plain dilution this wash leaves ${left} of thiosulfate on the film, more than the ${limit} that may stay. ${cure}`,
  moreChanges: ({ count }) => `It takes ${count} changes of water.`,
  moreRunning: ({ time }) => `Let the water run for ${time}.`,
  pastCapacity: ({ bath, before, now, all, developer }) =>
    `${bath}: ${before} before and ${now} now are more than the ${all} of 80 sq in that it serves. ${
      developer
        ? "It would be used up before the film is done. Take fresh, or fewer films."
        : "A count is no proof: test it on a snip of film, and mix fresh if it fails."
    }`,
  replenishedTwice:
    "More time for each film before is asked for, and replenisher too. Replenished solution keeps its time: one of the two is enough.",
  unevenHands: ({ what, spread, median }) =>
    `${what} took times that are ${spread} apart about ${median}. Practise it with water: sameness matters more than speed.`,
  notAsMeasured: ({ what, used, median }) =>
    `${what} is reckoned at ${used}, though your own hands took ${median}.`,
};
