// What a field may hold, by the checker's English, in Spanish. Each goes on from "Aquí vale" and "Hace falta".
import type { Mays } from "../words.ts";
import { mayShapes } from "./may-shapes.ts";

export const mays: Mays = {
  ...mayShapes,
  "a worksheet": "una hoja de trabajo",
  "1, the version of worksheet that this is": "1, la versión de hoja de trabajo que es esta",
  "what you call this development": "el nombre que le das a este revelado",
  'a language tag (BCP 47) such as "en" or "de-AT"':
    "una etiqueta de idioma (BCP 47) como «en» o «de-AT»",
  '"bw-negative": the process': "«bw-negative»: el proceso",
  "the films in the tank": "las películas del tanque",
  "a film, or several alike": "una película, o varias iguales",
  "what you call the film": "el nombre que le das a la película",
  'a size such as "135-36", "120", "220", "4x5in" or "9x12cm"':
    "un formato como «135-36», «120», «220», «4x5in» o «9x12cm»",
  "how many of them": "cuántas hay",
  "the ISO speed printed on the box": "la ISO impresa en la caja",
  "the speed it was metered at, if not the box speed":
    "la sensibilidad a la que se midió, si no es la de la caja",
  "the developer": "el revelador",
  "what you call the developer": "el nombre que le das al revelador",
  '"stock", or parts of stock plus parts of water such as "1+3"':
    "«stock», o partes de stock más partes de agua, como «1+3»",
  "times with their temperatures, read off the leaflet":
    "tiempos con sus temperaturas, tomados de la ficha",
  "a time that the leaflet gives": "un tiempo que da la ficha",
  "the row's temperature": "la temperatura de la fila",
  "degrees Celsius": "grados Celsius",
  "degrees Fahrenheit": "grados Fahrenheit",
  "the row's time": "el tiempo de la fila",
  "the rating that the leaflet gives this row for":
    "la sensibilidad para la que la ficha da esta fila",
  "measured in the mixed bath, now": "lo medido ahora en el baño ya mezclado",
  "a number above 0, up to 1: by how much ln(time) falls for each °C":
    "un número mayor que 0 y hasta 1: cuánto baja ln(tiempo) por cada °C",
  '"pull" and "push", the fraction of the time for a stop':
    "«pull» y «push», la fracción del tiempo por cada paso",
  "the fraction taken off for a stop over": "la fracción que se quita por cada paso de más",
  "the fraction added for a stop under": "la fracción que se añade por cada paso de menos",
  "the least stock that 80 sq in of film needs":
    "el stock mínimo que necesitan 80 pulg² de película",
  millilitres: "mililitros",
  "US fluid ounces": "onzas líquidas estadounidenses",
  "films of 80 sq in that this solution has developed already":
    "películas de 80 pulg² que esta solución ya ha revelado",
  "the fraction of the time added for each of those films":
    "la fracción del tiempo que se añade por cada una de esas películas",
  "a time for which the temperature is asked": "un tiempo para el que se busca la temperatura",
  "thermometer readings taken while it develops": "lecturas del termómetro durante el revelado",
  "a thermometer reading": "una lectura del termómetro",
  "when it was read, on the developer's own clock":
    "cuándo se leyó, en el reloj del propio revelador",
  "what it said in the tank": "lo que marcaba en el tanque",
  "films of 80 sq in that a litre serves in all":
    "películas de 80 pulg² para las que da un litro en total",
  "the bottle on the shelf that it is poured from": "la botella del estante de la que se vierte",
  "how much of it there is, if not the tank's volume": "cuánto hay, si no es el volumen del tanque",
  "replenisher due for each film of 80 sq in":
    "el regenerador que toca por cada película de 80 pulg²",
  "the tank": "el tanque",
  "what you call the tank": "el nombre que le das al tanque",
  '"inversion", "twist", "rotary", "tray" or "hanger": how it is agitated':
    "«inversion», «twist», «rotary», «tray» o «hanger»: cómo se agita",
  "what it takes to cover the film": "lo que hace falta para cubrir la película",
  "seconds to fill it": "segundos para llenarlo",
  "seconds to empty it": "segundos para vaciarlo",
  'a clock time such as "3:00", from 0:00 up to 30:00: how long to look for light in the dark':
    "un tiempo como «3:00», de 0:00 a 30:00: cuánto se busca luz a oscuras",
  "seconds from empty to the next pour-in":
    "segundos desde que queda vacío hasta que se llena con el siguiente",
  "factor on the development time for this method":
    "el factor del tiempo de revelado para este método",
  "what the tank drifts toward": "la temperatura hacia la que deriva el tanque",
  "minutes in which it goes half-way there":
    "minutos en los que el tanque recorre la mitad del camino",
  "your own times with this tank, as measured": "tus propios tiempos con este tanque, medidos",
  "seconds, one entry a try: to fill it": "segundos, uno por intento: para llenarlo",
  seconds: "segundos",
  "seconds, one entry a try: to empty it": "segundos, uno por intento: para vaciarlo",
  "seconds, one entry a try: for one inversion and back":
    "segundos, uno por intento: para una inversión, ida y vuelta",
  "how the film is agitated": "cómo se agita la película",
  "seconds without a break once the tank is full": "segundos sin parar una vez lleno el tanque",
  "seconds from one bout's beginning to the next one's":
    "segundos desde el comienzo de una tanda hasta el de la siguiente",
  'seconds a bout lasts; 0 to let it stand, as many as "every" to go on throughout':
    "segundos que dura una tanda; 0 para dejarlo en reposo, tantos como «every» para no parar nunca",
  "seconds for one inversion and back": "segundos para una inversión, ida y vuelta",
  "taps after each bout": "golpes después de cada tanda",
  "when a bath's time begins and ends": "cuándo empieza y cuándo acaba el tiempo de un baño",
  '"pour-in" or "full": the first drop in, or a full tank':
    "«pour-in» o «full»: con la primera gota, o con el tanque lleno",
  '"pour-out" or "empty": the pour-out\'s beginning, or an empty tank':
    "«pour-out» o «empty»: al empezar a vaciar, o con el tanque vacío",
  "baths by id, each with what it shall be":
    "los baños por su nombre, cada uno con lo que ha de ser",
  "what this bath shall be": "lo que ha de ser este baño",
  "the bath's time": "el tiempo del baño",
  "true or false: true leaves the bath out": "true o false: true deja fuera el baño",
  "the bath's temperature": "la temperatura del baño",
  '"drain", "waste" or "return": where the bath goes afterwards':
    "«drain», «waste» o «return»: adónde va el baño después",
  "what the developer shall be, besides developer itself":
    "lo que ha de ser el revelador, además del propio «developer»",
  "nothing: the developer's time comes from the leaflet":
    "dejarlo vacío: el tiempo del revelador sale de la ficha",
  "nothing: nothing develops without a developer": "dejarlo vacío: sin revelador no se revela nada",
  "films of 80 sq in that it has served before this one":
    "películas de 80 pulg² que ya han pasado por él",
  "what the fixer shall be": "lo que ha de ser el fijador",
  "the clearing time of a snip of film": "el tiempo de clarificación de un recorte de película",
  "how long it took to clear": "cuánto tardó en clarificar",
  "how long it took when the bath was fresh": "cuánto tardó con el baño recién preparado",
  "2 or 3: fix for so many times the clearing time":
    "2 o 3: fijar ese número de veces el tiempo de clarificación",
  "what the wash shall be": "lo que ha de ser el lavado",
  "the inversions in each fill of fresh water": "las inversiones en cada carga de agua limpia",
  "inversions in this fill": "las inversiones en esta carga",
  "what stays behind at each emptying": "lo que queda dentro tras cada vaciado",
  "running water, the volume a minute": "el agua corriente, el volumen por minuto",
  "g/l of thiosulfate in the fixer before the wash":
    "g/l de tiosulfato en el fijador antes del lavado",
  "stock and two taps, to be mixed to a temperature":
    "stock y dos grifos, para mezclar a una temperatura",
  "what the mix shall have": "la temperatura que tendrá la mezcla",
  "the stock's": "la del stock",
  "the cold tap's": "la del grifo frío",
  "the hot tap's": "la del grifo caliente",
  "from one mark of the graduate to the next": "de una marca de la probeta a la siguiente",
  "a developer in its water bath": "un revelador puesto al baño maría",
  "what the developer shall come to": "la temperatura a la que tiene que llegar el revelador",
  "thermometer readings with their times": "lecturas del termómetro con sus tiempos",
  "when it was read, on one clock from 0:00": "cuándo se leyó, en un mismo reloj desde 0:00",
  "what it said in the developer": "lo que marcaba en el revelador",
  "the water bath's temperature": "la temperatura del baño maría",
  "the water in the water bath": "el agua del baño maría",
  'a time of day such as "19:05" or "19:05:30"': "una hora del día como «19:05» o «19:05:30»",
  "what test films showed": "lo que dieron las películas de prueba",
  "test films": "las películas de prueba",
  "a test film": "una película de prueba",
  "how long it was developed": "cuánto tiempo se reveló",
  "its mean gradient": "su gradiente medio",
  "the wedge's densities, the least exposed step first":
    "las densidades de la cuña, primero el escalón menos expuesto",
  "a step's density": "la densidad de un escalón",
  "the density of the unexposed, developed film": "la densidad de la película revelada sin exponer",
  "the mean gradient wanted": "el gradiente medio buscado",
  "log10 of the exposure from one step to the next":
    "log10 de la exposición de un escalón al siguiente",
  "log10 of the first step's exposure in lux seconds":
    "log10 de la exposición del primer escalón en lux segundo",
  "how the voice speaks": "cómo habla la voz",
  '"done": whether the film is in the closed tank already':
    "«done»: si la película ya está en el tanque cerrado",
  '"full", "brief" or "tones": how much is said': "«full», «brief» o «tones»: cuánto se dice",
  "the pace of speech, 1 as recorded": "el ritmo de la voz; 1 es como se grabó",
  'a clock time such as "9:30" or "1:02:00"': "un tiempo de reloj como «9:30» o «1:02:00»",
  'a time such as "9:30", "9 min 30 s", "9.5 min" or "90 s"':
    "un tiempo como «9:30», «9 min 30 s», «9,5 min» o «90 s»",
  'a temperature with its unit, such as "20 °C", "20.5 C" or "68 °F"':
    "una temperatura con su unidad, como «20 °C», «20,5 C» o «68 °F»",
  'a volume with its unit, such as "600 ml", "0.6 l" or "20 fl oz" (US)':
    "un volumen con su unidad, como «600 ml», «0,6 l» o «20 fl oz» (estadounidenses)",
  'a worksheet: a JSON object that begins with { "tankside": 1':
    'una hoja de trabajo: un objeto JSON que empieza por { "tankside": 1',
  "minutes, since tank.room is given: both or neither":
    "un número de minutos, puesto que se da tank.room: los dos o ninguno",
  'a temperature such as { "c": 20 }, since tank.halfway is given: both or neither':
    'una temperatura como { "c": 20 }, puesto que se da tank.halfway: los dos o ninguno',
  'a temperature such as { "c": 20 }, since tempering.bathVolume is given':
    'una temperatura como { "c": 20 }, puesto que se da tempering.bathVolume',
  "log10 of the exposure from one step to the next, such as 0.15, since densities are given":
    "log10 de la exposición de un escalón al siguiente, como 0,15, puesto que se dan densidades",
  "its mean gradient such as 0.6, or densities": "su gradiente medio, como 0,6, o sus densidades",
  "nothing beside densities, which give it": "dejarlo vacío junto a las densidades, que ya lo dan",
  "the density of the unexposed, developed film, such as 0.3, since densities are given":
    "la densidad de la película revelada sin exponer, como 0,3, puesto que se dan densidades",
  'a temperature and a time, such as "68 °F 10:00", "20 °C 11½ min" or "20; 9:30; EI 400"':
    "una temperatura y un tiempo, como «68 °F 10:00», «20 °C 11½ min» o «20; 9:30; EI 400»",
};
