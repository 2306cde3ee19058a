// The top of the first screen: what this is in one sentence, ten seconds of it to hear, and the way
// to the run. The sound itself is a port.
import { useState } from "preact/hooks";
import { words } from "./language.ts";

export interface GreetingProps {
  /** Resolves when the last sound has died; rejects where none can be made. */
  readonly hearAPour: () => Promise<void>;
}

export function Greeting({ hearAPour }: GreetingProps) {
  const [heard, setHeard] = useState<"not-yet" | "now" | "not-at-all">("not-yet");

  async function hear(): Promise<void> {
    // Pressed twice, it plays once: two voices at a time teach nobody anything.
    if (heard === "now") return;
    setHeard("now");
    try {
      await hearAPour();
      setHeard("not-yet");
    } catch {
      setHeard("not-at-all");
    }
  }

  return (
    <div class="greeting">
      <p class="lead">{words.value.greeting.says}</p>
      <div class="firsts">
        <button type="button" class="first" onClick={hear}>
          {heard === "now" ? words.value.greeting.hearing : words.value.greeting.hear}
          <span>{words.value.greeting.hearHint}</span>
        </button>
        <a class="first" href="#lights-out">
          {words.value.greeting.begin}
          <span>{words.value.greeting.beginHint}</span>
        </a>
      </div>
      <p role="status">{heard === "not-at-all" && words.value.greeting.notHeard}</p>
    </div>
  );
}
