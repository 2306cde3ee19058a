// Keeps the screen from sleeping, or lets it, in a browser: a run in the light is to be seen, and in the dark the
// sooner the screen goes off, the better. One for the page's life.

let awake = false;
let lock: Promise<WakeLockSentinel | null> | null = null;

export function keepAwake(on: boolean): void {
  awake = on;
  void lock?.then((held) => held?.release());
  lock = on ? (navigator.wakeLock?.request("screen").catch(() => null) ?? null) : null;
}

// Browsers let a lock go when the page is hidden, so it is asked for again when it comes back.
document.addEventListener("visibilitychange", () => {
  if (awake && document.visibilityState !== "hidden") keepAwake(true);
});
