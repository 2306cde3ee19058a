// The words of what the page says about itself: a newer version, standing among the programs, what is kept.

export const news = {
  ready: "Eine neue Version liegt bereit. Die Seite lädt dafür neu; was eingetragen ist, bleibt.",
  takenElsewhere:
    "Ein anderer Tab hat eine neue Version übernommen. Teile dieser Seite können fehlen, bis sie neu geladen ist.",
  takeIt: "Jetzt übernehmen",
  loadAnew: "Neu laden",
  /** Said of the version, where something is in the way of it. */
  waits: {
    "run-is-on": "Sie wartet, bis der Durchgang vorbei ist.",
    "other-pages":
      "Zuerst die anderen Tabs und Fenster von Tankside schließen: Sie arbeiten noch mit der alten Version.",
    failed:
      "Sie ließ sich jetzt nicht übernehmen. Sie kommt von selbst, sobald alle Tabs von Tankside geschlossen waren.",
  },
};

export const install = {
  offer: "Tankside kann bei den Programmen dieses Geräts stehen.",
  install: "Installieren",
};

export const keeping = {
  /** Before a run, this and the next. */
  nothing:
    "Dieser Browser behält nichts von einem Durchgang: Wird die Seite geschlossen, findet sie nicht mehr zurück, und es bleibt keine Aufzeichnung. So ist es in privaten Fenstern und bei manchen Einstellungen.",
  noRoom:
    "Für einen Durchgang ist kein Speicherplatz mehr da: Wird die Seite geschlossen, findet sie nicht mehr zurück, und es bleibt keine Aufzeichnung. Zuerst auf diesem Gerät Platz schaffen.",
  /** Beside the records. */
  noMoreRoom:
    "Für die Aufzeichnung eines weiteren Durchgangs ist hier kein Platz mehr. Auf diesem Gerät Platz schaffen, oder die Durchgänge in eine Datei sichern und einige entfernen.",
  mayBeCleared:
    "Dieser Browser darf löschen, was er hier behält: ein privates Fenster beim Schließen, jedes andere, wenn der Speicher voll wird. Wichtige Durchgänge in eine Datei sichern.",
};
