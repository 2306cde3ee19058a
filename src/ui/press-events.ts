// Which keys are a press: any, save those by which one moves about the page or works the machine.

const others: readonly string[] = [
  "Tab",
  "Escape",
  "Shift",
  "Control",
  "Alt",
  "AltGraph",
  "Meta",
  "CapsLock",
  "NumLock",
  "AudioVolumeUp",
  "AudioVolumeDown",
  "AudioVolumeMute",
];

/** Up or down, which enter a reading while the film develops. */
export const isArrow = ({ key, ctrlKey, altKey, metaKey }: KeyPress): boolean =>
  (key === "ArrowUp" || key === "ArrowDown") && !ctrlKey && !altKey && !metaKey;

/** What of a keyboard event the choice rests on. */
export interface KeyPress {
  readonly key: string;
  readonly repeat: boolean;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
  readonly target: EventTarget | null;
}

export function isPress(event: KeyPress): boolean {
  if (event.repeat || event.ctrlKey || event.altKey || event.metaKey) return false;
  if (others.includes(event.key) || /^F\d+$/.test(event.key)) return false;
  // A small control that has the focus is worked by Enter and Space, as everywhere.
  const onTool =
    event.target instanceof Element && event.target.closest(".guided-tools, .guided-over");
  return !(onTool && (event.key === "Enter" || event.key === " "));
}
