// Work out by ear: a sheet that asks for the fields of the worksheet one after another, in the voice of the page's
// language, by one key or by all. What is said and done stands in by-ear-model.ts; here it is spoken.
import type { ComponentType } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { VoiceSounds } from "../live/voice-sounds.ts";
import type { Script } from "../script/script.ts";
import { languageNames } from "../units/language.ts";
import type { EarField } from "./by-ear-field.ts";
import { actOfKey, goesWithOthers } from "./by-ear-keys.ts";
import { type Act, fieldOf, gateOf, linesOf, stopsOf, type Talk } from "./by-ear-lines.ts";
import { acted, startOfTalk, thenOf } from "./by-ear-model.ts";
import { choosable, chosenOf } from "./by-ear-said.ts";
import { phrasesOf, useTold } from "./by-ear-told.ts";
import { type Draft, rowCount } from "./draft.ts";
import { optionsOf } from "./field.tsx";
import { nameOf } from "./field-names.ts";
import { kindOf } from "./fields.ts";
import { language, lateWords, words } from "./language.ts";
import { sheetLanguage } from "./sheet-language.ts";
import { isOnOther, pressOf, WetDialog } from "./wet-dialog.tsx";
import { useWorkOut } from "./work-out-context.ts";

export interface ByEarPorts {
  readonly sounds: VoiceSounds;
  readonly after: (ms: number, act: () => void) => () => void;
  readonly toLightsOut: () => void;
}

export function byEarWith(ports: ByEarPorts): ComponentType {
  return function ByEar() {
    const [script, setScript] = useState<Script | "opening" | "lost" | null>(null);
    async function open(): Promise<void> {
      setScript("opening");
      setScript(await ports.sounds.script(language.value, "ear").catch(() => "lost" as const));
    }
    return (
      <div class="by-ear">
        <button type="button" data-enter aria-keyshortcuts="Enter" onClick={open}>
          {lateWords.value.byEar.open}
        </button>
        <p role="status">{script === "lost" && lateWords.value.byEar.notHeard}</p>
        {script !== null && typeof script !== "string" && (
          <Asking ports={ports} script={script} leave={() => setScript(null)} />
        )}
      </div>
    );
  };
}

interface AskingProps {
  readonly ports: ByEarPorts;
  readonly script: Script;
  readonly leave: () => void;
}

function Asking({ ports, script, leave }: AskingProps) {
  const workOut = useWorkOut();
  const [talk, setTalk] = useState<Talk>(startOfTalk);
  const main = useRef<HTMLButtonElement>(null);
  /** Whether the last sign came by a key of its own: then the space bar is one of them, and no press. */
  const byKeys = useRef(false);
  const latest = useRef(talk);
  latest.current = talk;
  useLayoutEffect(() => main.current?.focus(), []);

  function act(what: Act): void {
    stop();
    if (what.kind === "run") {
      leave();
      ports.toLightsOut();
      return;
    }
    const { talk: next, draft } = acted(latest.current, what, workOut.draft.value);
    if (draft !== null) workOut.put(draft, null);
    latest.current = next;
    setTalk(next);
  }

  const { told, offered, passBy, stop } = useTold(ports, script, talk, {
    lines: () => linesOf(talk, workOut.draft.value, workOut.plan.value, lettersOf(script)),
    over() {
      const then = thenOf(talk, workOut.draft.value);
      if (then !== null) act(then);
    },
  });

  function press(): void {
    const offers = offered();
    byKeys.current = false;
    if (offers === null) passBy();
    else act(offers);
  }

  const draft = workOut.draft.value;
  const field = fieldOf(talk, draft);
  const said = lateWords.value.byEar;
  return (
    <WetDialog
      label={said.name}
      leave={leave}
      keys={(event) => {
        if (goesWithOthers(event.key)) return false;
        const told = offered();
        const value = told?.kind === "take" ? told.value : null;
        const field = fieldOf(talk, workOut.draft.value);
        const does = actOfKey(event.key, talk, field, { byKeys: byKeys.current, told: value });
        if (does !== null) {
          byKeys.current = does.kind === "type" || does.kind === "delete";
          act(does);
          return true;
        }
        if (event.key === "Tab" || isOnOther(event, main.current)) return false;
        if (!event.repeat) press();
        return true;
      }}
    >
      <div class="ear-sheet">
        <h2 class="wet-title">{said.name}</h2>
        <button ref={main} type="button" class="ear-press" {...pressOf(press)}>
          <span>{titleOf(talk, draft)}</span>
          <span class="ear-value">
            {talk.typed ?? (field === null ? "" : shownOf(field, draft))}
          </span>
          <span lang={script.source.language}>
            {told === null ? "" : phrasesOf(told, script).join(" ")}
          </span>
        </button>
        <p class="hint">{said.hint}</p>
        <div class="ear-row">
          <button type="button" {...pressOf(() => act({ kind: "previous" }))}>
            {said.previous}
          </button>
          <button type="button" {...pressOf(() => act({ kind: "next" }))}>
            {said.next}
          </button>
          <button type="button" onClick={leave}>
            {said.close}
          </button>
        </div>
      </div>
    </WetDialog>
  );
}

/** Where a talk stands, as the page calls it. */
function titleOf(talk: Talk, draft: Draft): string {
  const field = fieldOf(talk, draft);
  const gate = gateOf(stopsOf(draft)[talk.at]);
  if (field !== null) return nameOf(field.path);
  if (gate === null) return lateWords.value.byEar.end;
  const { more } = words.value;
  const besideBaths = (["tank", "mixing", "tempering", "contrast"] as const).find(
    (it) => it === gate,
  );
  return besideBaths === undefined ? more.bath(gate) : more[besideBaths];
}

/** Every letter that the script has a name for. */
const lettersOf = ({ source }: Script): readonly string[] =>
  Object.keys(source.slots.letter ?? {}).filter((sign) => sign.length === 1);

/** What a field holds, as the page shows it. */
function shownOf(field: EarField, draft: Draft): string {
  const { path, takes } = field;
  if (takes.kind === "rows") return String(rowCount(draft, takes.list));
  const chosen = choosable(field)[chosenOf(field, draft)]?.value;
  if (path === "language") return languageNames[sheetLanguage(draft)];
  if (kindOf(path) === "use") return chosen === "yes" ? "✓" : "–";
  // There is but one, and the line that is told names it.
  if (path === "process") return "";
  const shown = optionsOf(path).find(([value]) => value === chosen)?.[1];
  return shown ?? draft[path] ?? "";
}
