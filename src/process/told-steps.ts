// An outline and what is developed in, the steps that only tell out: those before the baths, and those after.
// No clock rules in them but the wait in the dark, which a press ends at any time.
import { darkWaitSeconds } from "../plan/dark-wait.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { filmKind, filmKinds, type Kind, type Outline, type OutlineStep } from "./outline.ts";
import type { FilmIs, Step } from "./process.ts";

/** A wait shorter than this, seconds, would be over before its own words. */
const WAIT_LEAST = 20;

export interface ToldSteps {
  readonly before: readonly Step[];
  readonly after: readonly Step[];
}

export function toldSteps(outline: Outline, worksheet: Worksheet): ToldSteps {
  const { method } = worksheet.tank;
  const open = method === "tray" || method === "hanger";
  const kinds: readonly Kind[] = open ? ["open", method] : ["tank"];
  const wait = darkWaitSeconds(worksheet);
  const steps = (told: readonly OutlineStep[], film: FilmIs, of = kinds) =>
    told
      .filter(({ only, waits }) => {
        return (
          (only?.some((kind) => of.includes(kind)) ?? true) && (waits === undefined || wait > 0)
        );
      })
      .map((step) => stepOf(step, film, wait));

  const after = steps(outline.after, "fixed");
  if (worksheet.loading === "done" && !open)
    return { before: steps(outline.loaded, "tank"), after };

  const loading = filmKinds.flatMap((film) => {
    const alike = worksheet.films.filter(({ size }) => filmKind(size) === film);
    const count = alike.reduce((sum, each) => sum + each.count, 0);
    if (count === 0) return [];
    return steps(outline.loading[film], "open", count > 1 ? [...kinds, "several"] : kinds);
  });
  const locked = outline.closing.findIndex(({ locks }) => locks) + 1;
  return {
    before: eachItsOwn([
      ...steps(outline.before, "packed"),
      ...loading,
      ...steps(outline.closing.slice(0, locked), "open"),
      ...steps(outline.closing.slice(locked), open ? "open" : "tank"),
    ]),
    after,
  };
}

function stepOf(step: OutlineStep, film: FilmIs, wait: number): Step {
  const { id, dark, tells, brief = tells, more = [], jams = false, waits } = step;
  return {
    id,
    dark,
    seconds: waits === undefined ? 0 : Math.max(wait, WAIT_LEAST),
    moments: [],
    stays: [],
    past: 0,
    tells,
    niceties: tells.filter((key) => !brief.includes(key)),
    closes: waits ?? null,
    more,
    jams,
    film,
  };
}

/** A second kind of film in the same tank has steps of the same names. */
function eachItsOwn(steps: readonly Step[]): readonly Step[] {
  return steps.map((step, i) => {
    const before = steps.slice(0, i).filter(({ id }) => id === step.id).length;
    return before === 0 ? step : { ...step, id: `${step.id}-${before + 1}` };
  });
}
