// What the fields of the development are called, by the pattern of their paths, and why they are asked.

export const fields = {
  language: { label: "La voz habla" },
  title: { label: "Nombre de esta hoja" },
  "films[].label": { label: "Película" },
  "films[].size": { label: "Formato" },
  "films[].count": { label: "Cuántas" },
  "films[].boxSpeed": { label: "ISO de la caja" },
  "films[].exposureIndex": {
    label: "Medida a",
    why: "La sensibilidad puesta en el fotómetro. Si queda vacío, la de la caja. Todas las películas de un tanque llevan el mismo tiempo, así que deberían compartirla.",
  },
  "developer.label": { label: "Revelador" },
  "developer.dilution": {
    label: "Dilución",
    why: "Partes de stock y luego partes de agua: 1+3 es una de stock y tres de agua. «stock» es sin diluir. 1:3 no se admite, porque hay quien lo lee de otra manera.",
  },
  "developer.leaflet[].temperature": { label: "Temperatura" },
  "developer.leaflet[].time": { label: "Tiempo" },
  "developer.leaflet[].exposureIndex": { label: "Si se midió a" },
  "developer.temperature": {
    label: "El baño ya mezclado tiene",
    why: "Lo que marca el termómetro en el propio baño, justo antes de usarlo. El tiempo se calcula para esto.",
  },
  "developer.perDegree": {
    label: "Cambio por °C",
    why: "k en tiempo × e^(−k × °C), para una ficha con una sola fila. Si queda vacío, 0,099.",
  },
  "developer.perStop.pull": {
    label: "Quitar por paso de más, %",
    why: "Cuánto tiempo menos por cada paso de sobreexposición. Si queda vacío, 10.",
  },
  "developer.perStop.push": {
    label: "Añadir por paso de menos, %",
    why: "Cuánto tiempo más por cada paso de subexposición. Si queda vacío, 40.",
  },
  "developer.stockPerFilm": {
    label: "Stock mínimo por película",
    why: "Lo que gastan 80 pulgadas cuadradas: una 135-36, una 120 o cuatro placas de 4×5 pulgadas. Lo dice la ficha del fabricante. Si queda vacío, nada lo comprueba.",
  },
  "developer.filmsBefore": { label: "Películas ya pasadas" },
  "developer.perFilmBefore": { label: "Más tiempo por cada una, %" },
  "tank.method": { label: "Método" },
  "tank.volume": { label: "Para cubrir la película" },
  "tank.pourIn": {
    label: "Llenar lleva",
    why: "Cronométrate con agua. El reloj se organiza en torno a eso.",
  },
  "tank.pourOut": { label: "Vaciar lleva" },
  "tank.handover": { label: "De vacío al baño siguiente" },
  "tank.timeFactor": {
    label: "Factor del tiempo",
    why: "Por cuánto se multiplica el tiempo con este método. Si queda vacío, 1; o 0,85 con tambor.",
  },
  "tank.room": {
    label: "La sala",
    why: "El tanque deriva hacia la temperatura de la sala. Con ella y con el tiempo a medio camino, la respuesta lo tiene en cuenta.",
  },
  "tank.halfway": {
    label: "A medio camino en",
    why: "Los minutos en que un tanque de agua recorre la mitad del camino entre su temperatura y la de la sala.",
  },
  "agitation.first": { label: "Al principio, sin parar" },
  "agitation.every": { label: "Después, cada" },
  "agitation.for": {
    label: "Durante",
    why: "Con 0 el baño queda en reposo; si es tanto como «Después, cada», o más, no se para nunca.",
  },
  "agitation.perInversion": { label: "Una ida y vuelta dura" },
  "agitation.taps": { label: "Golpes cada vez" },
  "clock.starts": { label: "El reloj arranca" },
  "clock.ends": { label: "El tiempo acaba" },
  "baths.*.use": { label: "Se usa" },
  "baths.*.time": { label: "Tiempo" },
  "baths.*.temperature": { label: "Temperatura" },
  "baths.*.agitation.first": { label: "Al principio, sin parar" },
  "baths.*.agitation.every": { label: "Después, cada" },
  "baths.*.agitation.for": { label: "Durante" },
  "baths.*.agitation.perInversion": { label: "Una ida y vuelta dura" },
  "baths.*.agitation.taps": { label: "Golpes cada vez" },
  "baths.*.afterwards": { label: "Al vaciarlo, va" },
  "baths.*.fills": {
    label: "Por cargas de agua",
    why: "En vez de un tiempo: las inversiones en cada carga de agua limpia, como 5, 10, 20.",
  },
  darkWait: {
    label: "Esperar a oscuras",
    why: "Para buscar luz antes de sacar la película. Vacío son 3:00, lo habitual; 0:00 lo omite. Los ojos tardan media hora en verlo todo.",
  },
  loading: { label: "La película" },
  "voice.detail": { label: "Cuánto se dice" },
  "voice.rate": {
    label: "Ritmo",
    why: "1 es como se grabó; 0,8 es lo más lento y 1,6 lo más rápido.",
  },
};
