// What the fields of the bench are called, by the pattern of their paths, and why they are asked.

const bathFields = {
  "baths.*.clearing.time": {
    label: "A snip clears in",
    why: "A snip of undeveloped film in the fixer, in the light, until it is clear. Gives the fixer’s time where none is written.",
  },
  "baths.*.clearing.fresh": {
    label: "When fresh, in",
    why: "What the same test took in the fresh bath. At twice that the fixer is spent.",
  },
  "baths.*.clearing.times": { label: "Fix for" },
  "baths.*.carryOver": {
    label: "Stays behind at each emptying",
    why: "Liquid left in tank, reels and film. Pour it out as you always do, then weigh the tank: a gram is a millilitre.",
  },
  "baths.*.flow": {
    label: "Running water, a minute",
    why: "How much runs through in a minute: hold a graduate under the hose for ten seconds, times six.",
  },
  "baths.*.thiosulfate": {
    label: "Thiosulfate in the fixer, g/l",
    why: "Empty means 108, a plain fixer of 240 g of crystals a litre.",
  },
  "baths.*.filmsPerLitre": {
    label: "Films a litre serves",
    why: "In films of 80 square inches, from the maker’s sheet.",
  },
  "baths.*.filmsBefore": { label: "Films through it before" },
  "baths.*.bottle": { label: "Bottle from the shelf" },
  "baths.*.kept": { label: "How much there is", why: "Empty means as much as covers the film." },
};

export const benchFields = {
  ...bathFields,
  process: { label: "Process" },
  "developer.soughtTime": {
    label: "Which temperature would give",
    why: "A time you would like. The leaflet is asked which temperature gives it, and which gives the least, 5:00.",
  },
  "developer.readings[].at": {
    label: "At",
    why: "On the developer’s own clock. The readings take the place of the drift and move the end.",
  },
  "developer.readings[].temperature": { label: "In the tank" },
  "developer.filmsPerLitre": bathFields["baths.*.filmsPerLitre"],
  "developer.kept": bathFields["baths.*.kept"],
  "developer.bottle": bathFields["baths.*.bottle"],
  "developer.replenishPerFilm": { label: "Replenisher for each film" },
  "tank.label": {
    label: "Name of this tank",
    why: "Such as “two-reel steel”. Its volume and your times with it are kept under this name.",
  },
  "tank.measured.pourIn": { label: "Pouring in took, s" },
  "tank.measured.pourOut": { label: "Pouring out took, s" },
  "tank.measured.perInversion": { label: "Over and back took, s" },
  "mixing.target": { label: "The mix shall have" },
  "mixing.stock": { label: "The stock has" },
  "mixing.cold": { label: "The cold tap" },
  "mixing.hot": { label: "The hot tap" },
  "mixing.mark": {
    label: "Marks of the graduate",
    why: "From one mark to the next. Empty means 5 ml, or a quarter of a fluid ounce.",
  },
  "tempering.target": { label: "It shall come to" },
  "tempering.bath": {
    label: "The water bath has",
    why: "With it two readings will do; without it three. Stir it, and read it with the same thermometer.",
  },
  "tempering.bathVolume": { label: "Water in the bath", why: "For the ice, if ice is needed." },
  "tempering.readings[].at": {
    label: "At",
    why: "On a clock of its own that starts with the first reading, such as 3:30.",
  },
  "tempering.readings[].temperature": { label: "In the developer" },
  "tempering.began": { label: "Time of day at 0:00" },
  "contrast.tests[].time": { label: "Developed for" },
  "contrast.tests[].gradient": {
    label: "Mean gradient",
    why: "Density gained over log exposure, as your densitometer or a step wedge gave it.",
  },
  "contrast.tests[].densities": {
    label: "Or the wedge’s densities",
    why: "Base and fog included, the least exposed step first, parted by spaces.",
  },
  "contrast.tests[].baseFog": {
    label: "Base and fog",
    why: "The density of film that was developed and never exposed.",
  },
  "contrast.wanted": {
    label: "Gradient wanted",
    why: "Empty means 0.615, which is 0.80 over 1.30 as ISO 6 has it.",
  },
  "contrast.stepLog": {
    label: "Log exposure a step",
    why: "0.15 for half stops, 0.30 for whole ones.",
  },
  "contrast.firstLog": {
    label: "Log exposure of the first step",
    why: "log10 of lux seconds, if you know it: then a speed follows.",
  },
};
