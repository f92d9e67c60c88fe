/** Boats side by side on the shelf: where they lie, what they are called, and those that lay there before there were several. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoBoat, isUnread, readTable } from '../../../src/boat';
import { plainShown } from '../../../src/measure';
import { boatInHand, FIRST_BOAT, takeInHand } from '../../../src/notebook/keeping/boat-in-hand';
import {
  boatKeys,
  nameBeside,
  nextBoatKey,
  ownBoats,
  putAway,
  type Shelves,
} from '../../../src/notebook/keeping/boats';
import { createBook } from '../../../src/notebook/book';
import { looseCatalogue } from '../../../src/notebook/graph/loose-catalogue';
import { keepUnits, keptUnits } from '../../../src/notebook/keeping/saved-units';
import { freshState } from '../../../src/notebook/state/state';
import { createStore } from '../../../src/notebook/keeping/store';
import { inRoot } from '../../tools/root.mjs';

/** A browser's storage in memory, of a bounded number of letters. */
function shelfOf(texts: Readonly<Record<string, string>> = {}, room = Infinity): Shelves {
  const kept = new Map(Object.entries(texts));
  return {
    get length() {
      return kept.size;
    },
    key: (index) => [...kept.keys()][index] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    removeItem: (key) => void kept.delete(key),
    setItem: (key, text) => {
      const others = [...kept].filter(([other]) => other !== key);
      if (others.reduce((sum, [, other]) => sum + other.length, text.length) > room)
        throw new DOMException('no room', 'QuotaExceededError');
      kept.set(key, text);
    },
  };
}

/** A boat's text as it was saved when there was only one, without name and steps, and with the units. */
const before = readFileSync(inRoot('tests/notebook/keeping/saved-before-steps.json'), 'utf8');

describe('a boat saved before each had a place and steps of her own', () => {
  const shelf = shelfOf({ [FIRST_BOAT]: before });
  const old = JSON.parse(before) as Record<string, unknown>;

  test('opens with nothing lost', () => {
    const { kept, says } = createStore(shelf, boatInHand(null, shelf)).open();
    const table = readTable(old['table']);
    if (isUnread(table)) throw new Error(table.faults.join());
    expect(says).toBeUndefined();
    expect(kept).toStrictEqual({
      state: {
        name: 'Creek punt',
        table,
        entries: old['entries'],
        second: old['second'],
        inHand: 'second',
        asBuilt: old['asBuilt'],
        notebooks: {},
        log: {},
        lessons: {},
        sweeps: {},
      },
      earlier: [],
      later: [],
    });
  });

  test('is shown in the units it was left in, until others are chosen', () => {
    const units = { length: 'feet', fraction: 8, mass: 'lb', money: '$' } as const;
    expect(keptUnits(shelf, FIRST_BOAT)).toStrictEqual(units);
    keepUnits(shelf, { ...units, length: 'mm' });
    expect(keptUnits(shelf, FIRST_BOAT)).toStrictEqual({ ...units, length: 'mm' });
    expect(keptUnits(null, FIRST_BOAT)).toStrictEqual(plainShown);
    expect(keptUnits(shelfOf({ 'battenbook units': '{"length":"cubits"}' }), FIRST_BOAT)).toStrictEqual(
      plainShown,
    );
  });

  test('stands in the list, and is saved again in the same place', () => {
    expect(ownBoats(shelf)).toStrictEqual([{ key: FIRST_BOAT, name: 'Creek punt', away: false }]);
    const store = createStore(shelf, FIRST_BOAT);
    const { kept } = store.open();
    expect(store.save(kept!)).toStrictEqual({ done: 'saved' });
    expect(boatKeys(shelf)).toStrictEqual([FIRST_BOAT]);
    expect(createStore(shelf, FIRST_BOAT).open().kept).toStrictEqual(kept);
  });
});

