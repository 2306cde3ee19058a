// Whoever was chosen to speak, as a player in a browser: clips on the audio clock, or a voice of the device
// under watch, behind which the bundled voice stands ready.
import { rateWithin } from "../timeline/lengths.ts";
import type { Cue, Timeline } from "../timeline/score.ts";
import { type Sources, soundOf } from "../timeline/sound.ts";
import { sampleRate } from "../tones/designs.ts";
import { noClips, type Speaker } from "../voice/speaker.ts";
import type { BrowserAudio } from "./browser-audio.ts";
import { type BrowserPlayer, openBrowserPlayer } from "./browser-player.ts";
import { type Sounds, sourcesAt } from "./browser-sounds.ts";
import { type DeviceVoice, openDeviceVoice } from "./device-voice.ts";
import type { Placed } from "./placer.ts";
import { steadyClock } from "./steady-clock.ts";
import { browserSynthesiser } from "./synthesiser.ts";

/**
 * @param delay seconds by which what is played is heard late.
 * @param gaveUp called once, when a voice of the device has failed and the bundled one must take over.
 */
export function playerFor(
  audio: BrowserAudio,
  sounds: Sounds,
  { rate }: Timeline["voice"],
  speaker: Speaker,
  delay: number,
  gaveUp: () => void,
): BrowserPlayer {
  const own = speaker.kind === "clips" ? speaker.own : noClips;
  const player = openBrowserPlayer(audio, sourcesAt(sounds, rate, own), delay);
  if (speaker.kind === "clips") return player;
  const device = deviceVoiceOn(speaker, gaveUp);

  const bundledSays = (cue: Cue, at: number): Placed =>
    player.playFrom(sourcesWithin(cue, sounds, rate), cue, at);

  return {
    ...player,
    play(cue, at) {
      if (cue.channel !== "voice") return player.play(cue, at);
      if (device === null || device.isOver()) return bundledSays(cue, at);
      return device.say(cue.says ?? "", at, at + cue.until - cue.at);
    },
    close() {
      device?.close();
      player.close();
    },
  };
}

/** Where another says the words: they keep their time, and are not heard here. */
export const withoutItsWords = (player: BrowserPlayer): BrowserPlayer => ({
  ...player,
  play(cue, at) {
    if (cue.channel !== "voice") return player.play(cue, at);
    return { begun: () => player.now() >= at, stop() {} };
  },
});

/** As samples: so much silence. */
export const silenceFor = (cue: Cue): Float32Array =>
  new Float32Array(Math.round((cue.until - cue.at) * sampleRate));

/** The samples of each cue: a voice of the device has none, and the bundled one speaks in its place. */
export function samplesBy(
  sounds: Sounds,
  { rate }: Timeline["voice"],
  speaker: Speaker,
): (cue: Cue) => Float32Array {
  if (speaker.kind === "device") return (cue) => soundOf(cue, sourcesWithin(cue, sounds, rate));
  const sources = sourcesAt(sounds, rate, speaker.own);
  return (cue) => soundOf(cue, sources);
}

/** For a cue whose slot was made for the device's voice: said faster where the bundled one needs longer. */
function sourcesWithin(cue: Cue, sounds: Sounds, rate: number): Sources {
  if (cue.channel !== "voice") return sourcesAt(sounds, rate);
  return sourcesAt(sounds, rateWithin(cue.until - cue.at, cue.sounds, sounds.index, rate));
}

/** Null where the browser has no voices after all. */
function deviceVoiceOn(
  { voice, pace }: Extract<Speaker, { kind: "device" }>,
  gaveUp: () => void,
): DeviceVoice | null {
  const synthesiser = browserSynthesiser();
  if (synthesiser === null) return null;
  return openDeviceVoice({
    synthesiser,
    voice,
    pace,
    clock: steadyClock,
    hidden: () => document.visibilityState === "hidden",
    gaveUp,
  });
}
