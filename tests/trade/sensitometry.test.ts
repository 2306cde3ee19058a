import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { logSpeed, readWedge, type Wedge, type WedgeFault } from "../../src/trade/sensitometry.ts";

/** log10 of the exposure at the speed point of a film of ISO 100, lux seconds. */
const hundred = Math.log10(0.8 / 100);

/** A film without a toe: straight at `gradient` from `corner`, the log exposure at which it begins. */
const straight = (gradient: number, corner: number) => (log: number) =>
  Math.max(0, gradient * (log - corner));

/** A film with a toe of `soft` in log exposure, straight at `gradient` above it. */
const toed = (gradient: number, corner: number, soft: number) => (log: number) =>
  gradient * soft * Math.log1p(Math.exp((log - corner) / soft));

function exposed(
  film: (log: number) => number,
  { baseFog = 0.25, stepLog = 0.15, firstLog = -3, steps = 21 } = {},
): Wedge & { readonly firstLog: number } {
  const densities = Array.from({ length: steps }, (_, i) => baseFog + film(firstLog + i * stepLog));
  return { baseFog, stepLog, firstLog, densities };
}

function read(wedge: Wedge) {
  const reading = readWedge(wedge);
  if (reading.kind === "unread") throw new Error(`not read: ${reading.why}`);
  return reading;
}

const faultOf = (wedge: Wedge): WedgeFault | "read" => {
  const reading = readWedge(wedge);
  return reading.kind === "read" ? "read" : reading.why;
};

/** Densities typed to the hundredth; the shortest of these wedges end too soon to be read. */
const typedWedges = fc
  .record({
    fog: fc.integer({ min: 5, max: 60 }),
    first: fc.integer({ min: 0, max: 9 }),
    rises: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 6, maxLength: 30 }),
    firstLog: fc.double({ min: -5, max: 1, noNaN: true }),
  })
  .map(({ fog, first, rises, firstLog }): Wedge & { readonly firstLog: number } => {
    let hundredths = fog + first;
    const later = rises.map((rise) => {
      hundredths += rise;
      return hundredths / 100;
    });
    const densities = [(fog + first) / 100, ...later];
    return { baseFog: fog / 100, stepLog: 0.15, firstLog, densities };
  });

describe("the criterion of ISO 6:1993", () => {
  test("ISO 6:1993 (as summarised in an encyclopaedia): ΔD 0.80 over Δlog H 1.30 is a mean gradient of 0.615 (0.0005)", () => {
    const reading = read(exposed(straight(0.8 / 1.3, hundred - 0.1 / (0.8 / 1.3))));
    expect(reading.rise).toBeCloseTo(0.8, 9);
    expect(Math.abs(reading.gradient - 0.615)).toBeLessThan(0.0005);
    expect(reading.meetsIso).toBe(true);
  });

  test("the speed point is 0.10 above base and fog, whatever these are (ISO 6:1993; 1e-9)", () => {
    for (const baseFog of [0, 0.05, 0.31, 1.2]) {
      const reading = read(exposed(straight(0.6, -2.4), { baseFog }));
      expect(reading.speedPoint).toBeCloseTo(-2.4 + 0.1 / 0.6, 9);
    }
  });

  test("memory, plausibility (ISO 6): S = 0.8 / Hm, so 0.008 lux s at the speed point is 100, to 1e-6", () => {
    const reading = read(exposed(straight(0.615, hundred - 0.1 / 0.615)));
    expect(reading.speedPoint).toBeCloseTo(hundred, 9);
    expect(reading.speed).toBeCloseTo(100, 6);
  });

  test.each([
    [0.74, false],
    [0.75, true],
    [0.8, true],
    [0.85, true],
    [0.86, false],
  ])("memory, plausibility (ISO 6, 0.80 ± 0.05): ΔD %f meets the standard: %s", (rise, meets) => {
    const densities = [0.3, 0.4, 0.4 + rise, 0.5 + rise];
    const reading = read({ baseFog: 0.3, stepLog: 1.3, firstLog: null, densities });
    expect(reading.rise).toBeCloseTo(rise, 9);
    expect(reading.meetsIso).toBe(meets);
  });

  test.each([
    [25, 15],
    [100, 21],
    [200, 24],
    [400, 27],
    [3200, 36],
  ])("arithmetic %i is %i° (ISO 6: S° = 1 + 10 log10 S, to the whole degree)", (speed, degrees) => {
    expect(logSpeed(speed)).toBe(degrees);
  });
});

