// What a field may hold, by the checker's English text: the same in Portuguese. The gaps in braces stay.
import type { Mays } from "../words.ts";
import { fieldMays } from "./field-mays.ts";

/** Shapes, with their gaps. */
const shapes: Mays = {
  "a number from {from} to {to}: {of}": "um número de {from} a {to}: {of}",
  "a whole number from {from} to {to}: {of}": "um número inteiro de {from} a {to}: {of}",
  "one line of 1 to 200 characters: {of}": "uma linha de 1 a 200 caracteres: {of}",
  'a clock time such as "9:30" or "1:02:00", above 0:00 and up to 24:00:00: {of}':
    "um tempo como «9:30» ou «1:02:00», acima de 0:00 e até 24:00:00: {of}",
  'a clock time such as "9:30" or "1:02:00", from 0:00 up to 24:00:00: {of}':
    "um tempo como «9:30» ou «1:02:00», de 0:00 até 24:00:00: {of}",
  'a temperature, { "c": 20 } or { "f": 68 }, from {from} to {to} °C or {fromF} to {toF} °F: {of}':
    'uma temperatura, { "c": 20 } ou { "f": 68 }, de {from} a {to} °C ou de {fromF} a {toF} °F: {of}',
  'a volume, { "ml": 600 } or { "flOz": 20 }, from {from} to {to} ml or {fromOz} to {toOz} US fl oz: {of}':
    'um volume, { "ml": 600 } ou { "flOz": 20 }, de {from} a {to} ml ou de {fromOz} a {toOz} fl oz (EUA): {of}',
  "an object: {of}": "um objeto: {of}",
  "a list of {from} to {to}: {of}": "uma lista de {from} a {to}: {of}",
  'nothing: there is no such field; did you mean "{name}"?':
    "nada: esse campo não existe; queria dizer «{name}»?",
  "nothing: there is no such field here, only {names}":
    "nada: esse campo não existe aqui, só {names}",
  "{may}; it stops being JSON on line {line}": "{may}; deixa de ser JSON na linha {line}",
  "{may}; this is not JSON": "{may}; isto não é JSON",
  "the ISO speed printed on the box, such as 125: the leaflet has no row for {rating}, so the stops are counted from the box speed":
    "o ISO impresso na caixa, como 125: o folheto não tem linha para {rating}, e os pontos contam-se a partir do ISO da caixa",
  'at least one row that serves "{film}": a row without "exposureIndex"':
    "pelo menos uma linha que sirva a «{film}»: uma linha sem «exposureIndex»",
  'at least one row that serves "{film}": a row without "exposureIndex" or for {box}':
    "pelo menos uma linha que sirva a «{film}»: uma linha sem «exposureIndex» ou para {box}",
  '"{time}", as {path} gives for {temperature} too: one temperature has one time':
    "«{time}», o tempo que {path} também dá para {temperature}: uma temperatura tem um só tempo",
  'nothing: "{process}" has no such bath, only {baths}':
    "nada: «{process}» não tem esse banho, só {baths}",
  "nothing beside {path}, which make the time themselves": "nada, havendo {path}: o tempo sai daí",
  "nothing, since developer.temperature says {temperature}":
    "nada, porque developer.temperature diz {temperature}",
  "nothing beside {path}: one or the other": "nada, havendo {path}: ou um ou outro",
  'a volume such as { "ml": 20 }, since {path} is given':
    'um volume como { "ml": 20 }, porque está preenchido {path}',
  "films of 80 sq in that a litre serves, such as 20, since {path} is given":
    "os filmes de 80 pol² para que dá um litro, como 20, porque está preenchido {path}",
  "{temperature}, as another reading at {at} says: one moment has one temperature":
    "{temperature}, como diz outra leitura aos {at}: um momento tem uma só temperatura",
  "{temperature} or less, since mixing.hot is no warmer":
    "{temperature} ou menos, porque mixing.hot não está mais quente",
  "no more than {lines} lines": "não mais de {lines} linhas",
  '{may}; "{typed}" wants its unit, °C or °F': "{may}; a «{typed}» falta a unidade, °C ou °F",
  "{may}; the two temperatures on this line are not the same":
    "{may}; as duas temperaturas desta linha não são iguais",
  "{may}, in the digits 0 to 9": "{may}, com os algarismos de 0 a 9",
  "{may}, no longer than 24 hours": "{may}, no máximo 24 horas",
  '{may}; "{typed}" is read both as {one} and as {other}, so say it in parts':
    "{may}; «{typed}» tanto se lê {one} como {other}: diga-o em partes",
  '{may}; "{typed}" is read in two ways, so say it in parts':
    "{may}; «{typed}» lê-se de duas maneiras: diga-o em partes",
};

/** What is typed, and what the rules between fields ask for. */
const typed: Mays = {
  'a clock time such as "9:30" or "1:02:00"': "um tempo como «9:30» ou «1:02:00»",
  'a time such as "9:30", "9 min 30 s", "9.5 min" or "90 s"':
    "um tempo como «9:30», «9 min 30 s», «9,5 min» ou «90 s»",
  'a time of day such as "19:05" or "19:05:30"': "uma hora do dia como «19:05» ou «19:05:30»",
  'a temperature with its unit, such as "20 °C", "20.5 C" or "68 °F"':
    "uma temperatura com a unidade, como «20 °C», «20,5 C» ou «68 °F»",
  'a volume with its unit, such as "600 ml", "0.6 l" or "20 fl oz" (US)':
    "um volume com a unidade, como «600 ml», «0,6 l» ou «20 fl oz» (EUA)",
  'a size such as "135-36", "120", "220", "4x5in" or "9x12cm"':
    "um formato como «135-36», «120», «220», «4x5in» ou «9x12cm»",
  '"stock", or parts of stock plus parts of water such as "1+3"':
    "«stock», ou partes de solução-mãe mais partes de água, como «1+3»",
  'a worksheet: a JSON object that begins with { "tankside": 1':
    'uma folha: um objeto JSON que começa por { "tankside": 1',
  "minutes, since tank.room is given: both or neither":
    "minutos, porque está preenchido tank.room: ou os dois, ou nenhum",
  'a temperature such as { "c": 20 }, since tank.halfway is given: both or neither':
    'uma temperatura como { "c": 20 }, porque está preenchido tank.halfway: ou os dois, ou nenhum',
  'a temperature such as { "c": 20 }, since tempering.bathVolume is given':
    'uma temperatura como { "c": 20 }, porque está preenchido tempering.bathVolume',
  "log10 of the exposure from one step to the next, such as 0.15, since densities are given":
    "o log10 da exposição de um degrau ao seguinte, como 0,15, porque há densidades",
  "its mean gradient such as 0.6, or densities":
    "o seu gradiente médio, como 0,6, ou as densidades",
  "nothing beside densities, which give it": "nada, havendo densidades: são elas que o dão",
  "the density of the unexposed, developed film, such as 0.3, since densities are given":
    "a densidade do filme revelado sem exposição, como 0,3, porque há densidades",
  'a temperature and a time, such as "68 °F 10:00", "20 °C 11½ min" or "20; 9:30; EI 400"':
    "uma temperatura e um tempo, como «68 °F 10:00», «20 °C 11½ min» ou «20; 9:30; EI 400»",
};

export const mays: Mays = { ...shapes, ...typed, ...fieldMays };
