// A thermometer read while the film is in the developer: typed, or by half degrees, and given to the run, which
// moves the end by it; or one that tells by itself. A run in, and nothing kept here but what is being typed.
import { useId, useRef, useState } from "preact/hooks";
import { readingsIn } from "../live/journal.ts";
import type { Probe } from "../live/probe.ts";
import { isDeveloping } from "../live/rest.ts";
import type { Run } from "../live/run-shape.ts";
import { inTank, isInTank } from "../live/steady-readings.ts";
import {
  readTypedTemperature,
  type Temperature,
  type TemperatureReading,
  toCelsius,
} from "../units/temperature.ts";
import { mayOf } from "./field-names.ts";
import { lateWords, words, writing } from "./language.ts";
import { type After, useLooks } from "./looks.ts";
import { ProbeConnection } from "./probe-connection.tsx";
import { units } from "./read-field.ts";
import { useToldRole } from "./said-beside.tsx";
import { type SinkKey, sinkAt, touch } from "./sink-model.ts";
import { pressOf } from "./wet-dialog.tsx";
import "./hands.css";

interface ReadingProps {
  readonly run: Pick<Run, "position" | "journal" | "read">;
  /** What the worksheet says of the developer: its unit is that of a number typed alone. */
  readonly like: Temperature;
  /** Null where the browser knows of no such thing. */
  readonly probe: Probe | null;
  readonly after: After;
  /** Whether a key is the run's wherever the focus is: a learnt pedal's. All others stay in here. */
  readonly passes?: (event: KeyboardEvent) => boolean;
}

/** Only while the film is in the developer. */
export function Reading({ run, like, probe, after, passes = () => false }: ReadingProps) {
  const { known, look } = useKnown(run, like, after);
  if (known === null) return null;
  const stay = (event: KeyboardEvent) => {
    if (!passes(event)) event.stopPropagation();
  };
  return (
    <details class="reading" onKeyDown={stay} onKeyUp={stay}>
      <summary>
        {lateWords.value.reading.name} · {tied(writing.value.temperature(known))}
      </summary>
      <Typed run={run} like={like} known={known} look={look} />
      {probe !== null && <ProbeConnection probe={probe} like={like} />}
    </details>
  );
}

/** A film that has come into the developer, or left it, is noticed within so many ms. */
const LOOKS = 1000;

/** `known` is null while the film is not in the developer. */
function useKnown(
  run: ReadingProps["run"],
  like: Temperature,
  after: After,
): { readonly known: Temperature | null; readonly look: () => void } {
  const read = () =>
    isDeveloping(run.position())
      ? (readingsIn(run.journal().entries).at(-1)?.temperature ?? like)
      : null;
  const [known, setKnown] = useState(read);
  const look = () =>
    setKnown((before) => {
      const now = read();
      return JSON.stringify(now) === JSON.stringify(before) ? before : now;
    });
  useLooks(after, () => LOOKS, look, [run, like]);
  return { known, look };
}

type Told =
  | { readonly kind: "taken"; readonly temperature: Temperature }
  | { readonly kind: "fault"; readonly text: string };

interface TypedProps extends Pick<ReadingProps, "run" | "like"> {
  /** What was read last, or what the worksheet says. */
  readonly known: Temperature;
  /** To be called when that may have changed. */
  readonly look: () => void;
}

function Typed({ run, like, known, look }: TypedProps) {
  /** Null as long as what is known stands there. */
  const [text, setText] = useState<string | null>(null);
  const [told, setTold] = useState<Told | null>(null);
  // Two presses may come before the screen is drawn anew.
  const sink = useRef(sinkAt(known));
  if (text === null) sink.current = { ...sink.current, shown: known };
  const id = useId();
  const role = useToldRole();
  const shown = text ?? writing.value.temperature(known);

  function type(typed: string): void {
    setText(typed);
    setTold(null);
    const reading = readHere(typed, like);
    if (reading.kind === "read") sink.current = sinkAt(reading.temperature);
  }

  function press(key: SinkKey, event: Event): void {
    const touched = touch(sink.current, key, event.timeStamp);
    const { shown } = touched.sink;
    if (key === "read") {
      if (touched.read !== null) set();
    } else {
      setText(writing.value.temperature(shown));
      setTold(null);
    }
    sink.current = touched.sink;
  }

  function set(): void {
    const reading = readHere(shown, like);
    if (reading.kind === "unread") {
      const may = words.value.faults.holds(shown.trim(), mayOf(reading.may));
      setTold({ kind: "fault", text: may });
    } else if (!isInTank(toCelsius(reading.temperature))) {
      const [least, most] = [inTank.least, inTank.most].map((celsius) =>
        tied(writing.value.tenths(like, celsius)),
      );
      setTold({ kind: "fault", text: lateWords.value.reading.range(least ?? "", most ?? "") });
    } else {
      if (run.read(reading.temperature)) {
        setText(null);
        setTold({ kind: "taken", temperature: reading.temperature });
      }
      // Where the run had no use for it, the film has just left the developer, and this goes too.
      look();
    }
  }

  const reading = readHere(shown, like);
  return (
    <>
      <div class="reading-typed">
        <label for={id}>{lateWords.value.reading.typed}</label>
        <input
          id={id}
          type="text"
          autoComplete="off"
          spellcheck={false}
          value={shown}
          aria-invalid={told?.kind === "fault"}
          aria-describedby={told?.kind === "fault" ? `${id}:told` : undefined}
          onInput={(event) => type(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === "Enter" && !event.repeat) press("read", event);
          }}
        />
      </div>
      <div class="reading-keys">
        {(["less", "more"] as const).map((key) => (
          <button key={key} type="button" {...pressOf((event) => press(key, event))}>
            {lateWords.value.sink[key]}
          </button>
        ))}
        <button type="button" class="reading-set" {...pressOf((event) => press("read", event))}>
          {lateWords.value.sink.read(
            tied(reading.kind === "read" ? writing.value.temperature(reading.temperature) : shown),
          )}
        </button>
      </div>
      <p role={role} id={`${id}:told`}>
        {told !== null && inWords(told)}
      </p>
    </>
  );
}

/** A figure and its unit on one line. */
const tied = (temperature: string): string => temperature.replace(" ", "\u00a0");

/** A number without its unit is lent the worksheet's. */
function readHere(typed: string, like: Temperature): TemperatureReading {
  const asTyped = readTypedTemperature(typed);
  if (asTyped.kind === "read") return asTyped;
  const lent = readTypedTemperature(`${typed} ${units.temperature["c" in like ? "c" : "f"]}`);
  // The refusal to show is the one about the text as typed.
  return lent.kind === "read" ? lent : asTyped;
}

function inWords(told: Told): string {
  switch (told.kind) {
    case "taken":
      return lateWords.value.reading.taken(writing.value.temperature(told.temperature));
    case "fault":
      return told.text;
  }
}
