// Cards made up to be fuller than any cell is: whatever stands on them, it is within its pages, and
// what may not be left out is there. Common practice, no source: the ladder is the card's own.

import '@fontsource/source-sans-3/400.css';
import '@fontsource/source-sans-3/600.css';
import '../../src/page/style/card.css';
import { render } from 'preact';
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import type { Card, CardInput, Weight } from '../../src/page/card/card';
import { CARD_WIDTH, type Picture } from '../../src/page/card/card-picture';
import type { CardTable } from '../../src/page/card/card-table';
import { fitCard } from '../../src/page/card/fit-card';
import { html } from '../../src/page/html';

/** Letter within margins of 10 mm, which is lower than A4, px. */
const PAPER = (259 / 25.4) * 96;
/** 14 pt, px */
const LEAST_LETTERS = (14 / 72) * 96;

let place: HTMLElement;
beforeAll(async () => {
  await Promise.all(['400', '600'].map((cut) => document.fonts.load(`${cut} 14pt "Source Sans 3"`)));
});
beforeEach(() => {
  place = document.createElement('div');
  place.className = 'card';
  document.body.append(place);
});
afterEach(() => {
  render(null, place);
  place.remove();
});

const once = (text: string) => [{ version: 'first', word: '', text }] as const;
const many = <T>(count: number, each: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => each(i));
const sentence = (name: string) =>
  `${name}: keep the guard on the saw, the push stick at hand and the offcut clear of the blade, as its maker says.`;

const inputsOf = (count: number, weight: Weight, name = weight): CardInput[] =>
  many(count, (index) => ({
    label: `${name} measure ${index + 1}`,
    values: once(`${100 + index}\u00a0mm`),
    from: 'from the keelson: thickness',
    origin: weight === 'stands out' ? 'written' : 'linked',
    weight,
    group: weight === 'grouped' ? `Group ${index % 9}` : '',
  }));

const tableOf = (rows: number, columns: number, inHand = 2): CardTable => ({
  caption: 'Every station',
  over: 'Station',
  columns: many(columns, (index) => `column ${index + 1}`),
  rows: many(rows, (row) => ({
    id: `row${row + 1}`,
    head: `station ${row + 1}`,
    inHand: row === inHand,
    cells: many(columns, (column) => once(`${row * 100 + column}\u00a0mm`)),
  })),
});

const plain: Card = {
  boat: 'Skiff',
  versions: 'kept',
  day: '1 May 2030',
  title: 'A card',
  question: 'How far does it go?',
  answers: many(3, (index) => ({
    label: `answer ${index + 1}`,
    datum: 'from the face of the transom, along the keel',
    figures: [{ ...once('1234 mm')[0], large: true, remainder: '', difference: '' }],
  })),
  words: once('Mark it 1234 mm from the transom, square to the keel.'),
  warnings: [],
  cautions: [sentence('Saw')],
  inputs: inputsOf(4, 'deciding'),
  table: null,
  sources: [{ inShort: 'geometry', known: 'geometry' }],
  fileName: 'card',
};

/** A picture as high as it is asked to be, down to a least height. */
const picture = (wants: number, least: number): Picture => ({
  title: '',
  says: [],
  wants,
  draw: (room, width = CARD_WIDTH) => {
    const height = Math.max(least, Math.min(wants, room));
    return {
      node: html`<svg width=${width} height=${height}><text y="20" style="font-size: 19px">drawn</text></svg>`,
      height,
      legible: height >= least,
    };
  },
});

/** Each page's text; all of them within the paper, and no letters below 14 pt. */
function fitted(card: Card, pictures: readonly Picture[] = []): string[] {
  fitCard(card, pictures, '', place);
  const pages = [...place.querySelectorAll<HTMLElement>('.card-page')];
  for (const page of pages) {
    expect(page.getBoundingClientRect().height).toBeLessThanOrEqual(PAPER);
    const { right } = place.getBoundingClientRect();
    for (const one of page.querySelectorAll('*')) {
      expect(Number.parseFloat(getComputedStyle(one).fontSize)).toBeGreaterThanOrEqual(LEAST_LETTERS);
      expect(one.getBoundingClientRect().right).toBeLessThanOrEqual(right + 1);
    }
  }
  const texts = pages.map((page) => page.textContent ?? '');
  expect(texts.length).toBeGreaterThan(0);
  expect(texts.length).toBeLessThanOrEqual(3);
  expect(texts[0]?.includes('Goes on overleaf: ')).toBe(texts.length > 1);
  return texts;
}

const expectAll = (texts: readonly string[], wanted: readonly string[]) =>
  expect(wanted.filter((one) => !texts.join(' ').includes(one))).toStrictEqual([]);

test('a short card is roomy, each input in its row with where it is from', () => {
  const [text] = fitted(plain, [picture(400, 150)]);
  expect(text).toContain('deciding measure 4: 103\u00a0mm (from the keelson: thickness)');
  expect(place.querySelector('.card-page')?.getAttribute('data-closeness')).toBe('roomy');
  expect(place.querySelector('svg')?.getBoundingClientRect().height).toBe(400);
});

test('a hundred inputs: those that stand out are told, then as many as there is room for, the rest counted', () => {
  const inputs = [...inputsOf(70, 'grouped'), ...inputsOf(25, 'deciding'), ...inputsOf(5, 'stands out')];
  const texts = fitted({ ...plain, inputs }, [picture(400, 150)]);
  expect(texts).toHaveLength(1);
  expectAll(
    texts,
    many(5, (index) => `stands out measure ${index + 1} ${100 + index}\u00a0mm`),
  );
  const counted = /As in the notebook: (Group \d \(\d\)[^.]*)\./.exec(texts[0] ?? '')?.[1] ?? '';
  const left = [...counted.matchAll(/\((\d+)\)|(\d+) more/g)].reduce(
    (sum, [, grouped, more]) => sum + Number(grouped ?? more),
    0,
  );
  expect(left).toBeGreaterThan(0);
  const told = texts[0]?.match(/measure \d+/g)?.length;
  expect(told).toBe(100 - left);
  // One more would not have found room.
  const page = place.querySelector('.card-page')?.getBoundingClientRect().height ?? 0;
  expect(page).toBeGreaterThan(PAPER - 80);
});

