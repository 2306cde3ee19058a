import { describe, expect, test } from "vitest";
import { processBaths } from "../../src/trade/baths.ts";

const baths = processBaths["bw-negative"] ?? [];
const bath = (id: string) => baths.find((it) => it.id === id);

describe("the baths of a black-and-white negative", () => {
  test("come in the order in which film goes through them", () => {
    expect(baths.map((it) => it.id)).toEqual([
      "prewet",
      "developer",
      "stop",
      "fixer",
      "rinse",
      "wash-aid",
      "wash",
      "wetting-agent",
    ]);
  });

  test("take part unasked but for pre-wet, rinse and wash aid", () => {
    const named = baths.filter((it) => it.onlyIfNamed).map((it) => it.id);
    expect(named).toEqual(["prewet", "rinse", "wash-aid"]);
  });

  test("keep to US Army course SS0509, p. 24: stop bath 30–60 s without a rest, rinse 30 s, aid 2 min", () => {
    expect(bath("stop")).toMatchObject({ seconds: 60, agitation: "continuous" });
    expect(bath("rinse")?.seconds).toBe(30);
    expect(bath("wash-aid")?.seconds).toBe(120);
  });

  test("leave one time alone to be worked out: the developer's", () => {
    expect(baths.filter((it) => it.seconds === null).map((it) => it.id)).toEqual(["developer"]);
  });
});
