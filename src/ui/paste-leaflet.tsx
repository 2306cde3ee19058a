// A leaflet's table pasted as text, its rows filled in. The text stays until all of it is rows, so that
// nothing of it is lost to one bad line.
import { useState } from "preact/hooks";
import { readLeafletText } from "../plan/leaflet-text.ts";
import { withLeaflet } from "./bench-acts.ts";
import { mayOf } from "./field-names.ts";
import { words } from "./language.ts";
import { useWorkOut } from "./work-out-context.ts";

export function PasteLeaflet() {
  const workOut = useWorkOut();
  const [text, setText] = useState("");
  const [tried, setTried] = useState(false);
  const { rows, faults } = readLeafletText(text);
  const shown = tried ? faults : [];
  const empty = tried && faults.length === 0 && rows.length === 0;

  function fill(): void {
    const sound = faults.length === 0 && rows.length > 0;
    setTried(!sound);
    if (!sound) return;
    workOut.put(withLeaflet(workOut.draft.value, rows), () =>
      words.value.paste.filled(rows.length),
    );
    setText("");
  }

  return (
    <div class="paste">
      <label for="paste-leaflet">{words.value.paste.label}</label>
      <p class="meaning" id="paste-leaflet:why">
        {words.value.paste.why}
      </p>
      <textarea
        id="paste-leaflet"
        rows={6}
        spellcheck={false}
        value={text}
        aria-describedby="paste-leaflet:why paste-leaflet:faults"
        aria-invalid={shown.length > 0 || empty}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <div id="paste-leaflet:faults" aria-live="polite">
        {shown.map(({ line, text: typed, may }) => (
          <p key={line} class="fault">
            {words.value.paste.fault(line, typed, mayOf(may))}
          </p>
        ))}
        {empty && <p class="fault">{words.value.paste.nothing}</p>}
      </div>
      <button type="button" onClick={fill}>
        {words.value.paste.fill}
      </button>
    </div>
  );
}
