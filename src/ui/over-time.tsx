// The months of a log as a drawing, and the same figures as a table: the developer's temperature, and by how much each
// bath was emptied late. One ink; what a line stands for is written above it.
import { useState } from "preact/hooks";
import type { RunLine } from "../logbook/run-line.ts";
import { bathName } from "./field-names.ts";
import { lateWords, locale, writing } from "./language.ts";
import {
  bathsIn,
  HIGH,
  type Month,
  monthOf,
  monthsOf,
  type Row,
  rowOf,
  type Span,
  WIDE,
} from "./over-time-model.ts";

/** Nothing is reckoned before it is asked for: ten thousand runs are many. */
export function OverTime({ lines }: { readonly lines: readonly RunLine[] }) {
  const [open, setOpen] = useState(false);
  const [first, last] = [lines[0], lines.at(-1)];
  if (first === undefined || last === undefined || monthOf(first) === monthOf(last)) return null;
  const said = lateWords.value.overTime;
  return (
    <details class="over-time" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{said.name}</summary>
      <p class="hint">{said.hint}</p>
      {open && <Months lines={lines} />}
    </details>
  );
}

function Months({ lines }: { readonly lines: readonly RunLine[] }) {
  const months = monthsOf(lines);
  const said = lateWords.value.overTime;
  const baths = bathsIn(months);
  const degrees = degreesAs(lines[0]?.scale ?? "c");
  const measures: readonly Measure[] = [
    { name: said.temperature, of: ({ celsius }) => celsius, write: degrees, through: null },
    ...baths.map((bath) => ({
      name: said.late(bathName(bath)),
      of: ({ strays }: Month) => strays.get(bath),
      write: seconds,
      through: 0,
    })),
  ];
  const name = new Intl.DateTimeFormat(locale.value, { year: "numeric", month: "long" });
  const [first, last] = [months[0], months.at(-1)].map((month) => name.format(month?.at));
  return (
    <>
      {/* The table beneath says the same. */}
      <div class="curve" aria-hidden="true">
        {measures.map(({ name: of, ...measure }) => (
          <Drawn key={of} row={rowOf(of, months, measure.of, measure.write, measure.through)} />
        ))}
        <p class="ends">
          <span>{first}</span>
          <span>{last}</span>
        </p>
      </div>
      <details class="months">
        <summary>{said.table}</summary>
        {measures.map((measure, i) => (
          <table key={measure.name} class="figures">
            <caption>{measure.name}</caption>
            <thead>
              <tr>
                <th scope="col">{said.month}</th>
                {i === 0 && <th scope="col">{said.runs}</th>}
                <th scope="col">{said.figure}</th>
              </tr>
            </thead>
            <tbody>
              {months.toReversed().map((month) => {
                const span = measure.of(month);
                return (
                  <tr key={month.at}>
                    <th scope="row">{name.format(month.at)}</th>
                    {i === 0 && <td>{month.runs}</td>}
                    <td>{span === undefined ? "—" : spanText(span, measure.write)}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        ))}
      </details>
    </>
  );
}

interface Measure {
  readonly name: string;
  readonly of: (month: Month) => Span | undefined;
  readonly write: (value: number) => string;
  /** A value that the drawing always shows; null: none. */
  readonly through: number | null;
}

const degreesAs = (scale: "c" | "f") => (celsius: number) =>
  writing.value.tenths(scale === "c" ? { c: 0 } : { f: 0 }, celsius);
const seconds = (value: number): string =>
  `${value < 0 ? "−" : ""}${writing.value.number(Math.abs(value), 1)} s`;

function spanText({ least, middle, most }: Span, write: (value: number) => string): string {
  if (least === most) return write(middle);
  return lateWords.value.overTime.span(write(middle), write(least), write(most));
}

function Drawn({ row }: { readonly row: Row }) {
  return (
    <figure>
      <figcaption>
        {row.name}
        <span class="between">
          {row.least === row.most ? row.least : `${row.least} … ${row.most}`}
        </span>
      </figcaption>
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
        <path class="axis" d={`M0 0V${HIGH}`} />
        {row.zero !== null && <path class="grid" d={`M0 ${row.zero}H${WIDE}`} />}
        {row.marks.map(({ x, top, middle, bottom }) => (
          <g key={x}>
            {bottom > top && <path class="level" d={`M${x} ${top}V${bottom}`} />}
            <circle class="full" cx={x} cy={middle} r={4} />
          </g>
        ))}
      </svg>
    </figure>
  );
}
