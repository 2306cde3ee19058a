// By how much this device's loudspeaker or headphones play late: kept in this browser, not in the worksheet,
// since another device has others. A browser may refuse to keep it: then it holds until the page goes away.

/** Never throws on what is kept. */
export interface DelayStore {
  /** Seconds; 0 where nothing is kept, or nothing that could be a delay. */
  load(): number;
  /**
   * False where the browser would not keep it.
   * @param seconds from 0 to 1.
   */
  keep(seconds: number): boolean;
}

const KEY = "tankside-delay";
const MOST = 1;

/** @param storage asked for at each use, since a browser may throw by its very name. */
export function delayStore(storage: () => Storage): DelayStore {
  let here: number | null = null;

  function read(): unknown {
    try {
      return JSON.parse(storage().getItem(KEY) ?? "0");
    } catch {
      return 0;
    }
  }

  return {
    load() {
      if (here !== null) return here;
      const kept = read();
      return isDelay(kept) ? kept : 0;
    },
    keep(seconds) {
      if (!isDelay(seconds)) throw new Error(`${seconds} s is no delay to be kept.`);
      here = seconds;
      try {
        storage().setItem(KEY, JSON.stringify(seconds));
        return true;
      } catch {
        return false;
      }
    },
  };
}

function isDelay(kept: unknown): kept is number {
  return typeof kept === "number" && kept >= 0 && kept <= MOST;
}
