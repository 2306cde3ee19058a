// A page turner, a pedal or any other button, learnt before a run by pressing it: what was learnt in words,
// a trial of it, and a way to have it forgotten. While keys are taken, Escape and time always end it.
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { KeyMoment, Pedal } from "../live/pedal.ts";
import { steadyClock } from "../live/steady-clock.ts";
import type { Clock } from "../live/synthesiser.ts";
import { lateWords } from "./language.ts";
import {
  openPedalLearner,
  type PedalLearner,
  type PedalLearning,
  type ToldOfPedal,
} from "./pedal-learning.ts";
import type { Pedals } from "./pedals.ts";
import "./hands.css";

interface LearnPedalProps {
  readonly pedals: Pedals;
  readonly clock?: Clock;
}

export function LearnPedal({ pedals, clock = steadyClock }: LearnPedalProps) {
  const learner = useMemo(() => openPedalLearner(pedals, clock), [pedals, clock]);
  const words = lateWords.value.pedal;
  const state = learner.state.value;
  const all = pedals.all.value;
  const taker = useTaker(learner, state.kind);
  useEffect(() => learner.stop, [learner]);
  const [gone, setGone] = useState<Pedal | null>(null);
  const isBack = gone === null && state.kind === "resting" && state.told === "forgotten";
  const undo = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (gone !== null) undo.current?.focus();
  }, [gone]);

  function forget(pedal: Pedal): void {
    learner.forget(pedal);
    setGone(pedal);
  }

  function bringBack(pedal: Pedal): void {
    pedals.learn([pedal]);
    setGone(null);
  }

  return (
    <details class="pedal" onToggle={learner.stop}>
      <summary>{words.name}</summary>
      <p>{words.hint}</p>
      {all.length > 0 && (
        <>
          <ul aria-label={words.known}>
            {all.map((pedal) => (
              <li key={`${pedal.code} ${pedal.key}`}>
                <span>{words[pedal.holds ? "holds" : "taps"](keyName(pedal))}</span>
                <button type="button" onClick={() => forget(pedal)}>
                  {words.forget(keyName(pedal))}
                </button>
              </li>
            ))}
          </ul>
          <p>{words.keyboard}</p>
        </>
      )}
      <div class="pedal-acts">
        <button type="button" onClick={learner.capture}>
          {words.learn}
        </button>
        {all.length > 0 && (
          <button type="button" onClick={learner.try}>
            {words.try}
          </button>
        )}
      </div>
      {/* A screen reader hands all keys to an application, and few to the page around it. */}
      <div
        ref={taker}
        tabIndex={-1}
        {...(state.kind !== "resting" && {
          class: "pedal-taker",
          role: "application",
          "aria-label": asks(state.kind),
        })}
      >
        {state.kind !== "resting" && <p aria-hidden="true">{asks(state.kind)}</p>}
      </div>
      <p role="status" class="pedal-told">
        {isBack ? null : told(state)}
      </p>
      {gone !== null && (
        <button ref={undo} type="button" onClick={() => bringBack(gone)}>
          {lateWords.value.write.undo}
          <span class="unseen"> {keyName(gone)}</span>
        </button>
      )}
    </details>
  );
}

/** Takes keys before anything else on the page does, for as long as they are wanted. */
function useTaker(learner: PedalLearner, kind: PedalLearning["kind"]) {
  const taker = useRef<HTMLDivElement>(null);
  const opener = useRef<Element | null>(null);
  useEffect(() => {
    if (kind === "resting") return;
    const it = taker.current;
    opener.current = document.activeElement;
    it?.focus();
    it?.addEventListener("blur", learner.stop);
    return () => {
      it?.removeEventListener("blur", learner.stop);
      // Else the focus has gone elsewhere already, by the person's own doing.
      if (document.activeElement === it && opener.current instanceof HTMLElement)
        opener.current.focus();
    };
  }, [kind, learner]);
  useEffect(() => {
    // What ends it may still be down, or send itself again: until it is up it is kept from the page.
    const held = new Set<string>();
    function take(event: KeyboardEvent): void {
      const kind = event.type === "keyup" ? "up" : "down";
      const { code, key, repeat, timeStamp } = event;
      const id = `${code} ${key}`;
      const moment: KeyMoment = { kind, code, key, repeat, at: timeStamp / 1000 };
      const withOther = event.ctrlKey || event.altKey || event.metaKey;
      const isTaken = !withOther && learner.key(moment);
      const wasTaken = kind === "up" ? held.delete(id) : repeat && held.has(id);
      if (!isTaken && !wasTaken) return;
      if (kind === "down") held.add(id);
      event.preventDefault();
      event.stopPropagation();
    }
    window.addEventListener("keydown", take, true);
    window.addEventListener("keyup", take, true);
    return () => {
      window.removeEventListener("keydown", take, true);
      window.removeEventListener("keyup", take, true);
    };
  }, [learner]);
  return taker;
}

const asks = (kind: "capturing" | "trying"): string =>
  lateWords.value.pedal[kind === "capturing" ? "capture" : "trying"];

function told(state: PedalLearning): string {
  const words = lateWords.value.pedal;
  switch (state.kind) {
    case "resting":
      return toldAtRest(state.told);
    case "capturing":
      if (state.refused !== null) return words.refused[state.refused];
      return state.heard > 0 ? words.again : "";
    case "trying":
      return state.meaning === null ? "" : words.meanings[state.meaning];
  }
}

function toldAtRest(told: ToldOfPedal): string {
  const words = lateWords.value.pedal;
  switch (told) {
    case null:
      return "";
    case "moves":
    case "modifier":
    case "nameless":
      return words.refused[told];
    default:
      return words[told];
  }
}

/** As it is written on keyboards; what is on none, as browsers call it. */
function keyName({ code, key }: Pedal): string {
  const { keys } = lateWords.value.pedal;
  const names: { readonly [key: string]: string } = {
    " ": keys.space,
    Enter: keys.enter,
    PageUp: keys.pageUp,
    PageDown: keys.pageDown,
    ArrowUp: "↑",
    ArrowDown: "↓",
    ArrowLeft: "←",
    ArrowRight: "→",
    Unidentified: code,
  };
  return names[key] ?? (key.length === 1 ? key.toUpperCase() : key);
}
