// The page around every place: the mark, the four places, and room for the one that is open. Work out
// comes with the page; the others are fetched when first opened.
import type { ReadonlySignal } from "@preact/signals";
import type { ComponentType } from "preact";
import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import type { LanguageStore } from "../logbook/language-store.ts";
import { directionOf } from "./direction.ts";
import { followEnter } from "./enter-key.ts";
import { language, words } from "./language.ts";
import { LanguageChoice } from "./language-choice.tsx";
import { Mark } from "./mark.tsx";
import { type PlaceId, type PlaceProps, placeIds } from "./place.ts";
import { WorkOutPlace, type WorkOutPlaceProps } from "./work-out.tsx";

type LaterPlace = Exclude<PlaceId, "work-out">;
/** Fetches a place's screen. */
export type Fetches = { readonly [id in LaterPlace]: () => Promise<ComponentType<PlaceProps>> };

interface FrameProps extends WorkOutPlaceProps {
  readonly place: ReadonlySignal<PlaceId>;
  readonly fetches: Fetches;
  readonly languageStore: LanguageStore;
  /** A newer version, told of in the masthead. */
  readonly News?: ComponentType;
  /** A worksheet that came with the page's address. */
  readonly Brought?: ComponentType;
  /** The offer to install the page, in the colophon. */
  readonly Install?: ComponentType;
  /** What is promised of accessibility, behind a fold of the colophon. */
  readonly Statement?: ComponentType;
}

export function Frame(props: FrameProps) {
  const { place, fetches, languageStore, News, Brought, Install, Statement, ...workOutProps } =
    props;
  const here = place.value;
  const [read, setRead] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const arrived = useRef(here);
  const title = words.value.frame.title(words.value.places[here].name);
  useEffect(() => {
    document.title = title;
    // Whoever listens to the page, or moves by keyboard, goes along; but not when the page first opens.
    if (arrived.current !== here) heading.current?.focus();
    arrived.current = here;
  }, [here, title]);
  useEffect(followEnter, []);
  const spoken = language.value;
  useLayoutEffect(() => {
    document.documentElement.lang = spoken;
    document.documentElement.dir = directionOf(spoken);
  }, [spoken]);
  return (
    <div class="frame">
      <a class="skip" href="#page">
        {words.value.frame.skip}
      </a>
      <header class="masthead">
        <p class="name">
          <Mark />
          {words.value.frame.program}
        </p>
        <LanguageChoice store={languageStore} workOut={workOutProps.workOut} />
        <nav class="places" aria-label={words.value.frame.places}>
          <ul>
            {placeIds.map((id) => (
              <li key={id}>
                <a href={`#${id}`} aria-current={id === here ? "page" : undefined}>
                  <b class="place-name">{words.value.places[id].name}</b>
                  <span>{words.value.places[id].hint}</span>
                </a>
              </li>
            ))}
          </ul>
        </nav>
        {News && <News />}
        {Brought && <Brought />}
      </header>
      <main id="page" class="place" tabIndex={-1}>
        <h1 ref={heading} tabIndex={-1}>
          {words.value.places[here].name}
        </h1>
        {here === "work-out" ? (
          <WorkOutPlace {...workOutProps} />
        ) : (
          <Later
            key={here}
            fetch={fetches[here]}
            worksheet={workOutProps.workOut.worksheet}
            plan={workOutProps.workOut.plan}
          />
        )}
      </main>
      <footer class="colophon">
        <p>{words.value.frame.colophon}</p>
        {Statement && (
          <details onToggle={(event) => setRead(event.currentTarget.open)}>
            <summary>{words.value.frame.accessibility}</summary>
            {read && <Statement />}
          </details>
        )}
        {Install && <Install />}
      </footer>
    </div>
  );
}

type Fetched =
  | { readonly kind: "on-its-way" }
  | { readonly kind: "here"; readonly Place: ComponentType<PlaceProps> }
  | { readonly kind: "lost" };

function Later({ fetch, worksheet, plan }: PlaceProps & { readonly fetch: Fetches[LaterPlace] }) {
  const [fetched, setFetched] = useState<Fetched>({ kind: "on-its-way" });
  function begin(): void {
    setFetched({ kind: "on-its-way" });
    fetch().then(
      (Place) => setFetched({ kind: "here", Place }),
      () => setFetched({ kind: "lost" }),
    );
  }
  useEffect(begin, [fetch]);
  switch (fetched.kind) {
    case "here":
      return <fetched.Place worksheet={worksheet} plan={plan} />;
    case "on-its-way":
      return <p role="status">{words.value.frame.opening}</p>;
    case "lost":
      return (
        <div role="alert">
          <p>{words.value.frame.notOpened}</p>
          <button type="button" onClick={begin}>
            {words.value.frame.again}
          </button>
        </div>
      );
  }
}
