// What stands beneath any answer: its working as ruled lines, what to look at first, what keeps it away.
// Apart from the answers themselves, because every question of the page has these and nothing else alike.
import type { Topic, WorkingLine } from "../plan/line.ts";
import { warningsAbout, workingAbout } from "./answer-model.ts";
import { nameOf } from "./field-names.ts";
import { type Aside, asideOf } from "./fields.ts";
import { goToField } from "./go-to-field.ts";
import { words } from "./language.ts";
import { useWorkOut } from "./work-out-context.ts";

interface WorkingProps {
  readonly about: Topic;
  /** Lines that stand elsewhere already. */
  readonly unlike?: (line: WorkingLine) => boolean;
}

/** The working of one question, as ruled lines; nothing where there is none. */
export function Working({ about, unlike = () => false }: WorkingProps) {
  const { plan } = useWorkOut();
  const lines = (plan.value ? workingAbout(plan.value, about) : []).filter((line) => !unlike(line));
  if (lines.length === 0) return null;
  return (
    <ol class="working" aria-label={words.value.answers.working}>
      {lines.map((line) => (
        <li key={line.label}>
          <span class="label">{line.label}</span> <span>{line.expression}</span>{" "}
          <b>{line.result}</b>
        </li>
      ))}
    </ol>
  );
}

export function Warnings({ topics }: { readonly topics: readonly Topic[] }) {
  const { plan } = useWorkOut();
  const warnings = plan.value ? warningsAbout(plan.value, topics) : [];
  if (warnings.length === 0) return null;
  return (
    <ul class="warnings" aria-label={words.value.answers.warnings}>
      {warnings.map((warning) => (
        <li key={warning.id + warning.text} class={warning.severity}>
          <b>{words.value.answers.severity[warning.severity]}.</b> {warning.text}
        </li>
      ))}
    </ul>
  );
}

/** What keeps an answer away, counted, each a link to its field; of the development, or of one aside. */
export function Wanting({ aside = null }: { readonly aside?: Aside | null }) {
  const { reading, typing } = useWorkOut();
  const ours = (path: string) => asideOf(path) === aside;
  const wanting = reading.value.wanting.filter(ours);
  const shown = Object.keys(reading.value.faults).filter(
    (path) => path !== typing.value && ours(path),
  );
  if (shown.length + wanting.length === 0) return null;
  return (
    <div class="wanting">
      {shown.length > 0 && (
        <>
          <p>{words.value.faults.summary(shown.length)}</p>
          <FieldLinks paths={shown} />
        </>
      )}
      {wanting.length > 0 && (
        <>
          <p>{words.value.faults.wanted(wanting.length)}</p>
          <FieldLinks paths={wanting} />
        </>
      )}
    </div>
  );
}

export function FieldLinks({ paths }: { readonly paths: readonly string[] }) {
  return (
    <ul class="links">
      {paths.map((path) => (
        <li key={path}>
          <a
            href={`#${path}`}
            onClick={(event) => {
              event.preventDefault();
              goToField(path);
            }}
          >
            {nameOf(path)}
          </a>
        </li>
      ))}
    </ul>
  );
}
