// How much paper a text takes. Drawings are set out without a browser (in tests, in a
// worker, for a file), so widths come from a table: for each character the wider of
// Source Sans 3 Semibold, which the page ships, and a common Arial-like fallback, measured in
// Chromium and rounded up. A test measures them again in the browser.

const WIDTHS: readonly (readonly [em: number, characters: string])[] = [
  [0.28, " ',.:;Iijl′·⁄"],
  [0.34, '!()-[]f'],
  [0.43, '/\\rt{}°²³'],
  [0.5, '"?J_csvyz″–'],
  [0.57, '$*+0123456789<=>EFLSTYZ^`aegkx|~±×−≤≥÷√'],
  [0.62, 'KPRVXbdhnopquµσ'],
  [0.67, '#ABC→←'],
  [0.75, '&DGHNUφ'],
  [0.85, '%OQw½¼¾'],
  [0.93, '@MWm⅛⅜⅝⅞'],
];

const EM = new Map(WIDTHS.flatMap(([em, characters]) => Array.from(characters, (c) => [c, em] as const)));

/** Width in px of one line at a font size in px; a character outside the table counts as a full em. */
export function textWidth(text: string, size: number): number {
  let em = 0;
  for (const c of text) em += EM.get(c) ?? 1;
  return em * size;
}

/** From one baseline to the next, over the font size. */
export const LINE = 1.2;
/** From the top of a line's box to its baseline, and the box's height, over the font size. */
export const ASCENT = 0.76;
export const TALL = 0.98;

export const textHeight = (lines: number, size: number): number => (TALL + LINE * (lines - 1)) * size;

/** Spaces within a measure: 1200 mm, 12 15/16 in, 4' 2 1/8" scant. */
const WITHIN_MEASURE = [
  /(?<=\d)\s(?=\p{L}{1,2}\b)/u,
  /(?<=[\d'])\s(?=\d+(?:\/\d|"|\s\d+\/\d))/u,
  /(?<=\bin|")\s(?=(?:scant|strong)\b)/u,
];
const BETWEEN_WORDS = new RegExp(`(?!${WITHIN_MEASURE.map(({ source }) => source).join('|')})\\s+`, 'u');

/**
 * The text in lines no wider than `width` px, broken at spaces, inside a word only when it
 * alone is wider. A measure is not parted, unless it alone is wider.
 */
export function wrap(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  let current = '';
  const words = text
    .trim()
    .split(BETWEEN_WORDS)
    .flatMap((word) => (textWidth(word, size) <= width ? [word] : word.split(/\s+/)));
  for (const word of words) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (textWidth(longer, size) <= width) {
      current = longer;
      continue;
    }
    if (current !== '') lines.push(current);
    current = '';
    for (const c of word) {
      if (current !== '' && textWidth(current + c, size) > width) {
        lines.push(current);
        current = '';
      }
      current += c;
    }
  }
  return [...lines, current];
}
