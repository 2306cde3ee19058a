// The address bar, in a browser: the place that it names, and the worksheet that a link may have brought in it.
import { type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { carriesWorksheet, type PlaceId, placeAt } from "./place.ts";

export interface Address {
  readonly place: ReadonlySignal<PlaceId>;
  /** What stood behind the # of a link; null where none came, or it has been dealt with. */
  readonly brought: Signal<string | null>;
}

/**
 * @param first the place where the address names none.
 * @param isBlack whether a run's screen alone may be shown.
 */
export function openAddress(first: PlaceId, isBlack: () => boolean): Address {
  const place = signal(placeAt(location.hash) ?? first);
  const brought = signal<string | null>(null);
  const stay = () => history.replaceState(null, "", `#${place.value}`);

  /** It is kept for the person to decide on, and the address is a place's again. */
  function keepBrought(): void {
    if (!carriesWorksheet(location.hash)) return;
    brought.value = location.hash;
    stay();
  }
  keepBrought();

  window.addEventListener("hashchange", () => {
    keepBrought();
    const next = placeAt(location.hash);
    // No way back leads out of the dark, where only a run's screen can be pressed; and what is turned about is
    // put on top, or the next one back would leave the page.
    if (isBlack() && next !== "lights-out") location.hash = "#lights-out";
    // Any other hash, as the skip link's, leaves the place as it is, and the address says so.
    else if (next === null) stay();
    else place.value = next;
  });
  return { place, brought };
}
