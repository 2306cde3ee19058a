// The words of what the page says about itself: a newer version, standing among the programs, what is kept.

export const news = {
  ready: "A new version is ready. The page loads anew for it; what you typed stays.",
  takenElsewhere:
    "Another tab has taken a new version. Parts of this page may be missing until it is loaded anew.",
  takeIt: "Take it now",
  loadAnew: "Load anew",
  /** Said of the version, where something is in the way of it. */
  waits: {
    "run-is-on": "It waits until the run is over.",
    "other-pages":
      "First close the other tabs and windows of Tankside: they still use the version before.",
    failed:
      "It could not be taken now. It comes by itself once every tab of Tankside has been closed.",
  },
};

export const install = {
  offer: "Tankside can stand among the programs of this device.",
  install: "Install",
};

export const keeping = {
  /** Before a run, this and the next. */
  nothing:
    "This browser keeps nothing of a run: if the page is closed, it cannot find its place again, and no record of it stays. Private windows are like that, and so are some settings.",
  noRoom:
    "There is no room left to keep a run in: if the page is closed, it cannot find its place again, and no record of it stays. Make room on this device first.",
  /** Beside the records. */
  noMoreRoom:
    "There is no room left here for another run’s record. Make room on this device, or save the runs to a file and take some out.",
  mayBeCleared:
    "This browser may clear what it keeps here: a private window when it is closed, any other when the disk fills up. Save the runs that matter to a file.",
};
