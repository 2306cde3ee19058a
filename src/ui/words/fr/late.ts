// All French words that are needed behind the first screen, in one value: fetched with the places and
// parts that show them.
import { contrastCurve, curve, leafletCurve, temperingCurve, wedgeCurve } from "./curves.ts";
import { knocks, pedal, reading } from "./hands.ts";
import { byEar, hearFirst, tapAlong } from "./hear.ts";
import { install, keeping, news } from "./keep.ts";
import { again, beside, dictate, everything, find, overTime, pictures, stars } from "./log.ts";
import { leftRun, midRun, otherwise } from "./mid-run.ts";
import { negatives } from "./negatives.ts";
import { deviceVoice, microphone, noPack, recording, speaker, unusable } from "./own-voice.ts";
import { rehearse } from "./rehearse.ts";
import { gullrockRoom, room } from "./room.ts";
import { beforeRun, duringRun, moves, runDeeds } from "./run.ts";
import { senses, statement } from "./senses.ts";
import { pick, shelf } from "./shelf.ts";
import { bottleForm, bottleLabels, fixerWords } from "./shelf-form.ts";
import { brought, classStart, take } from "./take.ts";
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
  midRun,
  leftRun,
  otherwise,
  runDeeds,
  moves,
  rehearse,
  write,
  steps,
  pressAlong,
  sink,
  byEar,
  hearFirst,
  tapAlong,
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
  news,
  install,
  keeping,
  reading,
  pedal,
  knocks,
  senses,
  statement,
  negatives,
  shelf,
  pick,
  bottleForm,
  bottleLabels,
  fixerWords,
  room,
  gullrockRoom,
  take,
  brought,
  classStart,
  find,
  stars,
  pictures,
  dictate,
  again,
  beside,
  overTime,
  everything,
};
