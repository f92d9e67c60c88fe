/** Whether a boat has room for these notebooks; if not, why, as the end of a sentence. */
import type { OwnNotebooks } from '../../boat';
import { LONGEST_NOTEBOOK, LONGEST_NOTEBOOKS, MOST_NOTEBOOKS } from '../../boat/file/own-notebooks';

export function noRoom(all: OwnNotebooks): string | null {
  const texts = Object.values(all).map(({ text }) => text.length);
  if (texts.length > MOST_NOTEBOOKS)
    return `this boat has ${MOST_NOTEBOOKS} notebooks already; throw one away first`;
  if (texts.some((length) => length > LONGEST_NOTEBOOK))
    return `a notebook may have ${LONGEST_NOTEBOOK} characters`;
  return texts.reduce((sum, length) => sum + length, 0) > LONGEST_NOTEBOOKS
    ? `the notebooks of one boat may have ${LONGEST_NOTEBOOKS} characters together; throw one away first`
    : null;
}
