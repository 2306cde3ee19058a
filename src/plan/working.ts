// Worksheet and plan in, the arithmetic as lines to read aloud out, one a step.
// Alone, because a number nobody can redo with a pocket calculator is a number nobody should trust.
import { processBaths } from "../trade/baths.ts";
import { totalHolding } from "../trade/dilution.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { nominalFilmArea } from "../units/film-size.ts";
import { toMillilitres } from "../units/volume.ts";
import { soughtLines } from "./backwards.ts";
import { capacityLines } from "./capacity.ts";
import type { Development } from "./development.ts";
import { fillSeconds, pouringSeconds, washInversion } from "./fills.ts";
import { nominalFilms } from "./film-area.ts";
import { filmCount } from "./film-count.ts";
import { fixerLines, fixingExpression } from "./fixing.ts";
import { handsLines } from "./hands.ts";
import { about, type WorkingLine } from "./line.ts";
import type { Plan } from "./plan.ts";
import { dilutionOf } from "./planned-baths.ts";
import type { Planned } from "./warnings.ts";
import { washLines } from "./washing.ts";
import { english } from "./words/english.ts";
import type { PlanWords } from "./words/words.ts";
import { timeLines } from "./working-time.ts";
import type { BathWish, Worksheet } from "./worksheet.ts";

/** The development time, step by step; then the mix, and what else was asked; then each other bath. */
export function workingFor(
  words: PlanWords,
  worksheet: Worksheet,
  development: Development,
  planned: Planned,
  beside: Plan["working"],
): Plan["working"] {
  const { developer } = worksheet;
  return [
    ...about("time", [
      ...timeLines(words, worksheet, development),
      ...soughtLines(words, developer, development),
    ]),
    ...about("mix", [mixLine(words, worksheet, planned), ...stockLines(words, worksheet, planned)]),
    ...beside,
    ...about("hands", handsLines(words, worksheet)),
    ...about("baths", [
      ...bathLines(words, worksheet, planned),
      ...fixerLines(words, worksheet),
      ...washLines(words, worksheet, planned.baths),
      ...capacityLines(words, worksheet, planned.baths),
    ]),
  ];
}

function mixLine(
  { mix: says, writes }: PlanWords,
  { developer, tank }: Worksheet,
  { mix }: Planned,
): WorkingLine {
  const parts = dilutionOf(developer);
  const volume = (millilitres: number) => writes.millilitres(tank.volume, millilitres);
  if (parts.water === 0) {
    return { label: says.label, expression: says.asStock, result: volume(mix.total) };
  }
  const [a, b] = [writes.number(parts.stock, 4), writes.number(parts.water, 4)];
  const stock = volume(mix.stock);
  return {
    label: says.label,
    expression: says.sum({ sum: `${volume(mix.total)} × ${a} / (${a} + ${b})`, stock }),
    result: says.result({ stock, water: volume(mix.water) }),
  };
}

function stockLines(
  words: PlanWords,
  { developer, films, tank }: Worksheet,
  { mix }: Planned,
): WorkingLine[] {
  const { writes } = words;
  const says = words.mix;
  const films80 = nominalFilms(films);
  const count = filmCount(words, films80);
  const each = films.map((film) => `${film.count} × ${film.size}`).join(" + ");
  const area = {
    label: says.film.label,
    expression: says.film.area({ films: each, area: writes.number(nominalFilmArea, 1) }),
    result: count,
  };
  if (developer.stockPerFilm === undefined) return [area];
  const parts = dilutionOf(developer);
  const perFilm = toMillilitres(developer.stockPerFilm);
  const volume = (millilitres: number) => writes.millilitres(tank.volume, millilitres);
  const needed = volume(perFilm * films80);
  const [typed, same] = [writes.volume(developer.stockPerFilm), volume(perFilm)];
  const sum = says.stock.needed({
    sum: `${count} × ${same} = ${needed}`,
    total: volume(totalHolding(perFilm * films80, parts)),
    dilution: writes.dilution(parts, says.undiluted),
    holds: volume(mix.stock),
  });
  return [
    area,
    {
      label: says.stock.label,
      expression: typed === same ? sum : `${says.stock.perFilm({ typed, same })}; ${sum}`,
      result: needed,
    },
  ];
}

function bathLines(words: PlanWords, worksheet: Worksheet, { baths }: Planned): WorkingLine[] {
  const usual = new Map(processBaths[worksheet.process]?.map((it) => [it.id, it.seconds]));
  return baths
    .filter((bath) => usual.get(bath.id) !== null)
    .map((bath) => {
      const wish = worksheet.baths?.[bath.id];
      const expression = wish ? bathExpression(words, worksheet, wish) : words.baths.unsaid;
      return { label: bath.label, expression, result: writeClockTime(bath.seconds) };
    });
}

/** Whether a line tells no more than what was put in, as a table of times does already. */
export function isTold({ expression }: WorkingLine, { baths }: PlanWords = english): boolean {
  return expression === baths.given || expression === baths.unsaid;
}

function bathExpression(words: PlanWords, worksheet: Worksheet, wish: BathWish): string {
  if (wish.fills) return fillsExpression(words, worksheet, wish.fills);
  const { given, unsaid } = words.baths;
  return fixingExpression(words, wish) ?? (wish.time === undefined ? unsaid : given);
}

function fillsExpression(
  { baths, writes }: PlanWords,
  worksheet: Worksheet,
  fills: readonly number[],
): string {
  const seconds = (time: number) => `${writes.number(time, 1)} s`;
  const pouring = pouringSeconds(worksheet);
  const says = {
    fills: fills.join(", "),
    inversion: seconds(washInversion(worksheet)),
    sum: fills.map((inversions) => seconds(fillSeconds(worksheet, inversions))).join(" + "),
  };
  return pouring > 0
    ? baths.fillsPoured({ ...says, pouring: seconds(pouring) })
    : baths.fills(says);
}
