// Lines of a talk in, each spoken with its pause behind it, until they are over or one is passed by. Apart from
// the sheet, which only shows what is told.
import { useEffect, useRef, useState } from "preact/hooks";
import { CHOOSING } from "../live/rest.ts";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import type { Script } from "../script/script.ts";
import type { Act, Line, Talk } from "./by-ear-lines.ts";
import { language } from "./language.ts";

/** After words that offer nothing, ms. */
const BREATH = 350;

interface ToldPorts {
  readonly sounds: VoiceSounds;
  readonly after: (ms: number, act: () => void) => () => void;
}

interface ToldParts {
  readonly lines: () => readonly Line[];
  /** All of them were told. */
  readonly over: () => void;
}

export interface Told {
  /** What is or was told last. */
  readonly told: Line | null;
  /** What a press does now; null where nothing is offered. */
  offered(): Act | null;
  /** Goes on to the next line at once. */
  passBy(): void;
  /** Ends the telling: another talk is to come, or none. */
  stop(): void;
}

interface Telling {
  readonly offers: Act | null;
  readonly pass: () => void;
}

const silence: Telling = { offers: null, pass() {} };

/** Tells the lines anew for each talk. */
export function useTold(
  { sounds, after }: ToldPorts,
  script: Script,
  talk: Talk,
  parts: ToldParts,
): Told {
  const [told, setTold] = useState<Line | null>(null);
  const now = useRef<Telling>(silence);
  const stop = useRef(() => {});

  useEffect(() => {
    let gone = false;
    stop.current = () => {
      gone = true;
      now.current.pass();
    };
    void tellAll();
    return stop.current;

    async function tellAll(): Promise<void> {
      for (const line of parts.lines()) {
        setTold(line);
        await tell(line);
        if (gone) return;
      }
      // The last offer stands for as long as nothing else comes.
      now.current = { ...now.current, pass() {} };
      parts.over();
    }

    /** Resolves when the line is over, its pause too, or was passed by. */
    function tell(line: Line): Promise<void> {
      return new Promise((resolve) => {
        let passed = false;
        let callOff = () => {};
        now.current = {
          offers: line.offers,
          pass() {
            passed = true;
            callOff();
            sounds.hush();
            resolve();
          },
        };
        void speak();

        async function speak(): Promise<void> {
          for (const text of phrasesOf(line, script)) {
            await sounds.say(text, language.value).catch(() => {});
            if (passed) return;
          }
          callOff = after(line.offers === null ? BREATH : CHOOSING * 1000, resolve);
        }
      });
    }
  }, [talk, script]);

  return {
    told,
    offered: () => now.current.offers,
    passBy: () => now.current.pass(),
    stop: () => stop.current(),
  };
}

export const phrasesOf = ({ says }: Line, script: Script): readonly string[] =>
  says.flatMap(({ key, slots }) => script.say(key, "full", slots));
