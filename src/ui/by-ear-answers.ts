// A draft and its plan in, what Work out answers out, as it is spoken: the time, the mix, and what the questions
// beside the development come to. The answers are the plan's own stages', in the units that the person uses.
import { contrastOf } from "../plan/contrast.ts";
import { mixingOf } from "../plan/mixing.ts";
import type { Plan } from "../plan/plan.ts";
import { temperingOf } from "../plan/tempering.ts";
import type { Worksheet } from "../plan/worksheet.ts";
import { inUnitOf, type Volume } from "../units/volume.ts";
import { echoOf, timeSaid, unitSaid } from "./by-ear-echo.ts";
import type { Saying } from "./by-ear-field.ts";
import type { Draft } from "./draft.ts";
import { asideOf } from "./fields.ts";
import { readDraft } from "./work-out-model.ts";

type Answer = readonly Saying[];

const none: Answer = [{ key: "ear.told.none" }];

/** One line each. */
export function answersSaid(draft: Draft, plan: Plan): readonly Answer[] {
  const { worksheet, faults, wanting } = readDraft(draft);
  const time = [{ key: "ear.time" }, ...timeSaid(plan.developmentSeconds)];
  if (worksheet === null) return [time];
  const halfFilled = [...Object.keys(faults), ...wanting].map(asideOf);
  const beside = (["mixing", "tempering", "contrast"] as const).flatMap((aside) => {
    const answers = halfFilled.includes(aside) ? [none] : answersOf[aside](worksheet);
    return answers.length === 0 ? [] : [[{ key: `ear.gate.${aside}` }], ...answers];
  });
  return [time, ...mixSaid(worksheet, plan), ...beside];
}

function mixSaid({ tank }: Worksheet, { mix }: Plan): readonly Answer[] {
  const stock = poured("stock", mix.stock, tank.volume);
  return mix.water === 0 ? [stock] : [stock, poured("water", mix.water, tank.volume)];
}

/** None where it was not asked. */
const answersOf = {
  mixing(worksheet: Worksheet) {
    if (worksheet.mixing === undefined) return [];
    const rounded = mixingOf(worksheet)?.rounded ?? null;
    if (rounded === null) return [none];
    return (["stock", "cold", "hot"] as const).map((what) =>
      poured(what, rounded[what].millilitres, worksheet.tank.volume),
    );
  },
  tempering({ tempering }: Worksheet) {
    if (tempering === undefined) return [];
    const { reach } = temperingOf(tempering);
    if (reach === null || reach.kind === "never" || reach.at === null) return [none];
    return [[{ key: "ear.told.reached" }, ...timeSaid(60 * Math.round(reach.at / 60))]];
  },
  contrast({ contrast }: Worksheet) {
    if (contrast === undefined) return [];
    const { time } = contrastOf(contrast).wanted;
    if (time?.kind !== "time") return [none];
    return [[{ key: "ear.time" }, ...timeSaid(Math.round(time.seconds))]];
  },
} satisfies { readonly [aside: string]: (worksheet: Worksheet) => readonly Answer[] };

/** As the page writes it: one decimal of a millilitre, two of an ounce. */
function poured(what: string, millilitres: number, like: Volume): Answer {
  const volume = inUnitOf(like, millilitres);
  const [size, unit, places] = "ml" in volume ? [volume.ml, "ml", 1] : [volume.flOz, "flOz", 2];
  const said = String(Number(size.toFixed(places)));
  return [{ key: `ear.told.${what}` }, ...echoOf(said), unitSaid(unit)];
}
