// The page's timers, each with the way to call it off.

export function after(ms: number, act: () => void): () => void {
  const timer = setTimeout(act, ms);
  return () => clearTimeout(timer);
}

/** Calls back every so many ms, until the returned function is called. */
export function every(ms: number): (show: () => void) => () => void {
  return (show) => {
    const timer = setInterval(show, ms);
    return () => clearInterval(timer);
  };
}
