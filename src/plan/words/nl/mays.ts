// What a field may hold, in Dutch, by the checker's English: the shapes with gaps here, the rest gathered.
import type { Mays } from "../words.ts";
import { benchMays } from "./may-bench.ts";
import { filmMays } from "./may-film.ts";

export const mays: Mays = {
  ...filmMays,
  ...benchMays,
  "a number from {from} to {to}: {of}": "een getal van {from} tot en met {to}: {of}",
  "a whole number from {from} to {to}: {of}": "een heel getal van {from} tot en met {to}: {of}",
  "one line of 1 to 200 characters: {of}": "één regel van 1 tot en met 200 tekens: {of}",
  'a clock time such as "9:30" or "1:02:00", above 0:00 and up to 24:00:00: {of}':
    "een tijd zoals “9:30” of “1:02:00”, boven 0:00 en tot en met 24:00:00: {of}",
  'a clock time such as "9:30" or "1:02:00", from 0:00 up to 24:00:00: {of}':
    "een tijd zoals “9:30” of “1:02:00”, van 0:00 tot en met 24:00:00: {of}",
  'a temperature, { "c": 20 } or { "f": 68 }, from {from} to {to} °C or {fromF} to {toF} °F: {of}':
    'een temperatuur, { "c": 20 } of { "f": 68 }, van {from} tot en met {to} °C of {fromF} tot en met {toF} °F: {of}',
  'a volume, { "ml": 600 } or { "flOz": 20 }, from {from} to {to} ml or {fromOz} to {toOz} US fl oz: {of}':
    'een volume, { "ml": 600 } of { "flOz": 20 }, van {from} tot en met {to} ml of {fromOz} tot en met {toOz} US fl oz: {of}',
  "an object: {of}": "een object: {of}",
  "a list of {from} to {to}: {of}": "een lijst van {from} tot en met {to}: {of}",
  'nothing: there is no such field; did you mean "{name}"?':
    "niets, want dit veld bestaat niet; bedoel je “{name}”?",
  "nothing: there is no such field here, only {names}":
    "niets, want dit veld bestaat hier niet, alleen {names}",
  "{may}; it stops being JSON on line {line}": "{may}; op regel {line} is het geen JSON meer",
  "{may}; this is not JSON": "{may}; dit is geen JSON",
  "the ISO speed printed on the box, such as 125: the leaflet has no row for {rating}, so the stops are counted from the box speed":
    "de ISO die op het doosje staat, zoals 125: de bijsluiter heeft geen rij voor {rating}, dus worden de stops vanaf die ISO geteld",
  'at least one row that serves "{film}": a row without "exposureIndex"':
    'minstens één rij die voor “{film}” geldt: een rij zonder "exposureIndex"',
  'at least one row that serves "{film}": a row without "exposureIndex" or for {box}':
    'minstens één rij die voor “{film}” geldt: een rij zonder "exposureIndex" of voor {box}',
  '"{time}", as {path} gives for {temperature} too: one temperature has one time':
    "“{time}”, zoals {path} ook voor {temperature} opgeeft: één temperatuur heeft één tijd",
  'nothing: "{process}" has no such bath, only {baths}':
    "niets, want “{process}” kent dit bad niet, alleen {baths}",
  "nothing beside {path}, which make the time themselves":
    "niets naast {path}, want daaruit volgt de tijd al",
  "nothing, since developer.temperature says {temperature}":
    "niets, want developer.temperature noemt {temperature}",
  "nothing beside {path}: one or the other": "niets naast {path}: het een of het ander",
  'a volume such as { "ml": 20 }, since {path} is given':
    'een volume zoals { "ml": 20 }, want {path} is opgegeven',
  "films of 80 sq in that a litre serves, such as 20, since {path} is given":
    "films van 80 vierkante inch per liter, zoals 20, want {path} is opgegeven",
  "{temperature}, as another reading at {at} says: one moment has one temperature":
    "{temperature}, zoals een andere meting op {at} zegt: één moment heeft één temperatuur",
  "{temperature} or less, since mixing.hot is no warmer":
    "{temperature} of minder, want mixing.hot is niet warmer",
  "no more than {lines} lines": "hoogstens {lines} regels",
  '{may}; "{typed}" wants its unit, °C or °F':
    "{may}; bij “{typed}” ontbreekt de eenheid, °C of °F",
  "{may}; the two temperatures on this line are not the same":
    "{may}; de twee temperaturen op deze regel zijn niet gelijk",
  "{may}, in the digits 0 to 9": "{may}, in de cijfers 0 tot en met 9",
  "{may}, no longer than 24 hours": "{may}, niet langer dan 24 uur",
  '{may}; "{typed}" is read both as {one} and as {other}, so say it in parts':
    "{may}; “{typed}” wordt als {one} en als {other} gelezen, dus geef het op in delen",
  '{may}; "{typed}" is read in two ways, so say it in parts':
    "{may}; “{typed}” wordt op twee manieren gelezen, dus geef het op in delen",
};
