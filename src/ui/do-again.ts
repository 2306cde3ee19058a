// An old run's worksheet and today's temperature in, today's worksheet out: leaflet, method, tank and baths as they
// were, and nothing in it that was measured on the day of the run.
import { readWorksheet, type WorksheetReading } from "../plan/read-worksheet.ts";
import type { BathWish, Worksheet } from "../plan/worksheet.ts";
import type { Temperature } from "../units/temperature.ts";

/** The faults are those of the temperature: all else has been read before. */
export function worksheetOfToday(was: Worksheet, temperature: Temperature): WorksheetReading {
  const { mixing: _, tempering: __, baths, developer, ...rest } = was;
  const { readings: ___, ...asBefore } = developer;
  return readWorksheet({
    ...rest,
    developer: { ...asBefore, temperature },
    ...(baths === undefined ? {} : { baths: withoutTemperatures(baths) }),
  });
}

function withoutTemperatures(baths: NonNullable<Worksheet["baths"]>) {
  return Object.fromEntries(
    Object.entries(baths).map(([id, { temperature: _, ...wish }]): [string, BathWish] => [
      id,
      wish,
    ]),
  );
}
