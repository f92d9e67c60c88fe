/** The head of a notebook's text, as it is written. */
import { LONGEST_TITLE, readFrontMatter } from '../text/front-matter';
import { asShown, endingOf, linesOf } from './lines';

/** Lines that it takes; none where there is no head. */
export const headLines = (text: string): number => readFrontMatter(asShown(text)).lines;

/** The text under another title; the rest of the head stays, and where there is none, one is put there. */
export function titled(text: string, title: string): string {
  const end = endingOf(text);
  const line = `title: ${oneLine(title)}${end}`;
  const lines = linesOf(text);
  const head = headLines(text);
  if (head === 0) {
    const [, mark = '', rest = ''] = /^(\ufeff?)([^]*)$/.exec(text) ?? [];
    return `${mark}---${end}${line}---${end}${end}${rest}`;
  }
  const at = lines.findIndex((one, i) => i > 0 && i < head && /^title\s*:/.test(one));
  return (at < 0 ? [lines[0], line, ...lines.slice(1)] : lines.map((one, i) => (i === at ? line : one))).join(
    '',
  );
}

/** A notebook with nothing in it yet. */
export const begun = (title: string): string => `---\ntitle: ${oneLine(title)}\n---\n`;

const oneLine = (title: string): string => title.replaceAll(/\s+/g, ' ').trim().slice(0, LONGEST_TITLE);
