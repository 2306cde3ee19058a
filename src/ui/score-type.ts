// Text in, the room it will take in the score out: lines and their width, without a page to measure
// on, so that the score is laid out the same wherever it is drawn.

/** Units of the score: CSS px on screen at the usual size of text, where the root is 18 px. */
const fontSize = 16;
export const lineHeight = 19;

/**
 * Widths of Atkinson Hyperlegible Next at weight 650, in em, rounded up, so that a line is never
 * wider than it was taken for; any letter not named is taken for a broad one.
 */
const widths: readonly (readonly [RegExp, number])[] = [
  [/[ijl'’.,:;| ]/, 0.32],
  [/[frt1I(){}\-“”"]/, 0.43],
  [/[ckvxyzsaJL7?]/, 0.56],
  [/[bdeghnopquFEPSTBRVYZK02-9×–é]/, 0.63],
];
const broad = 0.88;

/** Units that one line of text takes. */
export function textWidth(text: string): number {
  let em = 0;
  for (const letter of text) em += widths.find(([letters]) => letters.test(letter))?.[1] ?? broad;
  return em * fontSize;
}

/** Cut between words into lines of about the same width, none wider than `widest` if words allow. */
export function wrapped(text: string, widest: number): readonly string[] {
  const whole = textWidth(text);
  const count = Math.ceil(whole / widest);
  // As even as may be: the narrowest measure that needs no more lines than the widest one does.
  for (let measure = whole / count; measure < widest; measure += fontSize / 2) {
    const lines = filled(text, measure);
    if (lines.length <= count) return lines;
  }
  return filled(text, widest);
}

function filled(text: string, measure: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && textWidth(longer) <= measure) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Units of the widest of some lines. */
export function widestOf(lines: readonly string[]): number {
  return Math.max(0, ...lines.map(textWidth));
}
