// What is asked of how negatives look, what it was, and what to change.

export const negatives = {
  name: "¿Cómo se ven los negativos?",
  hint: "Sosténgalos secos contra una luz, no contra el sol. Responda lo que vea: debajo está qué fue y qué cambiar.",
  density: "Contra la luz están",
  densities: {
    clear: "claros como vidrio",
    thin: "débiles y planos",
    good: "bien",
    dense: "densos y oscuros",
  },
  edge: "Los números del borde",
  edges: {
    none: "no están",
    faint: "son tenues",
    usual: "son los de siempre",
    heavy: "son gruesos y negros",
  },
  mark: "Y además hay",
  marks: {
    milky: "un velo lechoso",
    purple: "un tinte morado o azul",
    drying: "cercos o regueros de gotas secas",
    grey: "un gris parejo, también entre las imágenes",
    streaks: "rayas desde las perforaciones",
    spots: "puntos claros, pequeños y redondos",
    moons: "medias lunas, oscuras o claras",
    patches: "una zona que no se reveló",
  },
  unsaid: "sin decir",
  mend: "Esto aún se puede arreglar.",
  change: "Qué cambiar:",
  causes: {
    well: {
      was: "Bien expuesto y bien revelado.",
      change: "nada. Hágalo otra vez como está escrito aquí.",
    },
    "not-exposed": {
      was: "El borde tiene sus números, así que el revelador trabajó: a esta película no llegó ninguna imagen.",
      change: "compruebe que la película avanza en la cámara y que el obturador se abre.",
    },
    "not-developed": {
      was: "Ni los números salieron: el revelador estaba agotado o faltó, o el fijador fue primero.",
      change:
        "numere los recipientes en su orden y pruebe con luz una gota de revelador en un recorte de película: debe oscurecerse.",
    },
    "under-exposed": {
      was: "Los números son fuertes, así que no falló el revelado: llegó poca luz a la película. Ningún tiempo más largo devuelve las sombras.",
      change: "mida con un índice más bajo.",
    },
    "under-developed": {
      was: "También los números son tenues: poco revelado. Corto, frío, débil o agotado.",
      change:
        "lea el termómetro en el tanque al principio y al final, revise la dilución y añada de un décimo a un quinto del tiempo.",
    },
    "over-exposed": {
      was: "Los números son los de siempre, así que fue la exposición: demasiada luz.",
      change: "mida con un índice más alto, o revise el objetivo y el fotómetro.",
    },
    "over-developed": {
      was: "También los números son gruesos: demasiado revelado. Largo, caliente, fuerte o muy agitado.",
      change: "revise la temperatura y la dilución, y quite de un décimo a un quinto del tiempo.",
    },
    "clear-either": {
      was: "Sin los números no se puede saber: no se expuso o no se reveló.",
      change: "mire el borde. Con números fue la cámara; sin ellos, el revelador.",
    },
    "thin-either": {
      was: "Sin los números no se puede saber: poca luz o poco revelado.",
      change:
        "mire el borde. Los números tenues apuntan al revelado; los fuertes, a la exposición.",
    },
    "dense-either": {
      was: "Sin los números no se puede saber: demasiada luz o demasiado revelado.",
      change:
        "mire el borde de esta película o de la siguiente. Los números gruesos apuntan al revelado.",
    },
    milky: {
      was: "No está fijada del todo.",
      change:
        "de vuelta, con luz, a fijador nuevo el doble de lo que tarda en quedar transparente, y otro lavado. Pruebe el fijador antes de la próxima película.",
    },
    purple: {
      was: "Le queda colorante; en algunas películas un poco es normal.",
      change: "fije un poco más en fijador nuevo y lave más tiempo, con agua no muy fría.",
    },
    drying: {
      was: "Las gotas se secaron donde colgaban.",
      change:
        "lávela otra vez y dele humectante en agua blanda o destilada. Cuélguela lejos del polvo.",
    },
    grey: {
      was: "Le llegó luz fuera de la cámara, o química vieja la veló.",
      change:
        "espere más a oscuras y busque fugas, palpe el eje y el cierre de la tapa, y use revelador nuevo.",
    },
    streaks: {
      was: "Movida con demasiada fuerza o siempre igual.",
      change: "invierta con más suavidad, con un cuarto de vuelta entre una y otra.",
    },
    spots: {
      was: "Se le pegaron burbujas.",
      change: "golpee el tanque con firmeza tras cada agitación y vierta sin parar.",
    },
    moons: {
      was: "Se dobló al cargarla.",
      change: "cárguela sin fuerza, en una espiral seca; si se atasca, una vuelta atrás.",
    },
    patches: {
      was: "Dos vueltas se tocaron en la espiral y nada llegó entre ellas.",
      change:
        "palpe los dos bordes de cada vuelta al cargar; practique con luz y una película vieja.",
    },
  },
};
