/** What an address names that is no field of the notebook it opens: a number of the boat, a cell elsewhere, a number in a table. */
import { signal } from '@preact/signals';
import { afterEach, expect, test, vi } from 'vitest';
import { way } from '../../src/page/address';
import type { Bench } from '../../src/page/bench';
import { goToNamed } from '../../src/page/go-to';
import { notebooks } from '../../src/page/library';

const atFirst = way.peek();
afterEach(() => {
  way.value = atFirst;
  document.body.replaceChildren();
  history.replaceState(null, '', location.pathname + location.search);
});

const head = () => notebooks.peek().find(({ id }) => id === 'bend-join-fasten')!;
const bench = (known: readonly string[] = [], boatless = false) =>
  ({
    book: { inHand: signal({ has: (name: string) => known.includes(name), quantity: () => undefined }) },
    boatless: signal(boatless),
    boatOpen: signal(false),
    table: signal({ stations: [], edges: [], rows: [] }),
  }) as unknown as Bench; // what the way there asks for
const stand = (id: string) => {
  const place = document.body.appendChild(document.createElement('section'));
  place.id = id;
  return place;
};

test('a number of the boat opens her sheet, but not where nothing is asked of a boat', () => {
  way.value = { notebook: head().id, place: null };
  for (const boatless of [false, true]) {
    const on = bench(['keelson.width'], boatless);
    goToNamed('keelson.width', on);
    expect(on.boatOpen.value).toBe(!boatless);
  }
});

test('a cell that stands in another notebook leads there', async () => {
  way.value = { notebook: head().id, place: null };
  expect(Object.hasOwn(head().cells, 'resin')).toBe(false);
  goToNamed('resin.mix', bench(['resin.mix']));
  await vi.waitFor(() => expect(location.hash).toMatch(/^#\/[a-z-]+\/resin\.mix$/));
  expect(location.hash).not.toContain(head().id);
});

test('a number with no place of its own shows its cell at once', () => {
  way.value = { notebook: head().id, place: null };
  const cell = stand('cell-bend');
  goToNamed('bend.frame2.radius', bench(['bend.frame2.radius']));
  expect(document.activeElement).toBe(cell);
});

test('a heading is itself, whatever else is called so', () => {
  way.value = { notebook: head().id, place: null };
  const heading = stand('resin');
  goToNamed('resin', bench());
  expect(document.activeElement).toBe(heading);
  expect(location.hash).toBe('');
});
