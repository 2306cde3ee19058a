import { expect, test } from "vitest";
import * as messages from "../../src/plan/messages.ts";
import { english } from "../../src/plan/words/english.ts";

const row = (c: number, time: string) => ({ temperature: { c }, time });

const short = {
  tank: { ml: 500 },
  dilution: "1+3",
  stock: 125,
  needed: 225,
  wanted: 900,
  films: 3,
  served: 1,
};

/** Every message, as a person meets it. */
const texts = [
  [
    messages.extrapolated(english, { bath: { c: 22.5 }, nearest: 21, degrees: 1.5 }, false),
    "extrapolated caution: The developer is 1.5 °C warmer than the leaflet's nearest row (21 °C), so the time follows a slope that is not known there. Bring it nearer to 21 °C, or add the leaflet's row for 22.5 °C.",
  ],
  [
    messages.extrapolated(english, { bath: { f: 59 }, nearest: 20, degrees: -5 }, true),
    "extrapolated stop: The developer is 9 °F colder than the leaflet's nearest row (68 °F), so far from the rows that the time cannot be trusted. Bring it nearer to 68 °F, or add the leaflet's row for 59 °F.",
  ],
  [
    messages.driftExtrapolated(english, { bath: { c: 20 }, nearest: 18, degrees: -2.5 }, 15.5),
    "drift-extrapolated caution: The tank drifts to 15.5 °C by the end, 2.5 °C colder than the leaflet's nearest row (18 °C), so the last part of the time follows a slope that is not known there. Stand the tank in water at 20 °C.",
  ],
  [
    messages.temperatureRange(english, { c: 15 }, "below"),
    "temperature-range caution: The developer is at 15 °C. Below 15.6 °C (60 °F) a developer with hydroquinone rapidly loses power, and more time does not make up for it. Warm the bath.",
  ],
  [
    messages.temperatureRange(english, { f: 82 }, "above"),
    "temperature-range caution: The developer is at 82 °F. Above 26.7 °C (80 °F) the gelatin softens and the time is too short to keep well. Cool the bath.",
  ],
  [
    messages.shortDevelopment(english, 250, null),
    "short-development caution: Development takes 4:10. In less than 5:00 the parts wetted first come out visibly denser. A weaker dilution or a cooler bath takes longer.",
  ],
  [
    messages.shortDevelopment(english, 250, "18.2 °C"),
    "short-development caution: Development takes 4:10. In less than 5:00 the parts wetted first come out visibly denser. A weaker dilution or a cooler bath takes longer. By this leaflet it takes 5:00 at 18.2 °C.",
  ],
  [
    messages.rowOutOfLine(english, { temperature: { f: 70 }, time: "19:00" }, 541),
    "row-out-of-line caution: One row of the leaflet is out of line with the others: 19:00 at 70 °F, where they point to about 9:00. Look at it again: a digit is soon misread.",
  ],
  [
    messages.soughtNowhere(english, "8:00"),
    "sought-nowhere note: No temperature can be named for 8:00: the leaflet's times do not fall all the way as it gets warmer.",
  ],
  [
    messages.soughtBeyond(english, "5:00", "81.7 °F", { f: 69 }, 3.7),
    "sought-beyond caution: 5:00 would come at 81.7 °F, but that is 6.66 °F beyond the leaflet's rows, where its slope is not known.",
  ],
  [
    messages.readingsPastEnd(english, "8:12", "9:00"),
    "readings-past-end caution: By the readings in the tank the development was done at 8:12, before the reading at 9:00. A little over does little harm; pour out now and note it.",
  ],
  [
    messages.readingExtrapolated(english, { bath: { c: 15 }, nearest: 18, degrees: -3 }),
    "reading-extrapolated caution: In the tank it was 15 °C, 3 °C colder than the leaflet's nearest row (18 °C), so that part of the time follows a slope that is not known there.",
  ],
  [
    messages.longerThanADay(english, 360_000),
    "longer-than-a-day stop: Development works out at 100 hours and is cut to 24:00:00, which is not what was worked out. Look for a slip in the leaflet's rows, the temperatures or the ratings.",
  ],
  [
    messages.longerThanADay(english, 1e20),
    "longer-than-a-day stop: Development works out at more than 1000 hours and is cut to 24:00:00, which is not what was worked out. Look for a slip in the leaflet's rows, the temperatures or the ratings.",
  ],
  [
    messages.mixedRatings(
      english,
      ['"Gullrock 125" at 125', '"Foghorn 400" at 800'],
      "Gullrock 125",
    ),
    'mixed-ratings stop: The films do not share one rating: "Gullrock 125" at 125, "Foghorn 400" at 800. Each needs a time of its own, and a time between them is right for none; this plan is for "Gullrock 125" alone. Develop the others by themselves.',
  ],
  [
    messages.leafletBackwards(english, row(18, "8:00"), row(20, "9:00")),
    "leaflet-backwards stop: The leaflet's times get shorter as it gets colder: 9:00 at 20 °C, but 8:00 at 18 °C. A colder bath works more slowly, so one of the two was misread. Correct that row.",
  ],
  [
    messages.stockShort(english, short),
    "stock-short stop: 500 ml of 1+3 holds 125 ml of stock, but 225 ml is needed for 3 films of 80 sq in: the developer would be used up before the film is done. A tank volume of 900 ml would do; 500 ml serves 1 film of 80 sq in.",
  ],
  [
    messages.bathTooShort(english, "Stop bath", 10, 22),
    "bath-too-short stop: Stop bath: in 0:10 the pour-out would begin before the tank is full, since pouring takes 22 s of that time. Give it 0:22 or more, pour faster, or count the time from a full tank.",
  ],
  [
    messages.temperatureStep(english, "Fixer", { c: 25 }, 5),
    "temperature-step caution: Fixer is at 25 °C, 5 °C warmer than the developer. A step of more than 3 °C can wrinkle the gelatin. Bring the baths closer together.",
  ],
  [
    messages.languageUnavailable(english, "de-AT"),
    'language-unavailable note: There is no voice for the language "de-AT" yet, so the voice speaks English.',
  ],
] as const;

test.each(texts)("$id says what is the matter, why, and what would do", (warning, text) => {
  expect(`${warning.id} ${warning.severity}: ${warning.text}`).toBe(text);
});

test("every message is among them", () => {
  const makers = Object.values(messages);
  expect(new Set(texts.map(([warning]) => warning.id)).size).toBe(makers.length);
});
