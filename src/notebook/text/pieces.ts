/**
 * The pieces of a notebook's text: what stands by itself between its blank lines, each with the lines that it was read
 * from and the blocks that it gave. Whoever writes in a notebook takes hold of it by them. They are remembered beside
 * the page and not in it, since notebooks that come along are built without their text.
 */
import type { Block, NotebookPage } from './page-text';

export interface TextPiece {
  /** First and last line, counted from 1. */
  readonly first: number;
  readonly last: number;
  /** In their order; together the page's. */
  readonly blocks: readonly Block[];
}

const known = new WeakMap<NotebookPage, readonly TextPiece[]>();

/** Those that show something, in their order; none of a notebook that was not read where the page runs. */
export const piecesOf = (page: NotebookPage): readonly TextPiece[] => known.get(page) ?? [];

export function notePieces(page: NotebookPage, pieces: readonly TextPiece[]): NotebookPage {
  known.set(
    page,
    pieces.filter(({ blocks }) => blocks.length > 0),
  );
  return page;
}

/**
 * The lines of a token, without the blank ones round it.
 *
 * @param lines of the whole text, from line 1
 * @param line on which it begins
 * @param raw as the lexer gives it: it may begin at the end of a line and end at the beginning of one
 */
export function spanOf(
  lines: readonly string[],
  line: number,
  raw: string,
): Pick<TextPiece, 'first' | 'last'> {
  const isBlank = (at: number) => /^[ \t]*$/.test(lines[at - 1] ?? '');
  let first = raw.startsWith('\n') ? line + 1 : line;
  let last = line + raw.split('\n').length - (raw.endsWith('\n') ? 2 : 1);
  while (first < last && isBlank(first)) first += 1;
  while (last > first && isBlank(last)) last -= 1;
  return { first, last: Math.max(first, last) };
}
