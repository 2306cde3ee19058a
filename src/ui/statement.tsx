// What is promised to people who see, hear, point or hurry otherwise than most, and what is not. Fetched when it
// is opened, from the foot of every place.
import { lateWords } from "./language.ts";
import "./senses.css";

export function Statement() {
  const words = lateWords.value.statement;
  return (
    <div class="statement">
      <p>{words.built("WCAG 2.2", "2.2.3")}</p>
      <p>{words.time}</p>
      <ul>
        {words.instead.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {[words.ways, words.measured, words.limits, words.trials].map((text) => (
        <p key={text}>{text}</p>
      ))}
    </div>
  );
}
