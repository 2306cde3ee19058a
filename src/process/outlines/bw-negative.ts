// Black-and-white negative film, from the laid-out bench to the drying line.
// Data alone: which steps there are and which sentences each tells. The baths come from the plan.
import type { Outline } from "../process.ts";

export const bwNegative: Outline = {
  before: [
    {
      id: "lay-out",
      tells: {
        tank: ["lay-out", "lay-out.loading", "lay-out.vessels"],
        open: ["lay-out", "lay-out.sheets", "lay-out.vessels"],
      },
      alsoTells: [
        "caution.gloves",
        "caution.glasses",
        "caution.air",
        "caution.floor",
        "caution.mains",
        "caution.sheet",
      ],
      press: "press.laid-out",
      dark: false,
    },
    {
      id: "temper",
      tells: ["temper.read", "temper.same"],
      press: "press.tempered",
      dark: false,
    },
    {
      id: "lights-out",
      tells: ["dark.glow", "dark.watch", "dark.door", "dark.lights", "dark.screen"],
      press: "press.dark",
      dark: true,
    },
    {
      id: "open",
      tells: {
        "135": ["load.135.open", "load.135.square", "load.135.round"],
        "120": ["load.120.open", "load.120.tape"],
        sheet: ["load.sheet.open"],
      },
      press: "press.opened",
      dark: true,
    },
    {
      id: "wind",
      tells: {
        "135": ["load.wind", "load.force", "load.feel"],
        "120": ["load.wind", "load.force", "load.feel"],
      },
      press: "press.wound",
      dark: true,
    },
    {
      id: "close",
      tells: { tank: ["close.core", "close.reels", "close.lid"] },
      press: "press.closed",
      dark: true,
    },
    { id: "light", tells: { tank: ["light.on"] }, press: null, dark: false },
    { id: "stay-dark", tells: { open: ["light.stay"] }, press: null, dark: true },
  ],
  together: [["developer", "stop"]],
  fixedBy: "fixer",
  fromTheTap: ["rinse", "wash"],
  after: [
    {
      id: "hang",
      tells: ["hang.lift", "hang.clip", "hang.clean", "hang.write"],
      press: null,
      dark: false,
    },
  ],
};
