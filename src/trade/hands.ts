// What a person's own hands take: times measured with water in, their middle and their spread out.
// Alone, because it is the one part of the trade that differs from hand to hand.
import { median } from "simple-statistics";

/** Both in seconds. */
export interface Pace {
  readonly median: number;
  /** Longest minus shortest. */
  readonly spread: number;
}

/** Times differ much from this part of the median on. Common practice, no source. */
const unevenPart = 0.3;

/** Seconds that no one's times are blamed for: a press alone is no surer. Common practice, no source. */
const unevenSeconds = 0.5;

/** Seconds below which a difference is the rounding of binary numbers, no more. */
const rounding = 1e-9;

/** The median, which one slip does not move, and the spread of times in seconds; null for none. */
export function paceOf(times: readonly number[]): Pace | null {
  if (times.length === 0) return null;
  return { median: median([...times]), spread: Math.max(...times) - Math.min(...times) };
}

/** Whether the times differ so much that three more would tell better. */
export function isUneven({ median, spread }: Pace): boolean {
  return spread > unevenPart * median + rounding && spread > unevenSeconds + rounding;
}
