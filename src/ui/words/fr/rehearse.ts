// The French words of the rehearsal with water. What the voice says stands in audio-scripts/.

export const rehearse = {
  title: "Répéter avec de l’eau",
  lead: "Toute la séance à l’oreille, en pleine lumière : de l’eau dans chaque récipient, et un film qui ne compte plus. Remplir, vider et agiter durent comme toujours ; seuls les repos sont raccourcis.",
  press:
    "Appuyez en commençant à remplir, et en commençant à vider ; si vous voulez, aussi en commençant à agiter. Ensuite, on vous dit ce qu’il est bon de travailler.",
  keeps:
    "Rien n’en reste parmi les séances, et aucun bain n’en vieillit. La répétition finit avec la page.",
  rests: "Repos",
  /** What is left of a rest. */
  factors: {
    whole: "entiers",
    half: "la moitié",
    quarter: "le quart",
    least: "aussi courts que les mots le permettent",
  },
  why: "Dire pourquoi avant chaque bain, et comment à chaque pas du chargement",
  begin: "Commencer la répétition",
  beginHint: (clock: string) => `${clock} à la pendule`,
  overHint: "Ce qu’il est bon de travailler est dans « Répéter », avec les secondes.",
  back: "Retour à « Répéter »",
  found: "La dernière répétition",
  unmarked: "Aucun appui au moment de verser : il n’y a rien à comparer.",
  well: (n: number, of: number, seconds: string) =>
    `${n} moments sur ${of} sont réussis : à ${seconds} près.`,
  practise: "À travailler, le plus important d’abord",
  all: "Tous les écarts",
  late: (seconds: string) => `${seconds} trop tard`,
  early: (seconds: string) => `${seconds} trop tôt`,
  missed: "sans appui",
};
