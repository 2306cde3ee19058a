// An old run's worksheet and today's temperature in, today's worksheet out: leaflet, method, tank and baths as they
// were, and nothing in it that was measured on the day of the run. What stands on the shelf now is taken from there.
import type { BottleState } from "../logbook/bottle-state.ts";
import { bottledBaths, bottleNamed } from "../logbook/draws.ts";
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

/** Where a bottle of the name stands on the shelf, what is said of it there: as by choosing it in Work out. */
export function filledFrom(worksheet: Worksheet, states: readonly BottleState[]): Worksheet {
  const filled = bottledBaths(worksheet).reduce((draft, bath) => {
    const bottle = bottleNamed(worksheet, bath);
    const state = offeredFor(states, bath).find(({ contents }) => contents.name === bottle);
    return state === undefined ? draft : withBottle(draft, bath, state);
  }, draftOf(worksheet));
  return readDraft(filled).worksheet ?? worksheet;
}
