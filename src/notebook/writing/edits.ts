/**
 * What is done to a notebook's text, piece by piece: text in, text out. Lines outside what is touched stay as they are
 * to the letter, with the marks that end them. Where two pieces would run into one, a blank line is put between them.
 */
import { headLines } from './head';
import { asShown, endingOf, isBlank, linesOf, parted } from './lines';

/** Lines counted from 1. None where `last` is the line before `first`: what is put there stands before line `first`. */
export interface LineSpan {
  readonly first: number;
  readonly last: number;
}

/** A text, and where in it stands what was written. */
export interface Edited extends LineSpan {
  readonly text: string;
}

/** Some editors put it at the head of a file, to say how the letters are coded; there it stays. */
const MARK = '\ufeff';
const withMark = (done: Edited): Edited => ({ ...done, text: MARK + done.text });

/**
 * Puts other words in the place of some lines; no words take the lines out, and no lines make room for the words.
 * @param markdown lines that end in `\n`; blank ones round it count for nothing
 */
export function replaced(text: string, span: LineSpan, markdown: string): Edited {
  if (text.startsWith(MARK)) return withMark(replaced(text.slice(1), span, markdown));
  const words = markdown.replace(/^(?:[ \t]*\n)+/, '').replace(/(?:\n[ \t]*)+$/, '');
  const isThere = span.last >= span.first;
  if (words.trim() === '') return isThere ? takenOut(text, span) : { text, ...span };
  return isThere ? writtenOver(text, span, words) : putIn(text, span.first, words);
}

function writtenOver(text: string, { first, last }: LineSpan, words: string): Edited {
  const lines = linesOf(text);
  const [, mark] = parted(lines[last - 1] ?? '');
  const written = words.split('\n').join(endingOf(text)) + mark;
  return edited(text, [...lines.slice(0, first - 1), written, ...lines.slice(last)], {
    first,
    last: first + count(words) - 1,
  });
}

/** Before line `at`, apart from what stands there. */
function putIn(text: string, at: number, words: string): Edited {
  const end = endingOf(text);
  const before = linesOf(text).slice(0, at - 1);
  const after = linesOf(text).slice(at - 1);
  const above = before.map((line, i) =>
    i === before.length - 1 && !/[\r\n]$/.test(line) ? line + end : line,
  );
  const apart = above.length > 0 && !isBlank(above.at(-1)) ? [end] : [];
  const below = after.length > 0 && !isBlank(after[0]) ? [end] : [];
  const written = words.split('\n').join(end) + end;
  const first = above.length + apart.length + 1;
  return edited(text, [...above, ...apart, written, ...below, ...after], {
    first,
    last: first + count(words) - 1,
  });
}

/** With the blank lines that would else stand there twice. */
function takenOut(text: string, { first, last }: LineSpan): Edited {
  const lines = linesOf(text);
  let before = first - 1;
  let after = last;
  const isApart = before === 0 || isBlank(lines[before - 1]);
  if (isApart) while (after < lines.length && isBlank(lines[after])) after += 1;
  if (after === lines.length) while (before > 0 && isBlank(lines[before - 1])) before -= 1;
  return edited(text, [...lines.slice(0, before), ...lines.slice(after)], {
    first: before + 1,
    last: before,
  });
}

/** Two pieces change places; `a` stands above `b`. Says where that stands now which stood at `a`. */
export function swapped(text: string, a: LineSpan, b: LineSpan): Edited {
  if (text.startsWith(MARK)) return withMark(swapped(text.slice(1), a, b));
  const lines = linesOf(text);
  const cut = ({ first, last }: LineSpan) => lines.slice(first - 1, last);
  const [upper, upperMark] = parted(cut(a).join(''));
  const [lower, lowerMark] = parted(cut(b).join(''));
  const between = lines.slice(a.last, b.first - 1);
  const apart = between.some(isBlank) ? between : [endingOf(text), ...between];
  const first = b.last - (a.last - a.first) + apart.length - between.length;
  return edited(
    text,
    [...lines.slice(0, a.first - 1), lower, upperMark, ...apart, upper, lowerMark, ...lines.slice(b.last)],
    { first, last: b.last + apart.length - between.length },
  );
}

/** The lines of a piece as a field shows them, without the mark that ends the last. */
export const wordsAt = (text: string, { first, last }: LineSpan): string =>
  asShown(
    parted(
      linesOf(text)
        .slice(first - 1, last)
        .join(''),
    )[0],
  );

const count = (words: string): number => words.split('\n').length;

/** A rule that comes to stand on the first line would be taken for the beginning of a head. */
function edited(before: string, lines: readonly string[], span: LineSpan): Edited {
  const text = lines.join('');
  const opensHead = headLines(before) === 0 && parted(linesOf(text)[0] ?? '')[0].trimEnd() === '---';
  return opensHead
    ? { text: endingOf(before) + text, first: span.first + 1, last: span.last + 1 }
    : { text, ...span };
}
