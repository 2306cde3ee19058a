// Taking a session along, in Walk through: one fold, and in it the track, what is there to read, and the link. What
// each of them is made of comes through the port.
import type { ComponentType } from "preact";
import { useEffect, useId, useRef, useState } from "preact/hooks";
import type { Worksheet } from "../plan/worksheet.ts";
import { readPlannedTime } from "../track/calendar.ts";
import { usualGap, type WaitKind } from "../track/track.ts";
import { spokenIn } from "../units/language.ts";
import { lateWords } from "./language.ts";
import { MakeFiles } from "./take-files.tsx";
import { TakeLink, timeWanting } from "./take-link.tsx";
import type { TakePorts } from "./take-port.ts";
import { Waits } from "./take-waits.tsx";
import "./take.css";

export interface TakeProps {
  readonly worksheet: Worksheet;
}

export function takeAlongWith(ports: TakePorts): ComponentType<TakeProps> {
  return function TakeAlong({ worksheet }: TakeProps) {
    const [waits, setWaits] = useState<WaitKind>("pass");
    const [gap, setGap] = useState<number | null>(usualGap);
    const [planned, setPlanned] = useState("");
    const [together, setTogether] = useState(false);
    const time = useRef<HTMLInputElement>(null);
    const wantsId = useId();
    const [isDevice, setIsDevice] = useState(false);
    const language = spokenIn(worksheet.language);
    useEffect(() => {
      let shown = true;
      void ports.deviceSpeaks(language).then((does) => shown && setIsDevice(does));
      return () => {
        shown = false;
      };
    }, [language]);
    useEffect(() => ports.holdReady(worksheet), [worksheet]);
    const { take, walk } = lateWords.value;
    const typed = readPlannedTime(planned);
    const instant = typed === null ? null : new Date(typed).getTime();
    const at = instant === null ? null : onTheWall(instant);
    return (
      <div class="take">
        <p>{take.lead}</p>
        {isDevice && <p>{take.notDevice}</p>}
        <h3>{take.track}</h3>
        <Waits waits={waits} gap={gap} choose={setWaits} type={setGap} />
        <p>{take.sizes}</p>
        <MakeFiles
          ports={ports}
          worksheet={worksheet}
          wish={gap === null ? null : { gap, waits }}
          kinds={["mp3", "wav"]}
        />
        <h3>{take.texts}</h3>
        <MakeFiles
          ports={ports}
          worksheet={worksheet}
          wish={gap === null ? null : { gap, waits }}
          kinds={["vtt", "srt", "ssml", "txt"]}
        />
        <p>
          <button type="button" onClick={ports.print}>
            {walk.print}
          </button>
        </p>
        <h3>{take.plannedFor}</h3>
        <label class="planned">
          {take.planned}
          <input
            ref={time}
            type="datetime-local"
            value={planned}
            aria-describedby={wantsId}
            aria-invalid={together && timeWanting(instant, ports.now()) !== null}
            onInput={(event) => setPlanned(event.currentTarget.value)}
          />
        </label>
        <MakeFiles
          ports={ports}
          worksheet={worksheet}
          wish={gap === null || at === null ? null : { gap, waits, at }}
          kinds={["ics"]}
          wants={at === null ? take.wantsTime : null}
        />
        <h3>{take.link}</h3>
        <TakeLink
          ports={ports}
          worksheet={worksheet}
          planned={instant}
          together={together}
          setTogether={setTogether}
          wantsId={wantsId}
          toTime={() => time.current?.focus()}
        />
      </div>
    );
  };
}

/** What a clock on the wall shows at an instant: in the hour that is left out in spring, an hour more than was typed. */
function onTheWall(instant: number): string {
  const local = instant - new Date(instant).getTimezoneOffset() * 60_000;
  return new Date(local).toISOString().slice(0, 16);
}
