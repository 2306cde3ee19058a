// All Dutch words that the first screen needs, in one value; the others stand in late.ts.
import { agitation, answers } from "./answers.ts";
import { baths } from "./baths.ts";
import { hands, latePart, mixing, paste, tanks, tempering } from "./bench.ts";
import { benchFields } from "./bench-fields.ts";
import { faults, names } from "./faults.ts";
import { fields } from "./fields.ts";
import { demo, frame, greeting, language, notices, places, sheet } from "./frame.ts";
import { cautions, choices, more, questions, rows } from "./questions.ts";

export const first = {
  demo,
  frame,
  language,
  places,
  greeting,
  sheet,
  notices,
  questions,
  rows,
  more,
  choices,
  cautions,
  fields: { ...fields, ...benchFields },
  faults,
  names,
  answers,
  agitation,
  baths,
  paste,
  mixing,
  tempering,
  hands,
  tanks,
  latePart,
};
