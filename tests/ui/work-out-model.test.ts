import { describe, expect, test } from "vitest";
import { firstTopics, warningsAbout } from "../../src/ui/answer-model.ts";
import { demos } from "../../src/ui/demo.ts";
import type { Draft } from "../../src/ui/draft.ts";
import { draftOf, emptyDraft } from "../../src/ui/draft-of.ts";
import { inPageOrder, readDraft, typedInto } from "../../src/ui/work-out-model.ts";
import { foghorn, gullrock } from "../plan/worksheets.ts";

const demo = draftOf(demos.gullrock);

describe("a worksheet and its draft", () => {
  test.each([gullrock, foghorn, demos.gullrock, demos.foghorn])(
    "reading the draft of a worksheet gives the worksheet back: $title",
    (worksheet) => {
      expect(readDraft(draftOf(worksheet))).toMatchObject({ worksheet, faults: {}, wanting: [] });
    },
  );

  test.each(Object.entries(demos))(
    "the practice worksheet %s has nothing to warn of before it is poured",
    (_, it) => {
      const { plan } = readDraft(draftOf(it));
      expect(plan && warningsAbout(plan, firstTopics)).toEqual([]);
    },
  );

  test("the practice worksheet at 69 °F develops for 9:29", () => {
    // Chart rows 10:00 at 68 °F and 9:00 at 70 °F, common practice; derived by ln(time) linear in °C.
    expect(readDraft(demo).plan?.developmentSeconds).toBe(9 * 60 + 29);
  });
});

describe("what is wrong", () => {
  test("a bad temperature is told beside its own field, and its text is kept", () => {
    const draft = typedInto(demo, "developer.temperature", "warm");
    const { faults, plan } = readDraft(draft);
    expect(draft["developer.temperature"]).toBe("warm");
    expect(Object.keys(faults)).toEqual(["developer.temperature"]);
    expect(faults["developer.temperature"]).toContain(
      "“warm” cannot be used. It may hold a temper",
    );
    expect(plan).toBeNull();
  });

  test("a bound is told with what was typed, not with what it was read as", () => {
    const { faults } = readDraft(typedInto(demo, "tank.pourIn", "0.2 s"));
    expect(faults["tank.pourIn"]).toContain("“0.2 s” cannot be used. It may hold a number from 1");
  });

  test("a fault never speaks of fields by their paths", () => {
    const draft = {
      ...demo,
      "developer.leaflet[1].time": "9:00",
      "developer.leaflet[1].temperature": "65 °F",
      "tank.room": "18 °C",
    };
    const { faults, meanings } = readDraft(draft);
    expect(faults["developer.leaflet[1].time"]).toContain("“Row 1”");
    expect(meanings["tank.halfway"]).toBe(
      "Needed: minutes, since “The room” is given: both or neither.",
    );
  });

  test("one bad entry of a list is told beside the list", () => {
    const draft = { ...demo, "baths.wash.fills": "5, 0", "tank.measured.pourIn": "9 0" };
    const { faults } = readDraft(draft);
    expect(Object.keys(faults).sort()).toEqual(["baths.wash.fills", "tank.measured.pourIn"]);
    expect(faults["baths.wash.fills"]).toContain("“5, 0” cannot be used.");
  });

  test("a leaflet with no row for the film is told at the list", () => {
    const rows = Object.keys(demo).filter((path) => /leaflet.*exposureIndex/.test(path));
    const draft = { ...demo, ...Object.fromEntries(rows.map((path) => [path, "800"])) };
    expect(readDraft(draft).faults["developer.leaflet"]).toContain(
      'at least one row that serves "G',
    );
  });

  test("an empty field that is needed is wanting, not wrong", () => {
    const { faults, wanting } = readDraft(emptyDraft());
    expect(faults).toEqual({});
    expect(wanting).toContain("developer.temperature");
    expect(wanting).toEqual([...wanting].sort(inPageOrder));
    expect(wanting[0]).toBe("films[0].label");
  });

  test("a fault in a bath that is not used stands in nobody's way", () => {
    const draft = { ...demo, "baths.stop.time": "soon", "baths.stop.use": "no" };
    expect(readDraft(draft).worksheet?.baths?.stop).toEqual({ skip: true });
    expect(readDraft({ ...draft, "baths.stop.use": "yes" }).faults).toHaveProperty([
      "baths.stop.time",
    ]);
  });
});

describe("a number without a unit", () => {
  const typed = (...steps: readonly (readonly [string, string])[]) =>
    steps.reduce<Draft>((draft, [path, text]) => typedInto(draft, path, text), emptyDraft());

  test("takes the unit last used, and the field says so", () => {
    const draft = typed(
      ["developer.leaflet[0].temperature", "68 °F"],
      ["developer.temperature", "70"],
    );
    expect(readDraft(draft).meanings["developer.temperature"]).toContain("Read as 70 °F, the unit");
  });

  test("keeps the unit it was lent, whatever is used after it", () => {
    const draft = typed(
      ["developer.leaflet[0].temperature", "68 °F"],
      ["developer.temperature", "70"],
      ["tank.room", "18 °C"],
      ["developer.temperature", "71"],
    );
    expect(readDraft(draft).meanings["developer.temperature"]).toContain("71 °F");
  });

  test("takes °C and ml where none was ever used", () => {
    const draft = typed(["developer.temperature", "20"], ["tank.volume", "600"]);
    const { meanings } = readDraft(draft);
    expect(meanings["developer.temperature"]).toContain("20 °C");
    expect(meanings["tank.volume"]).toContain("600 ml");
  });
});

describe("what is left empty", () => {
  test("one fraction for a stop takes the usual one beside it", () => {
    const { worksheet } = readDraft({ ...demo, "developer.perStop.push": "50" });
    expect(worksheet?.developer.perStop).toEqual({ pull: 0.1, push: 0.5 });
  });

  test("a bath's own agitation takes the developer's where it is empty", () => {
    const { worksheet } = readDraft({ ...demo, "baths.fixer.agitation.first": "15" });
    expect(worksheet?.baths?.fixer?.agitation).toEqual({ ...demos.gullrock.agitation, first: 15 });
  });

  test("a bath brought in only by name is named as soon as it is ticked", () => {
    expect(readDraft({ ...demo, "baths.prewet.use": "yes" }).worksheet?.baths?.prewet).toEqual({});
    expect(readDraft(demo).worksheet?.baths).not.toHaveProperty("prewet");
  });
});

test("what was understood is told where the text does not say it plainly, and only there", () => {
  const draft = { ...demo, "developer.leaflet[0].time": "11.75 min", "tank.volume": "640ML" };
  const { meanings } = readDraft(draft);
  expect(meanings).toEqual({ "developer.leaflet[0].time": "Read as 11:45." });
});
