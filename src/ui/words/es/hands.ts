// The words for what the hands use beside the one press, in Spanish: a thermometer, a pedal, a knock.

export const reading = {
  name: "Termómetro",
  typed: "Temperatura en el tanque",
  taken: (temperature: string) => `Anotado: ${temperature}.`,
  range: (least: string, most: string) =>
    `Un revelador en el tanque está entre ${least} y ${most}. No ha cambiado nada.`,
  connect: "Conectar un termómetro",
  hint: "Si tiene Bluetooth, ajusta el final por sí solo. Nunca hace falta.",
  connecting: "Buscando un termómetro…",
  disconnect: "Desconectarlo",
  nameless: "Termómetro",
  on: (name: string, temperature: string) => `${name}: ${temperature}.`,
  nothingYet: (name: string) => `${name}: conectado, aún sin lecturas.`,
  out: (name: string, temperature: string) =>
    `${name}: ${temperature}. Parece que está fuera del tanque, así que no se tiene en cuenta.`,
  lost: (name: string) => `${name}: conexión perdida; se está buscando.`,
  last: (temperature: string) => `Última lectura: ${temperature}.`,
  refused: {
    none: "No se ha elegido ningún termómetro. Enciéndelo, acércalo y vuelve a pulsar.",
    denied: "Aquí no está permitido el Bluetooth. Permítelo en los ajustes y vuelve a pulsar.",
    unreachable:
      "El termómetro no ha respondido. Acércalo o desconéctalo de otro aparato y vuelve a pulsar.",
    unfit: "Ese no da ninguna temperatura que se pueda leer aquí.",
    unable: "Este navegador no puede usar el Bluetooth en esta página.",
  },
};

export const pedal = {
  name: "Pasapáginas, pedal u otro botón",
  hint: "Todo lo que envíe teclas a este aparato puede servir para pulsar en una sesión. Se aprende pulsándolo.",
  learn: "Aprender uno",
  capture: "Púlsalo ahora: una vez breve y luego otra de un segundo. Con la tecla Escape se deja.",
  again: "Ha llegado. Ahora otra vez, durante un segundo.",
  calledOff: "No se ha aprendido nada.",
  nothing: "No ha llegado ninguna tecla. ¿Está encendido y emparejado con este aparato?",
  learnt: "Aprendido.",
  notKept: "Este navegador no lo puede guardar: vale hasta que se cierre la página.",
  known: "Aprendidos hasta ahora",
  holds: (key: string) => `${key}: se puede pulsar y mantener`,
  taps: (key: string) => `${key}: se puede pulsar, no mantener`,
  keyboard: "En una sesión estas teclas pulsan vengan de donde vengan, también de un teclado.",
  refused: {
    moves: "Tabulador y Escape siguen siendo lo que son: hacen falta para moverse con teclas.",
    modifier: "Esta tecla sola no significa nada, así que no puede servir para pulsar.",
    nameless: "Esta tecla no tiene nombre por el que reconocerla.",
  },
  try: "Probar",
  trying: "Pulsa como en una sesión. Con la tecla Escape se termina.",
  meanings: {
    once: "Una vez: sigue, o dice dónde estamos.",
    twice: "Dos veces: dice dónde estamos.",
    thrice: "Tres veces: calla la voz, o la hace hablar de nuevo.",
    held: "Mantenido: deshace, u ofrece qué más se puede hacer.",
  },
  tried: "La prueba ha terminado.",
  forget: (key: string) => `Olvidar ${key}`,
  forgotten: "Olvidado.",
  keys: { space: "Espacio", enter: "Intro", pageUp: "Re Pág", pageDown: "Av Pág" },
};

export const knocks = {
  hear: "Oír golpes en la mesa (micrófono)",
  hint: "Lo que oye no se guarda ni sale nunca de este aparato. Nunca hace falta: con pulsar es lo mismo.",
};
