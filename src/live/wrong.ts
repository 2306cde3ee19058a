// "Something is wrong": where the run stands in, what may be wrong there and the calm next step out, by the keys
// of its sentences, so that no answer speaks of light to film that is packed or of a lid that is not there.
import type { FilmIs } from "../process/process.ts";
import { type Wrong, wrongs } from "../process/wrongs.ts";
import type { Position } from "./position.ts";
import { staysOf } from "./stays.ts";

/** In the fixer for so long, seconds, light does film no harm: common practice. */
const FIXED_AFTER = 120;
/** Up to the end of these a wrong bath costs the picture, or does not. */
const undeveloped = ["prewet", "developer"];

/** Where light finds the film now. */
function filmAt(position: Position): FilmIs {
  const { section } = position;
  const film = section?.film ?? "packed";
  if (position.kind === "waiting") return position.next.film === "fixed" ? "fixed" : film;
  if (position.kind === "over" || position.bath !== "fixer") return film;
  const fixer = staysOf(position.section).find(({ bath }) => bath === "fixer");
  const since = position.elapsed - (fixer?.pourIn ?? position.elapsed);
  return since >= FIXED_AFTER ? "fixed" : film;
}

/** What may be wrong where the run stands. */
export function wrongsAt(position: Position): readonly Wrong[] {
  const may: { readonly [wrong in Wrong]: boolean } = {
    eye: true,
    light: true,
    bath: bathAt(position) !== null,
    leak: filmAt(position) === "tank",
    clock: true,
  };
  return wrongs.filter((wrong) => may[wrong]);
}

/** The next step, in one to three sentences. */
export function answerTo(wrong: Wrong, position: Position): readonly string[] {
  switch (wrong) {
    case "eye":
      return ["wrong.eye.rinse", "wrong.eye.help", "wrong.eye.sheet"];
    case "light":
      return filmAt(position) === "open"
        ? ["wrong.light.cover", "wrong.light.open"]
        : ["wrong.light.safe"];
    case "bath":
      return undeveloped.includes(bathAt(position) ?? "")
        ? ["wrong.bath.out", "wrong.bath.stop", "wrong.bath.fixer"]
        : ["wrong.bath.out", "wrong.bath.on"];
    case "leak":
      return ["wrong.leak.little", "wrong.leak.press", "caution.floor"];
    case "clock":
      return [position.kind === "timed" ? "wrong.clock.mine" : "wrong.clock.none"];
  }
}

/** The bath that is on, or comes next; null as long as nothing can have been poured. */
function bathAt(position: Position): string | null {
  if (position.kind === "timed") return position.bath;
  const next = position.kind === "waiting" ? position.next.moments[0]?.bath : null;
  return next ?? position.section?.moments.at(-1)?.bath ?? null;
}
