// What the fields of the development are called in French, by the pattern of their paths, and why they are
// asked.

export const fields = {
  language: { label: "La voix parle" },
  title: { label: "Nom de cette fiche" },
  "films[].label": { label: "Film" },
  "films[].size": { label: "Format" },
  "films[].count": { label: "Combien" },
  "films[].boxSpeed": { label: "Sensibilité nominale" },
  "films[].exposureIndex": {
    label: "Exposé à",
    why: "La sensibilité réglée sur le posemètre. Laissé vide : la sensibilité nominale, celle de la boîte. Tous les films d’une cuve reçoivent le même temps : mieux vaut qu’ils soient exposés pareil.",
  },
  "developer.label": { label: "Révélateur" },
  "developer.dilution": {
    label: "Dilution",
    why: "D’abord les parts de solution de base, puis les parts d’eau : 1+3, c’est une part de base et trois d’eau. « stock » veut dire non dilué. 1:3 n’est pas accepté, car on le lit de deux façons.",
  },
  "developer.leaflet[].temperature": { label: "Température" },
  "developer.leaflet[].time": { label: "Temps" },
  "developer.leaflet[].exposureIndex": { label: "Si exposé à" },
  "developer.temperature": {
    label: "Dans le bain, maintenant",
    why: "Ce que dit le thermomètre dans le bain prêt à l’emploi, juste avant de s’en servir. Le temps est calculé pour cette température.",
  },
  "developer.perDegree": {
    label: "Variation par °C",
    why: "k dans temps × e^(−k × °C), pour une notice qui n’a qu’une ligne. Laissé vide : 0,099.",
  },
  "developer.perStop.pull": {
    label: "Moins par diaph en trop, %",
    why: "Le temps à retirer par diaphragme de surexposition. Laissé vide : 10.",
  },
  "developer.perStop.push": {
    label: "Plus par diaph manquant, %",
    why: "Le temps à ajouter par diaphragme de sous-exposition. Laissé vide : 40.",
  },
  "developer.stockPerFilm": {
    label: "Solution de base par film",
    why: "Le minimum : ce qu’usent 80 pouces carrés (516 cm²) : un 135-36, un 120 ou quatre 4×5 pouces. La fiche technique du fabricant le donne. Laissé vide, rien n’est vérifié.",
  },
  "developer.filmsBefore": { label: "Films déjà passés" },
  "developer.perFilmBefore": { label: "Temps en plus pour chacun, %" },
  "tank.method": { label: "Méthode" },
  "tank.volume": { label: "Pour couvrir le film" },
  "tank.pourIn": {
    label: "Remplir prend",
    why: "Chronométrez-vous avec de l’eau. Le minutage en tient compte.",
  },
  "tank.pourOut": { label: "Vider prend" },
  "tank.handover": { label: "De la cuve vide au bain suivant" },
  "tank.timeFactor": {
    label: "Temps multiplié par",
    why: "Pour cette méthode. Laissé vide : 1, ou 0,85 pour un tambour.",
  },
  "tank.room": {
    label: "La pièce",
    why: "Une cuve dérive vers la température de la pièce. Avec celle-ci et le temps à mi-chemin, le calcul en tient compte.",
  },
  "tank.halfway": {
    label: "À mi-chemin en",
    why: "Les minutes qu’il faut à une cuve d’eau pour faire la moitié du chemin entre sa température et celle de la pièce.",
  },
  "agitation.first": { label: "D’abord, sans arrêt" },
  "agitation.every": { label: "Puis toutes les" },
  "agitation.for": {
    label: "Pendant",
    why: "0 laisse le bain au repos ; autant que « Puis toutes les », ou plus, et la cuve ne s’arrête jamais.",
  },
  "agitation.perInversion": { label: "Un aller-retour prend" },
  "agitation.taps": { label: "Coups à chaque fois" },
  "clock.starts": { label: "Le chrono part" },
  "clock.ends": { label: "Fin du temps" },
  "baths.*.use": { label: "Utilisé" },
  "baths.*.time": { label: "Temps" },
  "baths.*.temperature": { label: "Température" },
  "baths.*.agitation.first": { label: "D’abord, sans arrêt" },
  "baths.*.agitation.every": { label: "Puis toutes les" },
  "baths.*.agitation.for": { label: "Pendant" },
  "baths.*.agitation.perInversion": { label: "Un aller-retour prend" },
  "baths.*.agitation.taps": { label: "Coups à chaque fois" },
  "baths.*.afterwards": { label: "Une fois vidé, il va" },
  "baths.*.fills": {
    label: "Par remplissages",
    why: "À la place d’un temps : le nombre de retournements dans chaque remplissage d’eau propre, comme 5, 10, 20.",
  },
  darkWait: {
    label: "Attendre dans le noir",
    why: "Pour chercher la lumière avant de sortir le film. Vide vaut 3:00, l’usage courant ; 0:00 s’en passe. Il faut une demi-heure aux yeux pour tout voir.",
  },
  loading: { label: "Le film" },
  "voice.detail": { label: "Ce qui est dit" },
  "voice.rate": {
    label: "Débit",
    why: "1 : comme à l’enregistrement ; 0,8 : le plus lent ; 1,6 : le plus rapide.",
  },
};
