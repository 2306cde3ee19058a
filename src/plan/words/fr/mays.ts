// What a field may hold, in French, by the checker's English text: first the shapes with gaps, then whole
// texts in the order of the worksheet.
import type { Mays } from "../words.ts";
import { maysBeside } from "./mays-beside.ts";

const shapes: Mays = {
  "a number from {from} to {to}: {of}": "{of}, un nombre de {from} à {to}",
  "a whole number from {from} to {to}: {of}": "{of}, un nombre entier de {from} à {to}",
  "one line of 1 to 200 characters: {of}": "{of}, une seule ligne de 1 à 200 signes",
  'a clock time such as "9:30" or "1:02:00", above 0:00 and up to 24:00:00: {of}':
    "{of}, un temps tel que « 9:30 » ou « 1:02:00 », plus de 0:00 et 24:00:00 au plus",
  'a clock time such as "9:30" or "1:02:00", from 0:00 up to 24:00:00: {of}':
    "{of}, un temps tel que « 9:30 » ou « 1:02:00 », de 0:00 à 24:00:00",
  'a temperature, { "c": 20 } or { "f": 68 }, from {from} to {to} °C or {fromF} to {toF} °F: {of}':
    '{of}, une température, { "c": 20 } ou { "f": 68 }, de {from} à {to} °C ou de {fromF} à {toF} °F',
  'a volume, { "ml": 600 } or { "flOz": 20 }, from {from} to {to} ml or {fromOz} to {toOz} US fl oz: {of}':
    '{of}, un volume, { "ml": 600 } ou { "flOz": 20 }, de {from} à {to} ml ou de {fromOz} à {toOz} fl oz américaines',
  "an object: {of}": "{of}, sous forme d’objet",
  "a list of {from} to {to}: {of}": "{of}, une liste de {from} à {to}",
  'nothing: there is no such field; did you mean "{name}"?':
    "rien : ce champ n’existe pas ; vouliez-vous dire « {name} » ?",
  "nothing: there is no such field here, only {names}":
    "rien : ce champ n’existe pas ici, il y a seulement {names}",
  "{may}; it stops being JSON on line {line}": "{may} ; à la ligne {line}, ce n’est plus du JSON",
  "{may}; this is not JSON": "{may} ; ceci n’est pas du JSON",
  "the ISO speed printed on the box, such as 125: the leaflet has no row for {rating}, so the stops are counted from the box speed":
    "la sensibilité ISO imprimée sur la boîte, par exemple 125 : la notice n’a pas de ligne pour {rating}, les diaphragmes sont donc comptés depuis la sensibilité nominale",
  'at least one row that serves "{film}": a row without "exposureIndex"':
    'au moins une ligne qui convienne à « {film} » : une ligne sans "exposureIndex"',
  'at least one row that serves "{film}": a row without "exposureIndex" or for {box}':
    'au moins une ligne qui convienne à « {film} » : une ligne sans "exposureIndex" ou pour {box}',
  '"{time}", as {path} gives for {temperature} too: one temperature has one time':
    "« {time} », comme {path} le donne aussi pour {temperature} : à une température, un seul temps",
  'nothing: "{process}" has no such bath, only {baths}':
    "rien : « {process} » n’a pas ce bain, il a seulement {baths}",
  "nothing beside {path}, which make the time themselves":
    "rien à côté de {path}, qui font le temps à eux seuls",
  "nothing, since developer.temperature says {temperature}":
    "rien, puisque developer.temperature dit {temperature}",
  "nothing beside {path}: one or the other": "rien à côté de {path} : l’un ou l’autre",
  'a volume such as { "ml": 20 }, since {path} is given':
    'un volume tel que { "ml": 20 }, puisque {path} est indiqué',
  "films of 80 sq in that a litre serves, such as 20, since {path} is given":
    "les films de 80 po² que sert un litre, par exemple 20, puisque {path} est indiqué",
  "{temperature}, as another reading at {at} says: one moment has one temperature":
    "{temperature}, comme le dit un autre relevé à {at} : à un moment, une seule température",
  "{temperature} or less, since mixing.hot is no warmer":
    "{temperature} ou moins, puisque mixing.hot n’est pas plus chaud",
  "no more than {lines} lines": "pas plus de {lines} lignes",
  '{may}; "{typed}" wants its unit, °C or °F': "{may} ; il manque l’unité à « {typed} », °C ou °F",
  "{may}; the two temperatures on this line are not the same":
    "{may} ; les deux températures de cette ligne ne sont pas les mêmes",
  "{may}, in the digits 0 to 9": "{may}, avec les chiffres 0 à 9",
  "{may}, no longer than 24 hours": "{may}, 24 heures au plus",
  '{may}; "{typed}" is read both as {one} and as {other}, so say it in parts':
    "{may} ; « {typed} » se lit aussi bien {one} que {other}, écrivez-le donc en parts",
  '{may}; "{typed}" is read in two ways, so say it in parts':
    "{may} ; « {typed} » se lit de deux façons, écrivez-le donc en parts",
};

