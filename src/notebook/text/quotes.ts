/** Prose as a printer sets it: its quotes and apostrophes curled, but for the marks of feet and inches; a slope in one piece. */

/** After these a quote opens. */
const OPENS = /^$|[\s([{“‘—–/]$/;
/** A straight single quote that closes: after what is no space, before what is no letter. */
const CLOSES = /\S'(?![\p{Letter}\p{Number}])/u;

/**
 * @param words as typed; code is none of it
 * @param before the letter before them, if there is one: in `"*so*"` the second quote closes
 */
export function curled(words: string, before = ''): string {
  let isOpen = false;
  const tied = words.replace(SLOPE, '$1\u00a0in\u00a0');
  return tied.replace(/['"]/g, (quote, at: number) => {
    const last = at === 0 ? before : words.charAt(at - 1);
    const rest = words.slice(at + 1);
    const opens = OPENS.test(last);
    if (quote === '"') {
      if (isMeasure(last) && !(isOpen && !rest.includes('"'))) return quote;
      isOpen = opens;
      return opens ? '“' : '”';
    }
    if (opens) return CLOSES.test(rest) ? '‘' : '’'; // else letters are left out: ’tis
    return isMeasure(last) && !/^s\b/.test(rest) ? quote : '’';
  });
}

/** `1 in 8` never breaks at the end of a line. */
const SLOPE = /\b(\d+) in (?=\d)/g;

/** `5'` and `3 1/2"`, also with a fraction in one letter. */
const isMeasure = (last: string) => /[\p{Number}]/u.test(last);
