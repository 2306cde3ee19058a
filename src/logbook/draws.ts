// A run's record in, what it drew on the shelf's bottles out: which films went through which, and what did not
// come back. Alone, because it is asked again whenever the shelf is opened: what is written down already is left out
// by whoever asks.
import { dilutionOf } from "../plan/planned-baths.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { afterwardsOf } from "../process/process.ts";
import { processBaths } from "../trade/baths.ts";
import { mixOf } from "../trade/dilution.ts";
import type { Day } from "../trade/keeping.ts";
import { inUnitOf, toMillilitres, type Volume } from "../units/volume.ts";
import type { Act, Bottle, Contents } from "./bottle.ts";
import { namesOf, stateOf } from "./bottle-state.ts";
import type { RunRecord } from "./run-record.ts";

/** The bottle that a bath is poured from, by its name; null where the worksheet names none. */
export function bottleNamed({ developer, baths }: Worksheet, bath: string): string | null {
  const wish = baths?.[bath];
  if (wish?.skip === true) return null;
  return (bath === "developer" ? developer.bottle : wish?.bottle) ?? null;
}

/** Baths with a bottle, in order. */
export function bottledBaths(worksheet: Worksheet): readonly string[] {
  const baths = processBaths[worksheet.process] ?? [];
  return baths.flatMap(({ id }) => (bottleNamed(worksheet, id) === null ? [] : [id]));
}

export interface Draw {
  readonly bottle: string;
  readonly act: Extract<Act, { readonly kind: "drawn" }>;
}

/** @param day of the calendar in which the run began. */
export function drawsOf(run: RunRecord, bottles: readonly Bottle[], day: Day): readonly Draw[] {
  const { worksheet } = run;
  const films = worksheet.films.map(({ size, count }) => ({ size, count }));
  return pouredBaths(run).flatMap((bath): readonly Draw[] => {
    const name = bottleNamed(worksheet, bath);
    const bottle = name === null ? undefined : bottleOf(bottles, name, day, bath, run.begunAt);
    if (bottle === undefined) return [];
    const { contents } = stateOf(bottle);
    const takes = takenFor(worksheet, bath, contents);
    // What is diluted for use ages in the tank, and not in its bottle.
    const through = contents.state === "stock" && takes !== null ? [] : films;
    const act: Draw["act"] = {
      kind: "drawn",
      run: run.id,
      bath,
      films: through,
      ...(takes === null ? {} : { takes }),
    };
    return [{ bottle: bottle.id, act }];
  });
}

/** What a bath takes out of its bottle for good, in the bottle's unit; null where it all comes back. */
function takenFor(worksheet: Worksheet, bath: string, contents: Contents): Volume | null {
  if (afterwardsOf(bath, worksheet) === "return") return null;
  return inUnitOf(contents.volume, wantedFor(worksheet, bath, contents));
}

/** ml of a bottle's contents that a bath wants. */
export function wantedFor(worksheet: Worksheet, bath: string, { state }: Contents): number {
  const tank = toMillilitres(worksheet.tank.volume);
  const diluted = bath === "developer" && state === "stock";
  return diluted ? mixOf(tank, dilutionOf(worksheet.developer)).stock : tank;
}

/**
 * Ids of the baths that were poured in. Where nobody wrote down which, as in records of older versions and where a page
 * went away in the midst: all before the last that was pressed for or told of, and that one, but none that would have
 * followed it by the clock alone.
 */
function pouredBaths(run: RunRecord): readonly string[] {
  const { worksheet, presses, otherwise = [], pouredIn, ended } = run;
  const order = (processBaths[worksheet.process] ?? []).map(({ id }) => id);
  if (ended === "done") return order;
  if (pouredIn !== undefined) return order.filter((id) => pouredIn.includes(id));
  const known = [
    ...presses.map(({ section }) => section),
    ...otherwise.flatMap((it) => (it.kind === "poured" || it.kind === "emptied" ? [it.bath] : [])),
  ];
  const last = Math.max(-1, ...known.map((id) => order.indexOf(id)));
  return order.slice(0, last + 1);
}

/**
 * Of the bottles that had that name and stood on the shelf that day, for that bath, one that stood there as the run began,
 * as far as anyone had written down by then, since its name was chosen from those; of these the one mixed last: a name
 * is given again once its bottle has been poured away.
 * @param at when the run began: UTC, ms since 1970.
 */
function bottleOf(
  bottles: readonly Bottle[],
  name: string,
  day: Day,
  bath: string,
  at: number,
): Bottle | undefined {
  const able = bottles.flatMap((bottle) => {
    const { contents, pouredOn, removed } = stateOf(bottle);
    const there = contents.mixedOn <= day && (pouredOn === null || pouredOn >= day) && !removed;
    return there && contents.kind === bath && namesOf(bottle).includes(name)
      ? [
          {
            bottle,
            mixedOn: contents.mixedOn,
            stood: stoodAt(bottle, at),
            now: contents.name === name,
          },
        ]
      : [];
  });
  return able
    .toSorted(
      (a, b) =>
        Number(a.stood) - Number(b.stood) ||
        Number(a.now) - Number(b.now) ||
        (a.mixedOn < b.mixedOn ? -1 : 1),
    )
    .at(-1)?.bottle;
}

/** By what was written down until then. */
function stoodAt(bottle: Bottle, at: number): boolean {
  const [mixed, ...others] = bottle.entries;
  if (mixed === undefined || mixed.at > at) return false;
  const entries = [mixed, ...others.filter((entry) => entry.at <= at)];
  return stateOf({ ...bottle, entries }).stands !== "poured away";
}