const readers: Mays = {
  'a clock time such as "9:30" or "1:02:00"': "un temps tel que « 9:30 » ou « 1:02:00 »",
  'a time such as "9:30", "9 min 30 s", "9.5 min" or "90 s"':
    "un temps tel que « 9:30 », « 9 min 30 s », « 9,5 min » ou « 90 s »",
  'a time of day such as "19:05" or "19:05:30"': "une heure telle que « 19:05 » ou « 19:05:30 »",
  'a temperature with its unit, such as "20 °C", "20.5 C" or "68 °F"':
    "une température avec son unité, comme « 20 °C », « 20,5 C » ou « 68 °F »",
  'a volume with its unit, such as "600 ml", "0.6 l" or "20 fl oz" (US)':
    "un volume avec son unité, comme « 600 ml », « 0,6 l » ou « 20 fl oz » (onces américaines)",
  'a size such as "135-36", "120", "220", "4x5in" or "9x12cm"':
    "un format tel que « 135-36 », « 120 », « 220 », « 4x5in » ou « 9x12cm »",
  '"stock", or parts of stock plus parts of water such as "1+3"':
    "« stock », ou des parts de solution de base plus des parts d’eau, comme « 1+3 »",
  'a temperature and a time, such as "68 °F 10:00", "20 °C 11½ min" or "20; 9:30; EI 400"':
    "une température et un temps, comme « 68 °F 10:00 », « 20 °C 11½ min » ou « 20; 9:30; EI 400 »",
};

const worksheet: Mays = {
  "a worksheet": "une fiche",
  'a worksheet: a JSON object that begins with { "tankside": 1':
    'une fiche : un objet JSON qui commence par { "tankside": 1',
  "1, the version of worksheet that this is": "1, la version de cette fiche",
  "what you call this development": "le nom que vous donnez à ce développement",
  'a language tag (BCP 47) such as "en" or "de-AT"':
    "un code de langue (BCP 47) tel que « fr » ou « de-AT »",
  '"bw-negative": the process': "« bw-negative » : le procédé",
  "the films in the tank": "les films dans la cuve",
  "a film, or several alike": "un film, ou plusieurs pareils",
  "what you call the film": "le nom que vous donnez au film",
  "how many of them": "combien il y en a",
  "the ISO speed printed on the box": "la sensibilité ISO imprimée sur la boîte",
  "the speed it was metered at, if not the box speed":
    "la sensibilité à laquelle il a été exposé, si ce n’est pas la nominale",
};

