// The command line: its words in; what it prints, and its exit status, out. A worksheet file becomes its plan,
// timeline, sheet, or a file to take along. One of the two places that wire the parts to the world; nothing is
// worked out here.
import { closeSync, openSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { wishOf } from "./cli-wish.ts";
import { type Fault, faultLine } from "./plan/faults.ts";
import { planOf } from "./plan/plan.ts";
import { readWorksheetText } from "./plan/read-worksheet.ts";
import { wordsIn } from "./plan/words/languages.ts";
import type { Worksheet } from "./plan/worksheet.ts";
import type { FileWish, Session } from "./track/files.ts";
import { usualGap } from "./track/track.ts";
import { spokenIn } from "./units/language.ts";

const usage = `Tankside, from a worksheet file (- for standard input):

  npm run --silent tankside -- plan FILE          the plan as JSON
  npm run --silent tankside -- timeline FILE      the timeline as JSON
  npm run --silent tankside -- sheet FILE         the timeline as text, 40 columns
  npm run --silent tankside -- render FILE OUT    the session as a file, by how OUT ends:
      .mp3 .wav    one track, its chapters and words with it
      .vtt .srt    its captions
      .ssml        what is spoken, for another voice
      .ics         an entry for a calendar; wants --at

  --gap SECONDS   render: the wait where a press would be, 0 to 3600 (default 60)
  --waits KIND    render: pass, the track goes on by itself after the wait (default); or stay, each wait
                  is a chapter and, in a .wav, a loop, for players that can play one over and over
  --at TIME       render: when the session is planned for, as 2026-12-05T18:30
  --accept        go on although the plan has a stop warning
`;

/** A run of the program that ends here: what it says, and its exit status. */
export interface Ending {
  readonly status: 0 | 1 | 2 | 3;
  readonly out?: string;
  readonly error?: string;
}

const commands = ["plan", "timeline", "sheet", "render"] as const;
type Command = (typeof commands)[number];

interface Asked {
  readonly command: Command;
  readonly file: string;
  readonly out: string;
  readonly wish: FileWish;
  readonly accept: boolean;
}

/** @param input reads what is piped in, for where the file is `-`. */
export async function tankside(argv: readonly string[], input: () => string): Promise<Ending> {
  const asked = askedBy(argv);
  if ("status" in asked) return asked;
  const text = textOf(asked.file, input);
  if (typeof text !== "string") return text;
  const reading = readWorksheetText(text);
  if (reading.kind === "faults") return { status: 2, error: faultLines(reading.faults) };
  const { worksheet } = reading;
  const plan = planOf(worksheet, await wordsIn(spokenIn(worksheet.language)));
  const stops = plan.warnings.filter((warning) => warning.severity === "stop");
  const stopped = stops.length > 0 && !asked.accept;
  const error = stopped ? stops.map((stop) => `stop: ${stop.text}\n`).join("") : "";
  if (asked.command === "plan") return { status: stopped ? 3 : 0, out: json(plan), error };
  if (stopped) return { status: 3, error };
  return written(asked, worksheet);
}

function askedBy(argv: readonly string[]): Asked | Ending {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(argv);
  } catch (error) {
    return { status: 2, error: `${error instanceof Error ? error.message : error}\n\n${usage}` };
  }
  const { values, positionals } = parsed;
  const [name, file, out = ""] = positionals;
  if (values.help || name === undefined) return { status: values.help ? 0 : 2, out: usage };
  const command = commands.find((each) => each === name);
  if (command === undefined) {
    return { status: 2, error: fault("COMMAND", name, `one of ${commands.join(", ")}`) };
  }
  if (file === undefined) {
    const may = "the path of a worksheet, or - for standard input";
    return { status: 2, error: fault("FILE", null, may) };
  }
  const wish = wishOf(command === "render" ? out : null, values);
  if ("path" in wish) return { status: 2, error: fault(wish.path, wish.holds, wish.may) };
  return { command, file, out, wish, accept: values.accept };
}

function parse(argv: readonly string[]) {
  return parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: {
      gap: { type: "string", default: String(usualGap) },
      waits: { type: "string", default: "pass" },
      at: { type: "string" },
      accept: { type: "boolean", default: false },
      help: { type: "boolean", default: false },
    },
  });
}

function textOf(file: string, input: () => string): string | Ending {
  try {
    return file === "-" ? input() : readFileSync(file, "utf8");
  } catch (error) {
    return { status: 2, error: fault("FILE", file, `a file that can be read (${reason(error)})`) };
  }
}

async function written(asked: Asked, worksheet: Worksheet): Promise<Ending> {
  const { openedFor } = await import("./cli-sounds.ts");
  const session = await openedFor(worksheet);
  const { timeline, script } = session;
  if (asked.command === "timeline") return { status: 0, out: json(timeline) };
  if (asked.command === "sheet") {
    const { sheetOf } = await import("./track/sheet.ts");
    return { status: 0, out: sheetOf(timeline, script) };
  }
  return rendered(asked, session);
}

async function rendered({ out, wish }: Asked, session: Session): Promise<Ending> {
  const { fileOf } = await import("./track/files.ts");
  const file = await fileOf(session, wish);
  if (file === null) {
    return { status: 2, error: fault("OUT", out, "a session of at most 24 hours, waits included") };
  }
  try {
    writePieces(out, file.pieces);
  } catch (error) {
    return { status: 1, error: fault("OUT", out, `a file that can be written (${reason(error)})`) };
  }
  return { status: 0, out: json(file.track.starts) };
}

/** Written beside and moved into place: what stood there stays until the new file is whole. */
function writePieces(out: string, pieces: Iterable<Uint8Array>): void {
  const beside = `${out}.${process.pid}.part`;
  try {
    const file = openSync(beside, "w");
    try {
      // Goes on until all of a piece is written, where writing once may write less.
      for (const piece of pieces) writeFileSync(file, piece);
    } finally {
      closeSync(file);
    }
    renameSync(beside, out);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

const faultLines = (faults: readonly Fault[]): string =>
  faults.map((each) => `${faultLine(each)}\n`).join("");

function fault(path: string, holds: string | null, may: string): string {
  return faultLines([{ path, holds: holds === null ? "nothing" : JSON.stringify(holds), may }]);
}

const reason = (error: unknown): string =>
  error instanceof Error && "code" in error ? String(error.code) : String(error);
