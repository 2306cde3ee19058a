// A worksheet as a link that carries it whole, and as a code for another phone's camera; with the minute at which a
// class starts, if one does.
import { useState } from "preact/hooks";
import type { Worksheet } from "../plan/worksheet.ts";
import { linkOf, longestLink } from "../plan/worksheet-link.ts";
import { lateWords } from "./language.ts";
import { QrCode } from "./qr-code.tsx";
import type { TakePorts } from "./take-port.ts";

interface TakeLinkProps {
  readonly ports: Pick<TakePorts, "address" | "copy" | "share">;
  readonly worksheet: Worksheet;
  /** ms since 1970; null where no time was chosen. */
  readonly planned: number | null;
}

export function TakeLink({ ports, worksheet, planned }: TakeLinkProps) {
  const [together, setTogether] = useState(false);
  const [copied, setCopied] = useState<"not-yet" | "yes" | "no">("not-yet");
  const { take } = lateWords.value;
  const fragment = linkOf(worksheet, together ? planned : null);
  const link = `${ports.address()}${fragment}`;
  const { share } = ports;
  if (fragment.length > longestLink) return <p>{take.linkTooLong}</p>;
  return (
    <>
      <p>{take.linkLead}</p>
      <label>
        <input
          type="checkbox"
          checked={together}
          onChange={(event) => setTogether(event.currentTarget.checked)}
        />
        {take.together}
      </label>
      {together && <p>{planned === null ? take.wantsTime : take.togetherHow}</p>}
      <div class="makes">
        <button
          type="button"
          onClick={() => ports.copy(link).then((done) => setCopied(done ? "yes" : "no"))}
        >
          {take.copy}
        </button>
        {share !== null && (
          <button type="button" onClick={() => share(worksheet.title ?? "Tankside", link)}>
            {take.share}
          </button>
        )}
      </div>
      <p role="status">
        {copied === "yes" && take.copied}
        {copied === "no" && take.notCopied}
      </p>
      {copied === "no" && <input class="whole-link" readOnly value={link} aria-label={take.link} />}
      <QrCode text={link} name={take.code} tooLong={take.codeTooLong} />
    </>
  );
}
