// What the fields of the bench are called, by the pattern of their paths, and why they are asked.

const bathFields = {
  "baths.*.clearing.time": {
    label: "Un recorte clarifica en",
    why: "Un recorte de película sin revelar, metido en el fijador con la luz encendida, hasta que quede transparente. De ahí sale el tiempo del fijador si no hay otro escrito.",
  },
  "baths.*.clearing.fresh": {
    label: "Con baño nuevo, en",
    why: "Lo que tardó la misma prueba en el baño recién preparado. Cuando tarda el doble, el fijador está agotado.",
  },
  "baths.*.clearing.times": { label: "Fijar" },
  "baths.*.carryOver": {
    label: "Queda tras cada vaciado",
    why: "Líquido que se queda en el tanque, las espirales y la película. Vacía como siempre y pesa el tanque: un gramo es un mililitro.",
  },
  "baths.*.flow": {
    label: "Agua corriente por minuto",
    why: "Cuánta pasa en un minuto: pon una probeta bajo la manguera diez segundos y multiplica por seis.",
  },
  "baths.*.thiosulfate": {
    label: "Tiosulfato en el fijador, g/l",
    why: "Si queda vacío, 108: un fijador simple con 240 g de cristales por litro.",
  },
  "baths.*.filmsPerLitre": {
    label: "Películas por litro",
    why: "En películas de 80 pulgadas cuadradas, según la ficha del fabricante.",
  },
  "baths.*.filmsBefore": { label: "Películas ya pasadas" },
  "baths.*.bottle": { label: "Botella del estante" },
  "baths.*.kept": { label: "Cuánto hay", why: "Si queda vacío, lo justo para cubrir la película." },
};

export const benchFields = {
  ...bathFields,
  process: { label: "Proceso" },
  "developer.soughtTime": {
    label: "Qué temperatura daría",
    why: "El tiempo que te gustaría. En la ficha se busca qué temperatura lo da, y cuál da el mínimo, 5:00.",
  },
  "developer.readings[].at": {
    label: "Minuto",
    why: "En el reloj del propio revelador. Las lecturas sustituyen a la deriva y mueven el final.",
  },
  "developer.readings[].temperature": { label: "En el tanque" },
  "developer.filmsPerLitre": bathFields["baths.*.filmsPerLitre"],
  "developer.kept": bathFields["baths.*.kept"],
  "developer.bottle": bathFields["baths.*.bottle"],
  "developer.replenishPerFilm": { label: "Regenerador por película" },
  "tank.label": {
    label: "Nombre de este tanque",
    why: "Por ejemplo, «acero, dos espirales». Con ese nombre se guardan su volumen y tus tiempos.",
  },
  "tank.measured.pourIn": { label: "Llenar llevó, s" },
  "tank.measured.pourOut": { label: "Vaciar llevó, s" },
  "tank.measured.perInversion": { label: "Ida y vuelta, s" },
  "mixing.target": { label: "La mezcla tendrá" },
  "mixing.stock": { label: "El stock tiene" },
  "mixing.cold": { label: "El grifo frío" },
  "mixing.hot": { label: "El grifo caliente" },
  "mixing.mark": {
    label: "Marcas de la probeta",
    why: "De una marca a la siguiente. Si queda vacío, 5 ml o un cuarto de onza líquida.",
  },
  "tempering.target": { label: "Tiene que llegar a" },
  "tempering.bath": {
    label: "El baño maría tiene",
    why: "Si se sabe, bastan dos lecturas; si no, hacen falta tres. Remuévelo y léelo con el mismo termómetro.",
  },
  "tempering.bathVolume": {
    label: "Agua del baño maría",
    why: "Para calcular el hielo, si hace falta hielo.",
  },
  "tempering.readings[].at": {
    label: "Minuto",
    why: "En un reloj aparte que arranca con la primera lectura; por ejemplo, 3:30.",
  },
  "tempering.readings[].temperature": { label: "En el revelador" },
  "tempering.began": { label: "Hora del día en 0:00" },
  "contrast.tests[].time": { label: "Revelada durante" },
  "contrast.tests[].gradient": {
    label: "Gradiente medio",
    why: "Densidad ganada, dividida por log exposición, como la dio tu densitómetro o una cuña escalonada.",
  },
  "contrast.tests[].densities": {
    label: "O densidades de la cuña",
    why: "Con base y velo incluidos, primero el escalón menos expuesto, separadas por espacios.",
  },
  "contrast.tests[].baseFog": {
    label: "Base y velo",
    why: "La densidad de la película revelada que no se ha expuesto nunca.",
  },
  "contrast.wanted": {
    label: "Gradiente buscado",
    why: "Si queda vacío, 0,615, que es 0,80 entre 1,30, como en la ISO 6.",
  },
  "contrast.stepLog": {
    label: "Log exposición por escalón",
    why: "0,15 para medios pasos, 0,30 para pasos enteros.",
  },
  "contrast.firstLog": {
    label: "Log exposición del primer escalón",
    why: "log10 de los lux segundo, si lo sabes: entonces sale además la sensibilidad.",
  },
};
