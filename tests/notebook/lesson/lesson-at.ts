/** The six lessons that come along, each with the boat that it brings. */
import { readFileSync } from 'node:fs';
import { starters } from '../../../src/boat';
import { plainInstance } from '../../../src/cells';
import { cells } from '../../../src/cells/all';
import { isIssue, plainShown } from '../../../src/measure';
import { createBook } from '../../../src/notebook/book';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { judge } from '../../../src/notebook/lesson/judge';
import { keyTo } from '../../../src/notebook/lesson/key';
import { freshState } from '../../../src/notebook/state/state';
import { askedOf } from './asked-of';
import type { lessons } from './six-lessons';

export function lesson(id: (typeof lessons)[number]) {
  const text = readFileSync(new URL(`../../../notebooks/${id}.md`, import.meta.url), 'utf8');
  const read = askedOf(text, `${id}.md`);
  const starter = starters.find((one) => one.id === read.page.boat);
  const book = starter
    ? createBook(freshState(starter.table), (table) => catalogueOf(table, cells.map(plainInstance)))
    : read.book;
  const { asks } = read;
  const keyOf = (name: string) => {
    const key = keyTo(asks.find((one) => one.name === name)!.answer, book.first.value);
    if (isIssue(key)) throw new Error(key.issue);
    return key;
  };
  const worth = (name: string, guess: string) =>
    judge(guess, keyOf(name), asks.find((one) => one.name === name)!.within, plainShown).is;
  return { ...read, book, starter, keyOf, worth };
}
