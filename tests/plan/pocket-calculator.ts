// A line of working in; out, each sum on it as a pocket calculator does it, beside what the line says.
// It knows numbers, brackets, powers, e, ln and log2, and nothing of the program.
import type { WorkingLine } from "../../src/plan/line.ts";

export interface Redone {
  readonly label: string;
  readonly sum: string;
  readonly said: number;
  readonly comes: number;
  readonly within: number;
}

const units =
  /\s*(?:°[CF]|g\/m²|g\/l|m²|cm²|fl oz|ml|min(?:utes)?|films?(?: more)?|times|s|g|l|%)(?![\w²])/g;

/** Every "sum = number" on a line; and the sum that ends it, beside the result. */
export function redone({ label, expression, result }: WorkingLine): readonly Redone[] {
  const found: Redone[] = [];
  for (const part of expression.split(/[;,:](?=\s)|\. /)) {
    const [sum = "", ...said] = part.split(" = ");
    for (const one of said) add(sum, one);
    if (said.length === 0 && part === expression.split(/[;,:](?=\s)|\. /).at(-1)) add(sum, result);
  }
  return found;

  function add(sum: string, text: string): void {
    const comes = calculated(sum);
    const said = numberIn(text);
    if (comes === null || said === null || !/[×/^−+]|ln|log/.test(sum)) return;
    found.push({ label, sum, said: said.value, comes, within: said.within + slack(sum, comes) });
  }
}

/** What the numbers on the line leave open: each is moved by half of its last digit, and the sum watched. */
function slack(sum: string, comes: number): number {
  let open = 0;
  for (const match of sum.matchAll(/\d+(?:\.\d+)?/g)) {
    const digits = match[0].split(".")[1]?.length ?? 0;
    const half = digits === 0 ? 0 : 0.5 * 10 ** -digits;
    const moved = `${sum.slice(0, match.index)}${Number(match[0]) + half}${sum.slice(match.index + match[0].length)}`;
    open += Math.abs((calculated(moved) ?? comes) - comes);
  }
  return open * 1.05;
}

function calculated(sum: string): number | null {
  const plain = sum
    .replace(/(\d+):(\d\d)(?!\d)/g, (_, minutes, seconds) =>
      String(Number(minutes) * 60 + Number(seconds)),
    )
    .replace(units, "")
    .replaceAll("×", "*")
    .replaceAll("−", "-")
    .replaceAll("^", "**")
    .replace(/(?<![\w.])e\*\*/g, "Math.E**")
    .replace(/\bln\(/g, "Math.log(")
    .replace(/\blog2\(/g, "Math.log2(")
    .replace(/(^|[(\s])-(Math|\()/g, "$1(-1)*$2")
    .trim();
  if (!/^[\d\s.+\-*/()]*$/.test(plain.replace(/Math\.(?:E|log2?)/g, "")) || plain === "")
    return null;
  try {
    const value: unknown = new Function(`return (${plain});`)();
    return typeof value === "number" && Number.isFinite(value) ? value : null;
  } catch {
    return null;
  }
}

/** The first number of a text, a clock time as seconds, with half of its last digit. */
function numberIn(text: string): { readonly value: number; readonly within: number } | null {
  const clock = /(\d+):(\d\d)/.exec(text);
  if (clock) return { value: Number(clock[1]) * 60 + Number(clock[2]), within: 0.5 };
  const number = /[−-]?\d+(?:\.\d+)?/.exec(text);
  if (!number) return null;
  const digits = number[0].split(".")[1]?.length ?? 0;
  return { value: Number(number[0].replace("−", "-")), within: 0.5 * 10 ** -digits + 1e-9 };
}
