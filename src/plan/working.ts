// Worksheet and plan in, the arithmetic as lines to read aloud out, one a step.
// Alone, because a number nobody can redo with a pocket calculator is a number nobody should trust.
import { processBaths } from "../trade/baths.ts";
import { totalHolding } from "../trade/dilution.ts";
import { writeClockTime } from "../units/clock-time.ts";
import { nominalFilmArea } from "../units/film-size.ts";
import { writeDilution } from "../units/parts.ts";
import { toMillilitres, writeMillilitres, writeVolume } from "../units/volume.ts";
import { writeNumber } from "../units/written-number.ts";
import { soughtLines } from "./backwards.ts";
import { capacityLines } from "./capacity.ts";
import type { Development } from "./development.ts";
import { fillSeconds, pouringSeconds, washInversion } from "./fills.ts";
import { nominalFilms } from "./film-area.ts";
import { fixerLines, fixingExpression } from "./fixing.ts";
import { handsLines } from "./hands.ts";
import { about, type WorkingLine } from "./line.ts";
import { filmCount } from "./messages.ts";
import type { Plan } from "./plan.ts";
import { dilutionOf } from "./planned-baths.ts";
import type { Planned } from "./warnings.ts";
import { washLines } from "./washing.ts";
import { timeLines } from "./working-time.ts";
import type { BathWish, Worksheet } from "./worksheet.ts";

/** The development time, step by step; then the mix, and what else was asked; then each other bath. */
export function workingFor(
  worksheet: Worksheet,
  development: Development,
  planned: Planned,
  beside: Plan["working"],
): Plan["working"] {
  const { developer } = worksheet;
  return [
    ...about("time", [
      ...timeLines(worksheet, development),
      ...soughtLines(developer, development),
    ]),
    ...about("mix", [mixLine(worksheet, planned), ...stockLines(worksheet, planned)]),
    ...beside,
    ...about("hands", handsLines(worksheet)),
    ...about("baths", [
      ...bathLines(worksheet, planned),
      ...fixerLines(worksheet),
      ...washLines(worksheet, planned.baths),
      ...capacityLines(worksheet, planned.baths),
    ]),
  ];
}

function mixLine({ developer, tank }: Worksheet, { mix }: Planned): WorkingLine {
  const parts = dilutionOf(developer);
  const volume = (millilitres: number) => writeMillilitres(tank.volume, millilitres);
  if (parts.water === 0) {
    return { label: "Mix", expression: "stock as it is", result: volume(mix.total) };
  }
  const [a, b] = [writeNumber(parts.stock, 4), writeNumber(parts.water, 4)];
  return {
    label: "Mix",
    expression: `${volume(mix.total)} × ${a} / (${a} + ${b}) = ${volume(mix.stock)} of stock; the rest is water`,
    result: `${volume(mix.stock)} of stock + ${volume(mix.water)} of water`,
  };
}

function stockLines({ developer, films, tank }: Worksheet, { mix }: Planned): WorkingLine[] {
  const count = nominalFilms(films);
  const each = films.map((film) => `${film.count} × ${film.size}`).join(" + ");
  const area = {
    label: "Film",
    expression: `${each}, in films of 80 sq in or ${writeNumber(nominalFilmArea, 1)} cm²`,
    result: filmCount(count),
  };
  if (developer.stockPerFilm === undefined) return [area];
  const parts = dilutionOf(developer);
  const perFilm = toMillilitres(developer.stockPerFilm);
  const volume = (millilitres: number) => writeMillilitres(tank.volume, millilitres);
  const needed = volume(perFilm * count);
  const total = volume(totalHolding(perFilm * count, parts));
  const asTyped = writeVolume(developer.stockPerFilm);
  const inOtherUnit =
    asTyped === volume(perFilm) ? "" : `${asTyped} a film is ${volume(perFilm)}; `;
  return [
    area,
    {
      label: "Stock needed",
      expression: `${inOtherUnit}${filmCount(count)} × ${volume(perFilm)} = ${needed}; that is in ${total} of ${writeDilution(parts)}, and this mix holds ${volume(mix.stock)}`,
      result: needed,
    },
  ];
}

function bathLines(worksheet: Worksheet, { baths }: Planned): WorkingLine[] {
  const usual = new Map(processBaths[worksheet.process]?.map((it) => [it.id, it.seconds]));
  return baths
    .filter((bath) => usual.get(bath.id) !== null)
    .map((bath) => {
      const wish = worksheet.baths?.[bath.id];
      const expression = wish ? bathExpression(worksheet, wish) : unsaid;
      return { label: bath.label, expression, result: writeClockTime(bath.seconds) };
    });
}

const unsaid = "the usual time, since none was given";

const given = "as given";

/** Whether a line tells no more than what was put in, as a table of times does already. */
export function isTold({ expression }: WorkingLine): boolean {
  return expression === given || expression === unsaid;
}

function bathExpression(worksheet: Worksheet, wish: BathWish): string {
  if (wish.fills) return fillsExpression(worksheet, wish.fills);
  return fixingExpression(wish) ?? (wish.time === undefined ? unsaid : given);
}

function fillsExpression(worksheet: Worksheet, fills: readonly number[]): string {
  const pouring = pouringSeconds(worksheet);
  const each = fills.map((inversions) => `${writeNumber(fillSeconds(worksheet, inversions), 1)} s`);
  const inversion = `${writeNumber(washInversion(worksheet), 1)} s an inversion`;
  const poured = pouring > 0 ? ` and ${writeNumber(pouring, 1)} s to pour each time` : "";
  return `fresh water with ${fills.join(", ")} inversions, at ${inversion}${poured}: ${each.join(" + ")}`;
}
