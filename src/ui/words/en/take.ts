// The words of taking a session along, of a worksheet that comes with a link, and of a class that starts together.

export const take = {
  title: "Take it with you",
  lead: "The whole session as files: to hear on any player, to read, to hand on. They are made on this device, and nothing is sent. The bundled voice speaks, or your own where you have recorded it.",
  notDevice:
    "The voice of this device, which is chosen here, cannot be put in a file: the bundled one speaks there in its place.",
  track: "The track",
  waits: "Where a press would be",
  /** Each with what a plain player makes of it. */
  kinds: {
    pass: "It goes on by itself after a wait",
    stay: "It waits, on players that can repeat a chapter",
  },
  kindsHow: {
    pass: "A file cannot be pressed. It says half a minute and ten seconds before it goes on; whoever needs longer pauses the player.",
    stay: "Each wait is a chapter of its own, and in a WAV file a loop. Most players repeat nothing by themselves: they go on after the wait, and do not say so. Pause the player at each wait, or have it repeat that chapter.",
  },
  gap: "Seconds of waiting",
  gapMay: (most: string) => `May hold whole seconds from 0 to ${most}.`,
  sizes:
    "An MP3 file takes half a megabyte a minute, a WAV file three. Both hold a chapter a step, and the words.",
  makes: {
    mp3: "Make an MP3 file",
    wav: "Make a WAV file",
    vtt: "Captions, WebVTT",
    srt: "Captions, SubRip",
    ssml: "The spoken script, SSML",
    txt: "All of it as text, 40 columns",
    ics: "Entry for a calendar",
  },
  making: (share: string) => `Making it: ${share}`,
  cancel: "Cancel",
  cancelled: "Cancelled. Nothing was saved.",
  saved: (name: string) => `Saved as ${name}.`,
  failed: "It could not be made here.",
  tooLong: "That is longer than such a file can be: about a day.",
  texts: "To read, and for other programs",
  plannedFor: "A day and a time for it",
  planned: "Day and time",
  wantsTime: "Choose the day and the time first.",
  isPast: "That time has passed. Choose one to come.",
  link: "As a link",
  linkLead:
    "The link holds the whole worksheet, with its title and what your films are called: whoever has the link can read them. It passes through no server, and opens without a network on a device that has opened Tankside before.",
  together: "A class starts together at the day and time above",
  togetherHow:
    "Each phone opens the link, uses the worksheet, and presses “I am ready” in Lights out; at that minute its first step begins by itself. Clocks of phones differ, commonly by up to a second or two.",
  copy: "Copy the link",
  copied: "Copied.",
  notCopied: "It could not be copied. Here it is whole:",
  share: "Hand the link on",
  code: "The link as a code for a camera",
  codeTooLong:
    "This worksheet is too long for a code that a camera can read. The link holds it all the same.",
  linkTooLong: "This worksheet is too long for a link. Save it to a file in Work out instead.",
};

export const brought = {
  title: "A worksheet has come with the link",
  named: (title: string) => `It is called ${title}.`,
  starts: (time: string) => `Its class starts at ${time}.`,
  keeps: "Yours stays as it is until you use this one, and Undo brings it back after that.",
  use: "Use this worksheet",
  leave: "Leave it",
  broken:
    "The link is cut off, was changed on its way, or is of another version. Nothing here has changed.",
  /** What a notice calls it. */
  name: "The worksheet of the link",
};

export const classStart = {
  title: "A class starts together",
  at: (time: string) => `It starts at ${time}.`,
  left: (clock: string) => `${clock} to go`,
  ready: "I am ready",
  notReady: "Not ready after all",
  putAside: "Do not wait for the class",
  waits: "The first step begins by itself. Leave this page open and in sight.",
  clocks:
    "Clocks of phones differ, commonly by up to a second or two: what counts is each phone’s own.",
  passed: "That time has passed. Begin as usual.",
  stopFirst: "First look at the stop above, and accept it.",
};
