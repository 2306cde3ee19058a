// A worksheet in, the drawings that stand beside its questions out: leaflet, tempering, contrast, wedges.
// Fetched after the first screen; what is drawn is worked out by the plan's own stages.
import { celsiusFor, ownFactor, soughtSeconds } from "../plan/backwards.ts";
import { contrastOf } from "../plan/contrast.ts";
import { developmentOf } from "../plan/development.ts";
import { temperingOf } from "../plan/tempering.ts";
import type { ContrastWish, TemperingWish, Worksheet } from "../plan/worksheet.ts";
import { gradientAt } from "../trade/contrast.ts";
import { rowOutOfLine } from "../trade/out-of-line.ts";
import { timeAt } from "../trade/time-temperature.ts";
import { contrastDrawing } from "./contrast-drawing.ts";
import { CurvePicture } from "./curve-picture.tsx";
import { leafletDrawing } from "./leaflet-drawing.ts";
import { temperingDrawing } from "./tempering-drawing.ts";
import { wedgeDrawing } from "./wedge-drawing.ts";
import "./curve.css";

export function LeafletPicture({ worksheet }: { readonly worksheet: Worksheet }) {
  const { developer } = worksheet;
  const development = developmentOf(worksheet);
  const { base, curve, celsius } = development;
  const factor = ownFactor(development);
  const odd = rowOutOfLine(base.rows);
  const rows = base.rows.map((row, index) => ({
    celsius: row.celsius,
    seconds: row.seconds,
    odd: index === odd?.index,
  }));
  const today = { celsius, seconds: timeAt(curve, celsius) * factor };
  const seconds = soughtSeconds(developer);
  const at = seconds === null ? null : celsiusFor(development, seconds);
  const sought = seconds === null || at === null ? null : { celsius: at, seconds };
  const like = developer.temperature;
  return <CurvePicture drawing={leafletDrawing({ curve, rows, factor, today, sought, like })} />;
}

export function TemperingPicture({ wish }: { readonly wish: TemperingWish }) {
  const { readings, fit, reach, target } = temperingOf(wish);
  const fitted = fit.kind === "fitted" ? fit : null;
  const drawing = temperingDrawing({
    readings,
    drift: fitted?.drift ?? null,
    target,
    reach: reach?.kind === "reached" ? { at: reach.at, ...reach.range } : null,
    settles: fitted?.settles ?? null,
    like: wish.target,
  });
  return <CurvePicture drawing={drawing} />;
}

export function ContrastPictures({ wish }: { readonly wish: ContrastWish }) {
  const { tests, fit, wanted } = contrastOf(wish);
  const fitted = fit.kind === "fitted" ? fit : null;
  const curves = tests.flatMap(({ film, wedge }) =>
    film.densities && wish.stepLog !== undefined
      ? [
          {
            label: film.time,
            stepLog: wish.stepLog,
            firstLog: wish.firstLog ?? null,
            baseFog: film.baseFog ?? 0,
            densities: film.densities,
            speedPoint: wedge?.kind === "read" ? wedge.speedPoint : null,
          },
        ]
      : [],
  );
  const growth = contrastDrawing({
    tests: fit.tests,
    gradientAt: fitted && ((seconds) => gradientAt(fitted, seconds)),
    from: fit.tests[0]?.seconds ?? 0,
    to: fit.tests.at(-1)?.seconds ?? 0,
    wanted:
      wanted.time?.kind === "time"
        ? { seconds: wanted.time.seconds, gradient: wanted.gradient }
        : null,
    limit: fitted?.limit ?? null,
  });
  return (
    <>
      {fit.tests.length > 0 && <CurvePicture drawing={growth} />}
      {curves.length > 0 && <CurvePicture drawing={wedgeDrawing({ curves })} />}
    </>
  );
}
