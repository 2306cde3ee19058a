// The warnings about time, mix, hands, baths and voice, in French.
import type { WarningWords } from "../warning-words.ts";

const than = (by: string, warmer: boolean) => `plus ${warmer ? "chaud" : "froid"} de ${by}`;
const more = (by: string, warmer: boolean) => `${by} de ${warmer ? "plus" : "moins"}`;

export const warnings: WarningWords = {
  extrapolated: ({ by, row, bath, warmer, tooFar }) =>
    `Le révélateur est ${than(by, warmer)} que la ligne la plus proche de la notice (${row})${
      tooFar
        ? ", si loin des lignes qu’on ne peut pas se fier au temps"
        : " : le temps suit une pente qui n’est pas connue à cet endroit"
    }. Ramenez-le vers ${row}, ou ajoutez la ligne de la notice pour ${bath}.`,
  driftExtrapolated: ({ end, by, row, bath, warmer }) =>
    `La cuve dérive jusqu’à ${end} à la fin, ${more(by, warmer)} que la ligne la plus proche de la notice (${row}) : la dernière partie du temps suit une pente qui n’est pas connue à cet endroit. Posez la cuve dans de l’eau à ${bath}.`,
  readingExtrapolated: ({ reading, by, row, warmer }) =>
    `Dans la cuve, on a relevé ${reading}, ${more(by, warmer)} que la ligne la plus proche de la notice (${row}) : cette partie du temps suit une pente qui n’est pas connue à cet endroit.`,
  tooCold: ({ bath }) =>
    `Le révélateur est à ${bath}. Au-dessous de 15,6 °C (60 °F), un révélateur à l’hydroquinone perd vite sa force, et plus de temps n’y remédie pas. Réchauffez le bain.`,
  tooWarm: ({ bath }) =>
    `Le révélateur est à ${bath}. Au-dessus de 26,7 °C (80 °F), la gélatine ramollit et le temps devient trop court pour être bien tenu. Refroidissez le bain.`,
  shortDevelopment: ({ time, least }) =>
    `Le développement dure ${time}. En moins de ${least}, les parties mouillées en premier sortent nettement plus denses. Un révélateur plus dilué ou un bain plus frais demande plus de temps.`,
  leastAt: ({ least, temperature }) => `D’après cette notice, il dure ${least} à ${temperature}.`,
  rowOutOfLine: ({ time, temperature, expected }) =>
    `Une ligne de la notice s’écarte des autres : ${time} à ${temperature}, là où elles indiquent à peu près ${expected}. Regardez-la de nouveau : un chiffre est vite mal lu.`,
  soughtNowhere: ({ time }) =>
    `Aucune température ne peut être donnée pour ${time} : les temps de la notice ne baissent pas tout du long quand la température monte.`,
  soughtBeyond: ({ time, temperature, by }) =>
    `On aurait ${time} à ${temperature}, mais c’est ${by} au-delà des lignes de la notice, là où sa pente n’est pas connue.`,
  readingsPastEnd: ({ done, read }) =>
    `D’après les relevés dans la cuve, le développement était fini à ${done}, avant le relevé de ${read}. Un peu trop fait peu de mal ; videz maintenant et notez-le.`,
  longerThanADay: ({ hours }) =>
    `Le calcul donne un développement de ${hours}, coupé à 24:00:00 : ce n’est pas ce qui a été calculé. Cherchez une erreur dans les lignes de la notice, les températures ou les sensibilités.`,
  hours: ({ count }) => (count < 2 ? `${count} heure` : `${count} heures`),
  moreHours: ({ count }) => (count < 2 ? `plus de ${count} heure` : `plus de ${count} heures`),
  mixedRatings: ({ films, first }) =>
    `Les films ne sont pas exposés à la même sensibilité : ${films}. Chacun a besoin de son propre temps, et un temps entre les deux n’est bon pour aucun ; ce calcul vaut pour « ${first} » seulement. Développez les autres à part.`,
  ratedFilm: ({ film, rating }) => `« ${film} » à ${rating}`,
  ratedFilmOfSpeed: ({ film, rating, box }) =>
    `« ${film} » à ${rating} (sensibilité nominale ${box})`,
  unratedFilm: ({ film }) => `« ${film} » sans sensibilité indiquée`,
  leafletBackwards: ({ warmer, colder }) =>
    `Les temps de la notice raccourcissent quand il fait plus froid : ${warmer}, mais ${colder}. Un bain plus froid travaille plus lentement : l’un des deux a été mal lu. Corrigez cette ligne.`,
  stockShort: ({ tank, dilution, stock, needed, films, wanted, served }) =>
    `${tank} de bain (${dilution}) contiennent ${stock} de solution de base, mais il en faut ${needed} pour ${films} de 80 po² : le révélateur serait épuisé avant la fin. Un volume de cuve de ${wanted} suffirait ; ${tank} suffisent à ${served} de 80 po².`,
  bathTooShort: ({ bath, time, pouring, least }) =>
    `${bath} : en ${time}, il faudrait vider avant que la cuve soit pleine, car remplir et vider prennent ${pouring} de ce temps. Donnez-lui ${least} ou plus, versez plus vite, ou comptez le temps à partir de la cuve pleine.`,
  temperatureStep: ({ bath, temperature, by, most, warmer }) =>
    `${bath} : ${temperature}, ${more(by, warmer)} que le révélateur. Un saut de plus de ${most} peut rider la gélatine. Rapprochez les bains les uns des autres.`,
  languageUnavailable: ({ language }) =>
    `Il n’y a pas encore de voix pour la langue « ${language} » : la voix parle anglais.`,
  fixerSpent: ({ times }) =>
    `Le fixateur met ${times} fois le temps du bain neuf pour éclaircir ; à deux fois, il est épuisé, et un film qui y passe ne se conserve pas. Remettez-le à la récupération de l’argent et préparez du fixateur neuf.`,
  clearedQuicker:
    "Le bout de film s’est éclairci plus vite que dans le fixateur neuf, ce qui est impossible. Le bain était-il plus chaud, était-ce un autre film, ou l’un des deux temps a-t-il été mal lu ?",
  fixerShort: ({ given, asked, twice }) =>
    `Le fixateur a ${given}, mais ${twice ? "deux fois" : "trois fois"} le temps d’éclaircissement font ${asked}. Donnez-lui au moins cela, ou laissez son temps vide.`,
  washShort: ({ left, limit, cure }) =>
    `Par simple dilution, ce lavage laisse ${left} de thiosulfate sur le film, plus que les ${limit} qui peuvent y rester. ${cure}`,
  moreChanges: ({ count }) =>
    count < 2 ? `Il faut ${count} eau de lavage.` : `Il faut ${count} eaux de lavage.`,
  moreRunning: ({ time }) => `Laissez couler l’eau pendant ${time}.`,
  pastCapacity: ({ bath, before, now, all, developer }) =>
    `${bath} : ${before} avant et ${now} maintenant, c’est plus que ce qu’il peut servir, ${all} de 80 po². ${
      developer
        ? "Il serait épuisé avant la fin. Prenez un bain neuf, ou moins de films."
        : "Un compte ne prouve rien : essayez-le sur un bout de film, et préparez-en du neuf s’il échoue."
    }`,
  replenishedTwice:
    "On demande à la fois plus de temps pour chaque film passé et du régénérateur. Une solution régénérée garde son temps : l’un des deux suffit.",
  unevenHands: ({ what, spread, median }) =>
    `${what} : vos temps s’étalent sur ${spread} autour de ${median}. Entraînez-vous avec de l’eau : la régularité compte plus que la vitesse.`,
  notAsMeasured: ({ what, used, median }) =>
    `${what} : le calcul compte ${used}, alors que vos mains ont mis ${median}.`,
};
