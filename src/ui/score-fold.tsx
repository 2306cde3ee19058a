// A fold of the score: its length, and as much of the bath to either side as the line has room for.
import { Bath } from "./score-marks.tsx";
import type { FoldedStretch, ScoreSystem, Stroke } from "./score-shape.ts";

type Lanes = ScoreSystem["lanes"];

export function Folded({
  stretch,
  lanes,
}: {
  readonly stretch: FoldedStretch;
  readonly lanes: Lanes;
}) {
  return (
    <>
      <Side strokes={stretch.begins} of="xMin" lanes={lanes} />
      <span style={`--foot: ${lanes.clock.bottom - lanes.hands.top / 2}`}>{stretch.length}</span>
      <Side strokes={stretch.ends} of="xMax" lanes={lanes} />
    </>
  );
}

interface SideProps {
  readonly strokes: readonly Stroke[];
  /** The edge that x is counted from. */
  readonly of: "xMin" | "xMax";
  readonly lanes: Lanes;
}

/** As much of the bath as there is room for: a view one unit wide, and what lies beside it in sight. */
function Side({ strokes, of, lanes }: SideProps) {
  const { top } = lanes.hands;
  const height = lanes.clock.bottom - top;
  return (
    <svg
      viewBox={`${of === "xMin" ? 0 : -1} ${top} 1 ${height}`}
      preserveAspectRatio={`${of}YMax meet`}
      style={`--high: ${height}`}
      aria-hidden="true"
    >
      {top < 0 && <path class="floor" d="M-999 0H999" />}
      <Bath strokes={strokes} />
    </svg>
  );
}
