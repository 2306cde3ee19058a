// The score as it is seen. Where everything stands is decided in score-model.ts. Each stretch is a
// drawing by itself, so that a line ends where the page does, on any screen and on paper.
import type { ReadonlySignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { Section } from "../timeline/score.ts";
import type { Method } from "../trade/method.ts";
import { lateWords } from "./language.ts";
import { Folded } from "./score-fold.tsx";
import { Bath, Border, Flag, Sign } from "./score-marks.tsx";
import { scoreOf } from "./score-model.ts";
import { Present } from "./score-present.tsx";
import type { OpenStretch, ScoreSystem } from "./score-shape.ts";
import { lineHeight } from "./score-type.ts";

interface PictureProps {
  readonly section: Section;
  readonly method: Method;
  /** Seconds into the section while it is heard, else null. */
  readonly elapsed: ReadonlySignal<number | null>;
}

export function ScorePicture({ section, method, elapsed }: PictureProps) {
  const inForce = lateWords.value;
  const systems = useMemo(() => scoreOf(section, method), [section, method, inForce]);
  return (
    <div class="score">
      {systems.map((system, i) => (
        <System
          key={`${section.id} ${system.bath}`}
          system={system}
          name={system.bath === null ? section.title : lateWords.value.score.bath(system.bath)}
          captioned={systems.length > 1}
          first={i === 0}
          last={i === systems.length - 1}
          elapsed={elapsed}
        />
      ))}
    </div>
  );
}

interface SystemProps {
  readonly system: ScoreSystem;
  readonly name: string;
  readonly captioned: boolean;
  readonly first: boolean;
  readonly last: boolean;
  readonly elapsed: ReadonlySignal<number | null>;
}

function System({ system, name, captioned, first, last, elapsed }: SystemProps) {
  const { lanes, stretches } = system;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must scroll by keyboard too.
    <section class="system" aria-label={lateWords.value.score.region(name)} tabIndex={0}>
      {captioned && <h3>{name}</h3>}
      <div
        class={system.bath === null ? "lines" : "lines hands"}
        role="img"
        aria-label={lateWords.value.score.picture(name)}
      >
        {stretches.map((stretch, i) => (
          <div
            key={stretch.from}
            class={`stretch ${stretch.kind}`}
            style={stretch.kind === "open" ? `--wide: ${Math.ceil(stretch.width)}` : undefined}
          >
            {stretch.kind === "open" ? (
              <Open stretch={stretch} lanes={lanes} pressed={first && i === 0} />
            ) : (
              <Folded stretch={stretch} lanes={lanes} />
            )}
            <Present stretch={stretch} elapsed={elapsed} />
            {last && i === stretches.length - 1 && <End lanes={lanes} />}
          </div>
        ))}
      </div>
    </section>
  );
}

type Lanes = ScoreSystem["lanes"];

interface OpenProps {
  readonly stretch: OpenStretch;
  readonly lanes: Lanes;
  /** Whether it opens with the press. */
  readonly pressed: boolean;
}

function Open({ stretch, lanes, pressed }: OpenProps) {
  const { width, words, ticks, notes, strokes } = stretch;
  const bar = lanes.words.bottom;
  const top = Math.min(lanes.tones.top, ...words.map((word) => word.y)) - 2;
  const height = lanes.clock.bottom - top;
  const hands = lanes.hands.top < 0;
  const foot = lanes.clock.top + 6 + lineHeight;
  return (
    // Widths are whole units on the page, so that no hairline parts the stretches; the drawing is
    // pulled out to fit, by less than can be seen.
    <svg
      viewBox={`0 ${top} ${width} ${height}`}
      preserveAspectRatio="none"
      style={`--high: ${height}`}
      aria-hidden="true"
    >
      {hands && <path class="floor" d={`M0 0H${width}`} />}
      {ticks.length > 0 && <path class="ledger" d={`M0 ${lanes.tones.bottom}H${width}`} />}
      {pressed && hands && <Press lanes={lanes} foot={foot} />}
      {/* In a frame of its own, which cuts off a swing that the next stretch goes on with. */}
      <svg
        x={0}
        y={lanes.hands.top}
        width={width}
        height={-lanes.hands.top}
        viewBox={`0 ${lanes.hands.top} ${width} ${-lanes.hands.top}`}
        aria-hidden="true"
      >
        <Bath strokes={strokes} />
      </svg>
      {ticks.map((tick) => (
        <Sign key={tick.cue} tick={tick} y={lanes.tones.bottom} />
      ))}
      {words.map((word) => (
        <Flag key={word.cue} word={word} bar={bar} />
      ))}
      <Border stretch={stretch} y={lanes.clock.top} />
      {notes.map(({ moment, x, name, row, clock }) => (
        <g key={moment}>
          {name && (
            <text class="name" x={x} y={lanes.names.top + (row + 0.75) * lineHeight}>
              {name}
            </text>
          )}
          {clock && (
            <text class="clock" x={x} y={foot}>
              {clock}
            </text>
          )}
        </g>
      ))}
    </svg>
  );
}

function Press({ lanes, foot }: { readonly lanes: Lanes; readonly foot: number }) {
  return (
    <g>
      <path class="solid" d={`M0 ${lanes.tones.bottom - 16}h14l-7 12z`} />
      <text class="name" x={0} y={lanes.names.top + 0.75 * lineHeight}>
        {lateWords.value.score.press}
      </text>
      <text class="clock" x={0} y={foot}>
        0:00
      </text>
    </g>
  );
}

/** The double bar: from here on it waits for a press. */
function End({ lanes }: { readonly lanes: Lanes }) {
  const top = lanes.tones.top;
  const foot = lanes.clock.top + 6;
  const height = lanes.clock.bottom - top;
  return (
    <svg
      class="end"
      viewBox={`0 ${top} 14 ${height}`}
      style={`--high: ${height}`}
      aria-hidden="true"
    >
      <path d={`M3 ${top}V${foot}`} />
      <path class="thick" d={`M10 ${top}V${foot}`} />
    </svg>
  );
}
