// A worksheet as a link that carries it whole, and as a code for another phone's camera; with the minute at which a
// class starts, if one does.
import { useState } from "preact/hooks";
import type { Worksheet } from "../plan/worksheet.ts";
import { linkOf, longestLink } from "../plan/worksheet-link.ts";
import { lateWords } from "./language.ts";
import { QrCode } from "./qr-code.tsx";
import type { TakePorts } from "./take-port.ts";

interface TakeLinkProps {
  readonly ports: Pick<TakePorts, "address" | "copy" | "share" | "now">;
  readonly worksheet: Worksheet;
  /** ms since 1970; null where no time was chosen. */
  readonly planned: number | null;
  /** Whether a class starts at that time. */
  readonly together: boolean;
  readonly setTogether: (together: boolean) => void;
  /** Of what is said where that time will not do. */
  readonly wantsId: string;
  /** Goes to the field of the time. */
  readonly toTime: () => void;
}

export function TakeLink(props: TakeLinkProps) {
  const { ports, worksheet, planned, together, setTogether, wantsId, toTime } = props;
  const [copied, setCopied] = useState<{ readonly link: string; readonly done: boolean }>();
  const { take } = lateWords.value;
  const fragment = linkOf(worksheet, together ? planned : null);
  const link = `${ports.address()}${fragment}`;
  // Of another link, nothing was copied yet.
  const came = copied?.link === link ? copied.done : null;
  const wants = together ? timeWanting(planned, ports.now()) : null;
  const { share } = ports;
  if (fragment.length > longestLink) return <p>{take.linkTooLong}</p>;

  function handOn(act: () => void): void {
    // A minute may pass while the page stands open.
    if (together && timeWanting(planned, ports.now()) !== null) {
      setCopied(undefined);
      toTime();
    } else act();
  }

  return (
    <>
      <p>{take.linkLead}</p>
      <label>
        <input
          type="checkbox"
          checked={together}
          aria-describedby={wantsId}
          onChange={(event) => setTogether(event.currentTarget.checked)}
        />
        {take.together}
      </label>
      <p id={wantsId} role="status">
        {wants}
      </p>
      {together && wants === null && <p>{take.togetherHow}</p>}
      <div class="makes">
        <button
          type="button"
          aria-disabled={wants !== null}
          onClick={() =>
            handOn(() => void ports.copy(link).then((done) => setCopied({ link, done })))
          }
        >
          {take.copy}
        </button>
        {share !== null && (
          <button
            type="button"
            aria-disabled={wants !== null}
            onClick={() => handOn(() => void share(worksheet.title ?? "Tankside", link))}
          >
            {take.share}
          </button>
        )}
      </div>
      <p role="status">
        {came === true && take.copied}
        {came === false && take.notCopied}
      </p>
      {came === false && <input class="whole-link" readOnly value={link} aria-label={take.link} />}
      {wants === null && <QrCode text={link} name={take.code} tooLong={take.codeTooLong} />}
    </>
  );
}

/** Why no class can start at a time, in words; null where one can. */
export function timeWanting(planned: number | null, now: number): string | null {
  const { take } = lateWords.value;
  if (planned === null) return take.wantsTime;
  return planned <= now ? take.isPast : null;
}
