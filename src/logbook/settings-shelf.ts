// The choices of this device (its language, its pedals, who speaks …) as one thing that a file can hold. Each store
// reads its own and passes over what it does not understand, so here they are texts under names.
import { isObject } from "../units/object.ts";

export type Settings = { readonly [name: string]: string };

/** What is no choice, as that a run is on, is not among them. */
const names = [
  "tankside-language",
  "tankside-delay",
  "tankside-pedals",
  "tankside-speaker",
  "tankside-senses",
];
/** How a voice of the device was measured, by its name. */
const PACE = "tankside-pace-";
const LONGEST = 10_000;

const isOurs = (name: string): boolean => names.includes(name) || name.startsWith(PACE);

export interface SettingsShelf {
  /** Never throws: none where the browser keeps nothing. */
  all(): Settings;
  /** What has been chosen here already stays; false where the browser would not keep the rest. */
  add(settings: Settings): boolean;
  /** Takes out those that are still as given; false where the browser would not. */
  remove(settings: Settings): boolean;
}

/** @param storage asked for at each use, since a browser may throw by its very name. */
export function settingsShelf(storage: () => Storage): SettingsShelf {
  return {
    all() {
      try {
        const kept = storage();
        const found = Array.from({ length: kept.length }, (_, i) => kept.key(i) ?? "");
        return Object.fromEntries(
          found
            .filter(isOurs)
            .sort()
            .map((name) => [name, kept.getItem(name) ?? ""]),
        );
      } catch {
        return {};
      }
    },
    add(settings) {
      try {
        const kept = storage();
        for (const [name, text] of Object.entries(settings))
          if (kept.getItem(name) === null) kept.setItem(name, text);
        return true;
      } catch {
        return false;
      }
    },
    remove(settings) {
      try {
        const kept = storage();
        for (const [name, text] of Object.entries(settings))
          if (kept.getItem(name) === text) kept.removeItem(name);
        return true;
      } catch {
        return false;
      }
    },
  };
}

/** The name of the first that is none of ours, or holds no text; null: all can be used. */
export function faultInSettings(held: unknown): string | null {
  if (!isObject(held)) return "";
  const odd = Object.entries(held).find(
    ([name, text]) => !isOurs(name) || typeof text !== "string" || text.length > LONGEST,
  );
  return odd?.[0] ?? null;
}