describe("a wedge of a film whose curve is known", () => {
  test("gives the film's own speed point and gradient, if it has no toe (1e-9)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 0.65, noNaN: true }),
        fc.integer({ min: 0, max: 5 }),
        (gradient, corner) => {
          const reading = read(exposed(straight(gradient, -3 + corner * 0.15)));
          expect(reading.speedPoint).toBeCloseTo(-3 + corner * 0.15 + 0.1 / gradient, 9);
          expect(reading.gradient).toBeCloseTo(gradient, 9);
        },
      ),
    );
  });

  test("gives them of a film with a toe to 0.01 in log exposure and in gradient, on a wedge in half stops", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.4, max: 1, noNaN: true }),
        fc.double({ min: 0.15, max: 0.3, noNaN: true }),
        fc.double({ min: -2, max: -1.5, noNaN: true }),
        (gradient, soft, corner) => {
          const film = toed(gradient, corner, soft);
          const speedPoint = corner + soft * Math.log(Math.expm1(0.1 / (gradient * soft)));
          const reading = read(exposed(film, { firstLog: -4, steps: 31 }));
          expect(Math.abs(reading.speedPoint - speedPoint)).toBeLessThan(0.01);
          const mean = (film(speedPoint + 1.3) - 0.1) / 1.3;
          expect(Math.abs(reading.gradient - mean)).toBeLessThan(0.01);
        },
      ),
    );
  });

  test("has no speed where the first step's exposure is not known, and counts from that step (1e-9)", () => {
    const wedge = exposed(straight(0.6, -2.4));
    const unknown = read({ ...wedge, firstLog: null });
    expect(unknown.speed).toBeNull();
    expect(unknown.speedPoint).toBeCloseTo(read(wedge).speedPoint + 3, 9);
    expect(unknown.gradient).toBe(read(wedge).gradient);
  });
});

describe("a wedge as typed", () => {
  test("reads the same with any density added to base and fog and to every step (1e-9)", () => {
    fc.assert(
      fc.property(typedWedges, fc.integer({ min: -50, max: 200 }), (wedge, hundredths) => {
        const added = hundredths / 100;
        const raised = readWedge({
          ...wedge,
          baseFog: wedge.baseFog + added,
          densities: wedge.densities.map((density) => density + added),
        });
        const reading = readWedge(wedge);
        if (raised.kind === "unread" || reading.kind === "unread") {
          expect(raised).toEqual(reading);
          return;
        }
        expect(raised.speedPoint).toBeCloseTo(reading.speedPoint, 9);
        expect(raised.rise).toBeCloseTo(reading.rise, 9);
        expect(raised.meetsIso).toBe(reading.meetsIso);
      }),
    );
  });

  test("moves its speed point by what its first exposure is moved, its speed as 10 to that, and nothing else (1e-9)", () => {
    fc.assert(
      fc.property(typedWedges, fc.double({ min: -2, max: 2, noNaN: true }), (wedge, by) => {
        const reading = readWedge(wedge);
        const moved = readWedge({ ...wedge, firstLog: wedge.firstLog + by });
        if (moved.kind === "unread" || reading.kind === "unread") {
          expect(moved).toEqual(reading);
          return;
        }
        expect(moved.speedPoint).toBeCloseTo(reading.speedPoint + by, 9);
        expect((moved.speed ?? 0) / (reading.speed ?? 0)).toBeCloseTo(10 ** -by, 6);
        expect(moved.gradient).toBe(reading.gradient);
      }),
    );
  });

  test("is found read, and found unread, by the wedges of these tests", () => {
    const kinds = new Set(fc.sample(typedWedges, { numRuns: 300, seed: 1 }).map(faultOf));
    expect(kinds).toContain("read");
    expect(kinds).toContain("too-short");
  });

  test("has a speed point where its density stands between those of the steps either side", () => {
    fc.assert(
      fc.property(typedWedges, (wedge) => {
        const reading = readWedge({ ...wedge, firstLog: null });
        fc.pre(reading.kind === "read");
        const position = reading.speedPoint / wedge.stepLog;
        const speedDensity = wedge.baseFog + 0.1;
        const [below, above] = [Math.floor(position + 1e-9), Math.ceil(position - 1e-9)];
        expect(wedge.densities[below]).toBeLessThanOrEqual(speedDensity + 1e-9);
        expect(wedge.densities[above]).toBeGreaterThanOrEqual(speedDensity - 1e-9);
      }),
    );
  });
});

