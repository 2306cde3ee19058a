// What is asked of how negatives look, what it was, and what to change.

export const negatives = {
  name: "Comment sont les négatifs ?",
  hint: "Tenez-les secs devant une lumière, pas devant le soleil. Répondez ce que vous voyez : la cause et ce qu’il faut changer sont dessous.",
  density: "Devant la lumière, ils sont",
  densities: {
    clear: "clairs comme du verre",
    thin: "faibles et plats",
    good: "bons",
    dense: "denses et sombres",
  },
  edge: "Les chiffres du bord sont",
  edges: {
    none: "absents",
    faint: "pâles",
    usual: "comme d’habitude",
    heavy: "épais et noirs",
  },
  mark: "Et il y a",
  marks: {
    milky: "un voile laiteux",
    purple: "une teinte violette ou bleue",
    drying: "des cernes ou des coulures de gouttes séchées",
    grey: "un gris uniforme, entre les images aussi",
    streaks: "des traînées partant des perforations",
    spots: "de petites taches rondes et claires",
    moons: "des demi-lunes, sombres ou claires",
    patches: "une zone qui ne s’est pas développée",
  },
  unsaid: "pas de réponse",
  mend: "Cela peut encore se réparer.",
  change: "À changer :",
  causes: {
    well: {
      was: "Bien exposé et bien développé.",
      change: "rien. Refaites comme c’est écrit ici.",
    },
    "not-exposed": {
      was: "Le bord a ses chiffres, donc le révélateur a travaillé : aucune image n’a atteint ce film.",
      change: "vérifiez que le film avance dans l’appareil et que l’obturateur s’ouvre.",
    },
    "not-developed": {
      was: "Même les chiffres ne sont pas venus : le révélateur était épuisé ou oublié, ou le fixateur est passé d’abord.",
      change:
        "numérotez les récipients dans leur ordre et essayez, en lumière, une goutte de révélateur sur un bout de film coupé : il doit noircir.",
    },
    "under-exposed": {
      was: "Les chiffres sont forts, ce n’est donc pas le développement : trop peu de lumière a atteint le film. Un temps plus long ne rend pas les ombres.",
      change: "mesurez avec un indice plus bas.",
    },
    "under-developed": {
      was: "Les chiffres aussi sont pâles : trop peu développé. Trop court, trop froid, trop faible ou épuisé.",
      change:
        "lisez le thermomètre dans la cuve au début et à la fin, vérifiez la dilution et ajoutez un dixième à un cinquième du temps.",
    },
    "over-exposed": {
      was: "Les chiffres sont comme d’habitude, c’est donc l’exposition : trop de lumière.",
      change: "mesurez avec un indice plus haut, ou vérifiez l’objectif et la cellule.",
    },
    "over-developed": {
      was: "Les chiffres aussi sont épais : trop développé. Trop long, trop chaud, trop fort ou trop agité.",
      change: "vérifiez la température et la dilution, et ôtez un dixième à un cinquième du temps.",
    },
    "clear-either": {
      was: "Sans les chiffres, on ne peut pas le dire : pas exposé, ou pas développé.",
      change: "regardez le bord. Avec chiffres, c’était l’appareil ; sans, le révélateur.",
    },
    "thin-either": {
      was: "Sans les chiffres, on ne peut pas le dire : trop peu de lumière, ou trop peu développé.",
      change:
        "regardez le bord. Des chiffres pâles accusent le développement, des chiffres forts l’exposition.",
    },
    "dense-either": {
      was: "Sans les chiffres, on ne peut pas le dire : trop de lumière, ou trop développé.",
      change:
        "regardez le bord de ce film ou du suivant. Des chiffres épais accusent le développement.",
    },
    milky: {
      was: "Il n’est pas fixé jusqu’au bout.",
      change:
        "de nouveau, en lumière, dans un fixateur frais pour deux fois le temps d’éclaircissement, et relavez. Essayez le fixateur avant le prochain film.",
    },
    purple: {
      was: "Il y reste du colorant ; avec certains films, un peu est normal.",
      change:
        "fixez un peu plus longtemps dans un fixateur frais et lavez plus longtemps, pas trop froid.",
    },
    drying: {
      was: "Des gouttes ont séché où elles pendaient.",
      change:
        "relavez-le et donnez-lui un agent mouillant dans de l’eau douce ou distillée. Suspendez-le loin de la poussière.",
    },
    grey: {
      was: "La lumière l’a atteint hors de l’appareil, ou une chimie vieille l’a voilé.",
      change:
        "attendez plus longtemps dans le noir et cherchez les fuites, tâtez l’axe et le verrou du couvercle, et prenez du révélateur frais.",
    },
    streaks: {
      was: "Agité trop fort, ou toujours de la même façon.",
      change: "retournez plus doucement, avec un quart de tour entre deux.",
    },
    spots: {
      was: "Des bulles d’air y collaient.",
      change: "tapez fermement la cuve après chaque agitation et versez d’un trait régulier.",
    },
    moons: {
      was: "Il a été plié au chargement.",
      change: "chargez sans forcer, sur une spire sèche ; s’il coince, revenez d’un tour.",
    },
    patches: {
      was: "Deux tours se touchaient sur la spire, et rien ne les a atteints.",
      change:
        "sentez les deux bords de chaque tour en chargeant ; exercez-vous en lumière avec un vieux film.",
    },
  },
};
