// The compiler's choice as integer programs, for a solver that knows nothing of it: the windows of a
// worksheet's sections in, the most that can be said in them out, with the order of the wishes kept
// and without. Stands alone because tests and bench measure the same instances; past 200 lines because
// the two programs stand on the same options, and are read side by side.
import loadHighs from "highs";
import { planOf } from "../../src/plan/plan.ts";
import type { Worksheet } from "../../src/plan/worksheet.ts";
import { stepsOf } from "../../src/process/process.ts";
import { PAUSE, type Placed, type Window } from "../../src/timeline/choose.ts";
import type { Lengths } from "../../src/timeline/lengths.ts";
import type { Stretch } from "../../src/timeline/quiet.ts";
import { signalsOf } from "../../src/timeline/signals.ts";
import { windowOf, wordedWishes } from "../../src/timeline/wording.ts";
import { english } from "./scene.ts";

/** What the compiler has to decide in one section. */
export interface Instance {
  readonly section: string;
  /** Of the sentences wished for, one a window. */
  readonly keys: readonly string[];
  readonly windows: readonly Window[];
  readonly stretches: readonly Stretch[];
}

/** A wording in a stretch of a wish's window that is free from end to end; times in seconds. */
interface Option {
  readonly name: string;
  readonly value: number;
  readonly seconds: number;
  readonly earliest: number;
  readonly latestEnd: number;
}

/** The instances that `compile` solves. */
export function instancesOf(worksheet: Worksheet, lengths: Lengths): readonly Instance[] {
  if (worksheet.voice?.detail === "tones") return [];
  const spoken = new Map<string, number>();
  const steps = stepsOf(worksheet, planOf(worksheet));
  return steps.map((step, i) => {
    const wishes = wordedWishes(step, steps[i + 1], worksheet, english, lengths, spoken);
    return {
      section: step.id,
      keys: wishes.map(({ key }) => key),
      windows: wishes.map(windowOf),
      stretches: signalsOf(step.moments).quiet,
    };
  });
}

/** What a choice is worth. */
export function worthOf(windows: readonly Window[], placed: readonly (Placed | null)[]): number {
  return placed.reduce(
    (sum, place, i) =>
      sum + (place === null ? 0 : (windows[i]?.wordings[place.wording]?.value ?? 0)),
    0,
  );
}

/** The stretches between the quiet ones, from −∞ to ∞. */
function freeStretches(quiet: readonly Stretch[]): readonly Stretch[] {
  const free: Stretch[] = [];
  let from = Number.NEGATIVE_INFINITY;
  for (const stretch of quiet.toSorted((a, b) => a.from - b.from)) {
    if (stretch.from > from) free.push({ from, to: stretch.from });
    from = Math.max(from, stretch.to);
  }
  return [...free, { from, to: Number.POSITIVE_INFINITY }];
}

/**
 * By wish, every wording in every free stretch that holds it. A window without end closes when all
 * could have been said twice over.
 */
function optionsOf({ windows, stretches }: Instance): readonly (readonly Option[])[] {
  const free = freeStretches(stretches);
  const finite = [
    ...windows.flatMap((w) => [w.earliest, w.latestEnd]),
    ...stretches.map((s) => s.to),
  ];
  const all = windows.reduce(
    (sum, { wordings }) => sum + PAUSE + Math.max(0, ...wordings.map((w) => w.seconds)),
    0,
  );
  const horizon = Math.max(0, ...finite.filter(Number.isFinite)) + 2 * all;
  return windows.map((window, i) =>
    free.flatMap((stretch, g) => {
      const earliest = Math.max(window.earliest, stretch.from);
      const latestEnd = Math.min(window.latestEnd, stretch.to, horizon);
      return window.wordings.flatMap(({ seconds, value }, w) =>
        // The compiler forgives a nanosecond, so that sums of seconds keep their bounds.
        earliest + seconds > latestEnd + 1e-9
          ? []
          : [
              {
                name: `x_${i}_${w}_${g}`,
                value,
                seconds,
                earliest,
                latestEnd: Math.max(latestEnd, earliest + seconds),
              },
            ],
      );
    }),
  );
}

interface Program {
  readonly rows: readonly string[];
  readonly bounds: readonly string[];
  readonly binaries: readonly string[];
}

const sum = (options: readonly Option[], of: (option: Option) => number, sign = 1): string =>
  options.map((option) => term(sign * of(option), option.name)).join(" ");

const term = (factor: number, name: string): string =>
  `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${name}`;

const most = (options: readonly Option[], of: (option: Option) => number): number =>
  options.reduce((high, option) => Math.max(high, of(option)), Number.NEGATIVE_INFINITY);

