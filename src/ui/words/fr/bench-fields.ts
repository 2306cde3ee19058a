// What the fields of the bench are called in French, by the pattern of their paths, and why they are asked.

const bathFields = {
  "baths.*.clearing.time": {
    label: "Un bout s’éclaircit en",
    why: "Un bout de film non développé dans le fixateur, en pleine lumière, jusqu’à ce qu’il soit clair. Il donne le temps de fixage quand aucun n’est écrit.",
  },
  "baths.*.clearing.fresh": {
    label: "Bain neuf, en",
    why: "Ce que le même essai a demandé dans le bain neuf. Au double, le fixateur est épuisé.",
  },
  "baths.*.clearing.times": { label: "Fixer pendant" },
  "baths.*.carryOver": {
    label: "Ce qui reste à chaque vidange",
    why: "Le liquide retenu par la cuve, les spires et le film. Videz comme vous le faites toujours, puis pesez la cuve : un gramme fait un millilitre.",
  },
  "baths.*.flow": {
    label: "Eau courante, par minute",
    why: "Ce qui coule en une minute : tenez une éprouvette sous le tuyau pendant dix secondes, et multipliez par six.",
  },
  "baths.*.thiosulfate": {
    label: "Thiosulfate du fixateur, g/l",
    why: "Laissé vide : 108, un fixateur simple à 240 g de cristaux par litre.",
  },
  "baths.*.filmsPerLitre": {
    label: "Films par litre",
    why: "En films de 80 pouces carrés (516 cm²), d’après la fiche technique du fabricant.",
  },
  "baths.*.filmsBefore": { label: "Films déjà passés" },
  "baths.*.bottle": { label: "Bouteille de l’étagère" },
  "baths.*.kept": {
    label: "Volume en tout",
    why: "Laissé vide : juste de quoi couvrir le film.",
  },
};

export const benchFields = {
  ...bathFields,
  process: { label: "Procédé" },
  "developer.soughtTime": {
    label: "Quelle température donnerait",
    why: "Un temps qui vous arrangerait. La notice dit quelle température le donne, et laquelle donne le minimum, 5:00.",
  },
  "developer.readings[].at": {
    label: "À",
    why: "Au chrono du révélateur. Les relevés remplacent la dérive calculée et déplacent la fin.",
  },
  "developer.readings[].temperature": { label: "Dans la cuve" },
  "developer.filmsPerLitre": bathFields["baths.*.filmsPerLitre"],
  "developer.kept": bathFields["baths.*.kept"],
  "developer.bottle": bathFields["baths.*.bottle"],
  "developer.replenishPerFilm": { label: "Régénérateur par film" },
  "tank.label": {
    label: "Nom de cette cuve",
    why: "Par exemple « inox deux spires ». Son volume et vos temps sont gardés sous ce nom.",
  },
  "tank.measured.pourIn": { label: "Remplissage mesuré, s" },
  "tank.measured.pourOut": { label: "Vidange mesurée, s" },
  "tank.measured.perInversion": { label: "Aller-retour mesuré, s" },
  "mixing.target": { label: "Le mélange doit être à" },
  "mixing.stock": { label: "Solution de base à" },
  "mixing.cold": { label: "Robinet froid" },
  "mixing.hot": { label: "Robinet chaud" },
  "mixing.mark": {
    label: "Traits de l’éprouvette",
    why: "D’un trait au suivant. Laissé vide : 5 ml, ou un quart d’once liquide.",
  },
  "tempering.target": { label: "Il doit arriver à" },
  "tempering.bath": {
    label: "Le bain-marie est à",
    why: "Si vous le savez, deux relevés suffisent ; sinon, il en faut trois. Remuez l’eau, et lisez-la avec le même thermomètre.",
  },
  "tempering.bathVolume": {
    label: "Eau du bain-marie",
    why: "Pour la glace, s’il en faut.",
  },
  "tempering.readings[].at": {
    label: "À",
    why: "Sur un chrono à part qui part au premier relevé, par exemple 3:30.",
  },
  "tempering.readings[].temperature": { label: "Dans le révélateur" },
  "tempering.began": { label: "Heure au chrono 0:00" },
  "contrast.tests[].time": { label: "Développé pendant" },
  "contrast.tests[].gradient": {
    label: "Gradient moyen",
    why: "La densité gagnée par log d’exposition, d’après votre densitomètre ou un coin sensitométrique.",
  },
  "contrast.tests[].densities": {
    label: "Ou les densités du coin",
    why: "Support et voile compris, de la plage la moins exposée à la plus exposée, séparées par des espaces.",
  },
  "contrast.tests[].baseFog": {
    label: "Support et voile",
    why: "La densité du film développé sans avoir été exposé.",
  },
  "contrast.wanted": {
    label: "Gradient voulu",
    why: "Laissé vide : 0,615, soit 0,80 sur 1,30 comme dans ISO 6.",
  },
  "contrast.stepLog": {
    label: "Log d’exposition par plage",
    why: "0,15 pour des demi-diaphragmes, 0,30 pour des diaphragmes entiers.",
  },
  "contrast.firstLog": {
    label: "Log d’exposition, 1re plage",
    why: "log10 des lux-secondes, si vous le connaissez : une sensibilité s’en déduit.",
  },
};
