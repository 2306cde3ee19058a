// The leaflet that drawings are looked at with: the one of the demonstration.
import { curveThrough, timeAt } from "../../src/trade/time-temperature.ts";
import type { LeafletCurve } from "../../src/ui/leaflet-drawing.ts";
import { celsiusFromFahrenheit } from "../../src/units/temperature.ts";

export function leafletOf(): LeafletCurve {
  const points = [
    { celsius: celsiusFromFahrenheit(65), seconds: 705 },
    { celsius: celsiusFromFahrenheit(68), seconds: 600 },
    { celsius: celsiusFromFahrenheit(70), seconds: 540 },
    { celsius: celsiusFromFahrenheit(75), seconds: 420 },
  ];
  const curve = curveThrough(points);
  const celsius = celsiusFromFahrenheit(69);
  return {
    curve,
    rows: points.map((point) => ({ ...point, odd: false })),
    factor: 1,
    today: { celsius, seconds: timeAt(curve, celsius) },
    sought: null,
    like: { f: 69 },
  };
}
