// What a field may hold, in German, by the checker's English: the shapes with gaps here, the rest gathered.
import type { Mays } from "../words.ts";
import { benchMays } from "./may-bench.ts";
import { filmMays } from "./may-film.ts";

export const mays: Mays = {
  ...filmMays,
  ...benchMays,
  "a number from {from} to {to}: {of}": "eine Zahl von {from} bis {to}: {of}",
  "a whole number from {from} to {to}: {of}": "eine ganze Zahl von {from} bis {to}: {of}",
  "one line of 1 to 200 characters: {of}": "eine Zeile von 1 bis 200 Zeichen: {of}",
  'a clock time such as "9:30" or "1:02:00", above 0:00 and up to 24:00:00: {of}':
    "eine Zeit wie „9:30“ oder „1:02:00“, über 0:00 und bis 24:00:00: {of}",
  'a clock time such as "9:30" or "1:02:00", from 0:00 up to 24:00:00: {of}':
    "eine Zeit wie „9:30“ oder „1:02:00“, von 0:00 bis 24:00:00: {of}",
  'a temperature, { "c": 20 } or { "f": 68 }, from {from} to {to} °C or {fromF} to {toF} °F: {of}':
    'eine Temperatur, { "c": 20 } oder { "f": 68 }, von {from} bis {to} °C oder {fromF} bis {toF} °F: {of}',
  'a volume, { "ml": 600 } or { "flOz": 20 }, from {from} to {to} ml or {fromOz} to {toOz} US fl oz: {of}':
    'ein Volumen, { "ml": 600 } oder { "flOz": 20 }, von {from} bis {to} ml oder {fromOz} bis {toOz} US fl oz: {of}',
  "an object: {of}": "ein Objekt: {of}",
  "a list of {from} to {to}: {of}": "eine Liste von {from} bis {to}: {of}",
  'nothing: there is no such field; did you mean "{name}"?':
    "nichts, denn dieses Feld gibt es nicht; ist „{name}“ gemeint?",
  "nothing: there is no such field here, only {names}":
    "nichts, denn dieses Feld gibt es hier nicht, nur {names}",
  "{may}; it stops being JSON on line {line}": "{may}; in Zeile {line} ist es kein JSON mehr",
  "{may}; this is not JSON": "{may}; das ist kein JSON",
  "the ISO speed printed on the box, such as 125: the leaflet has no row for {rating}, so the stops are counted from the box speed":
    "die ISO-Empfindlichkeit auf der Packung, etwa 125: das Datenblatt hat keine Zeile für {rating}, also zählen die Blenden ab der Nennempfindlichkeit",
  'at least one row that serves "{film}": a row without "exposureIndex"':
    'mindestens eine Zeile, die für „{film}“ gilt: eine Zeile ohne "exposureIndex"',
  'at least one row that serves "{film}": a row without "exposureIndex" or for {box}':
    'mindestens eine Zeile, die für „{film}“ gilt: eine Zeile ohne "exposureIndex" oder für {box}',
  '"{time}", as {path} gives for {temperature} too: one temperature has one time':
    "„{time}“, wie es auch {path} für {temperature} angibt: eine Temperatur hat eine Zeit",
  'nothing: "{process}" has no such bath, only {baths}':
    "nichts, denn „{process}“ kennt kein solches Bad, nur {baths}",
  "nothing beside {path}, which make the time themselves":
    "nichts neben {path}, denn daraus folgt die Zeit schon",
  "nothing, since developer.temperature says {temperature}":
    "nichts, denn developer.temperature nennt {temperature}",
  "nothing beside {path}: one or the other":
    "nichts neben {path}: entweder das eine oder das andere",
  'a volume such as { "ml": 20 }, since {path} is given':
    'ein Volumen wie { "ml": 20 }, weil {path} angegeben ist',
  "films of 80 sq in that a litre serves, such as 20, since {path} is given":
    "Filme zu 80 Quadratzoll je Liter, etwa 20, weil {path} angegeben ist",
  "{temperature}, as another reading at {at} says: one moment has one temperature":
    "{temperature}, wie eine andere Messung bei {at} sagt: ein Augenblick hat eine Temperatur",
  "{temperature} or less, since mixing.hot is no warmer":
    "{temperature} oder weniger, denn mixing.hot ist nicht wärmer",
  "no more than {lines} lines": "höchstens {lines} Zeilen",
  '{may}; "{typed}" wants its unit, °C or °F': "{may}; bei „{typed}“ fehlt die Einheit, °C oder °F",
  "{may}; the two temperatures on this line are not the same":
    "{may}; die beiden Temperaturen in dieser Zeile sind nicht dieselben",
  "{may}, in the digits 0 to 9": "{may}, in den Ziffern 0 bis 9",
  "{may}, no longer than 24 hours": "{may}, nicht länger als 24 Stunden",
  '{may}; "{typed}" is read both as {one} and as {other}, so say it in parts':
    "{may}; „{typed}“ wird als {one} und als {other} gelesen, also bitte in Teilen angeben",
  '{may}; "{typed}" is read in two ways, so say it in parts':
    "{may}; „{typed}“ wird auf zwei Arten gelesen, also bitte in Teilen angeben",
};
