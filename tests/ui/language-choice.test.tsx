// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, expect, test, vi } from "vitest";
import type { LanguageStore } from "../../src/logbook/language-store.ts";
import { demos } from "../../src/ui/demo.ts";
import { draftOf } from "../../src/ui/draft-of.ts";
import { language, speak } from "../../src/ui/language.ts";
import { LanguageChoice } from "../../src/ui/language-choice.tsx";
import { language as words } from "../../src/ui/words/en/frame.ts";
import { language as inDutch } from "../../src/ui/words/nl/frame.ts";
import { WorkOutPlace } from "../../src/ui/work-out.tsx";
import { makeWorkOut } from "../../src/ui/work-out-state.ts";
import { languageNames, languages } from "../../src/units/language.ts";
import { markedCatalogue } from "./marked-words.ts";
import { world } from "./ports.ts";

afterEach(async () => {
  cleanup();
  await speak("en");
});

function shown(store: Partial<LanguageStore> = {}) {
  const kept: string[] = [];
  const workOut = makeWorkOut(draftOf(demos.gullrock), null, world().ports);
  const keep = (it: string) => kept.push(it) > 0;
  render(<LanguageChoice store={{ load: () => null, keep, ...store }} workOut={workOut} />);
  return { kept, workOut };
}

const select = () => screen.getByRole("combobox") as HTMLSelectElement;
/** Until it is in force, and what followed from that is on the page. */
const choose = (value: string) =>
  act(async () => {
    fireEvent.change(select(), { target: { value } });
    await vi.waitFor(() => expect(language.value).toBe(value), 10_000);
  });

test("each language stands under its own name, told as its own, beneath a label", () => {
  shown();
  expect(screen.getByLabelText(words.choose)).toBe(select());
  const options = [...select().options];
  expect(options.map((it) => [it.value, it.lang, it.textContent])).toEqual(
    languages.map((it) => [it, it, languageNames[it]]),
  );
  expect(select().value).toBe("en");
});

test("a choice is in force, kept, and heard from the worksheet's voice", async () => {
  const { kept, workOut } = shown();
  await choose("nl");
  expect(language.value).toBe("nl");
  expect(select().value).toBe("nl");
  expect(kept).toEqual(["nl"]);
  expect(workOut.worksheet.value?.language).toBe("nl");
  expect(screen.getByRole("status").textContent).toBe("");
});

test("a choice that the browser will not keep is in force all the same, and says so", async () => {
  shown({ keep: () => false });
  await choose("nl");
  expect(language.value).toBe("nl");
  expect(screen.getByRole("status").textContent).toBe(inDutch.notKept);
});

test("a change of language redraws the page and loses nothing that was typed", async () => {
  const it = world();
  const workOut = makeWorkOut(draftOf(demos.gullrock), null, it.ports);
  render(<WorkOutPlace workOut={workOut} hearAPour={async () => {}} />);
  const title = screen.getByLabelText("Name of this worksheet") as HTMLInputElement;
  fireEvent.input(title, { target: { value: "Half a tit" } });
  const room = screen.getByLabelText("The room") as HTMLInputElement;
  fireEvent.input(room, { target: { value: "cold-ish" } });
  title.focus();
  await act(async () => {
    await speak("de", markedCatalogue);
  });
  expect(screen.getByLabelText("‹Name of this worksheet›")).toBe(title);
  expect(title.value).toBe("Half a tit");
  expect(room.value).toBe("cold-ish");
  expect(document.activeElement).toBe(title);
});

test("the voice's own language can be another than the page's", async () => {
  const workOut = makeWorkOut(draftOf(demos.gullrock), null, world().ports);
  render(<WorkOutPlace workOut={workOut} hearAPour={async () => {}} />);
  const voice = screen.getByLabelText("The voice speaks") as HTMLSelectElement;
  expect(voice.value).toBe("en");
  await act(async () => {
    fireEvent.change(voice, { target: { value: "fr" } });
  });
  expect(voice.value).toBe("fr");
  expect(workOut.worksheet.value?.language).toBe("fr");
  expect(language.value).toBe("en");
  await act(async () => {
    fireEvent.change(voice, { target: { value: "en" } });
  });
  expect(workOut.worksheet.value).toEqual(demos.gullrock);
});
