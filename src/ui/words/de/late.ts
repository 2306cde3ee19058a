// All German words that are needed behind the first screen, in one value: fetched with the places and
// parts that show them.
import { contrastCurve, curve, leafletCurve, temperingCurve, wedgeCurve } from "./curves.ts";
import { deviceVoice, microphone, noPack, recording, speaker, unusable } from "./own-voice.ts";
import { beforeRun, duringRun, moves, runDeeds } from "./run.ts";
import { deeds, score, turnsInScore, turnsInWords, walk } from "./walk.ts";
import { pressAlong, sink } from "./wet.ts";
import { steps, write } from "./write.ts";

export const late = {
  walk,
  score,
  turnsInScore,
  turnsInWords,
  deeds,
  beforeRun,
  duringRun,
  runDeeds,
  moves,
  write,
  steps,
  pressAlong,
  sink,
  curve,
  leafletCurve,
  temperingCurve,
  contrastCurve,
  wedgeCurve,
  speaker,
  deviceVoice,
  recording,
  unusable,
  microphone,
  noPack,
};
