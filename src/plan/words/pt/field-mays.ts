// What each field is, by the checker's English text: the same in Portuguese. Alone because it is the long part.
import type { Mays } from "../words.ts";

/** The sheet, the films, the developer. */
const sheet: Mays = {
  "a worksheet": "uma folha",
  "1, the version of worksheet that this is": "1, a versão desta folha",
  "what you call this development": "o nome que dá a esta revelação",
  'a language tag (BCP 47) such as "en" or "de-AT"':
    "uma etiqueta de língua (BCP 47), como «pt» ou «de-AT»",
  '"bw-negative": the process': "«bw-negative»: o processo",
  "the films in the tank": "os filmes no tanque",
  "a film, or several alike": "um filme, ou vários iguais",
  "what you call the film": "o nome que dá ao filme",
  "how many of them": "quantos são",
  "the ISO speed printed on the box": "o ISO impresso na caixa",
  "the speed it was metered at, if not the box speed":
    "o índice a que foi exposto, se não for o ISO da caixa",
  "the developer": "o revelador",
  "what you call the developer": "o nome que dá ao revelador",
  "times with their temperatures, read off the leaflet":
    "tempos com as suas temperaturas, lidos no folheto",
  "a time that the leaflet gives": "um tempo que o folheto dá",
  "the row's temperature": "a temperatura da linha",
  "degrees Celsius": "graus Celsius",
  "degrees Fahrenheit": "graus Fahrenheit",
  "the row's time": "o tempo da linha",
  "the rating that the leaflet gives this row for":
    "o índice de exposição para que o folheto dá esta linha",
  "measured in the mixed bath, now": "medida no banho pronto, agora",
  "a number above 0, up to 1: by how much ln(time) falls for each °C":
    "um número acima de 0 e até 1: quanto desce o ln(tempo) por cada °C",
  '"pull" and "push", the fraction of the time for a stop':
    "«pull» e «push», a fração do tempo por cada ponto",
  "the fraction taken off for a stop over": "a fração que se tira por cada ponto a mais",
  "the fraction added for a stop under": "a fração que se junta por cada ponto a menos",
  "the least stock that 80 sq in of film needs": "o mínimo de solução-mãe para 80 pol² de filme",
  millilitres: "mililitros",
  "US fluid ounces": "onças fluidas dos EUA",
  "films of 80 sq in that this solution has developed already":
    "filmes de 80 pol² que esta solução já revelou",
  "the fraction of the time added for each of those films":
    "a fração do tempo que se junta por cada um desses filmes",
  "a time for which the temperature is asked": "um tempo para o qual se procura a temperatura",
  "thermometer readings taken while it develops": "leituras do termómetro durante a revelação",
  "a thermometer reading": "uma leitura do termómetro",
  "when it was read, on the developer's own clock":
    "quando se leu, no relógio do próprio revelador",
  "what it said in the tank": "o que marcava no tanque",
  "films of 80 sq in that a litre serves in all": "filmes de 80 pol² para que dá um litro ao todo",
  "the bottle on the shelf that it is poured from": "a garrafa da prateleira de onde é vertido",
  "how much of it there is, if not the tank's volume": "quanto há, se não for o volume do tanque",
  "replenisher due for each film of 80 sq in": "reforçador a juntar por cada filme de 80 pol²",
};

