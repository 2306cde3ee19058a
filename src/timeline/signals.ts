// A step's moments in, its tones out: the moment itself, the three beats that lead into it, and
// over and back for the hands. Nothing here knows of words.
import type { Deed, Moment } from "../process/moments.ts";
import { type ToneName, toneSeconds } from "../tones/designs.ts";
import type { Stretch } from "./quiet.ts";
import type { Cue, CueKind } from "./score.ts";

export interface Signals {
  readonly cues: readonly Cue[];
  /** Where the voice must be silent: before each moment, through its count-in, and while its tone sounds. */
  readonly quiet: readonly Stretch[];
}

const nowTone: { readonly [deed in Deed]?: ToneName } = {
  "pour-in": "pour-in",
  agitate: "agitate",
  rest: "rest",
  "pour-out": "pour-out",
};

/** Beats of a count-in, seconds before the moment. */
const COUNT_IN = [3, 2, 1] as const;
/** A count-in is all three beats or none, and stands this clear of the tone before it. */
const CLEAR = 0.3;
/** Before an agitation that follows sooner than this after the last signal, a count-in would be chatter. */
const WORTH_COUNTING = 8;
/** The voice falls silent this long before a moment (the promised second, and a margin), or before a count-in. */
const HUSH = 1.05;
const HUSH_BEFORE_COUNT = 0.2;

/** A tone shorter than this, seconds, would be a click. */
const AUDIBLE = 0.1;

interface Now {
  readonly at: number;
  readonly until: number;
  readonly moment: number;
  readonly tone: ToneName;
  readonly counted: boolean;
}

export function signalsOf(moments: readonly Moment[]): Signals {
  const nows = nowsOf(moments);
  const cues = nows.flatMap((now) => [
    ...(now.counted
      ? COUNT_IN.map((beat) => toneCue("count", now.at - beat, "count-in", now.moment))
      : []),
    { ...toneCue(now.tone, now.at, "now", now.moment), until: now.until },
  ]);
  const quiet = nows.map(({ at, until, counted }) => ({
    from: at - (counted ? COUNT_IN[0] + HUSH_BEFORE_COUNT : HUSH),
    to: until,
  }));
  return { cues: [...cues, ...beats(moments, nows)], quiet };
}

function toneCue(tone: ToneName, at: number, kind: CueKind, moment: number | null): Cue {
  return { at, until: at + toneSeconds[tone], channel: "tone", kind, moment, sounds: [tone] };
}

/** A soft sign of life that belongs to no moment. */
export const confirmCue = (at: number): Cue => toneCue("confirm", at, "confirm", null);

function nowsOf(moments: readonly Moment[]): readonly Now[] {
  const bare = moments.flatMap(({ at, do: deed }, moment) => {
    const tone = nowTone[deed];
    return tone === undefined ? [] : [{ at, moment, tone, deed }];
  });
  return bare.map(({ at, moment, tone, deed }, i) => {
    const before = bare[i - 1];
    const since = before === undefined ? at : at - before.at - toneSeconds[before.tone];
    const room = deed === "agitate" ? WORTH_COUNTING : COUNT_IN[0] + CLEAR;
    return {
      at,
      until: cutOff(at, at + toneSeconds[tone], bare[i + 1]?.at),
      moment,
      tone,
      counted: deed !== "rest" && since >= room,
    };
  });
}

/** Two tones never sound at once: the moment that comes cuts off the one that was, if that was heard at all. */
function cutOff(at: number, until: number, next: number | undefined): number {
  return next !== undefined && next < until && next - at >= AUDIBLE ? next : until;
}

/** Over and back, except where a moment's own tone or its count-in sounds. */
function beats(moments: readonly Moment[], nows: readonly Now[]): readonly Cue[] {
  const cues: Cue[] = [];
  let n = 0;
  for (const [moment, { at, do: deed }] of moments.entries()) {
    if (deed !== "invert") continue;
    const half = halfInversion(moments, moment);
    for (const beat of [
      toneCue("over", at, "beat", moment),
      ...(half === null ? [] : [toneCue("back", at + half, "beat", moment)]),
    ]) {
      while (n < nows.length && (nows[n]?.until ?? 0) <= beat.at) n += 1;
      const now = nows[n];
      const from = now === undefined ? 0 : now.at - (now.counted ? COUNT_IN[0] : 0);
      if (now === undefined || beat.until <= from) cues.push(beat);
    }
  }
  return cues;
}

/** Half the time to the next moment of the bout; null where over and back would run together. */
function halfInversion(moments: readonly Moment[], moment: number): number | null {
  const at = moments[moment]?.at ?? 0;
  const last = moments[moment - 1];
  const next = moments[moment + 1];
  const whole =
    next?.do === "invert"
      ? next.at - at
      : last?.do === "invert"
        ? at - last.at
        : (next?.at ?? at) - at;
  const half = whole / 2;
  return half >= toneSeconds.over + CLEAR / 3 ? half : null;
}
