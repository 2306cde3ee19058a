// Films before and films now in, what each solution still serves and what replenisher is due out.
// Alone, because capacity is a tally for developer and baths alike.
import { processBaths } from "../trade/baths.ts";
import { filmsLeft, replenisherDue } from "../trade/capacity.ts";
import { toMillilitres, type Volume } from "../units/volume.ts";
import * as messages from "./bath-messages.ts";
import { nominalFilms } from "./film-area.ts";
import { filmCount } from "./film-count.ts";
import type { Warning, WorkingLine } from "./line.ts";
import type { PlannedBath } from "./plan.ts";
import type { PlanWords } from "./words/words.ts";
import type { Worksheet } from "./worksheet.ts";

interface Tally {
  readonly label: string;
  readonly developer: boolean;
  readonly kept: Volume;
  readonly filmsPerLitre: number;
  readonly before: number;
  readonly now: number;
}

/** The developer and every bath that is poured and whose capacity is known. */
function talliesOf(worksheet: Worksheet, baths: readonly PlannedBath[]): readonly Tally[] {
  const now = nominalFilms(worksheet.films);
  const timed = new Map(processBaths[worksheet.process]?.map(({ id, seconds }) => [id, seconds]));
  return baths.flatMap(({ id, label }) => {
    const developer = timed.get(id) === null;
    const { filmsPerLitre, filmsBefore, kept } = developer
      ? worksheet.developer
      : (worksheet.baths?.[id] ?? {});
    if (filmsPerLitre === undefined) return [];
    const volume = kept ?? worksheet.tank.volume;
    return [{ label, developer, kept: volume, filmsPerLitre, before: filmsBefore ?? 0, now }];
  });
}

export function capacityLines(
  words: PlanWords,
  worksheet: Worksheet,
  baths: readonly PlannedBath[],
): readonly WorkingLine[] {
  const { capacity, writes } = words;
  const tallies = talliesOf(worksheet, baths).map(({ label, kept, filmsPerLitre, before, now }) => {
    const litres = toMillilitres(kept) / 1000;
    const left = filmsLeft(toMillilitres(kept), filmsPerLitre, before + now);
    return {
      label: capacity.label({ bath: label }),
      expression: capacity.sum({
        volume: writes.volume(kept),
        litres: writes.number(litres, 3),
        perLitre: writes.number(filmsPerLitre),
        films: filmCount(words, litres * filmsPerLitre),
        before: writes.number(before),
        now: writes.number(now),
      }),
      result: capacity.more({ films: filmCount(words, left) }),
    };
  });
  return [...tallies, ...replenisherLines(words, worksheet)];
}

function replenisherLines(
  words: PlanWords,
  { developer, films }: Worksheet,
): readonly WorkingLine[] {
  const { capacity, writes } = words;
  const { replenishPerFilm, filmsBefore = 0 } = developer;
  if (replenishPerFilm === undefined) return [];
  const now = nominalFilms(films);
  const due = (count: number) => writes.volume(times(replenishPerFilm, count));
  const each = writes.volume(replenishPerFilm);
  const before = capacity.replenishedBefore({
    films: filmCount(words, filmsBefore),
    each,
    due: due(filmsBefore),
  });
  const after = capacity.replenishNow({ films: filmCount(words, now), each });
  return [
    {
      label: capacity.replenisherLabel,
      expression: filmsBefore === 0 ? after : `${before}; ${after}`,
      result: due(now),
    },
  ];
}

function times(volume: Volume, count: number): Volume {
  return "ml" in volume
    ? { ml: replenisherDue(volume.ml, count) }
    : { flOz: replenisherDue(volume.flOz, count) };
}

export function capacityWarnings(
  words: PlanWords,
  worksheet: Worksheet,
  baths: readonly PlannedBath[],
): readonly Warning[] {
  const past = talliesOf(worksheet, baths).flatMap(
    ({ label, developer, kept, filmsPerLitre, before, now }) => {
      const all = (toMillilitres(kept) / 1000) * filmsPerLitre;
      return before + now <= all * (1 + 1e-9)
        ? []
        : [messages.pastCapacity(words, label, { before, now, all }, developer)];
    },
  );
  const { replenishPerFilm, perFilmBefore = 0, filmsBefore = 0 } = worksheet.developer;
  const twice = replenishPerFilm !== undefined && perFilmBefore * filmsBefore > 0;
  return [...past, ...(twice ? [messages.replenishedTwice(words)] : [])];
}
