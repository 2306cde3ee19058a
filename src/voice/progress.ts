// Progress of a build in words on standard error: one line drawn over on a terminal, a line for
// every tenth elsewhere.
import type { Progress } from "./build.ts";

export function tellProgress(): Progress {
  let told = "";
  return (what, done, of) => {
    if (of === 0) return;
    const tenths = Math.floor((10 * done) / of);
    const line = `${what}: ${process.stderr.isTTY ? `${done} of ${of}` : `${tenths * 10} %`}`;
    if (line === told) return;
    told = line;
    const end = process.stderr.isTTY && done < of ? "" : "\n";
    process.stderr.write(`${process.stderr.isTTY ? "\r\u001b[K" : ""}${line}${end}`);
  };
}
