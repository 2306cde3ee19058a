// What is asked of how negatives look, what it was, and what to change.

export const negatives = {
  name: "How do the negatives look?",
  hint: "Hold them dry against a light, not the sun. Answer what you can see: what it was, and what to change, stands beneath.",
  density: "Against the light they are",
  densities: {
    clear: "clear as glass",
    thin: "thin and flat",
    good: "good",
    dense: "dense and dark",
  },
  edge: "The numbers at the edge are",
  edges: {
    none: "not there",
    faint: "faint",
    usual: "as usual",
    heavy: "thick and black",
  },
  mark: "And there is",
  marks: {
    milky: "a milky veil",
    purple: "a purple or blue tint",
    drying: "rings or runs of dried drops",
    grey: "an even grey, between the pictures too",
    streaks: "streaks from the perforations",
    spots: "small round clear spots",
    moons: "half moons, dark or clear",
    patches: "a patch that never developed",
  },
  unsaid: "not said",
  mend: "This can be mended now.",
  change: "To change:",
  causes: {
    well: { was: "Exposed and developed well.", change: "nothing. Do it again as written here." },
    "not-exposed": {
      was: "The edge has its numbers, so the developer worked: no picture reached this film.",
      change: "check that the film winds on in the camera, and that the shutter opens.",
    },
    "not-developed": {
      was: "Not even the numbers came: the developer was spent or left out, or the fixer came first.",
      change:
        "number the vessels in their order, and try a drop of developer on a cut-off end of film in the light: it must go dark.",
    },
    "under-exposed": {
      was: "The numbers are strong, so developing was not at fault: too little light reached the film. No longer time brings shadows back.",
      change: "meter at a lower rating.",
    },
    "under-developed": {
      was: "The numbers are faint too: too little development. Too short, too cold, too weak, or worn out.",
      change:
        "read the thermometer in the tank at both ends, check the dilution, and add a tenth to a fifth to the time.",
    },
    "over-exposed": {
      was: "The numbers are as usual, so it was the exposure: too much light.",
      change: "meter at a higher rating, or check the lens and the meter.",
    },
    "over-developed": {
      was: "The numbers are thick too: too much development. Too long, too warm, too strong, or shaken too much.",
      change: "check temperature and dilution, and take a tenth to a fifth off the time.",
    },
    "clear-either": {
      was: "Without the numbers it cannot be told: not exposed, or not developed.",
      change: "look along the edge. With numbers, it was the camera; without, the developer.",
    },
    "thin-either": {
      was: "Without the numbers it cannot be told: too little light, or too little development.",
      change: "look along the edge. Faint numbers mean the developing, strong ones the exposing.",
    },
    "dense-either": {
      was: "Without the numbers it cannot be told: too much light, or too much development.",
      change: "look along the edge of this film or of the next. Thick numbers mean the developing.",
    },
    milky: {
      was: "It is not fixed through.",
      change:
        "back into fresh fixer for twice its clearing time, in the light, and wash again. Test the fixer before the next film.",
    },
    purple: {
      was: "Dye is left in it; with some films a little is usual.",
      change: "fix a little longer in fresh fixer, and wash longer, in water not too cold.",
    },
    drying: {
      was: "Drops dried where they hung.",
      change:
        "wash it again and give it a wetting agent in soft or distilled water. Hang it away from dust.",
    },
    grey: {
      was: "Light reached it outside the camera, or old chemistry fogged it.",
      change:
        "wait longer in the dark and look for leaks, feel for the core and the lock of the lid, and use fresh developer.",
    },
    streaks: {
      was: "Moved too hard, or always the same way.",
      change: "invert more gently, with a quarter turn between.",
    },
    spots: {
      was: "Air bells clung to it.",
      change: "tap the tank firmly after each bout, and pour steadily.",
    },
    moons: {
      was: "It was kinked while it was loaded.",
      change: "feed without force, on a dry reel; go back a turn when it jams.",
    },
    patches: {
      was: "Two turns touched on the reel, so nothing reached them.",
      change: "feel both edges of each turn while winding; practise with an old film in the light.",
    },
  },
};
