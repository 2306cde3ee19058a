// What can be done with the shelf's bottles, and what is refused, without a screen.
import { describe, expect, test } from "vitest";
import type { Contents } from "../../src/logbook/bottle.ts";
import { shelf as say } from "../../src/ui/words/en/shelf.ts";
import { bottleOf, fixerB, shelfByHand } from "./shelf-by-hand.ts";
import "./late-words.ts";

const today = "2026-05-14";

async function opened(...contents: readonly Contents[]) {
  const hand = shelfByHand({ bottles: contents.map((it, at) => bottleOf(it, `bottle ${at}`)) });
  await hand.shelf.lookAgain();
  const { shelf } = hand;
  const lastOf = (id: string) =>
    hand
      .kept()
      .find((it) => it.id === id)
      ?.entries.at(-1)?.id ?? "";
  const standing = () =>
    shelf.states.value.flatMap(({ contents, stands, removed }) =>
      removed || stands === "poured away" ? [] : [contents.name],
    );
  return { ...hand, lastOf, standing };
}

describe("taking back and putting back", () => {
  test.each(["poured-away", "removed"] as const)(
    "%s: refused while another bottle has the name, and nothing is lost by it",
    async (kind) => {
      const { shelf, kept, lastOf, standing } = await opened(fixerB);
      await shelf.act("bottle 0", { kind }, today);
      const entry = lastOf("bottle 0");
      await shelf.mix({ ...fixerB, mixedOn: today });
      const before = kept();
      expect(await shelf.undo("bottle 0", entry)).toBe("name-taken");
      expect(shelf.notice.value).toBe(say.refusals["name-taken"]);
      expect(shelf.last.value).toEqual({ bottle: "bottle 0", entry: null });
      expect(kept()).toEqual(before);
      expect(standing()).toEqual(["Fixer B"]);

      const other = kept()[1]?.id ?? "";
      const renamed = { ...fixerB, mixedOn: today, name: "Fixer C" };
      await shelf.act(other, { kind: "corrected", contents: renamed }, today);
      expect(await shelf.undo("bottle 0", entry)).toBeNull();
      expect(standing()).toEqual(["Fixer B", "Fixer C"]);
    },
  );

  test("a correction brings back no name that another bottle has by now", async () => {
    const { shelf, lastOf, standing } = await opened(fixerB);
    await shelf.act(
      "bottle 0",
      { kind: "corrected", contents: { ...fixerB, name: "Fixer C" } },
      today,
    );
    const entry = lastOf("bottle 0");
    await shelf.mix(fixerB);
    expect(await shelf.undo("bottle 0", entry)).toBe("name-taken");
    expect(standing()).toEqual(["Fixer C", "Fixer B"]);
  });

  test("what is written down after something else stands after it, though the clock was set back", async () => {
    const { shelf, kept, lastOf } = await opened(fixerB);
    await shelf.act("bottle 0", { kind: "taken", volume: { ml: 300 } }, today);
    const entry = lastOf("bottle 0");
    // Written by a clock that went an hour ahead.
    const ahead = kept().map((it) => ({
      ...it,
      entries: it.entries.map((each) => ({ ...each, at: each.at + 3_600_000 })),
    }));
    const next = shelfByHand({ bottles: ahead });
    await next.shelf.undo("bottle 0", entry);
    await next.shelf.redo("bottle 0", entry);
    expect(next.shelf.states.value[0]?.left).toBe(700);
    const at = next.kept()[0]?.entries.map((each) => each.at) ?? [];
    expect(at).toEqual([...new Set(at)].toSorted((a, b) => a - b));
  });

  test("two of one name that stand there already, as from a file, are in nobody’s way", async () => {
    const { shelf, lastOf } = await opened(fixerB, fixerB);
    await shelf.act("bottle 0", { kind: "taken", volume: { ml: 300 } }, today);
    const entry = lastOf("bottle 0");
    expect(await shelf.undo("bottle 0", entry)).toBeNull();
    expect(shelf.states.value[0]?.left).toBe(1000);
    expect(await shelf.redo("bottle 0", entry)).toBeNull();
    expect(shelf.states.value[0]?.left).toBe(700);
  });
});
