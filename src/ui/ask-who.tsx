// Who speaks the words of a run: asked in type, and by voice at a press, before the first one; what was answered
// stands there ever after, and can be changed. No screen reader is looked for: nobody is told apart by it.
import { useEffect, useRef, useState } from "preact/hooks";
import { CHOOSING } from "../live/rest.ts";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import { type WhoSpeaks, whoSpeaksIds } from "../voice/senses.ts";
import { language, lateWords } from "./language.ts";
import type { SensesChoice } from "./senses.ts";
import "./senses.css";

interface AskWhoProps {
  readonly senses: SensesChoice;
  readonly sounds: VoiceSounds;
  /** Then keys are presses of the run. */
  readonly isRunOn: boolean;
  readonly after: (ms: number, act: () => void) => () => void;
}

/** In this order asked, each with what a press takes while it is told: the number is the key. */
const questions = [
  { key: "who.ask", offers: null },
  { key: "who.program", offers: "program" },
  { key: "who.reader", offers: "reader" },
  { key: "who.tones", offers: "tones" },
] as const satisfies readonly { readonly key: string; readonly offers: WhoSpeaks | null }[];

export function AskWho({ senses, sounds, isRunOn, after }: AskWhoProps) {
  const { speaks } = senses.now.value;
  const [asking, setAsking] = useState(speaks === null);
  const [told, setTold] = useState<"nothing" | "not-heard" | "not-kept">("nothing");
  const answered = useRef<HTMLElement>(null);
  const hear = useRef<HTMLButtonElement>(null);
  /** Where the hand was goes away with the question, so it is led on; not as the place opens. */
  const turned = useRef(false);
  const playing = useRef(0);
  const offered = useRef<WhoSpeaks | null>(null);
  const words = lateWords.value.senses;

  function hush(): void {
    playing.current += 1;
    offered.current = null;
    sounds.hush();
  }
  useEffect(() => hush, [sounds]);

  function answer(next: WhoSpeaks): void {
    hush();
    setTold(senses.change({ speaks: next }) ? "nothing" : "not-kept");
    turned.current = true;
    setAsking(false);
  }

  async function ask(): Promise<void> {
    hush();
    const mine = playing.current;
    setTold("nothing");
    const spoken = language.value;
    try {
      const script = await sounds.script(spoken);
      for (const { key, offers } of questions) {
        for (const text of script.say(key, "full")) {
          if (mine !== playing.current) return;
          offered.current = offers;
          await sounds.say(text, spoken);
        }
        if (offers !== null) await new Promise<void>((over) => after(CHOOSING * 1000, over));
      }
    } catch {
      if (mine === playing.current) setTold("not-heard");
    }
  }

  useEffect(() => {
    if (turned.current) (asking ? hear : answered).current?.focus();
  }, [asking]);

  useEffect(() => {
    if (!asking || isRunOn) return;
    function pressed(event: KeyboardEvent): void {
      if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
      if (event.target instanceof Element && event.target.closest("input, select, textarea"))
        return;
      const chosen = whoSpeaksIds[Number(event.key) - 1];
      if (chosen === undefined) return;
      event.preventDefault();
      answer(chosen);
    }
    window.addEventListener("keydown", pressed);
    return () => window.removeEventListener("keydown", pressed);
  }, [asking, isRunOn]);

  return (
    <section class="ask-who" aria-label={words.title}>
      <h2>{words.title}</h2>
      {asking ? (
        <>
          <button
            type="button"
            ref={hear}
            data-enter
            onClick={() => {
              if (offered.current === null) void ask();
              else answer(offered.current);
            }}
          >
            {words.hear}
          </button>{" "}
          <span class="hint">{words.hearHint}</span>
          <ol>
            {whoSpeaksIds.map((id, i) => (
              <li key={id}>
                <button type="button" aria-pressed={speaks === id} onClick={() => answer(id)}>
                  <b>{i + 1}</b> {words.names[id]}
                </button>
                <span class="hint">{words.hints[id]}</span>
              </li>
            ))}
          </ol>
          <p class="hint">{words.why}</p>
        </>
      ) : (
        <section ref={answered} aria-label={words.names[speaks ?? "program"]} tabIndex={-1}>
          {words.names[speaks ?? "program"]}.{" "}
          <button
            type="button"
            onClick={() => {
              turned.current = true;
              setAsking(true);
            }}
          >
            {words.change}
          </button>
        </section>
      )}
      <p role="status">
        {told === "not-heard" && words.notHeard}
        {told === "not-kept" && lateWords.value.speaker.choiceNotKept}
      </p>
    </section>
  );
}
