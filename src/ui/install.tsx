// A browser's offer to put the page among the device's programs, in; one line in the colophon out, for as long
// as the offer holds.
import type { Signal } from "@preact/signals";
import type { ComponentType } from "preact";
import { lateWords } from "./language.ts";

/** The event by which a browser offers it; it may be used once. */
export interface InstallOffer extends Event {
  prompt(): Promise<unknown>;
}

export function installWith(offer: Signal<InstallOffer | null>): ComponentType {
  return function Install() {
    const offered = offer.value;
    if (offered === null) return null;
    return (
      <p class="install">
        {lateWords.value.install.offer}{" "}
        <button
          type="button"
          onClick={() => {
            offer.value = null;
            // Answered in the browser's own window; it offers anew where it was declined.
            void offered.prompt().catch(() => {});
          }}
        >
          {lateWords.value.install.install}
        </button>
      </p>
    );
  };
}