const developer: Mays = {
  "the developer": "le révélateur",
  "what you call the developer": "le nom que vous donnez au révélateur",
  "times with their temperatures, read off the leaflet":
    "des temps avec leurs températures, lus sur la notice",
  "a time that the leaflet gives": "un temps que donne la notice",
  "the row's temperature": "la température de la ligne",
  "degrees Celsius": "les degrés Celsius",
  "degrees Fahrenheit": "les degrés Fahrenheit",
  "the row's time": "le temps de la ligne",
  "the rating that the leaflet gives this row for":
    "l’indice d’exposition pour lequel la notice donne cette ligne",
  "measured in the mixed bath, now": "ce qui est mesuré dans le bain prêt, maintenant",
  "a number above 0, up to 1: by how much ln(time) falls for each °C":
    "ce que ln(temps) perd par °C, un nombre au-dessus de 0, 1 au plus",
  '"pull" and "push", the fraction of the time for a stop':
    "« pull » et « push », la fraction du temps par diaphragme",
  "the fraction taken off for a stop over": "la fraction à retirer par diaphragme de surexposition",
  "the fraction added for a stop under": "la fraction à ajouter par diaphragme de sous-exposition",
  "the least stock that 80 sq in of film needs":
    "le minimum de solution de base pour 80 po² de film",
  millilitres: "les millilitres",
  "US fluid ounces": "les onces liquides américaines",
  "films of 80 sq in that this solution has developed already":
    "les films de 80 po² que cette solution a déjà développés",
  "the fraction of the time added for each of those films":
    "la fraction du temps à ajouter pour chacun de ces films",
  "a time for which the temperature is asked": "un temps dont on cherche la température",
  "thermometer readings taken while it develops":
    "des relevés du thermomètre pendant le développement",
  "a thermometer reading": "un relevé du thermomètre",
  "when it was read, on the developer's own clock": "le moment du relevé, au chrono du révélateur",
  "what it said in the tank": "ce qu’il disait dans la cuve",
  "films of 80 sq in that a litre serves in all": "les films de 80 po² que sert un litre en tout",
  "the bottle on the shelf that it is poured from": "la bouteille de l’étagère d’où il est versé",
  "how much of it there is, if not the tank's volume":
    "la quantité qu’il y en a, si ce n’est pas le volume de la cuve",
  "replenisher due for each film of 80 sq in": "le régénérateur à ajouter par film de 80 po²",
};

const tank: Mays = {
  "the tank": "la cuve",
  "what you call the tank": "le nom que vous donnez à la cuve",
  '"inversion", "twist", "rotary", "tray" or "hanger": how it is agitated':
    "« inversion », « twist », « rotary », « tray » ou « hanger » : la façon d’agiter",
  "what it takes to cover the film": "ce qu’il faut pour couvrir le film",
  "seconds to fill it": "les secondes pour la remplir",
  "seconds to empty it": "les secondes pour la vider",
  'a clock time such as "3:00", from 0:00 up to 30:00: how long to look for light in the dark':
    "une durée comme « 3:00 », de 0:00 à 30:00 : combien de temps on cherche la lumière dans le noir",
  "seconds from empty to the next pour-in":
    "les secondes entre la cuve vide et le remplissage suivant",
  "factor on the development time for this method":
    "le facteur sur le temps de développement pour cette méthode",
  "what the tank drifts toward": "ce vers quoi la cuve dérive",
  "minutes in which it goes half-way there": "les minutes qu’elle met à faire la moitié du chemin",
  "minutes, since tank.room is given: both or neither":
    "des minutes, puisque tank.room est indiqué : les deux ou aucun",
  'a temperature such as { "c": 20 }, since tank.halfway is given: both or neither':
    'une température telle que { "c": 20 }, puisque tank.halfway est indiqué : les deux ou aucun',
  "your own times with this tank, as measured": "vos propres temps avec cette cuve, mesurés",
  "seconds, one entry a try: to fill it": "les secondes pour la remplir, une entrée par essai",
  seconds: "des secondes",
  "seconds, one entry a try: to empty it": "les secondes pour la vider, une entrée par essai",
  "seconds, one entry a try: for one inversion and back":
    "les secondes d’un aller-retour, une entrée par essai",
  "how the film is agitated": "la façon d’agiter le film",
  "seconds without a break once the tank is full":
    "les secondes d’agitation sans arrêt une fois la cuve pleine",
  "seconds from one bout's beginning to the next one's":
    "les secondes du début d’une agitation au début de la suivante",
  'seconds a bout lasts; 0 to let it stand, as many as "every" to go on throughout':
    "les secondes que dure chaque agitation ; 0 pour laisser au repos, autant que « every » pour ne jamais s’arrêter",
  "seconds for one inversion and back": "les secondes d’un aller-retour",
  "taps after each bout": "les coups après chaque agitation",
  "when a bath's time begins and ends": "quand le temps d’un bain commence et finit",
  '"pour-in" or "full": the first drop in, or a full tank':
    "« pour-in » ou « full » : la première goutte, ou la cuve pleine",
  '"pour-out" or "empty": the pour-out\'s beginning, or an empty tank':
    "« pour-out » ou « empty » : le début de la vidange, ou la cuve vide",
};

export const mays: Mays = {
  ...shapes,
  ...readers,
  ...worksheet,
  ...developer,
  ...tank,
  ...maysBeside,
};
