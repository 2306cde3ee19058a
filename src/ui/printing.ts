// Whether the page is being printed: for what is drawn on paper and nowhere else.
import { useEffect, useState } from "preact/hooks";

/** Is true before the browser lays the page out for paper, whichever way printing was asked for. */
export function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const begin = () => setPrinting(true);
    const end = () => setPrinting(false);
    window.addEventListener("beforeprint", begin);
    window.addEventListener("afterprint", end);
    return () => {
      window.removeEventListener("beforeprint", begin);
      window.removeEventListener("afterprint", end);
    };
  }, []);
  return printing;
}
