// The rest of what a field may hold, in French, by the checker's English text: the other baths, the bench,
// the voice.
import type { Mays } from "../words.ts";

const baths: Mays = {
  "baths by id, each with what it shall be": "les bains par nom, chacun avec ce qu’il doit être",
  "what this bath shall be": "ce que ce bain doit être",
  "the bath's time": "le temps du bain",
  "true or false: true leaves the bath out": "true ou false : true laisse ce bain de côté",
  "the bath's temperature": "la température du bain",
  '"drain", "waste" or "return": where the bath goes afterwards':
    "« drain », « waste » ou « return » : où va le bain ensuite",
  "what the developer shall be, besides developer itself":
    "ce que le révélateur doit être, en plus de developer lui-même",
  "nothing: the developer's time comes from the leaflet":
    "rien : le temps du révélateur vient de la notice",
  "nothing: nothing develops without a developer": "rien : sans révélateur, rien ne se développe",
  "films of 80 sq in that it has served before this one":
    "les films de 80 po² qu’il a déjà servis avant celui-ci",
  "what the fixer shall be": "ce que le fixateur doit être",
  "the clearing time of a snip of film": "le temps d’éclaircissement d’un bout de film",
  "how long it took to clear": "le temps qu’il a mis à s’éclaircir",
  "how long it took when the bath was fresh": "le temps qu’il a mis dans le bain neuf",
  "2 or 3: fix for so many times the clearing time":
    "2 ou 3 : fixer tant de fois le temps d’éclaircissement",
  "what the wash shall be": "ce que le lavage doit être",
  "the inversions in each fill of fresh water":
    "les retournements dans chaque remplissage d’eau propre",
  "inversions in this fill": "les retournements dans ce remplissage",
  "what stays behind at each emptying": "ce qui reste à chaque vidange",
  "running water, the volume a minute": "l’eau courante, le volume par minute",
  "g/l of thiosulfate in the fixer before the wash":
    "le thiosulfate du fixateur avant le lavage, en g/l",
};

const warmth: Mays = {
  "stock and two taps, to be mixed to a temperature":
    "la solution de base et deux robinets, à mélanger à température",
  "what the mix shall have": "la température que le mélange doit avoir",
  "the stock's": "celle de la solution de base",
  "the cold tap's": "celle du robinet froid",
  "the hot tap's": "celle du robinet chaud",
  "from one mark of the graduate to the next": "d’un trait de l’éprouvette au suivant",
  "a developer in its water bath": "un révélateur au bain-marie",
  "what the developer shall come to": "la température à laquelle le révélateur doit arriver",
  "thermometer readings with their times": "des relevés du thermomètre avec leurs temps",
  "when it was read, on one clock from 0:00": "le moment du relevé, sur un seul chrono depuis 0:00",
  "what it said in the developer": "ce qu’il disait dans le révélateur",
  "the water bath's temperature": "la température du bain-marie",
  'a temperature such as { "c": 20 }, since tempering.bathVolume is given':
    'une température telle que { "c": 20 }, puisque tempering.bathVolume est indiqué',
  "the water in the water bath": "l’eau du bain-marie",
};

const contrast: Mays = {
  "what test films showed": "ce qu’ont montré les films d’essai",
  "test films": "des films d’essai",
  "a test film": "un film d’essai",
  "how long it was developed": "son temps de développement",
  "its mean gradient": "son gradient moyen",
  "its mean gradient such as 0.6, or densities":
    "son gradient moyen, par exemple 0,6, ou des densités",
  "nothing beside densities, which give it": "rien à côté des densités, qui le donnent",
  "the wedge's densities, the least exposed step first":
    "les densités du coin, à partir de la plage la moins exposée",
  "a step's density": "la densité d’une plage",
  "the density of the unexposed, developed film":
    "la densité du film développé sans avoir été exposé",
  "the density of the unexposed, developed film, such as 0.3, since densities are given":
    "la densité du film développé sans avoir été exposé, par exemple 0,3, puisque des densités sont indiquées",
  "the mean gradient wanted": "le gradient moyen voulu",
  "log10 of the exposure from one step to the next":
    "le log10 de l’exposition d’une plage à la suivante",
  "log10 of the exposure from one step to the next, such as 0.15, since densities are given":
    "le log10 de l’exposition d’une plage à la suivante, par exemple 0,15, puisque des densités sont indiquées",
  "log10 of the first step's exposure in lux seconds":
    "le log10 de l’exposition de la première plage, en lux-secondes",
};

const voice: Mays = {
  "how the voice speaks": "la façon dont la voix parle",
  '"done": whether the film is in the closed tank already':
    "« done » : si le film est déjà dans la cuve fermée",
  '"full", "brief" or "tones": how much is said':
    "« full », « brief » ou « tones » : ce qui est dit",
  "the pace of speech, 1 as recorded": "le débit de la voix, 1 comme à l’enregistrement",
};

export const maysBeside: Mays = { ...baths, ...warmth, ...contrast, ...voice };
