// A session's sections in, one track for a locked phone out: each section, and behind it a stretch to wait in,
// which is played over and over until the press. Laid out first, in pieces that say by their keys what sounds
// in them, so that what is known already need not be rendered again.
//
// Its length is that of the session and ten minutes a section: 35 min in 24 sections make 276 min, 796 MB of WAV as
// a player counts it. Only pieces that sound otherwise than all others need memory of their own: 35 MB, as many as
// with two minutes a section; the rest are one and the same bed and tone. Sections that are over need not be in it.
import type { Cue, Section } from "../timeline/score.ts";
import { alive, WAITING_CONFIRM, waitsFrom } from "../timeline/waiting.ts";
import { bedNoise, bedSamples } from "../tones/bed.ts";
import { sampleRate, toneSeconds } from "../tones/designs.ts";
import { pcmOf, wavHeader } from "../tones/wav.ts";

/**
 * Seconds of waiting behind each section. Where scripts are suspended nothing turns the player back, and it would go
 * on into the next section, which nobody pressed for: so late a script is hardly ever.
 */
const WAITING = 600;
/** The last of them are silent: where nobody can say that the run lives, no tone says so, and someone presses. */
const SILENT = 120;
/**
 * Waiting so long, seconds, the player turns back by so much: whole tones and whole beds, so that
 * nothing tells it from going on.
 */
const TURN = { at: 65, back: 2 * WAITING_CONFIRM } as const;

/** As long as the bed, which lies alike under each of them. */
export interface Piece {
  /** What sounds in it, and where: two pieces of the same key sound the same. */
  readonly key: string;
  readonly sounds: readonly Placed[];
}

interface Placed {
  readonly cue: Cue;
  /** Sample of the piece at which it begins; negative for what began before it. */
  readonly at: number;
}

export interface LaidSection {
  /** Seconds into the track at which its press was. */
  readonly start: number;
  /** Seconds into the section from which on it waits. */
  readonly waits: number;
  readonly pieces: readonly Piece[];
}

export interface Laid {
  readonly sections: readonly LaidSection[];
  readonly pieceSeconds: number;
  readonly turn: { readonly at: number; readonly back: number };
}

/** The seek to a section is the answer to its press. */
const press: Cue = {
  at: 0,
  until: toneSeconds.press,
  channel: "tone",
  kind: "confirm",
  moment: null,
  sounds: ["press"],
};

export function lay(sections: readonly Section[]): Laid {
  let start = 0;
  const laid = sections.map((section): LaidSection => {
    const waits = waitsFrom(section);
    const pieces = piecesOf(section, waits);
    const from = start;
    start += pieces.length * (bedSamples / sampleRate);
    return { start: from, waits, pieces };
  });
  return { sections: laid, pieceSeconds: bedSamples / sampleRate, turn: TURN };
}

function piecesOf(section: Section, waits: number): readonly Piece[] {
  const tones = Array.from({ length: (WAITING - SILENT) / WAITING_CONFIRM }, (_, i) => {
    const at = waits + (i + 1) * WAITING_CONFIRM;
    return { ...alive, at, until: at + alive.until };
  });
  const length = Math.ceil(((waits + WAITING) * sampleRate) / bedSamples);
  const placed: Placed[][] = Array.from({ length }, () => []);
  for (const cue of [press, ...section.cues, ...tones]) {
    const at = Math.round(cue.at * sampleRate);
    const last = at + Math.max(1, Math.round((cue.until - cue.at) * sampleRate)) - 1;
    for (let i = Math.floor(at / bedSamples); i <= Math.floor(last / bedSamples); i += 1) {
      placed[i]?.push({ cue, at: at - i * bedSamples });
    }
  }
  return placed.map((sounds) => ({ key: sounds.map(keyOf).join("\n"), sounds }));
}

const keyOf = ({ cue, at }: Placed): string =>
  `${at} ${Math.round((cue.until - cue.at) * sampleRate)} ${cue.channel} ${cue.sounds.join("|")}`;

const bed = bedNoise();

/** @param soundOf the samples of a cue at 24 kHz, as long as the cue. */
export function pieceBytes(piece: Piece, soundOf: (cue: Cue) => Float32Array): Uint8Array {
  const mixed = bed.slice();
  for (const { cue, at } of piece.sounds) {
    const sound = soundOf(cue);
    const end = Math.min(sound.length, mixed.length - at);
    for (let i = Math.max(0, -at); i < end; i += 1) {
      mixed[at + i] = (mixed[at + i] ?? 0) + (sound[i] ?? 0);
    }
  }
  for (let i = 0; i < mixed.length; i += 1) {
    mixed[i] = Math.max(-1, Math.min(1, mixed[i] ?? 0));
  }
  return pcmOf(mixed);
}

/** The bytes before the first piece: a WAV file's header, mono, 16 bit. */
export function headerBytes({ sections }: Laid): Uint8Array {
  const pieces = sections.reduce((sum, section) => sum + section.pieces.length, 0);
  return wavHeader(pieces * bedSamples, sampleRate);
}
