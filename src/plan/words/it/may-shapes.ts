// What a field may hold, in Italian: the texts with gaps. Apart from the others for their number alone.
import type { Mays } from "../words.ts";

export const mayShapes: Mays = {
  "a number from {from} to {to}: {of}": "un numero da {from} a {to}: {of}",
  "a whole number from {from} to {to}: {of}": "un numero intero da {from} a {to}: {of}",
  "one line of 1 to 200 characters: {of}": "una riga da 1 a 200 caratteri: {of}",
  'a clock time such as "9:30" or "1:02:00", above 0:00 and up to 24:00:00: {of}':
    "un tempo come «9:30» o «1:02:00», più di 0:00 e fino a 24:00:00: {of}",
  'a clock time such as "9:30" or "1:02:00", from 0:00 up to 24:00:00: {of}':
    "un tempo come «9:30» o «1:02:00», da 0:00 a 24:00:00: {of}",
  'a temperature, { "c": 20 } or { "f": 68 }, from {from} to {to} °C or {fromF} to {toF} °F: {of}':
    'una temperatura, { "c": 20 } o { "f": 68 }, da {from} a {to} °C o da {fromF} a {toF} °F: {of}',
  'a volume, { "ml": 600 } or { "flOz": 20 }, from {from} to {to} ml or {fromOz} to {toOz} US fl oz: {of}':
    'un volume, { "ml": 600 } o { "flOz": 20 }, da {from} a {to} ml o da {fromOz} a {toOz} once fluide USA: {of}',
  "an object: {of}": "un gruppo di campi fra graffe: {of}",
  "a list of {from} to {to}: {of}": "un elenco da {from} a {to} voci: {of}",
  'nothing: there is no such field; did you mean "{name}"?':
    "niente, perché un campo così non c’è; volevi dire «{name}»?",
  "nothing: there is no such field here, only {names}":
    "niente, perché qui un campo così non c’è; ci sono solo {names}",
  "{may}; it stops being JSON on line {line}": "{may}; alla riga {line} smette di essere JSON",
  "{may}; this is not JSON": "{may}; questo non è JSON",
  "the ISO speed printed on the box, such as 125: the leaflet has no row for {rating}, so the stops are counted from the box speed":
    "la sensibilità ISO stampata sulla scatola, per esempio 125; il foglietto non ha righe per {rating}, quindi gli stop si contano da quella",
  'at least one row that serves "{film}": a row without "exposureIndex"':
    'almeno una riga che vada bene per «{film}», cioè senza "exposureIndex"',
  'at least one row that serves "{film}": a row without "exposureIndex" or for {box}':
    'almeno una riga che vada bene per «{film}», cioè senza "exposureIndex" o per {box}',
  '"{time}", as {path} gives for {temperature} too: one temperature has one time':
    "«{time}», il tempo che {path} dà già per {temperature}: una temperatura ha un tempo solo",
  'nothing: "{process}" has no such bath, only {baths}':
    "niente, perché «{process}» non ha un bagno così; ha solo {baths}",
  "nothing beside {path}, which make the time themselves":
    "niente accanto a {path}, che danno già il tempo",
  "nothing, since developer.temperature says {temperature}":
    "niente, perché developer.temperature dice già {temperature}",
  "nothing beside {path}: one or the other": "niente accanto a {path}: o l’uno o l’altro",
  'a volume such as { "ml": 20 }, since {path} is given':
    'un volume come { "ml": 20 }, perché è indicato {path}',
  "films of 80 sq in that a litre serves, such as 20, since {path} is given":
    "le pellicole da 80 in² per cui basta un litro, per esempio 20, perché è indicato {path}",
  "{temperature}, as another reading at {at} says: one moment has one temperature":
    "{temperature}, come un’altra lettura a {at}: un momento ha una temperatura sola",
  "{temperature} or less, since mixing.hot is no warmer":
    "{temperature} o meno, perché mixing.hot non è più calda",
  "no more than {lines} lines": "non più di {lines} righe",
  '{may}; "{typed}" wants its unit, °C or °F': "{may}; a «{typed}» manca l’unità, °C o °F",
  "{may}; the two temperatures on this line are not the same":
    "{may}; le due temperature di questa riga non sono la stessa",
  "{may}, in the digits 0 to 9": "{may}, nelle cifre da 0 a 9",
  "{may}, no longer than 24 hours": "{may}, non più lungo di 24 ore",
  '{may}; "{typed}" is read both as {one} and as {other}, so say it in parts':
    "{may}; «{typed}» si può leggere come {one} e come {other}, quindi scrivilo in parti",
  '{may}; "{typed}" is read in two ways, so say it in parts':
    "{may}; «{typed}» si può leggere in due modi, quindi scrivilo in parti",
};
