// The microphone as the room sounds, opened and let go of: what its parts are used for is another's
// affair. Nothing that browsers do to flatter a telephone call is wanted.
import captureUrl from "./capture-worklet.ts?worker&url";

export type MicrophoneRefusal =
  /** The person, or the device's owner, said no. */
  | "denied"
  /** There is none, or none that is plugged in. */
  | "none"
  /** Another program has it, or it broke. */
  | "busy"
  /** The browser cannot, or will not on a page such as this. */
  | "unable";

/** What the audio thread hands on. */
export interface Part {
  readonly samples: Float32Array;
  /** Seconds on the context's clock of the first of them. */
  readonly at: number;
}

interface Hearing {
  readonly kind: "open";
  readonly context: AudioContext;
  /** The microphone's own delay in seconds, where the browser tells it. */
  readonly delay: number | null;
  /** Lets go of it, so that no light is left on. */
  close(): void;
}

interface Ears {
  /** The one to hear on, or null for one of its own. */
  readonly context: AudioContext | null;
  /** Samples in a part. */
  readonly part: number;
  readonly heard: (part: Part) => void;
  /** It was taken away: unplugged, or forbidden meanwhile. */
  readonly ended?: () => void;
}

/** To be called from a press. Never rejects. */
export async function openHearing(
  ears: Ears,
): Promise<Hearing | { readonly kind: "refused"; readonly why: MicrophoneRefusal }> {
  if (navigator.mediaDevices?.getUserMedia === undefined) return { kind: "refused", why: "unable" };
  let stream: MediaStream | null = null;
  try {
    stream = await navigator.mediaDevices.getUserMedia({
      audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
    });
    return await listening(stream, ears);
  } catch (error) {
    release(stream);
    return { kind: "refused", why: refusalOf(error) };
  }
}

function refusalOf(error: unknown): MicrophoneRefusal {
  switch (error instanceof DOMException ? error.name : "") {
    case "NotAllowedError":
    case "SecurityError":
      return "denied";
    case "NotFoundError":
    case "OverconstrainedError":
      return "none";
    case "NotReadableError":
    case "AbortError":
      return "busy";
    default:
      return "unable";
  }
}

async function listening(stream: MediaStream, ears: Ears): Promise<Hearing> {
  const context = ears.context ?? new AudioContext();
  const closeContext = () => {
    if (ears.context === null) void context.close();
  };
  try {
    await context.resume();
    await context.audioWorklet.addModule(captureUrl);
  } catch (error) {
    closeContext();
    throw error;
  }
  const source = context.createMediaStreamSource(stream);
  const capture = new AudioWorkletNode(context, "capture", {
    numberOfOutputs: 0,
    channelCount: 1,
    channelCountMode: "explicit",
    processorOptions: { part: ears.part },
  });
  source.connect(capture);
  capture.port.onmessage = ({ data }: MessageEvent<Part>) => ears.heard(data);
  for (const track of stream.getTracks()) track.onended = () => ears.ended?.();
  // In the specification, but in no library of types.
  const settings: MediaTrackSettings & { readonly latency?: number } =
    stream.getAudioTracks()[0]?.getSettings() ?? {};
  return {
    kind: "open",
    context,
    delay: settings.latency ?? null,
    close() {
      capture.port.onmessage = null;
      source.disconnect();
      release(stream);
      closeContext();
    },
  };
}

function release(stream: MediaStream | null): void {
  for (const track of stream?.getTracks() ?? []) track.stop();
}
