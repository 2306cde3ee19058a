// One question of Work out: what is asked at the left of its rule, what is given and answered to the
// right, and a drawing beside it where the screen is wide.
import type { ComponentChildren } from "preact";

interface QuestionProps {
  readonly id: string;
  readonly asks: string;
  /** A drawing, to stand beside on a wide screen and below on a narrow one. */
  readonly beside?: ComponentChildren;
  readonly children: ComponentChildren;
}

export function Question({ id, asks, beside, children }: QuestionProps) {
  return (
    <section class="question" aria-labelledby={`asks-${id}`}>
      <h2 id={`asks-${id}`}>{asks}</h2>
      <div class="given">{children}</div>
      {beside && <div class="beside">{beside}</div>}
    </section>
  );
}
