// The words of what the page says about itself: a newer version, standing among the programs, what is kept.

export const news = {
  ready: "Hay una versión nueva lista. La página se carga otra vez; lo que has escrito se queda.",
  takenElsewhere:
    "Otra pestaña ya usa una versión nueva. A esta página le pueden faltar partes hasta que se cargue otra vez.",
  takeIt: "Usarla ya",
  loadAnew: "Cargar otra vez",
  /** Said of the version, where something is in the way of it. */
  waits: {
    "run-is-on": "Espera a que acabe la sesión.",
    "other-pages":
      "Cierra antes las otras pestañas y ventanas de Tankside: aún usan la versión anterior.",
    failed:
      "Ahora no se ha podido. Llegará sola cuando se hayan cerrado todas las pestañas de Tankside.",
  },
};

export const install = {
  offer: "Tankside puede estar entre los programas de este aparato.",
  install: "Instalar",
};

export const keeping = {
  /** Before a run, this and the next. */
  nothing:
    "Este navegador no guarda nada de una sesión: si se cierra la página, no vuelve a encontrar el punto en que estaba, y no queda registro. Así son las ventanas privadas y algunos ajustes.",
  noRoom:
    "No queda espacio para guardar una sesión: si se cierra la página, no vuelve a encontrar el punto en que estaba, y no queda registro. Haz sitio antes en este aparato.",
  /** Beside the records. */
  noMoreRoom:
    "Aquí no queda espacio para el registro de otra sesión. Haz sitio en este aparato, o guarda las sesiones en un archivo y quita algunas.",
  mayBeCleared:
    "Este navegador puede borrar lo que guarda aquí: una ventana privada, al cerrarla; las demás, si se llena el disco. Guarda en un archivo las sesiones que importen.",
};
