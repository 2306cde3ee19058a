// What is shown of something that changes by itself: looked at again and again, each time only when it may have
// changed, so that an hour of looking costs little.
import { useEffect } from "preact/hooks";

/** Calls once, so many ms from now; returns the way to call it off. */
export type After = (ms: number, act: () => void) => () => void;

/**
 * @param wait ms until the next look, asked for before each.
 * @param of the looks begin anew where any of these is another.
 */
export function useLooks(
  after: After,
  wait: () => number,
  look: () => void,
  of: readonly unknown[],
): void {
  useEffect(() => {
    let callOff = () => {};
    const begin = () => {
      callOff = after(wait(), again);
    };
    const again = () => {
      look();
      begin();
    };
    begin();
    return () => callOff();
  }, [after, ...of]);
}