describe("a wedge cannot be read", () => {
  const of = (densities: readonly number[], stepLog = 0.65): Wedge => ({
    baseFog: 0.3,
    stepLog,
    firstLog: null,
    densities,
  });

  test("with fewer than two steps", () => {
    expect(faultOf(of([]))).toBe("too-few");
    expect(faultOf(of([0.35]))).toBe("too-few");
    expect(faultOf(of([0.4, 1.2], 1.3))).toBe("read");
  });

  test("where a step is lower than the one before by more than 0.02 (practice, a densitometer's error)", () => {
    expect(faultOf(of([0.3, 0.5, 0.7, 0.9, 0.88]))).toBe("read");
    expect(faultOf(of([0.3, 0.5, 0.7, 0.9, 0.87]))).toBe("falls");
    expect(faultOf(of([0.32, 0.3, 0.6, 0.9, 1.2]))).toBe("read");
  });

  test("typed the wrong way round: that is told as falling", () => {
    expect(faultOf(of([1.2, 0.9, 0.6, 0.4, 0.3]))).toBe("falls");
  });

  test("where the first step is above the speed point's density; just on it, it is the speed point", () => {
    expect(faultOf(of([0.41, 0.6, 0.9, 1.2]))).toBe("starts-above");
    expect(read(of([0.4, 0.6, 0.9, 1.2])).speedPoint).toBe(0);
  });

  test("where no step comes up to the speed point's density; the last just on it is too short instead", () => {
    expect(faultOf(of([0.3, 0.32, 0.35, 0.39]))).toBe("never-reaches");
    expect(faultOf(of([0.3, 0.32, 0.35, 0.4]))).toBe("too-short");
  });

  test("where its steps end before Δlog H 1.30 from the speed point; just there is enough", () => {
    expect(faultOf(of([0.3, 0.4, 0.8]))).toBe("too-short");
    expect(faultOf(of([0.35, 0.45, 0.8, 1.1]))).toBe("read");
    expect(faultOf(of([0.3, 0.4, 0.8, 1.2]))).toBe("read");
    expect(read(of([0.3, 0.4, 0.8, 1.2])).rise).toBeCloseTo(0.8, 9);
    expect(faultOf(of([0.3, 0.4, 0.8, 1.2], 0.6499))).toBe("too-short");
    const halfWay = [0.19, 0.21, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8];
    expect(faultOf({ ...of(halfWay, 0.2), baseFog: 0.1 })).toBe("read");
    expect(faultOf({ ...of(halfWay.slice(0, -1), 0.2), baseFog: 0.1 })).toBe("too-short");
  });

  test("and a number that is none, or steps that are none apart, is a mistake of the program", () => {
    expect(() => readWedge(of([0.3, Number.NaN]))).toThrow(RangeError);
    expect(() => readWedge(of([0.3, 0.4, 1.2], 0))).toThrow(RangeError);
    expect(() => readWedge({ ...of([0.3, 0.4]), firstLog: Number.NEGATIVE_INFINITY })).toThrow(
      RangeError,
    );
  });
});
