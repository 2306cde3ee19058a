// Films before and films now in, what each solution still serves and what replenisher is due out.
// Alone, because capacity is a tally for developer and baths alike.
import { processBaths } from "../trade/baths.ts";
import { filmsLeft, replenisherDue } from "../trade/capacity.ts";
import { toMillilitres, type Volume, writeVolume } from "../units/volume.ts";
import { writeNumber } from "../units/written-number.ts";
import * as messages from "./bath-messages.ts";
import { nominalFilms } from "./film-area.ts";
import type { Warning, WorkingLine } from "./line.ts";
import { filmCount } from "./messages.ts";
import type { PlannedBath } from "./plan.ts";
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
  worksheet: Worksheet,
  baths: readonly PlannedBath[],
): readonly WorkingLine[] {
  const tallies = talliesOf(worksheet, baths).map(({ label, kept, filmsPerLitre, before, now }) => {
    const litres = toMillilitres(kept) / 1000;
    const left = filmsLeft(toMillilitres(kept), filmsPerLitre, before + now);
    return {
      label: `${label}: still serves`,
      expression:
        `${writeVolume(kept)} (${writeNumber(litres, 3)} l) × ${writeNumber(filmsPerLitre)} films a litre = ${filmCount(litres * filmsPerLitre)} of 80 sq in; ` +
        `less ${writeNumber(before)} before and ${writeNumber(now)} now`,
      result: `${filmCount(left)} more`,
    };
  });
  return [...tallies, ...replenisherLines(worksheet)];
}

function replenisherLines({ developer, films }: Worksheet): readonly WorkingLine[] {
  const { replenishPerFilm, filmsBefore = 0 } = developer;
  if (replenishPerFilm === undefined) return [];
  const now = nominalFilms(films);
  const due = (count: number) => writeVolume(times(replenishPerFilm, count));
  const before =
    filmsBefore === 0
      ? ""
      : `${filmCount(filmsBefore)} before × ${writeVolume(replenishPerFilm)} = ${due(filmsBefore)}, if it was not added then; `;
  return [
    {
      label: "Replenisher due",
      expression: `${before}${filmCount(now)} now × ${writeVolume(replenishPerFilm)}, after this run`,
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
  worksheet: Worksheet,
  baths: readonly PlannedBath[],
): readonly Warning[] {
  const past = talliesOf(worksheet, baths).flatMap(
    ({ label, developer, kept, filmsPerLitre, before, now }) => {
      const all = (toMillilitres(kept) / 1000) * filmsPerLitre;
      return before + now <= all * (1 + 1e-9)
        ? []
        : [messages.pastCapacity(label, { before, now, all }, developer)];
    },
  );
  const { replenishPerFilm, perFilmBefore = 0, filmsBefore = 0 } = worksheet.developer;
  const twice = replenishPerFilm !== undefined && perFilmBefore * filmsBefore > 0;
  return [...past, ...(twice ? [messages.replenishedTwice()] : [])];
}