/** The tank, the hands, the clock, the baths. */
const bench: Mays = {
  "the tank": "o tanque",
  "what you call the tank": "o nome que dá ao tanque",
  '"inversion", "twist", "rotary", "tray" or "hanger": how it is agitated':
    "«inversion», «twist», «rotary», «tray» ou «hanger»: como se agita",
  "what it takes to cover the film": "o que é preciso para cobrir o filme",
  "seconds to fill it": "segundos para o encher",
  "seconds to empty it": "segundos para o esvaziar",
  'a clock time such as "3:00", from 0:00 up to 30:00: how long to look for light in the dark':
    "um tempo como «3:00», de 0:00 a 30:00: quanto tempo se procura luz às escuras",
  "seconds from empty to the next pour-in": "segundos de vazio até começar a encher outra vez",
  "factor on the development time for this method": "fator do tempo de revelação para este método",
  "what the tank drifts toward": "a temperatura para onde o tanque deriva",
  "minutes in which it goes half-way there": "minutos que leva a meio caminho",
  "your own times with this tank, as measured": "os seus tempos com este tanque, medidos",
  "seconds, one entry a try: to fill it": "segundos, um valor por tentativa: para o encher",
  seconds: "segundos",
  "seconds, one entry a try: to empty it": "segundos, um valor por tentativa: para o esvaziar",
  "seconds, one entry a try: for one inversion and back":
    "segundos, um valor por tentativa: para inverter e endireitar",
  "how the film is agitated": "como se agita o filme",
  "seconds without a break once the tank is full": "segundos sem parar, com o tanque já cheio",
  "seconds from one bout's beginning to the next one's":
    "segundos do começo de uma série ao começo da seguinte",
  'seconds a bout lasts; 0 to let it stand, as many as "every" to go on throughout':
    "segundos que dura uma série; 0 para repousar, tantos como «every» para nunca parar",
  "seconds for one inversion and back": "segundos para inverter e endireitar",
  "taps after each bout": "pancadas no fim de cada série",
  "when a bath's time begins and ends": "quando começa e acaba o tempo de um banho",
  '"pour-in" or "full": the first drop in, or a full tank':
    "«pour-in» ou «full»: a primeira gota a entrar, ou o tanque cheio",
  '"pour-out" or "empty": the pour-out\'s beginning, or an empty tank':
    "«pour-out» ou «empty»: o começo do despejar, ou o tanque vazio",
  "baths by id, each with what it shall be": "os banhos pelo seu id, cada um como deve ser",
  "what this bath shall be": "como deve ser este banho",
  "the bath's time": "o tempo do banho",
  "true or false: true leaves the bath out": "true ou false: com true, o banho fica de fora",
  "the bath's temperature": "a temperatura do banho",
  '"drain", "waste" or "return": where the bath goes afterwards':
    "«drain», «waste» ou «return»: para onde vai o banho depois",
  "what the developer shall be, besides developer itself":
    "como deve ser o revelador, além do que já diz developer",
  "nothing: the developer's time comes from the leaflet":
    "nada: o tempo do revelador vem do folheto",
  "nothing: nothing develops without a developer": "nada: sem revelador nada se revela",
  "films of 80 sq in that it has served before this one": "filmes de 80 pol² que já serviu antes",
  "what the fixer shall be": "como deve ser o fixador",
  "the clearing time of a snip of film": "o tempo de clareamento de um pedaço de filme",
  "how long it took to clear": "quanto demorou a clarear",
  "how long it took when the bath was fresh": "quanto demorava com o banho novo",
  "2 or 3: fix for so many times the clearing time":
    "2 ou 3: fixar durante tantas vezes o tempo de clareamento",
  "what the wash shall be": "como deve ser a lavagem",
  "the inversions in each fill of fresh water": "as inversões em cada muda de água limpa",
  "inversions in this fill": "inversões nesta muda de água",
  "what stays behind at each emptying": "o que fica no tanque de cada vez que se despeja",
  "running water, the volume a minute": "água corrente, o volume por minuto",
  "g/l of thiosulfate in the fixer before the wash":
    "g/l de tiossulfato no fixador antes da lavagem",
};

/** Mixing, tempering, test films, the voice. */
const asides: Mays = {
  "stock and two taps, to be mixed to a temperature":
    "solução-mãe e duas torneiras, para misturar à temperatura certa",
  "what the mix shall have": "a que deve ficar a mistura",
  "the stock's": "a da solução-mãe",
  "the cold tap's": "a da torneira fria",
  "the hot tap's": "a da torneira quente",
  "from one mark of the graduate to the next": "de um traço da proveta ao seguinte",
  "a developer in its water bath": "um revelador em banho-maria",
  "what the developer shall come to": "a que deve chegar o revelador",
  "thermometer readings with their times": "leituras do termómetro com os seus tempos",
  "when it was read, on one clock from 0:00": "quando se leu, num só relógio a partir de 0:00",
  "what it said in the developer": "o que marcava no revelador",
  "the water bath's temperature": "a temperatura do banho-maria",
  "the water in the water bath": "a água no banho-maria",
  "what test films showed": "o que mostraram os filmes de ensaio",
  "test films": "filmes de ensaio",
  "a test film": "um filme de ensaio",
  "how long it was developed": "durante quanto tempo foi revelado",
  "its mean gradient": "o seu gradiente médio",
  "the wedge's densities, the least exposed step first":
    "as densidades da cunha, o degrau menos exposto primeiro",
  "a step's density": "a densidade de um degrau",
  "the density of the unexposed, developed film": "a densidade do filme revelado sem exposição",
  "the mean gradient wanted": "o gradiente médio desejado",
  "log10 of the exposure from one step to the next":
    "o log10 da exposição de um degrau ao seguinte",
  "log10 of the first step's exposure in lux seconds":
    "o log10 da exposição do primeiro degrau, em lux-segundos",
  "how the voice speaks": "como fala a voz",
  '"done": whether the film is in the closed tank already':
    "«done»: se o filme já está no tanque fechado",
  '"full", "brief" or "tones": how much is said': "«full», «brief» ou «tones»: quanto se diz",
  "the pace of speech, 1 as recorded": "o ritmo da fala; 1 é como foi gravada",
};

export const fieldMays: Mays = { ...sheet, ...bench, ...asides };
