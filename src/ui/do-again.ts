// An old run's worksheet and today's temperature in, today's worksheet out: leaflet, method, tank and baths as they
// were, and nothing in it that was measured on the day of the run. What stands on the shelf now is taken from there.
import type { BottleState } from "../logbook/bottle-state.ts";
import { readWorksheet, type WorksheetReading } from "../plan/read-worksheet.ts";
import type { BathWish, Worksheet } from "../plan/worksheet.ts";
import type { Temperature } from "../units/temperature.ts";
import { offeredFor, withBottle } from "./bottle-fill.ts";
import { draftOf } from "./draft-of.ts";
import { readDraft } from "./work-out-model.ts";

/** The faults are those of the temperature: all else has been read before. */
export function worksheetOfToday(was: Worksheet, temperature: Temperature): WorksheetReading {
  const { mixing: _, tempering: __, baths, developer, ...rest } = was;
  const { readings: ___, filmsBefore: ____, kept: _____, ...asBefore } = developer;
  return readWorksheet({
    ...rest,
    developer: { ...asBefore, temperature },
    ...(baths === undefined ? {} : { baths: withoutMeasures(baths) }),
  });
}

function withoutMeasures(baths: NonNullable<Worksheet["baths"]>) {
  return Object.fromEntries(
    Object.entries(baths).map(
      ([id, { temperature: _, filmsBefore: __, kept: ___, clearing: ____, ...wish }]): [
        string,
        BathWish,
      ] => [id, wish],
    ),
  );
}

/** By bath, the name of the bottle that each is poured from; of those that are skipped, none. */
export function bottlesIn({ developer, baths = {} }: Worksheet): readonly [string, string][] {
  return [
    ["developer", developer] as const,
    ...Object.entries(baths).filter(([, { skip }]) => !skip),
  ].flatMap(([bath, { bottle }]): [string, string][] => (bottle ? [[bath, bottle]] : []));
}

/** Where a bottle of the name stands on the shelf, what is said of it there: as by choosing it in Work out. */
export function filledFrom(worksheet: Worksheet, states: readonly BottleState[]): Worksheet {
  const filled = bottlesIn(worksheet).reduce((draft, [bath, bottle]) => {
    const state = offeredFor(states, bath).find(({ contents }) => contents.name === bottle);
    return state === undefined ? draft : withBottle(draft, bath, state);
  }, draftOf(worksheet));
  return readDraft(filled).worksheet ?? worksheet;
}
