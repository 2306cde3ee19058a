// A part of the page that is fetched when it is first shown, so that the first screen does not wait for it.
import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { words } from "./language.ts";

/** Fetched once a page, however often it is shown; nothing stands in its place until it is there. */
export function late<Props extends object>(
  fetch: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  let fetched: Promise<ComponentType<Props>> | null = null;
  return function Late(props: Props) {
    const [part, setPart] = useState<{ readonly Part: ComponentType<Props> } | "failed" | null>(
      null,
    );
    const [attempt, setAttempt] = useState(0);
    useEffect(() => {
      let shown = true;
      fetched ??= fetch();
      fetched.then(
        (Part) => shown && setPart({ Part }),
        () => {
          fetched = null;
          if (shown) setPart("failed");
        },
      );
      return () => {
        shown = false;
      };
    }, [attempt]);
    if (part === "failed") {
      return (
        <p>
          {words.value.latePart.notFetched}{" "}
          <button type="button" onClick={() => setAttempt(attempt + 1)}>
            {words.value.frame.again}
          </button>
        </p>
      );
    }
    return part && <part.Part {...props} />;
  };
}