describe('several boats', () => {
  const kept = (name: string) => ({
    state: freshState(demoBoat, {}, undefined, name),
    earlier: [],
    later: [],
  });
  const two = () => {
    const shelf = shelfOf();
    for (const name of ['one', 'other']) {
      const key = boatKeys(shelf).length === 0 ? FIRST_BOAT : nextBoatKey(shelf);
      createStore(shelf, key).save(kept(name));
    }
    return shelf;
  };

  test('each have a place, the next one a place that none had', () => {
    const shelf = two();
    expect(ownBoats(shelf).map(({ name }) => name)).toStrictEqual(['one', 'other']);
    expect(boatKeys(shelf)).toStrictEqual([FIRST_BOAT, `${FIRST_BOAT} 2`]);
    shelf.removeItem(FIRST_BOAT);
    expect(nextBoatKey(shelf)).toBe(`${FIRST_BOAT} 3`);
    expect(nextBoatKey(shelfOf())).toBe(`${FIRST_BOAT} 2`);
  });

  test('are told apart from what is set aside and from all else that is kept', () => {
    const shelf = shelfOf({
      [`${FIRST_BOAT} aside 1`]: before,
      [`${FIRST_BOAT} in hand`]: FIRST_BOAT,
      'battenbook lesson a': before,
      'battenbook loose a': before,
      [`${FIRST_BOAT} 10`]: before,
      [`${FIRST_BOAT} 9`]: before,
      [`${FIRST_BOAT} 11`]: 'torn',
    });
    expect(boatKeys(shelf)).toStrictEqual([`${FIRST_BOAT} 9`, `${FIRST_BOAT} 10`, `${FIRST_BOAT} 11`]);
    expect(ownBoats(shelf).map(({ key }) => key)).toStrictEqual([`${FIRST_BOAT} 9`, `${FIRST_BOAT} 10`]);
  });

  test('put away and brought back, a boat stays letter for letter', () => {
    const shelf = two();
    const text = shelf.getItem(FIRST_BOAT);
    putAway(shelf, FIRST_BOAT, true);
    putAway(shelf, FIRST_BOAT, true);
    expect(ownBoats(shelf).map(({ away }) => away)).toStrictEqual([true, false]);
    putAway(shelf, FIRST_BOAT, false);
    expect(ownBoats(shelf).map(({ away }) => away)).toStrictEqual([false, false]);
    expect(shelf.getItem(FIRST_BOAT)).toBe(text);
    shelf.setItem('battenbook boats put away', '{torn');
    expect(ownBoats(shelf)).toHaveLength(2);
  });

  test('the one in hand is the window’s own, else the last of any window, else the first', () => {
    const shelf = two();
    const window = shelfOf();
    expect(boatInHand(window, shelf)).toBe(FIRST_BOAT);
    takeInHand(`${FIRST_BOAT} 2`, window, shelf);
    takeInHand(FIRST_BOAT, shelfOf(), shelf);
    expect(boatInHand(window, shelf)).toBe(`${FIRST_BOAT} 2`);
    expect(boatInHand(shelfOf(), shelf)).toBe(FIRST_BOAT);
    takeInHand(`${FIRST_BOAT} 7`, window);
    expect(boatInHand(window, shelf)).toBe(FIRST_BOAT);
    expect(boatInHand(null, null)).toBe(FIRST_BOAT);
  });

  test.each([
    [[], 'Punt', 'Punt'],
    [['Skiff'], 'Punt', 'Punt'],
    [['Punt'], 'Punt', 'Punt 2'],
    [['Punt', 'Punt 2'], 'Punt', 'Punt 3'],
    [['Punt', 'Punt 2'], 'Punt 2', 'Punt 3'],
    [['Punt 2'], 'Punt 2', 'Punt 3'],
  ] as const)('beside %j a boat called %s is called %s', (names, name, called) => {
    expect(nameBeside(names, name)).toBe(called);
  });
});

test('where there is room for the boat and not for her steps, the boat is kept and it is said', () => {
  const book = createBook(freshState(demoBoat), () => looseCatalogue([]));
  for (let n = 0; n < 100; n += 1) book.write({ 'keelson.thickness': `${n} mm` });
  const plain = JSON.stringify(demoBoat).length;
  const shelf = shelfOf({}, plain + 1500);
  const store = createStore(shelf);
  expect(JSON.stringify(book.kept().earlier).length).toBeGreaterThan(3000);
  expect(store.save(book.kept())).toStrictEqual({
    done: 'saved',
    says: expect.stringMatching(/full.*boat is kept.*not the steps/) as string,
  });
  expect(createStore(shelf).open().kept).toStrictEqual({ ...book.kept(), earlier: [] });
  expect(store.isSavedElsewhere()).toBe(false);
});
