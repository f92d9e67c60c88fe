/** What was typed in a quick answer goes over to the boat's own cell, and what can't is told. */
import { describe, expect, test } from 'vitest';
import { demoBoat, nothingBuilt } from '../../../src/boat';
import { type Instance, isAsked } from '../../../src/cells';
import { plainShown } from '../../../src/measure';
import { createBook } from '../../../src/notebook/book';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { looseCatalogue } from '../../../src/notebook/graph/loose-catalogue';
import { freshState, noBoat, tryAnother } from '../../../src/notebook/state/state';
import { carry } from '../../../src/page/quick/carry';
import { startAgain, typedIn } from '../../../src/page/quick/start-again';
import { cellOf } from '../../cells/cell-of';

const scarf: Instance = { cell: cellOf('scarf')!, name: 'quickScarf', presets: { thickness: '18 mm' } };
const notch: Instance = { cell: cellOf('notch')!, name: 'quickNotch', presets: {} };
const bookWith = (entries: Record<string, string>) =>
  createBook(freshState(noBoat, entries), () => looseCatalogue([scarf, notch]));
const dory = freshState(demoBoat);

function taken(instance: Instance, entries: Record<string, string>, boat: typeof dory = dory) {
  const book = bookWith(entries);
  const graph = book.first.value;
  const asked = Object.keys(instance.cell.inputs).filter((key) => isAsked(instance, key, graph));
  return carry({ instance, state: book.state.value, graph }, boat, asked, plainShown);
}

describe('what was typed', () => {
  test('becomes entries of the boat’s cell, which leave her own numbers as they are', () => {
    const {
      changes,
      taken: keys,
      onlyHere,
      left,
    } = taken(scarf, {
      'quickScarf.thickness': '3/4 in',
      'quickScarf.slope': '10',
      'quickNotch.thickness': '22 mm',
    });
    expect(changes).toStrictEqual({ 'scarf.thickness': '3/4 in', 'scarf.slope': '10' });
    expect([keys, onlyHere, left]).toStrictEqual([['thickness', 'slope'], true, []]);
    const plain = [cellOf('scarf')!].map((cell) => ({ cell, name: cell.id, presets: {} }));
    const graph = createBook(freshState(demoBoat, changes as Record<string, string>), (table) =>
      catalogueOf(table, plain),
    ).first.value;
    // A taper is slope times thickness: 10 times 19.05 mm.
    expect(graph.value('scarf.taper')).toBeCloseTo(0.1905, 12);
    expect(graph.value('keelson.thickness')).toBe(
      createBook(dory, (table) => catalogueOf(table, plain)).first.value.value('keelson.thickness'),
    );
  });

  test('goes over as a number where it leans on another of that sheet', () => {
    const { changes } = taken(scarf, {
      'quickScarf.thickness': 'quickNotch.thickness + 3 mm',
      'quickNotch.thickness': '22 mm',
    });
    // 22 mm and 3 mm in metres come to 24.999999999999998 mm: what is written is what a builder would.
    expect(changes['scarf.thickness']).toBe('25 mm');
  });

  test.each([
    ['can’t be read', { 'quickScarf.thickness': '3 kg' }, dory],
    [
      'measured on her',
      { 'quickScarf.thickness': '20 mm' },
      { ...dory, asBuilt: { ...nothingBuilt, measured: { 'scarf.thickness': '17 mm' } } },
    ],
    [
      'a part is cut to',
      { 'quickScarf.thickness': '20 mm' },
      {
        ...dory,
        asBuilt: { ...nothingBuilt, cut: { keelson: { held: { 'scarf.thickness': '18 mm' }, numbers: {} } } },
      },
    ],
  ])('is left where it %s', (why, entries, boat) => {
    const { changes, left } = taken(scarf, { ...entries, 'quickScarf.slope': '12' }, boat);
    expect(changes).toStrictEqual({ 'scarf.slope': '12' });
    expect(left.map(({ key }) => key)).toStrictEqual(['thickness']);
    expect(left[0]!.why).toContain(why);
  });
});

describe('start again', () => {
  const entries = { 'quickScarf.thickness': '20 mm', 'quickNotch.thickness': '22 mm' };

  test('clears one cell by a step that can be undone', () => {
    const book = bookWith(entries);
    startAgain(book, 'quickScarf');
    expect(book.state.value.entries).toStrictEqual({ 'quickNotch.thickness': '22 mm' });
    expect(book.first.value.value('quickScarf.thickness')).toBeCloseTo(0.018, 12);
    book.undo();
    expect(book.state.value.entries).toStrictEqual(entries);
  });

  test('clears it in both versions; one that differed in nothing else goes, and comes back', () => {
    const book = bookWith(entries);
    book.tryAnother({ 'quickScarf.slope': '12' });
    expect(typedIn(book.state.value, 'quickScarf')).toStrictEqual([
      'quickScarf.thickness',
      'quickScarf.slope',
    ]);
    startAgain(book, 'quickScarf');
    expect(book.second.value).toBe(null);
    expect(typedIn(book.state.value, 'quickScarf')).toStrictEqual([]);
    book.undo();
    expect(book.state.value.second).toStrictEqual({ 'quickScarf.slope': '12' });
    // What else is tried stays.
    const other = tryAnother(book.state.value, { 'quickNotch.thickness': '30 mm' });
    book.open(other);
    startAgain(book, 'quickScarf');
    expect(book.state.value.second).toStrictEqual({ 'quickNotch.thickness': '30 mm' });
  });
});
