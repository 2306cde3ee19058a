// The words of the house's lists, and of what stands on the shelf and in the lists of Gullrock Light.

export const room = {
  title: "The room’s lists",
  lead: "Opening, closing, and where spent chemistry goes: written by the house, for the house.",
  lists: {
    opening: "Opening the room",
    closing: "Closing the room",
    waste: "Where spent chemistry goes",
  },
  invite: {
    opening:
      "Nothing is written yet. What is switched, looked at and laid out before anyone begins?",
    closing: "Nothing is written yet. What is washed, switched off and locked before you leave?",
    waste:
      "Nothing is written yet. Which vessel takes what, and who takes it away? Local rules and the makers’ sheets decide.",
  },
  edit: "Write this list",
  hint: "A line for each point.",
  keep: "Keep the list",
  cancel: "Cancel",
  reset: "Take all ticks off",
  print: "Print the lists",
  demo: "Fill in Gullrock Light’s lists",
  kept: "The list is kept.",
  notKept: "This browser would not keep it: it goes when the page is closed.",
  ticked: (done: number, all: number) => `${done} of ${all} done`,
};

/** What stands on the shelf at Gullrock Light, and how the house there has it. */
export const gullrockRoom = {
  bottles: {
    stock: "Kelp MQ stock",
    stop: "Stop, brown jug",
    fixer: "Fixer B",
    powder: "powder for 1 l",
    concentrate: "concentrate",
  },
  opening: [
    "Fan on, window blind down",
    "Fog-signal bell unhooked",
    "Wet side: water bath filled, towels out",
    "Latch card turned to DARK",
  ],
  closing: [
    "Usable baths back in their bottles, films written down",
    "Trays and graduates rinsed, upside down",
    "Taps, fan, heater off",
    "Key on the hook in the lamp room",
  ],
  waste: [
    "Spent fixer: blue can by the door, start date on it",
    "Spent developer: grey can, the keeper takes both cans ashore",
  ],
};
