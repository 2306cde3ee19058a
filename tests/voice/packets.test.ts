import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { joinPackets, splitPackets } from "../../src/voice/packets.ts";

describe("Packets in a row", () => {
  test("come apart as they were put together", () => {
    const packets = fc.array(fc.uint8Array({ minLength: 0, maxLength: 1275 }), { maxLength: 20 });
    fc.assert(
      fc.property(packets, (each) => {
        expect(splitPackets(joinPackets(each))).toEqual(each);
      }),
    );
  });

  test("cost two bytes each", () => {
    expect(joinPackets([new Uint8Array(3), new Uint8Array(300)]).length).toBe(307);
  });
});
