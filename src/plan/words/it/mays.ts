// What a field may hold, in Italian: the checker's English text in, the same in Italian out. Each is said
// behind a colon. What stands in straight quotes is written so in the file.
import type { Mays } from "../words.ts";
import { mayShapes } from "./may-shapes.ts";

export const mays: Mays = {
  ...mayShapes,
  "a worksheet": "una scheda",
  "1, the version of worksheet that this is": "1, la versione di questa scheda",
  "what you call this development": "il nome che dai a questo sviluppo",
  'a language tag (BCP 47) such as "en" or "de-AT"':
    'la sigla di una lingua (BCP 47), come "it" o "de-AT"',
  '"bw-negative": the process': '"bw-negative": il procedimento',
  "the films in the tank": "le pellicole nella tank",
  "a film, or several alike": "una pellicola, o più d’una uguali",
  "what you call the film": "il nome che dai alla pellicola",
  'a size such as "135-36", "120", "220", "4x5in" or "9x12cm"':
    "un formato come «135-36», «120», «220», «4x5in» o «9x12cm»",
  "how many of them": "quante sono",
  "the ISO speed printed on the box": "la sensibilità ISO stampata sulla scatola",
  "the speed it was metered at, if not the box speed":
    "la sensibilità a cui è stata esposta, se non è quella sulla scatola",
  "the developer": "il rivelatore",
  "what you call the developer": "il nome che dai al rivelatore",
  '"stock", or parts of stock plus parts of water such as "1+3"':
    "«stock», oppure parti di stock più parti d’acqua, come «1+3»",
  "times with their temperatures, read off the leaflet":
    "i tempi con le loro temperature, letti sul foglietto",
  "a time that the leaflet gives": "un tempo dato dal foglietto",
  "the row's temperature": "la temperatura della riga",
  "degrees Celsius": "gradi Celsius",
  "degrees Fahrenheit": "gradi Fahrenheit",
  "the row's time": "il tempo della riga",
  "the rating that the leaflet gives this row for":
    "la sensibilità per cui il foglietto dà questa riga",
  "measured in the mixed bath, now": "misurata ora nel bagno pronto",
  "a number above 0, up to 1: by how much ln(time) falls for each °C":
    "un numero sopra 0, fino a 1: di quanto cala ln(tempo) per ogni °C",
  '"pull" and "push", the fraction of the time for a stop':
    '"pull" e "push", la frazione del tempo per uno stop',
  "the fraction taken off for a stop over": "la frazione in meno per uno stop di sovraesposizione",
  "the fraction added for a stop under": "la frazione in più per uno stop di sottoesposizione",
  "the least stock that 80 sq in of film needs": "lo stock minimo per 80 in² di pellicola",
  millilitres: "millilitri",
  "US fluid ounces": "once fluide USA",
  "films of 80 sq in that this solution has developed already":
    "le pellicole da 80 in² che questa soluzione ha già sviluppato",
  "the fraction of the time added for each of those films":
    "la frazione del tempo in più per ognuna di quelle pellicole",
  "a time for which the temperature is asked": "un tempo di cui si cerca la temperatura",
  "thermometer readings taken while it develops":
    "letture del termometro prese durante lo sviluppo",
  "a thermometer reading": "una lettura del termometro",
  "when it was read, on the developer's own clock":
    "quando è stata presa, sul cronometro del rivelatore",
  "what it said in the tank": "quello che segnava nella tank",
  "films of 80 sq in that a litre serves in all":
    "le pellicole da 80 in² per cui basta in tutto un litro",
  "the bottle on the shelf that it is poured from": "la bottiglia dello scaffale da cui si versa",
  "how much of it there is, if not the tank's volume":
    "quanto ce n’è, se non è il volume della tank",
  "replenisher due for each film of 80 sq in": "il rigeneratore per ogni pellicola da 80 in²",
  "the tank": "la tank",
  "what you call the tank": "il nome che dai alla tank",
  '"inversion", "twist", "rotary", "tray" or "hanger": how it is agitated':
    '"inversion", "twist", "rotary", "tray" o "hanger": come si agita',
  "what it takes to cover the film": "quanto ci vuole per coprire la pellicola",
  "seconds to fill it": "i secondi per riempirla",
  "seconds to empty it": "i secondi per svuotarla",
  'a clock time such as "3:00", from 0:00 up to 30:00: how long to look for light in the dark':
    "un tempo come «3:00», da 0:00 a 30:00: quanto a lungo si cerca la luce al buio",
  "seconds from empty to the next pour-in":
    "i secondi da quando è vuota a quando si versa di nuovo",
  "factor on the development time for this method":
    "il fattore sul tempo di sviluppo per questo metodo",
  "what the tank drifts toward": "la temperatura verso cui va la tank",
  "minutes in which it goes half-way there": "i minuti in cui fa metà strada",
  "your own times with this tank, as measured": "i tuoi tempi con questa tank, misurati",
  "seconds, one entry a try: to fill it": "secondi, una voce per prova: per riempirla",
  seconds: "secondi",
  "seconds, one entry a try: to empty it": "secondi, una voce per prova: per svuotarla",
  "seconds, one entry a try: for one inversion and back":
    "secondi, una voce per prova: per capovolgerla e riportarla su",
  "how the film is agitated": "come si agita la pellicola",
  "seconds without a break once the tank is full":
    "i secondi senza pausa da quando la tank è piena",
  "seconds from one bout's beginning to the next one's":
    "i secondi da quando si comincia ad agitare alla volta dopo",
  'seconds a bout lasts; 0 to let it stand, as many as "every" to go on throughout':
    'i secondi che si agita ogni volta; 0 per lasciare a riposo, quanti "every" per non fermarsi mai',
  "seconds for one inversion and back": "i secondi per capovolgerla e riportarla su",
  "taps after each bout": "i colpi dopo ogni volta",
  "when a bath's time begins and ends": "quando comincia e finisce il tempo di un bagno",
  '"pour-in" or "full": the first drop in, or a full tank':
    '"pour-in" o "full": la prima goccia, o la tank piena',
  '"pour-out" or "empty": the pour-out\'s beginning, or an empty tank':
    '"pour-out" o "empty": quando si comincia a svuotare, o la tank vuota',
  "baths by id, each with what it shall be": "i bagni per sigla, ognuno con come dev’essere",
  "what this bath shall be": "come dev’essere questo bagno",
  "the bath's time": "il tempo del bagno",
  "true or false: true leaves the bath out": "true o false: con true il bagno si salta",
  "the bath's temperature": "la temperatura del bagno",
  '"drain", "waste" or "return": where the bath goes afterwards':
    '"drain", "waste" o "return": dove va il bagno dopo',
  "what the developer shall be, besides developer itself":
    "come dev’essere il rivelatore, oltre a quello che dice developer",
  "nothing: the developer's time comes from the leaflet":
    "niente, perché il tempo del rivelatore viene dal foglietto",
  "nothing: nothing develops without a developer":
    "niente, perché senza rivelatore non si sviluppa nulla",
  "films of 80 sq in that it has served before this one":
    "le pellicole da 80 in² che ha già trattato prima di questa",
  "what the fixer shall be": "come dev’essere il fissaggio",
  "the clearing time of a snip of film": "il tempo di chiarificazione di un pezzetto di pellicola",
  "how long it took to clear": "quanto ci ha messo a chiarificarsi",
  "how long it took when the bath was fresh": "quanto ci metteva quando il bagno era fresco",
  "2 or 3: fix for so many times the clearing time":
    "2 o 3: si fissa per tante volte il tempo di chiarificazione",
  "what the wash shall be": "come dev’essere il lavaggio",
  "the inversions in each fill of fresh water": "i capovolgimenti in ogni ricambio d’acqua pulita",
  "inversions in this fill": "i capovolgimenti in questo ricambio",
  "what stays behind at each emptying": "quanto resta dentro a ogni svuotamento",
  "running water, the volume a minute": "l’acqua corrente, il volume al minuto",
  "g/l of thiosulfate in the fixer before the wash":
    "i g/l di tiosolfato nel fissaggio prima del lavaggio",
  "stock and two taps, to be mixed to a temperature":
    "lo stock e due rubinetti, da mescolare a una temperatura",
  "what the mix shall have": "quella che deve avere la miscela",
  "the stock's": "quella dello stock",
  "the cold tap's": "quella dell’acqua fredda",
  "the hot tap's": "quella dell’acqua calda",
  "from one mark of the graduate to the next": "da una tacca del cilindro alla seguente",
  "a developer in its water bath": "un rivelatore a bagnomaria",
  "what the developer shall come to": "quella a cui deve arrivare il rivelatore",
  "thermometer readings with their times": "letture del termometro con i loro tempi",
  "when it was read, on one clock from 0:00":
    "quando è stata presa, su un solo cronometro che parte da 0:00",
  "what it said in the developer": "quello che segnava nel rivelatore",
  "the water bath's temperature": "la temperatura del bagnomaria",
  "the water in the water bath": "l’acqua del bagnomaria",
  'a time of day such as "19:05" or "19:05:30"': "un’ora del giorno come «19:05» o «19:05:30»",
  "what test films showed": "che cosa dicono le pellicole di prova",
  "test films": "pellicole di prova",
  "a test film": "una pellicola di prova",
  "how long it was developed": "per quanto è stata sviluppata",
  "its mean gradient": "il suo gradiente medio",
  "the wedge's densities, the least exposed step first":
    "le densità del cuneo, prima il gradino meno esposto",
  "a step's density": "la densità di un gradino",
  "the density of the unexposed, developed film":
    "la densità della pellicola sviluppata ma non esposta",
  "the mean gradient wanted": "il gradiente medio voluto",
  "log10 of the exposure from one step to the next":
    "il log10 dell’esposizione da un gradino al seguente",
  "log10 of the first step's exposure in lux seconds":
    "il log10 dell’esposizione del primo gradino, in lux per secondo",
  "how the voice speaks": "come parla la voce",
  '"done": whether the film is in the closed tank already':
    '"done": se la pellicola è già nella tank chiusa',
  '"full", "brief" or "tones": how much is said': '"full", "brief" o "tones": quanto si dice',
  "the pace of speech, 1 as recorded": "il ritmo della voce, 1 come è registrata",
  'a clock time such as "9:30" or "1:02:00"': "un tempo come «9:30» o «1:02:00»",
  'a time such as "9:30", "9 min 30 s", "9.5 min" or "90 s"':
    "un tempo come «9:30», «9 min 30 s», «9,5 min» o «90 s»",
  'a temperature with its unit, such as "20 °C", "20.5 C" or "68 °F"':
    "una temperatura con la sua unità, come «20 °C», «20,5 C» o «68 °F»",
  'a volume with its unit, such as "600 ml", "0.6 l" or "20 fl oz" (US)':
    "un volume con la sua unità, come «600 ml», «0,6 l» o «20 fl oz» (USA)",
  'a worksheet: a JSON object that begins with { "tankside": 1':
    'una scheda, cioè un oggetto JSON che comincia con { "tankside": 1',
  "minutes, since tank.room is given: both or neither":
    "i minuti, perché è indicato tank.room: o tutti e due o nessuno",
  'a temperature such as { "c": 20 }, since tank.halfway is given: both or neither':
    'una temperatura come { "c": 20 }, perché è indicato tank.halfway: o tutti e due o nessuno',
  'a temperature such as { "c": 20 }, since tempering.bathVolume is given':
    'una temperatura come { "c": 20 }, perché è indicato tempering.bathVolume',
  "log10 of the exposure from one step to the next, such as 0.15, since densities are given":
    "il log10 dell’esposizione da un gradino al seguente, per esempio 0,15, perché sono indicate le densità",
  "its mean gradient such as 0.6, or densities":
    "il suo gradiente medio, per esempio 0,6, oppure le densità",
  "nothing beside densities, which give it": "niente accanto alle densità, che lo danno già",
  "the density of the unexposed, developed film, such as 0.3, since densities are given":
    "la densità della pellicola sviluppata ma non esposta, per esempio 0,3, perché sono indicate le densità",
  'a temperature and a time, such as "68 °F 10:00", "20 °C 11½ min" or "20; 9:30; EI 400"':
    "una temperatura e un tempo, come «68 °F 10:00», «20 °C 11½ min» o «20; 9:30; EI 400»",
};
