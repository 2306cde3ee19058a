// A text in, a code for a camera out, or words where it is too long for one. Black on white whatever the paper, with
// four modules of quiet around it, as the standard asks (ISO/IEC 18004).
import { useMemo } from "preact/hooks";
import { encode } from "uqr";

/** Modules of white around it. */
const QUIET = 4;
/** Bytes beyond which a hand-held camera no longer reads it off a screen (common practice), though it could be drawn. */
const LONGEST = 2000;

interface QrCodeProps {
  readonly text: string;
  readonly name: string;
  readonly tooLong: string;
}

export function QrCode({ text, name, tooLong }: QrCodeProps) {
  // It takes some milliseconds, and what stands around it is drawn anew at every key.
  const code = useMemo(() => (text.length > LONGEST ? null : codeOf(text)), [text]);
  if (code === null) return <p>{tooLong}</p>;
  const { size, path } = code;
  return (
    <svg class="qr" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={name}>
      <rect width={size} height={size} fill="#ffffff" />
      <path d={path} fill="#000000" shape-rendering="crispEdges" />
    </svg>
  );
}

function codeOf(text: string): { readonly size: number; readonly path: string } {
  const { data, size } = encode(text, { ecc: "L", border: QUIET });
  return { size, path: data.map(rowPath).join("") };
}

/** Each run of black of a row as one bar. */
function rowPath(row: readonly boolean[], y: number): string {
  let path = "";
  for (let x = 0; x < row.length; x += 1) {
    if (!row[x] || row[x - 1]) continue;
    let end = x;
    while (row[end]) end += 1;
    path += `M${x} ${y}h${end - x}v1h${x - end}z`;
  }
  return path;
}
