// What becomes of a cue whose time has gone by when it could be placed: each kind has its rule.
import type { CueKind } from "../timeline/score.ts";

/**
 * How late, in seconds, a cue of each kind may still begin. A moment is worth hearing a little
 * late; a beat or a count-in that is late misleads, and words that come late describe what is past.
 */
export const mayBeLate: { readonly [kind in CueKind]: number } = {
  now: 0.5,
  "count-in": 0,
  beat: 0,
  prepare: 0,
  tell: 0.5,
  remaining: 0.5,
  confirm: 0.5,
};
