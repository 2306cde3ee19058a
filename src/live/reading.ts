// A temperature entered by steps, up and down, in the unit that the worksheet is written in; what is said of it.
import { forms, type Script } from "../script/script.ts";
import { inDegreesOf, type Temperature } from "../units/temperature.ts";
import type { Wordings } from "./where.ts";

/** A step: what a good thermometer is read to. */
const step = { c: 0.5, f: 1 } as const;
/** What the voice can say: of a developer in the tank, nothing else is to be expected. */
const range = { c: [15, 30.5], f: [59, 86] } as const;

/** The step nearest to a temperature, in the unit of another. */
export function nearestStep(like: Temperature, celsius: number): Temperature {
  return stepped(inDegreesOf(like, celsius), 0);
}

export function stepped(from: Temperature, steps: number): Temperature {
  return "c" in from
    ? { c: within("c", from.c + steps * step.c) }
    : { f: within("f", from.f + steps * step.f) };
}

function within(unit: "c" | "f", value: number): number {
  const [least, most] = range[unit];
  return Math.min(most, Math.max(least, Math.round(value / step[unit]) * step[unit]));
}

/** The half degree below, where the voice cannot say it more exactly. */
export function temperatureWordings(temperature: Temperature, script: Script): Wordings {
  const value = "c" in temperature ? temperature.c : temperature.f;
  const degrees = Math.floor(value);
  const key = value - degrees < 0.25 ? "read.whole" : "read.half";
  return forms.map((form) => script.say(key, form, { degrees }));
}
