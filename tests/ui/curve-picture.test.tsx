// @vitest-environment happy-dom
import { cleanup, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { scaled, timeAt } from "../../src/trade/time-temperature.ts";
import { type Box, type CurveDrawing, pictureOf } from "../../src/ui/curve-model.ts";
import { CurvePicture } from "../../src/ui/curve-picture.tsx";
import { type LeafletCurve, leafletDrawing } from "../../src/ui/leaflet-drawing.ts";
import { temperingDrawing } from "../../src/ui/tempering-drawing.ts";
import { celsiusFromFahrenheit } from "../../src/units/temperature.ts";
import { leafletOf } from "./curve-cases.ts";
import "./late-words.ts";

afterEach(cleanup);

/** This film slower by a quarter, with a time sought and a row out of line. */
function crowded(): LeafletCurve {
  const given = leafletOf();
  const own = scaled(given.curve, 1.25);
  const at = (fahrenheit: number) => {
    const celsius = celsiusFromFahrenheit(fahrenheit);
    return { celsius, seconds: timeAt(own, celsius) };
  };
  return {
    ...given,
    rows: given.rows.map((row, index) => ({ ...row, odd: index === 2 })),
    factor: 1.25,
    today: at(69),
    sought: at(72.5),
  };
}

const tempering = temperingDrawing({
  readings: [0, 120, 240, 420].map((seconds) => ({ seconds, celsius: 25 - seconds / 120 })),
  drift: { start: 25, room: 16, halfway: 9 },
  target: 20,
  reach: { at: 632, from: 540, to: 760 },
  settles: null,
  like: { f: 68 },
});

const cases: Readonly<Record<string, CurveDrawing>> = {
  "the leaflet of the demonstration": leafletDrawing(leafletOf()),
  "the same in °C": leafletDrawing({ ...leafletOf(), like: { c: 20 } }),
  "a crowded leaflet": leafletDrawing(crowded()),
  tempering,
};
const widths = [280, 324, 340, 420, 500];
const shown = Object.entries(cases).flatMap(([name, drawing]) =>
  widths.map((width) => ({ name, drawing, width })),
);

const overlap = (a: Box, b: Box) =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

describe("the words of a drawing", () => {
  test.each(shown)("$name, $width wide: all have a place, and none touches another", (it) => {
    const { labels, upName, acrossName, plot, height } = pictureOf(it.drawing, it.width);
    const { marks, levels, bands, lines } = it.drawing;
    const wanted = [...marks, ...levels, ...bands, ...lines].flatMap(({ label }) => label ?? []);
    expect(labels.map(({ lines }) => lines.join(" ")).sort()).toEqual(wanted.toSorted());
    const boxes = [...labels, upName, acrossName].map(({ box }) => box);
    boxes.forEach((box, index) => {
      for (const other of boxes.slice(index + 1)) expect(overlap(box, other)).toBe(false);
      expect(box.left).toBeGreaterThanOrEqual(0);
      expect(box.right).toBeLessThanOrEqual(it.width);
      expect(box.bottom).toBeLessThanOrEqual(height);
    });
    for (const { box } of labels) expect(box.bottom).toBeLessThanOrEqual(plot.bottom);
  });

  test.each(shown)("$name, $width wide: no sign is hidden behind them", (it) => {
    const { labels, marks } = pictureOf(it.drawing, it.width);
    for (const { box } of labels) {
      for (const { x, y } of marks) {
        const sign = { left: x - 4, top: y - 4, right: x + 4, bottom: y + 4 };
        expect(overlap(box, sign)).toBe(false);
      }
    }
  });

  test.each(shown)("$name, $width wide: those of the ticks keep apart", (it) => {
    const { across, up } = pictureOf(it.drawing, it.width);
    const apart = (ticks: typeof across, least: number) => {
      const written = ticks.flatMap(({ at, text }) => (text === null ? [] : [{ at, text }]));
      expect(written.length).toBeGreaterThanOrEqual(2);
      written.forEach(({ at, text }, index) => {
        const next = written[index + 1];
        const room = least === 0 ? 8.5 * text.length : least;
        if (next) expect(Math.abs(next.at - at)).toBeGreaterThanOrEqual(room);
      });
    };
    apart(across, 0);
    apart(up, 19);
  });
});

describe("a drawing on the page", () => {
  test("is a picture named by its title and what it says, and takes no focus", () => {
    const drawing = leafletDrawing(crowded());
    const { container } = render(<CurvePicture drawing={drawing} />);
    const picture = screen.getByRole("img", { name: `${drawing.title}. ${drawing.says}` });
    expect(picture.tagName.toLowerCase()).toBe("svg");
    expect(screen.getByText(drawing.title).tagName).toBe("FIGCAPTION");
    expect(container.querySelectorAll("[tabindex], a, button, input")).toHaveLength(0);
  });

  test("tells signs and lines apart by shape alone", () => {
    const { container } = render(<CurvePicture drawing={leafletDrawing(crowded())} />);
    const count = (selector: string) => container.querySelectorAll(selector).length;
    expect(count("path.full")).toBe(3);
    expect(count("path.hollow")).toBe(2);
    expect(count("circle.hollow")).toBe(1);
    expect([count(".solid"), count(".dashed"), count(".dotted")]).toEqual([1, 2, 1]);
    expect(container.querySelectorAll("[fill], [stroke]")).toHaveLength(0);
  });

  test("holds words at their right end that stand near the right edge, and all others at their left", () => {
    const drawing = leafletDrawing(crowded());
    const { container } = render(<CurvePicture drawing={drawing} />);
    const { labels, upName, acrossName } = pictureOf(drawing, 340);
    const words = [upName, acrossName, ...labels];
    const drawn = [...container.querySelectorAll("text.name, text.label")];
    const held = drawn.map((text) => text.classList.contains("end"));
    expect(held).toEqual(words.map(({ box }) => box.right > 302));
    expect(new Set(held)).toEqual(new Set([true, false]));
    expect(drawn.map((text) => Number(text.querySelector("tspan")?.getAttribute("x")))).toEqual(
      words.map(({ box }, index) => (held[index] ? box.right : box.left)),
    );
  });

  test("hatches its bands inside their ends", () => {
    const { container } = render(<CurvePicture drawing={tempering} />);
    const [band] = pictureOf(tempering, 340).bands;
    const drawn = container.querySelector(".hatch")?.getAttribute("d") ?? "";
    const xs = [...drawn.matchAll(/[ML]([\d.]+) /g)].map(([, x]) => Number(x));
    expect(xs.length).toBeGreaterThan(10);
    expect(Math.min(...xs)).toBeGreaterThanOrEqual((band?.box.left ?? 0) - 1e-9);
    expect(Math.max(...xs)).toBeLessThanOrEqual((band?.box.right ?? 0) + 1e-9);
  });
});
