/** The lines of a file as they stand, each with the mark that ends it: what nobody touched is written back to the letter. */

/** The last has no mark where the file ends without one. */
export const linesOf = (text: string): readonly string[] =>
  text.match(/[^\r\n]*(?:\r\n|\r|\n)|[^\r\n]+$/g) ?? [];

/** What ends the lines of this file; of a file that has several, the first. */
export const endingOf = (text: string): string => /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';

export const isBlank = (line: string | undefined): boolean => /^[ \t]*[\r\n]*$/.test(line ?? '');

/** A line without its mark, and the mark. */
export function parted(line: string): [words: string, mark: string] {
  const words = line.replace(/[\r\n]+$/, '');
  return [words, line.slice(words.length)];
}

/** The text as a field shows it: lines that end in `\n`, and no mark of the file's code at its head. */
export const asShown = (text: string): string => text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
