// What taking a session along asks of the world, as a port: a file made beside the page, a link handed on.
import type { Worksheet } from "../plan/worksheet.ts";
import type { FileWish } from "../track/files.ts";
import type { Language } from "../units/language.ts";

export interface Making {
  /** `too-long`: longer than such a file can be. Rejects where it cannot be made here, or was cancelled. */
  readonly file: Promise<Blob | "too-long">;
  cancel(): void;
}

export interface TakePorts {
  /** @param told how far it is, from 0 to 1. */
  readonly make: (
    worksheet: Worksheet,
    wish: FileWish,
    told: (done: number) => void,
  ) => Promise<Making>;
  /** Has all that this session says unpacked before a file of it is asked for; returns the way to let it go. */
  readonly holdReady: (worksheet: Worksheet) => () => void;
  /** Whether a voice of the device speaks a language's runs, which no file can hold. */
  readonly deviceSpeaks: (language: Language) => Promise<boolean>;
  readonly saveFile: (name: string, content: Blob) => void;
  readonly print: () => void;
  /** ms since 1970, by the device's clock. */
  readonly now: () => number;
  /** The page's own address, without what stands behind its #. */
  readonly address: () => string;
  /** False where the browser would not. */
  readonly copy: (text: string) => Promise<boolean>;
  /** Null where the browser can hand nothing on. */
  readonly share: ((title: string, url: string) => Promise<void>) | null;
}
