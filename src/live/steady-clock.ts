// The page's own clock: the steady one, in seconds, with its timers.
import type { Clock } from "./synthesiser.ts";

export const steadyClock: Clock = {
  now: () => performance.now() / 1000,
  after(seconds, act) {
    const timer = setTimeout(act, seconds * 1000);
    return () => clearTimeout(timer);
  },
};
