// The page's language, chosen in the masthead: each language under its own name. The worksheet's voice
// goes along, as one step that undo takes back.
import { useState } from "preact/hooks";
import type { LanguageStore } from "../logbook/language-store.ts";
import { type Language, languageNames, languages } from "../units/language.ts";
import { language, speak, words } from "./language.ts";
import type { WorkOut } from "./work-out-state.ts";

interface LanguageChoiceProps {
  readonly store: LanguageStore;
  readonly workOut: Pick<WorkOut, "speakIn">;
}

type Remark =
  | { readonly kind: "none" | "not-kept" }
  | { readonly kind: "not-fetched"; readonly wanted: Language };

export function LanguageChoice({ store, workOut }: LanguageChoiceProps) {
  const [remark, setRemark] = useState<Remark>({ kind: "none" });
  const { choose, notFetched, notKept } = words.value.language;

  async function become(wanted: Language): Promise<void> {
    if (!(await speak(wanted))) return setRemark({ kind: "not-fetched", wanted });
    workOut.speakIn(wanted);
    setRemark({ kind: store.keep(wanted) ? "none" : "not-kept" });
  }

  return (
    <div class="language">
      <label for="page-language">{choose}</label>
      <LanguageSelect id="page-language" chosen={language.value} choose={become} />
      <p role="status">
        {remark.kind === "not-kept" && notKept}
        {remark.kind === "not-fetched" && notFetched(languageNames[remark.wanted])}
      </p>
    </div>
  );
}

interface LanguageSelectProps {
  readonly id: string;
  readonly chosen: Language;
  readonly choose: (language: Language) => void;
}

export function LanguageSelect({ id, chosen, choose }: LanguageSelectProps) {
  return (
    <select
      id={id}
      value={chosen}
      onChange={(event) => {
        const select = event.currentTarget;
        const wanted = languages.find((it) => it === select.value);
        // It shows what is in force, until another is.
        select.value = chosen;
        if (wanted) choose(wanted);
      }}
    >
      {languages.map((each) => (
        <option key={each} value={each} lang={each}>
          {languageNames[each]}
        </option>
      ))}
    </select>
  );
}
