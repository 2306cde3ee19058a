// What a field may hold where the checker's text has gaps, by its English, in Spanish. Apart from the
// whole texts for their number. Names of fields and what is typed stay as they are.
import type { Mays } from "../words.ts";

export const mayShapes: Mays = {
  "a number from {from} to {to}: {of}": "un número de {from} a {to}: {of}",
  "a whole number from {from} to {to}: {of}": "un número entero de {from} a {to}: {of}",
  "one line of 1 to 200 characters: {of}": "una línea de 1 a 200 caracteres: {of}",
  'a clock time such as "9:30" or "1:02:00", above 0:00 and up to 24:00:00: {of}':
    "un tiempo de reloj como «9:30» o «1:02:00», más de 0:00 y hasta 24:00:00: {of}",
  'a clock time such as "9:30" or "1:02:00", from 0:00 up to 24:00:00: {of}':
    "un tiempo de reloj como «9:30» o «1:02:00», desde 0:00 hasta 24:00:00: {of}",
  'a temperature, { "c": 20 } or { "f": 68 }, from {from} to {to} °C or {fromF} to {toF} °F: {of}':
    'una temperatura, { "c": 20 } o { "f": 68 }, de {from} a {to} °C o de {fromF} a {toF} °F: {of}',
  'a volume, { "ml": 600 } or { "flOz": 20 }, from {from} to {to} ml or {fromOz} to {toOz} US fl oz: {of}':
    'un volumen, { "ml": 600 } o { "flOz": 20 }, de {from} a {to} ml o de {fromOz} a {toOz} fl oz estadounidenses: {of}',
  "an object: {of}": "un objeto: {of}",
  "a list of {from} to {to}: {of}": "una lista de {from} a {to}: {of}",
  'nothing: there is no such field; did you mean "{name}"?':
    "quitarlo: no hay ningún campo así; ¿querías decir «{name}»?",
  "nothing: there is no such field here, only {names}":
    "quitarlo: aquí no hay ningún campo así, solo {names}",
  "{may}; it stops being JSON on line {line}": "{may}; deja de ser JSON en la línea {line}",
  "{may}; this is not JSON": "{may}; esto no es JSON",
  "the ISO speed printed on the box, such as 125: the leaflet has no row for {rating}, so the stops are counted from the box speed":
    "la ISO impresa en la caja, como 125: la ficha no tiene fila para {rating}, así que los pasos se cuentan desde la caja",
  'at least one row that serves "{film}": a row without "exposureIndex"':
    "al menos una fila que sirva para «{film}»: una fila sin «exposureIndex»",
  'at least one row that serves "{film}": a row without "exposureIndex" or for {box}':
    "al menos una fila que sirva para «{film}»: una fila sin «exposureIndex» o para {box}",
  '"{time}", as {path} gives for {temperature} too: one temperature has one time':
    "«{time}», lo mismo que da {path} para {temperature}: una temperatura tiene un solo tiempo",
  'nothing: "{process}" has no such bath, only {baths}':
    "dejarlo vacío: «{process}» no tiene ese baño, solo {baths}",
  "nothing beside {path}, which make the time themselves":
    "dejarlo vacío junto a {path}, que ya dan el tiempo",
  "nothing, since developer.temperature says {temperature}":
    "dejarlo vacío, puesto que developer.temperature dice {temperature}",
  "nothing beside {path}: one or the other": "dejarlo vacío junto a {path}: lo uno o lo otro",
  'a volume such as { "ml": 20 }, since {path} is given':
    'un volumen como { "ml": 20 }, puesto que se da {path}',
  "films of 80 sq in that a litre serves, such as 20, since {path} is given":
    "un número de películas de 80 pulg² para las que da un litro, como 20, puesto que se da {path}",
  "{temperature}, as another reading at {at} says: one moment has one temperature":
    "{temperature}, como dice otra lectura en {at}: un momento tiene una sola temperatura",
  "{temperature} or less, since mixing.hot is no warmer":
    "{temperature} o menos, puesto que mixing.hot no está más caliente",
  "no more than {lines} lines": "un máximo de {lines} líneas",
  '{may}; "{typed}" wants its unit, °C or °F': "{may}; a «{typed}» le falta la unidad, °C o °F",
  "{may}; the two temperatures on this line are not the same":
    "{may}; las dos temperaturas de esta línea no son la misma",
  "{may}, in the digits 0 to 9": "{may}, con las cifras 0 a 9",
  "{may}, no longer than 24 hours": "{may}, de no más de 24 horas",
  '{may}; "{typed}" is read both as {one} and as {other}, so say it in parts':
    "{may}; «{typed}» se puede leer como {one} y como {other}, así que dilo en partes",
  '{may}; "{typed}" is read in two ways, so say it in parts':
    "{may}; «{typed}» se puede leer de dos maneras, así que dilo en partes",
};
