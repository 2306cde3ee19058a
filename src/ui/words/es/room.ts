// The words of the house's lists, and of what stands at Gullrock Light, in Spanish.

export const room = {
  title: "Las listas de la sala",
  lead: "Abrir, cerrar, y adónde va lo gastado: escritas por la casa, para la casa.",
  lists: {
    opening: "Abrir la sala",
    closing: "Cerrar la sala",
    waste: "Adónde va lo gastado",
  },
  invite: {
    opening:
      "Todavía no hay nada escrito. ¿Qué se enciende, se mira y se prepara antes de que nadie empiece?",
    closing: "Todavía no hay nada escrito. ¿Qué se lava, se apaga y se cierra antes de salir?",
    waste:
      "Todavía no hay nada escrito. ¿Qué recipiente recibe qué, y quién se lo lleva? Deciden las normas locales y las fichas de los fabricantes.",
  },
  edit: "Escribir esta lista",
  hint: "Una línea para cada punto.",
  keep: "Guardar la lista",
  cancel: "Cancelar",
  reset: "Quitar todas las marcas",
  print: "Imprimir las listas",
  demo: "Rellenar las listas de Gullrock Light",
  kept: "La lista está guardada.",
  notKept: "Este navegador no quiso guardarla: se va al cerrar la página.",
  ticked: (done: number, all: number) => `${done} de ${all} hechos`,
};

export const gullrockRoom = {
  bottles: {
    stock: "Kelp MQ stock",
    stop: "Baño de paro, jarra marrón",
    fixer: "Fijador B",
    powder: "polvo para 1 l",
    concentrate: "concentrado",
  },
  opening: [
    "Ventilador en marcha, persiana bajada",
    "Campana de la señal de niebla descolgada",
    "Lado húmedo: baño de agua lleno, toallas a mano",
    "Cartel de la puerta vuelto a OSCURO",
  ],
  closing: [
    "Baños útiles de vuelta a sus botellas, películas anotadas",
    "Cubetas y probetas enjuagadas, boca abajo",
    "Grifos, ventilador y calefacción cerrados",
    "Llave en el gancho de la sala de la lámpara",
  ],
  waste: [
    "Fijador gastado: bidón azul junto a la puerta, con la fecha de inicio",
    "Revelador gastado: bidón gris; la farera lleva los dos a tierra",
  ],
};
