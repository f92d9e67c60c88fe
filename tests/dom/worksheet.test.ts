/** Worksheets of the six lessons: nothing of the key stands in the blank one, the part-filled has the given steps alone, and the key follows the seed. */
import { texts } from '#notebooks/shelf';
import { signal } from '@preact/signals';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { nothingSaid, starters } from '../../src/boat';
import { plainInstance } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { isIssue, plainShown } from '../../src/measure';
import { createBook } from '../../src/notebook/book';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { looseCatalogue } from '../../src/notebook/graph/loose-catalogue';
import { isBlank } from '../../src/notebook/lesson/blanks';
import { underWord } from '../../src/notebook/lesson/class-table';
import { keyTo } from '../../src/notebook/lesson/key';
import { freshState, noBoat } from '../../src/notebook/state/state';
import { keyWords } from '../../src/page/ask/ask-words';
import { type Filled, printWorksheets } from '../../src/page/ask/worksheet';
import { asksOf } from '../../src/page/asks';
import type { Bench } from '../../src/page/bench';
import { blockViews } from '../../src/page/blocks/kinds';
import { lessons } from '../notebook/lesson/six-lessons';

const print = vi.spyOn(globalThis, 'print').mockImplementation(() => {});
afterEach(() => {
  dispatchEvent(new Event('afterprint'));
  print.mockClear();
});

async function lesson(id: string) {
  const page = await texts[id]!(); // they come along
  const placed = page.places.map(({ cell, instance, presets }) => ({
    cell: cells.find((one) => one.id === cell)!, // a notebook that comes along has no fault
    name: instance,
    presets,
  }));
  const starter = starters.find((one) => one.id === page.boat);
  const book = starter
    ? createBook(freshState(starter.table), (table) => catalogueOf(table, cells.map(plainInstance)))
    : createBook(freshState(noBoat), () => looseCatalogue(placed));
  const bench = {
    book,
    shown: signal(plainShown),
    wall: signal(null),
    asked: signal(null),
    rested: signal(0),
    table: signal(starter?.table ?? noBoat),
    inHand: signal(null),
    other: signal(null),
    boatless: signal(!starter),
    instances: signal(new Map(placed.map((one) => [one.name, one]))),
  } as unknown as Bench; // what a worksheet asks for
  const foot = { page, blocks: (inside: Parameters<typeof blockViews>[0]) => blockViews(inside, page.id) };
  const graph = book.first.value;
  const seed = page.blocks.find((block) => block.type === 'seed');
  const wordOf = (answer: (typeof asks)[number]['answer'], word = '') => {
    const under = underWord(word, seed, asks, graph);
    return isIssue(under) ? under.issue : keyWords(keyTo(answer, under), under, plainShown);
  };
  const asks = asksOf(page);
  return {
    asks,
    seed,
    graph,
    wordOf,
    /** What stands on the sheets, question by question, once what comes late has come. */
    on: async (filled: Filled, words: readonly string[] = []) => {
      const why = printWorksheets(bench, foot, filled, words);
      expect(why).toBe('');
      await vi.waitFor(() => expect(document.querySelector('.worksheet [aria-busy="true"]')).toBeNull());
      const sheets = [...document.querySelectorAll('.worksheet-page')];
      const each = sheets.map((sheet) => ({
        text: said(sheet),
        asks: [...sheet.querySelectorAll('.worksheet-ask')].map(said),
        steps: [...sheet.querySelectorAll('.worksheet-ask')].map((ask) =>
          [...ask.querySelectorAll('ol > li')].map((step) => step.querySelector('b')?.textContent ?? null),
        ),
        ruled: [...sheet.querySelectorAll('.worksheet-ask')].map(
          (ask) => ask.querySelectorAll('.rule').length,
        ),
      }));
      dispatchEvent(new Event('afterprint'));
      return each;
    },
  };
}

/** All its text, with a space where one element ends and another begins. */
function said(element: Element): string {
  const nodes = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
  const words: string[] = [];
  while (nodes.nextNode()) words.push(nodes.currentNode.textContent ?? '');
  return words.join(' ').replaceAll(/\s+/g, ' ');
}

/** As a word of its own: `4` does not stand in `42`, nor `1 m` in `1 mm`. */
const stands = (what: string, text: string) => {
  const plain = what.replaceAll(/\s+/g, ' ').replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
  return new RegExp(String.raw`(?<![\w.,])${plain}(?![\w])`).test(text);
};

describe.each(lessons)('%s', (id) => {
  test('nothing of the key stands in the blank one, and there is a line to write on for each question', async () => {
    const { asks, on, wordOf } = await lesson(id);
    const [blank] = await on('blank');
    const [full] = await on('full');
    expect(blank?.asks).toHaveLength(asks.length);
    const numbers = asks.filter(({ answer }) => answer.is === 'quantity' || answer.is === 'literal');
    const told = numbers
      .map(({ answer }) => wordOf(answer))
      .filter((word) => !/^\d$|frame|^stem|transom/.test(word));
    expect(told.filter((word) => !stands(word, full!.text))).toStrictEqual([]);
    expect(told.filter((word) => stands(word, blank!.text))).toStrictEqual([]);
    expect(blank?.steps.flat().every((step) => step === null)).toBe(true);
    // Two lines for the sentence, one for the guess unless it is ringed, and one for each step.
    expect(blank!.ruled.every((lines, at) => lines >= 2 + asks[at]!.steps.length)).toBe(true);
    expect(blank?.text).not.toMatch(/It is |It rises\.|It falls\./);
  });

  test('the part-filled has the hints and just the steps that are given; the key has them all', async () => {
    const { asks, on, wordOf, graph } = await lesson(id);
    const [part] = await on('part');
    const [full] = await on('full');
    const given = asks.map((ask) =>
      ask.steps.map(({ answer }, at) => (isBlank(ask, at, nothingSaid, graph) ? null : wordOf(answer))),
    );
    expect(part?.steps).toStrictEqual(given);
    expect(full?.steps).toStrictEqual(asks.map(({ steps }) => steps.map(({ answer }) => wordOf(answer))));
    expect(part?.asks.map((text) => text.match(/Hint\./g)?.length ?? 0)).toStrictEqual(
      asks.map(({ hints }) => hints.length),
    );
    expect(full?.text).not.toContain('Your guess');
  });
});

test('each name has a sheet with numbers of its own, the same each time, and the key follows', async () => {
  for (const id of ['why-one-in-eight', 'mix-what-you-can-spread']) {
    // oxlint-disable-next-line no-await-in-loop
    const { asks, on, wordOf } = await lesson(id);
    const names = ['Ann', 'Bo', 'Cy', 'Di', 'Ed', 'Flo'];
    // oxlint-disable-next-line no-await-in-loop
    const full = await on('full', names);
    // oxlint-disable-next-line no-await-in-loop
    const blank = await on('blank', names);
    const { answer } = asks.find((one) => one.answer.is === 'quantity')!; // each lesson with a seed asks for one
    const keys = names.map((name) => wordOf(answer, name));
    expect(new Set(keys).size).toBeGreaterThan(2);
    expect(full.map(({ text }, at) => stands(`It is ${keys[at]}`, text))).toStrictEqual(
      names.map(() => true),
    );
    expect(full.map(({ text }) => /Name: (\w+)/.exec(text)?.[1])).toStrictEqual(names);
    expect(new Set(blank.map(({ asks: all }) => all.join(' '))).size).toBeGreaterThan(1);
    // oxlint-disable-next-line no-await-in-loop
    expect(await on('full', ['Cy'])).toStrictEqual([full[2]]);
  }
});
