// How to read the score: each of its signs with what it stands for.
import type { ComponentChildren } from "preact";
import { lateWords } from "./language.ts";
import { Bath, Border, Flag, Sign } from "./score-marks.tsx";
import type { Tick } from "./score-shape.ts";
import type { LateWords } from "./words/words.ts";

/** Units around every sign. */
const [WIDE, HIGH] = [92, 72];

const tick = (kind: Tick["kind"], tone: string, x: number): Tick => ({ cue: 0, kind, tone, x });

type Key = keyof LateWords["score"]["keys"];

const signsOf = ({
  example,
}: LateWords["score"]): readonly (readonly [Key, ComponentChildren])[] => [
  [
    "words",
    <Flag
      key="words"
      bar={-6}
      word={{ cue: 0, x: 6, spoken: 44, lines: [example.words], y: -42 }}
    />,
  ],
  ["count", [10, 24, 38].map((x) => <Sign key={x} tick={tick("count-in", "count", x)} y={-20} />)],
  [
    "moment",
    [
      <Sign key="in" tick={tick("now", "pour-in", 6)} y={-16} />,
      <Sign key="out" tick={tick("now", "pour-out", 40)} y={-16} />,
      <Sign key="move" tick={tick("now", "agitate", 76)} y={-16} />,
    ],
  ],
  [
    "beats",
    [8, 25, 42, 59].map((x, i) => (
      <Sign key={x} tick={tick("beat", i % 2 === 0 ? "over" : "back", x)} y={-18} />
    )),
  ],
  [
    "rest",
    [
      <Sign key="rest" tick={tick("now", "rest", 20)} y={-24} />,
      <Sign key="alive" tick={tick("confirm", "confirm", 50)} y={-28} />,
    ],
  ],
  [
    "water",
    <Bath
      key="water"
      strokes={[
        { kind: "rise", from: 0, to: 34 },
        { kind: "swing", from: 34, to: 64 },
        { kind: "level", from: 64, to: WIDE },
      ]}
    />,
  ],
  [
    "fold",
    [
      <Bath
        key="fold"
        strokes={[
          { kind: "level", from: 0, to: 22 },
          { kind: "level", from: 64, to: WIDE },
        ]}
      />,
      <text key="length" class="name" x={27} y={-20}>
        {example.fold}
      </text>,
    ],
  ],
  [
    "clock",
    <Border
      key="clock"
      y={-26}
      stretch={{
        kind: "open",
        from: 0,
        to: 20,
        scale: 4,
        width: 80,
        words: [],
        ticks: [],
        notes: [],
        strokes: [],
      }}
    />,
  ],
];

/** @param open from the start, as on paper, where nothing can be opened. */
export function ScoreKey({ open = false }) {
  return (
    <details class="score-key" open={open}>
      <summary>{lateWords.value.score.key}</summary>
      <ul class="score">
        {signsOf(lateWords.value.score).map(([key, sign]) => (
          <li key={key}>
            <svg viewBox={`0 ${-HIGH} ${WIDE} ${HIGH + 4}`} aria-hidden="true">
              {sign}
            </svg>
            {lateWords.value.score.keys[key]}
          </li>
        ))}
      </ul>
    </details>
  );
}