test('a hundred inputs written over are counted for what they are; one that can’t be used is told', () => {
  const wordy = { ...plain, cautions: many(16, (index) => sentence(`Caution ${index}`)) };
  const inputs = [...inputsOf(100, 'stands out'), ...inputsOf(1, 'wrong')];
  const texts = fitted({ ...wordy, inputs }, [picture(400, 150)]);
  expect(texts).toHaveLength(1);
  expect(texts[0]).toContain('wrong measure 1');
  expect(texts[0]).toMatch(/As in the notebook: (\d+) more; \1 of them not as usual\./);
});

test('sources are named while there is room, then counted by how they are known', () => {
  const sources = many(30, (index) => ({
    inShort: `A long named handbook of boats and timbers, table ${index}`,
    known: index < 20 ? ('published' as const) : ('from memory' as const),
  }));
  const texts = fitted({ ...plain, sources, inputs: inputsOf(40, 'deciding') }, [picture(400, 150)]);
  expect(texts).toHaveLength(1);
  expect(texts[0]).toContain('Sources: 20 published and 10 from memory, named in the notebook.');
});

test('a table that finds no room goes overleaf with the inputs; the drawing and the cautions do not', () => {
  const texts = fitted({ ...plain, table: tableOf(20, 5) }, [picture(500, 150)]);
  expect(texts).toHaveLength(2);
  expect(texts[0]).toMatch(/Goes on overleaf: the table \(Every station\), the inputs used, the sources\.$/);
  expect(texts[0]).toContain('Saw: keep the guard on');
  expect(texts[1]).toContain('station 20');
  expect(place.querySelector('.card-page')?.querySelector('svg')).not.toBeNull();
});

test('a table longer than a page: as many rows as there is room for, that in hand among them, the rest counted', () => {
  const texts = fitted({ ...plain, table: tableOf(200, 6, 150) }, [picture(500, 150)]);
  expect(texts).toHaveLength(2);
  expect(texts[1]).toContain('station 151, in hand');
  const left = Number(/(\d+) more rows in the notebook\./.exec(texts[1] ?? '')?.[1]);
  expect(place.querySelectorAll('tbody tr')).toHaveLength(200 - left);
  expect(left).toBeLessThan(180);
});

test('a table that two pages don’t hold beside the drawing goes whole on a third, and the drawing is not made smaller', () => {
  const cautions = many(8, (index) => sentence(`Caution ${index}`));
  const texts = fitted({ ...plain, cautions, table: tableOf(30, 5) }, [picture(600, 800)]);
  expect(texts).toHaveLength(3);
  expect(texts.join(' ')).not.toContain('in the notebook.');
  expect(place.querySelectorAll('tbody tr')).toHaveLength(30);
  expect(texts[2]).toContain('third page');
  const pages = [...place.querySelectorAll('.card-page')];
  expect(pages.map((page) => page.querySelectorAll('svg').length)).toEqual([0, 1, 0]);
});

test('a table of thirty columns is parted, and none of them leaves the card', () => {
  const texts = fitted({ ...plain, table: tableOf(4, 30) });
  expectAll(
    texts,
    many(30, (index) => `column ${index + 1}`),
  );
  expect(place.querySelectorAll('table').length).toBeGreaterThan(1);
});

test('a picture that asks for more than the cautions leave goes overleaf, and is not drawn smaller than can be read', () => {
  const cautions = many(22, (index) => sentence(`Caution ${index}`));
  const texts = fitted({ ...plain, cautions }, [picture(600, 500)]);
  expect(texts).toHaveLength(2);
  expectAll(texts.slice(0, 1), cautions);
  expect(texts[0]).toContain('Goes on overleaf: the drawing');
  expect(place.querySelectorAll('.card-page')[1]?.querySelector('svg')).not.toBeNull();
});

test('more cautions and warnings than a page holds: all of them, in order, some overleaf', () => {
  const cautions = many(40, (index) => sentence(`Caution ${index}.`));
  const warnings = many(6, (index) => ({
    ...once(`Warning ${index}: it will break at the frame.`)[0],
    head: 'Stop',
    limit: 'common practice',
  }));
  const texts = fitted({ ...plain, cautions, warnings, inputs: inputsOf(40, 'deciding') }, [
    picture(600, 200),
  ]);
  expect(texts).toHaveLength(2);
  const all = texts.join(' ');
  const places = [...warnings.map(({ text }) => text), ...cautions].map((one) => all.indexOf(one));
  expect(places.every((at, index) => at > (places[index - 1] ?? 0))).toBe(true);
  expect(texts[0]).toContain('Warning 5');
  expect(texts[0]).toContain('further cautions');
  expect(texts[0]).not.toContain('Caution 39.');
  expect(texts[1]).toContain('Caution 39.');
});

test('a figure too long for a line breaks, and is not cut off', () => {
  const text = many(12, () => '123456 mm').join(' and ');
  const answers = [
    {
      label: 'all',
      datum: 'along',
      figures: [{ ...once(text)[0], large: true, remainder: '', difference: '' }],
    },
  ];
  const texts = fitted({ ...plain, answers }, [picture(400, 150)]);
  expect(texts).toHaveLength(1);
  expect(texts[0]).toContain(text);
});
