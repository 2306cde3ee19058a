// Whoever was chosen to speak, as a player in a browser: clips on the audio clock, or a voice of the device
// under watch, behind which the bundled voice stands ready.
import { rateWithin } from "../timeline/lengths.ts";
import type { Cue, Timeline } from "../timeline/score.ts";
import { noClips, type Speaker } from "../voice/speaker.ts";
import { type BrowserPlayer, openBrowserPlayer } from "./browser-player.ts";
import { type Sounds, sourcesAt } from "./browser-sounds.ts";
import { type DeviceVoice, openDeviceVoice } from "./device-voice.ts";
import { browserSynthesiser } from "./synthesiser.ts";

/** @param gaveUp called once, when a voice of the device has failed and the bundled one must take over. */
export function playerFor(
  audio: AudioContext,
  sounds: Sounds,
  timeline: Timeline,
  speaker: Speaker,
  gaveUp: () => void,
): BrowserPlayer {
  const { rate } = timeline.voice;
  const own = speaker.kind === "clips" ? speaker.own : noClips;
  const player = openBrowserPlayer(audio, sourcesAt(sounds, rate, own));
  if (speaker.kind === "clips") return player;
  const device = deviceVoiceOn(audio, speaker, gaveUp);

  /** A cue whose slot was made for the device's voice: said faster where the bundled one needs longer. */
  function bundledSays(cue: Cue, at: number): { stop(): void } {
    const faster = rateWithin(cue.until - cue.at, cue.sounds, sounds.index, rate);
    return player.playFrom(sourcesAt(sounds, faster), cue, at);
  }

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

/** Null where the browser has no voices after all. */
function deviceVoiceOn(
  audio: AudioContext,
  { voice, pace }: Extract<Speaker, { kind: "device" }>,
  gaveUp: () => void,
): DeviceVoice | null {
  const synthesiser = browserSynthesiser();
  if (synthesiser === null) return null;
  return openDeviceVoice({
    synthesiser,
    voice,
    pace,
    clock: { now: () => audio.currentTime, after },
    hidden: () => document.visibilityState === "hidden",
    gaveUp,
  });
}

function after(seconds: number, act: () => void): () => void {
  const timer = setTimeout(act, seconds * 1000);
  return () => clearTimeout(timer);
}
