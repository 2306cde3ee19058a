// A process as data: which steps stand before, between and after its baths, and what each tells. Types alone,
// apart from what is made of them, since an outline is read and written by people who know the trade.

import type { Deed } from "./moments.ts";

/** What film a step is for, and in what: the steps of other kinds are left out. */
export type Kind = "tank" | "open" | "tray" | "hanger" | "several";

export interface OutlineStep {
  readonly id: string;
  /** For these kinds alone; for all where it is absent. */
  readonly only?: readonly Kind[];
  /** Its sentences in order, the last of them asking for the press where no bath's own gate does. */
  readonly tells: readonly string[];
  /** Those of them that an old hand wants too; all where it is absent. */
  readonly brief?: readonly string[];
  /** Why, and how it is felt: told when asked for. */
  readonly more?: readonly string[];
  /** The film may jam in it. */
  readonly jams?: boolean;
  /** It lasts as long as the worksheet wants to wait in the dark, and closes with this sentence. */
  readonly waits?: string;
  /** After its press no light gets at the film. */
  readonly locks?: boolean;
  readonly dark: boolean;
}

/** A sentence to be told: its key, and its slots where it has any. */
export type Tell =
  | string
  | { readonly key: string; readonly slots: { readonly [slot: string]: string } };

export interface Outline {
  /** Up to where the film is taken out. */
  readonly before: readonly OutlineStep[];
  /** By kind of film, so that nobody is told about another's cassette. */
  readonly loading: { readonly [film in FilmKind]: readonly OutlineStep[] };
  /** In place of all that is told before the baths, where the film is behind a locked lid already. */
  readonly loaded: readonly OutlineStep[];
  /** From the loaded film to the first bath. */
  readonly closing: readonly OutlineStep[];
  /** Baths that run on in one section, since no one may wait between them. */
  readonly together: readonly (readonly string[])[];
  /** The bath after which film in an open tank may see light. */
  readonly fixedBy: string;
  readonly fromTheTap: readonly string[];
  /** The reasons of a learner: of a bath, by id, and of what the hands do. Told in rehearsals (rehearsal.ts). */
  readonly why: {
    readonly bath: { readonly [id: string]: string };
    readonly deed: { readonly [deed in Deed]?: string };
  };
  readonly after: readonly OutlineStep[];
}

export const filmKinds = ["135", "120", "sheet"] as const;
export type FilmKind = (typeof filmKinds)[number];

export function filmKind(size: string): FilmKind {
  if (size.startsWith("135")) return "135";
  return size.includes("x") ? "sheet" : "120";
}
