// The signs of the score, in one ink: the bath as five lines that bend with it, the horn's arcs, the
// beats, the flags of words. Everything is told apart by shape, nothing by colour.
import type { OpenStretch, Stroke, Tick, Word } from "./score-shape.ts";
import { lineHeight } from "./score-type.ts";

/** Lines above the floor, lowest first: height, how far it swings, weight. Units. */
const bathLines = [
  { height: 13, swing: 4, weight: 1.2 },
  { height: 26, swing: 7.5, weight: 1.2 },
  { height: 39, swing: 11, weight: 1.5 },
  { height: 52, swing: 14.5, weight: 3 },
] as const;

export function Bath({ strokes }: { readonly strokes: readonly Stroke[] }) {
  return (
    <g class="bath">
      {bathLines.map(({ height, swing, weight }) => (
        <path
          key={height}
          stroke-width={weight}
          d={strokes.map((stroke) => strokePath(stroke, height, swing)).join("")}
        />
      ))}
    </g>
  );
}

function strokePath({ kind, from, to }: Stroke, height: number, swing: number): string {
  const width = to - from;
  switch (kind) {
    case "level":
      return `M${n(from)} ${-height}H${n(to)}`;
    // The lines part as a horn's bell does.
    case "rise":
      return `M${n(from)} 0C${n(from + width * 0.6)} 0 ${n(to - width * 0.3)} ${-height} ${n(to)} ${-height}`;
    case "fall":
      return `M${n(from)} ${-height}C${n(from + width * 0.3)} ${-height} ${n(to - width * 0.6)} 0 ${n(to)} 0`;
    case "swing":
      return `M${n(from)} ${-height}${halfSwing(width / 2, -swing)}${halfSwing(width / 2, swing)}`;
  }
}

/** Half a sine as a cubic: its control points stand 4/3 as high as its crest. */
function halfSwing(width: number, crest: number): string {
  const y = n((crest * 4) / 3);
  return `c${n(width * 0.3642)} ${y} ${n(width * 0.6358)} ${y} ${n(width)} 0`;
}

/** A hundredth of a unit is finer than anything that is drawn. */
const n = (units: number): number => Math.round(units * 100) / 100;

export function Flag({ word, bar }: { readonly word: Word; readonly bar: number }) {
  const { x, y, lines, spoken } = word;
  return (
    <g>
      <path class="mast" d={`M${n(x + 1)} ${n(y + 2)}V${bar}`} />
      <rect class="solid" x={n(x)} y={bar - 5} width={n(spoken)} height={5} />
      <text>
        {lines.map((line, i) => (
          <tspan key={line} x={n(x + 7)} y={n(y + (i + 0.78) * lineHeight)}>
            {line}
          </tspan>
        ))}
      </text>
    </g>
  );
}

/** A tone's sign, on the line at `y`. */
export function Sign({ tick, y }: { readonly tick: Tick; readonly y: number }) {
  const x = n(tick.x);
  switch (tick.kind) {
    case "count-in":
      return <path class="count" d={`M${x} ${y}v-11`} />;
    case "beat":
      return <circle class="solid" cx={x} cy={tick.tone === "over" ? y - 15 : y - 5} r={2.6} />;
    case "confirm":
      return <path class="count" d={`M${x} ${y - 6}h9`} />;
    default:
      return tick.tone === "rest" ? (
        <g>
          <circle class="ring" cx={x} cy={y - 10} r={5} />
          <path class="stem" d={`M${x} ${y - 5}V0`} />
        </g>
      ) : (
        <g>
          <path class="stem" d={`M${x} ${y - 10}V0`} />
          <Horn x={x} y={y - 10} tone={tick.tone} />
        </g>
      );
  }
}

function Horn({ x, y, tone }: { readonly x: number; readonly y: number; readonly tone: string }) {
  const radii = tone === "agitate" ? [8, 13] : [10, 17.5, 25];
  return (
    <g>
      <circle class="solid" cx={x} cy={y} r={4.5} />
      <g class={tone === "pour-out" ? "loud" : "arcs"}>
        {radii.map((radius) => (
          <path key={radius} d={arc(x, y, radius)} />
        ))}
      </g>
    </g>
  );
}

/** Fifty degrees to either side of straight ahead. */
function arc(x: number, y: number, radius: number): string {
  const [dx, dy] = [n(radius * 0.643), n(radius * 0.766)];
  return `M${n(x + dx)} ${n(y - dy)}A${radius} ${radius} 0 0 1 ${n(x + dx)} ${n(y + dy)}`;
}

/** The border of a chart: black and white in turn, so many seconds each. */
export function Border({ stretch, y }: { readonly stretch: OpenStretch; readonly y: number }) {
  const { from, to, scale } = stretch;
  const step = scale > 30 ? 1 : 5;
  const first = Math.floor(from / step);
  const fields = Array.from({ length: Math.ceil(to / step) - first }, (_, i) => first + i);
  return (
    <g>
      <path class="frame" d={`M0 ${y}h${n((to - from) * scale)}m0 6H0`} />
      {fields
        .filter((field) => field % 2 === 0)
        .map((field) => {
          const x0 = Math.max(field * step, from);
          const x1 = Math.min((field + 1) * step, to);
          return (
            <rect
              key={field}
              class="solid"
              x={n((x0 - from) * scale)}
              y={y}
              width={n((x1 - x0) * scale)}
              height={6}
            />
          );
        })}
    </g>
  );
}
