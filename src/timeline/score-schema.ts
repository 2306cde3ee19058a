// What a timeline holds, field by field, as a valibot schema: the source of the published JSON Schema.
// Apart from score.ts so that reading the types costs no library; nothing here runs in the page.
import {
  array,
  boolean,
  description,
  type GenericSchema,
  integer,
  literal,
  minLength,
  minValue,
  nullable,
  number,
  exactOptional as optional,
  picklist,
  pipe,
  strictObject,
  string,
} from "valibot";

const amount = (of: string) => pipe(number(), minValue(0), description(of));

const count = (of: string) => pipe(number(), integer(), minValue(0), description(of));

const words = (of: string) => pipe(string(), minLength(1), description(of));

const list = <Item extends GenericSchema>(item: Item, of: string) =>
  pipe(array(item), description(of));

const agitation = pipe(
  strictObject({
    first: amount("Seconds without a break once the tank is full."),
    every: amount("Seconds from one bout's beginning to the next one's."),
    for: amount(
      'Seconds a bout lasts; 0: the bath stands; at least "every": it goes on throughout.',
    ),
    perInversion: amount("Seconds for one inversion and back."),
    taps: count("Taps after each bout."),
  }),
  description("How the bath is agitated."),
);

const bath = strictObject({
  id: words("The bath's id in its process."),
  label: words("What the bath is called."),
  seconds: amount("Seconds on the bath's own clock."),
  temperature: pipe(nullable(number()), description("°C; null where nobody said.")),
  agitation: pipe(nullable(agitation), description("null: the bath is left alone.")),
});

const about = optional(
  pipe(
    picklist(["time", "mix", "mixing", "tempering", "contrast", "hands", "baths"]),
    description("Which question of the worksheet it belongs to."),
  ),
);

const plan = pipe(
  strictObject({
    developmentSeconds: count("Whole seconds, half up."),
    mix: pipe(
      strictObject({
        stock: amount("ml of stock."),
        water: amount("ml of water."),
        total: amount("ml in all."),
      }),
      description("What to measure out, unrounded."),
    ),
    baths: list(bath, "The baths in order."),
    working: list(
      strictObject({
        label: words("What is worked out."),
        expression: words("From what, and how."),
        result: words("What it comes to."),
        about,
      }),
      "The arithmetic, a line a step.",
    ),
    warnings: list(
      strictObject({
        id: words("Which warning."),
        severity: picklist(["stop", "caution", "note"]),
        text: words("What is the matter, why, and what would do."),
        about,
      }),
      "What to know before pouring out.",
    ),
  }),
  description("What the arithmetic made of the worksheet."),
);

const moment = strictObject({
  at: amount("Seconds from the press that starts the section."),
  do: words(
    '"pour-in", "full", "agitate", "invert", "rest", "tap", "pour-out", "empty" or another deed.',
  ),
  bath: pipe(nullable(string()), description("Id of the bath, where it is about one.")),
  count: optional(count("Which inversion of the bout, from 1; how many taps.")),
});

const cue = strictObject({
  at: amount("Seconds from the press that starts the section."),
  until: amount("When the last sound of it has died, seconds from the same press."),
  channel: picklist(["voice", "tone", "buzz"]),
  kind: picklist(["tell", "prepare", "count-in", "now", "beat", "remaining", "confirm"]),
  moment: pipe(
    nullable(count("Index into the section's moments.")),
    description("Its moment, if it has one."),
  ),
  says: optional(words("Voice only: the words, in the worksheet's language.")),
  sounds: optional(
    list(string(), "What is played, in order: phrases of a voice pack, or one tone."),
  ),
});

const section = strictObject({
  id: words("Unique in the timeline."),
  title: words("What it is called."),
  dark: pipe(boolean(), description("The room is dark, and so must the screen be.")),
  film: optional(
    pipe(
      picklist(["packed", "open", "tank", "fixed"]),
      description("Where light finds it: in its cassette, open, behind a locked lid, or fixed."),
    ),
  ),
  more: optional(list(string(), "Keys of sentences that are told when asked for.")),
  jams: optional(pipe(boolean(), description("The film may jam in it."))),
  seconds: amount("0 for a section that only tells and waits."),
  moments: list(moment, "What the hands do, and exactly when."),
  cues: list(cue, "What is heard for them, in order of time."),
  left: list(
    strictObject({ wanted: words("The cue."), why: words("Why it found no room.") }),
    "Cues that found no room, each with its reason.",
  ),
});

export const timelineSchema = pipe(
  strictObject({
    tankside: pipe(literal(1), description("The version of this format.")),
    plan,
    voice: optional(
      pipe(
        strictObject({
          language: words("Language of the voice (BCP 47)."),
          rate: amount("Pace of speech, 1 as recorded."),
        }),
        description("What the sounds were chosen for."),
      ),
    ),
    sections: list(section, "A press starts each; nothing in a section waits."),
  }),
  description("A timeline: what the ears get for one worksheet, and exactly when."),
);
