/** Whatever is missing or can't be read, no sentence of any cell shows a quantity by its dotted name. */
import { expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import { registry } from '../../src/cells/registry';
import { isIssue, plainShown } from '../../src/measure';
import { createGraph } from '../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { allOf } from '../notebook/all-of';

const catalogue = wholeCatalogue(demoBoat);
const offsets = allOf(catalogue)
  .given.map(({ name }) => name)
  .filter((name) => /\.(x|halfBreadth|height)$/.test(name) && name.split('.').length === 3);

/** A row of a cell's table waits for what the cell itself waits for. */
const ids = new Set(registry.map(({ id }) => id));
const asked = [...allOf(catalogue).given, ...allOf(catalogue).derived]
  .map(({ name }) => name.split('.'))
  .filter(([first, ...rest]) => rest.length < 2 || !ids.has(first!)) // a name has a first word
  .map((parts) => parts.join('.'));

/** The reasons that quantities of the boat and of all cells have no value, when one entry reads so. */
function reasons(name: string, text: string): readonly string[] {
  const graph = createGraph({
    catalogue: () => catalogue,
    entries: () => ({ [name]: text }),
    shown: plainShown,
  });
  const all = [...asked.map((one) => graph.value(one)), graph.hull()].flatMap((value) =>
    isIssue(value) ? [value.issue] : [],
  );
  return [...new Set(all)];
}

/** Words with a dot in them, outside what is quoted as it was typed; figures have dots too. */
const rawIn = (sentence: string) => sentence.replaceAll(/"[^"]*"/g, '').match(/[A-Za-z]\w*\.\w+/g) ?? [];

test('a raw name is found where one stands', () => {
  expect(rawIn('frame2.sheer.height is empty, at most 1.5 m')).toStrictEqual(['frame2.sheer']);
  expect(rawIn('"keel.rocker" is not there')).toStrictEqual([]);
});

test('with each offset missing in turn', { timeout: 300_000 }, () => {
  expect(offsets.length).toBeGreaterThan(40);
  const told = offsets.map((name) => reasons(name, ''));
  expect(told.filter((sentences) => sentences.length === 0)).toStrictEqual([]);
  expect(told.flat().filter((sentence) => rawIn(sentence).length > 0)).toStrictEqual([]);
});

test(
  'with an entry that can’t be read, one below nothing, and a choice where a number is due',
  {
    timeout: 300_000,
  },
  () => {
    const at = ['frame2.sheer.height', 'frame2.chine.halfBreadth', 'keelson.thickness', 'bend.radius'];
    const entries = ['three', '3 kg', '-4 m', 'keelson.timber', '2 * keelson.timber'];
    const told = at.flatMap((name) => entries.map((text) => reasons(name, text)));
    expect(told.filter((sentences) => sentences.length === 0)).toStrictEqual([]);
    expect(told.flat().filter((sentence) => rawIn(sentence).length > 0)).toStrictEqual([]);
    expect(reasons('keelson.thickness', 'keelson.timber')).toContain(
      'thickness of the keelson: timber of the keelson is a choice, not a number',
    );
  },
);
