// Black-and-white negative film, from the laid-out bench to the drying line.
// Data alone: which steps there are and which sentences each tells. The baths come from the plan.
import type { Outline, OutlineStep } from "../outline.ts";

/** A point of a check: one thing to do, asked for by one press; an old hand hears the one line. */
const point = (id: string, line: string, why: readonly string[] = []): OutlineStep => ({
  id,
  tells: [line, ...why, "press.done"],
  brief: [line],
  dark: false,
});

/** One thing that hands do in the dark, at their own pace. */
const byTouch = (
  id: string,
  line: string,
  rest: Pick<OutlineStep, "more" | "jams" | "only"> & { readonly learns?: readonly string[] } = {},
): OutlineStep => {
  const { learns = [], ...others } = rest;
  return { id, tells: [line, ...learns, "press.done"], brief: [line], dark: true, ...others };
};

/** Gloves come last, before the first bath: film is loaded with dry bare hands. */
const cautions = [
  "caution.sheet",
  "caution.glasses",
  "caution.air",
  "caution.floor",
  "caution.glass",
];

/** The same on every spiral reel. */
const feed = byTouch("feed", "load.feed", { more: ["more.feed"], jams: true });
const wind = byTouch("wind", "load.wind", {
  learns: ["load.count", "load.feel"],
  more: ["more.wind", "more.touch"],
  jams: true,
});
const others = byTouch("others", "load.others", { only: ["several"], jams: true });

const wetSide = (also: readonly string[] = []): OutlineStep => ({
  id: "wet-side",
  tells: ["lay-out.vessels", ...cautions, ...also, "press.done"],
  brief: ["lay-out.vessels", ...cautions, ...also],
  dark: false,
});
const temper: OutlineStep = {
  id: "temper",
  tells: ["temper.read", "temper.same", "press.tempered"],
  brief: ["temper.read", "temper.same"],
  dark: false,
};
const quiet = point("quiet", "check.phone");
const volume = point("volume", "check.volume");

export const bwNegative: Outline = {
  before: [
    {
      id: "lay-out",
      only: ["tank"],
      tells: ["lay-out", "lay-out.loading", "caution.mains", "press.done"],
      brief: ["lay-out.loading", "caution.mains"],
      dark: false,
    },
    {
      id: "lay-out",
      only: ["open"],
      tells: ["lay-out", "lay-out.sheets", "caution.mains", "press.done"],
      brief: ["lay-out.sheets", "caution.mains"],
      dark: false,
    },
    { ...point("dry", "check.dry"), only: ["tank"] },
    wetSide(),
    temper,
    quiet,
    point("lamps", "dark.glow"),
    volume,
    point("screen", "check.screen", ["check.black"]),
    { id: "lights-out", tells: ["dark.lights", "press.dark"], dark: true },
    {
      id: "wait",
      tells: ["wait.look", "wait.any"],
      brief: ["wait.look"],
      more: ["more.wait"],
      waits: "press.dark",
      dark: true,
    },
  ],
  loading: {
    "135": [
      byTouch("open", "load.135.open", { learns: ["load.135.end"], more: ["more.flat"] }),
      byTouch("cut", "load.135.square", {
        learns: ["load.135.round"],
        more: ["more.between", "more.square"],
      }),
      feed,
      wind,
      byTouch("spool", "load.135.spool", { jams: true }),
      others,
    ],
    "120": [
      byTouch("open", "load.120.open", { learns: ["load.120.tape"], more: ["more.paper"] }),
      feed,
      wind,
      byTouch("tape", "load.120.off", { more: ["more.tape"], jams: true }),
      others,
    ],
    sheet: [
      byTouch("open", "load.sheet.open", { more: ["more.notch"] }),
      byTouch("count", "load.sheet.count"),
      byTouch("holders", "load.sheet.holders", { only: ["tank", "hanger"] }),
      byTouch("holders", "load.sheet.stack", { only: ["tray"], more: ["more.wet"] }),
    ],
  },
  loaded: [quiet, volume, wetSide(["caution.mains", "caution.gloves"]), temper],
  closing: [
    byTouch("core", "close.core", {
      only: ["tank"],
      learns: ["close.reels"],
      more: ["more.core", "more.empty"],
    }),
    // The gate: light comes back by these two presses and by nothing else.
    {
      id: "close",
      only: ["tank"],
      tells: ["close.lid", "close.rap", "press.closed"],
      brief: ["press.closed"],
      locks: true,
      dark: true,
    },
    { id: "everyone", only: ["tank"], tells: ["press.everyone"], dark: true },
    { id: "light", only: ["tank"], tells: ["light.on", "caution.gloves"], dark: false },
    { id: "stay-dark", only: ["open"], tells: ["light.stay", "caution.gloves"], dark: true },
  ],
  together: [["developer", "stop"]],
  fixedBy: "fixer",
  fromTheTap: ["rinse", "wash"],
  after: [
    {
      id: "hang",
      tells: ["hang.lift", "hang.clip", "hang.clean", "hang.write"],
      dark: false,
    },
  ],
  why: {
    bath: {
      prewet: "why.prewet",
      developer: "why.developer",
      stop: "why.stop",
      fixer: "why.fixer",
      rinse: "why.wash",
      "wash-aid": "why.wash",
      wash: "why.wash",
      "wetting-agent": "why.wetting-agent",
    },
    deed: {
      "pour-in": "why.pour",
      agitate: "why.agitate",
      rest: "why.rest",
      tap: "why.tap",
    },
  },
};
