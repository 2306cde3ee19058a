// A talk of Work out by ear as tests lead it: where it stands, what is pressed, what the page makes of the same.
import type { EarField, Saying } from "../../src/ui/by-ear-field.ts";
import { type Act, isField, stopsOf, type Talk } from "../../src/ui/by-ear-lines.ts";
import { acted, startOfTalk } from "../../src/ui/by-ear-model.ts";
import { choosable } from "../../src/ui/by-ear-said.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { gullrock } from "../plan/worksheets.ts";
import { english } from "../timeline/scene.ts";
import { world } from "./ports.ts";

export const draft = draftOf(gullrock);
export const fieldsOf = (of: Draft): readonly EarField[] =>
  stopsOf(of).filter((stop) => isField(stop));
export const inWords = (sayings: readonly Saying[]) =>
  sayings.flatMap(({ key, slots }) => english.say(key, "full", slots)).join(" ");
export const at = (path: string, of = draft): Talk => {
  const place = stopsOf(of).findIndex((stop) => isField(stop) && stop.path === path);
  if (place < 0) throw new Error(`there is no ${path}`);
  return { ...startOfTalk, at: place };
};
export const field = (path: string, of = draft) => stopsOf(of)[at(path, of).at] as EarField;

/** What a row of acts comes to. */
export function comesTo(talk: Talk, acts: readonly Act[], start = draft) {
  return acts.reduce(
    (so, act) => {
      const next = acted(so.talk, act, so.draft);
      return { talk: next.talk, draft: next.draft ?? so.draft };
    },
    { talk, draft: start },
  );
}
export const typing = (text: string): readonly Act[] => [
  { kind: "change" },
  ...[...text].map((sign): Act => ({ kind: "type", sign })),
  { kind: "set" },
];

/** Chooses a value as a press does that comes when it is told. */
export const choosing = (each: EarField, value: string): readonly Act[] => [
  { kind: "change" },
  { kind: "take", value: choosable(each).findIndex((one) => one.value === value) },
];

/** What the screen's own field makes of the same. */
export function onScreen(start: Draft, act: (page: ReturnType<typeof makeWorkOut>) => void): Draft {
  const page = makeWorkOut(start, null, world().ports);
  act(page);
  return page.draft.value;
}
