/** Words as they are compared: small letters, without accents, and in the singular. */

/** The words of a text, in order; a number is a word too. */
export function wordsIn(text: string): readonly string[] {
  return (
    text
      .normalize('NFKD')
      .toLowerCase()
      .replace(/[\u0300-\u036f'’]/g, '')
      .match(/[\p{Letter}\p{Number}]+/gu) ?? []
  ).map(singular);
}

function singular(word: string): string {
  if (word.length < 4 || /(ss|us|is)$/.test(word)) return word;
  return word.replace(/(?<=ch|sh|x|ss)es$|ies$|s$/, (end) => (end === 'ies' ? 'y' : ''));
}

/** Whether one letter too many, too few, another or two changed over make one word of the other. */
export function isOneSlipFrom(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let same = 0;
  while (same < a.length && a[same] === b[same]) same += 1;
  const rest = (word: string, from: number) => word.slice(same + from);
  return (
    rest(a, 1) === rest(b, 1) ||
    rest(a, 1) === rest(b, 0) ||
    rest(a, 0) === rest(b, 1) ||
    (a[same] === b[same + 1] && a[same + 1] === b[same] && rest(a, 2) === rest(b, 2))
  );
}