/**
 * The wishes in their order. `c_i` is the earliest that anything after wish `i` may start: where `i` is
 * not said it may be what it was before, so that no bound is larger than the times at stake.
 */
function ordered(wishes: readonly (readonly Option[])[]): Program {
  const rows: string[] = [];
  const bounds: string[] = [];
  let before: string | null = null;
  let latest = 0;
  for (const [i, options] of wishes.entries()) {
    if (options.length === 0) continue;
    const c = `c_${i}`;
    latest = Math.max(
      latest,
      most(options, (o) => o.latestEnd + PAUSE),
    );
    bounds.push(`0 <= ${c} <= ${latest}`);
    rows.push(
      `${c} ${sum(options, (o) => o.earliest + o.seconds + PAUSE, -1)} >= 0`,
      `${c} ${sum(options, (o) => latest - o.latestEnd - PAUSE)} <= ${latest}`,
    );
    if (before !== null)
      rows.push(`${c} - ${before} ${sum(options, (o) => o.seconds + PAUSE, -1)} >= 0`);
    before = c;
  }
  return { rows, bounds, binaries: [] };
}

/**
 * Any order. `t_i` is the start of wish `i`; `b_i_j` says that `i` is said before `j`, and stands only
 * for pairs whose windows touch.
 */
function unordered(wishes: readonly (readonly Option[])[]): Program {
  const rows: string[] = [];
  const bounds: string[] = [];
  const binaries: string[] = [];
  const spans = wishes.map((options) => ({
    options,
    opens: -most(options, (o) => -o.earliest),
    closes: most(options, (o) => o.latestEnd),
    least: -most(options, (o) => -o.seconds),
  }));
  for (const [i, { options, opens, closes }] of spans.entries()) {
    if (options.length === 0) continue;
    bounds.push(`${opens} <= t_${i} <= ${closes}`);
    rows.push(
      `t_${i} ${sum(options, (o) => o.earliest - opens, -1)} >= ${opens}`,
      `t_${i} ${sum(options, (o) => closes - (o.latestEnd - o.seconds))} <= ${closes}`,
    );
  }
  /** Adds what makes `i` come before `j` where `b` is 1; false where it never can. */
  const before = (i: number, j: number): boolean => {
    const [a, b] = [spans[i], spans[j]];
    if (a === undefined || b === undefined) return false;
    if (a.opens + a.least + PAUSE + b.least > b.closes + 1e-9) return false;
    const slack = a.closes + PAUSE - b.opens;
    rows.push(
      `t_${j} - t_${i} ${sum(a.options, (o) => o.seconds, -1)} ${term(-slack, `b_${i}_${j}`)} >= ${PAUSE - slack}`,
    );
    binaries.push(`b_${i}_${j}`);
    return true;
  };
  for (const [i, a] of spans.entries()) {
    for (const [j, b] of spans.entries()) {
      if (j <= i || a.options.length === 0 || b.options.length === 0) continue;
      if (a.closes + PAUSE <= b.opens || b.closes + PAUSE <= a.opens) continue;
      const ways = [
        ...(before(i, j) ? [`- b_${i}_${j}`] : []),
        ...(before(j, i) ? [`- b_${j}_${i}`] : []),
      ];
      const both = `${sum(a.options, () => 1)} ${sum(b.options, () => 1)}`;
      rows.push(`${both} ${ways.join(" ")} <= 1`);
    }
  }
  return { rows, bounds, binaries };
}

const highs = await loadHighs();

/** The value of the best choice. @throws where the solver does not prove one. */
export function bestValue(instance: Instance, order: "kept" | "free"): number {
  const wishes = optionsOf(instance);
  const options = wishes.flat();
  if (options.length === 0) return 0;
  const { rows, bounds, binaries } = order === "kept" ? ordered(wishes) : unordered(wishes);
  const once = wishes.flatMap((own) => (own.length === 0 ? [] : [`${sum(own, () => 1)} <= 1`]));
  const program = [
    "Maximize",
    `value: ${sum(options, (o) => o.value)}`,
    "Subject To",
    ...[...once, ...rows].map((row, i) => `r${i}: ${row}`),
    "Bounds",
    ...bounds,
    "Binary",
    ...options.map((o) => o.name),
    ...binaries,
    "End",
  ].join("\n");
  const solved = highs.solve(program, exactly);
  if (solved.Status !== "Optimal") throw new Error(`${instance.section}: ${solved.Status}`);
  return Math.round(solved.ObjectiveValue);
}

/** Values are whole, so a gap below one proves the best; times must not give by more than the compiler's. */
const exactly = {
  output_flag: false,
  mip_rel_gap: 0,
  mip_abs_gap: 0.5,
  mip_feasibility_tolerance: 1e-9,
  primal_feasibility_tolerance: 1e-9,
} as const;
