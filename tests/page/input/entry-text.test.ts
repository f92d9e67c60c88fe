/** Where the + and - keys of a field go, and what a typed price is in. */
import { expect, test } from 'vitest';
import '../../../src/cells/all';
import '../../../src/cells/timber/fastening/fasten';
import { demoBoat, type Given } from '../../../src/boat';
import { plainShown, write } from '../../../src/measure';
import { createGraph } from '../../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { keyFrom, moneyIn, restText } from '../../../src/page/input/entry-text';

const feet = { ...plainShown, length: 'feet' } as const;
const screw: Given = {
  name: 'fasten.screwLength',
  kind: 'screwLength',
  meaning: 'screw length',
  preset: '30 mm',
  min: '5 mm',
  max: '300 mm',
  step: '5 mm',
};
const inches = (metres: number) => metres / 0.0254;

test('from screw to screw as they are sold, in the system chosen', () => {
  expect(keyFrom(0.03, 1, screw, plainShown)).toBeCloseTo(0.035, 12);
  expect(keyFrom(0.05, 1, screw, plainShown)).toBeCloseTo(0.06, 12);
  expect(keyFrom(0.031, -1, screw, plainShown)).toBeCloseTo(0.03, 12);
  expect(inches(keyFrom(0.03, 1, screw, feet))).toBeCloseTo(1.25, 12);
  expect(inches(keyFrom(1.25 * 0.0254, -1, screw, feet))).toBeCloseTo(1, 12);
});

test('ten on with the Page keys, and no further than the last', () => {
  expect(keyFrom(0.012, 10, screw, plainShown)).toBeCloseTo(0.07, 12);
  expect(keyFrom(0.12, 1, screw, plainShown)).toBeCloseTo(0.12, 12);
  expect(keyFrom(0.016, -10, screw, plainShown)).toBeCloseTo(0.012, 12);
});

test('what is not sold in sizes goes by its step', () => {
  expect(keyFrom(0.031, 1, { ...screw, kind: 'length' }, plainShown)).toBeCloseTo(0.035, 12);
});

test.each([plainShown, feet])(
  'a field filled by a result shows the very figure that the result does',
  (shown) => {
    const graph = createGraph({
      catalogue: () => wholeCatalogue(demoBoat),
      entries: () => ({ 'bend.allowed': 'laminate.allowed' }),
      shown,
    });
    const amiss = graph.names.flatMap((name) => {
      const quantity = graph.quantity(name)!; // a name of the graph's
      const [by, ...others] = graph.entry(name)?.names ?? [];
      const value = graph.value(name);
      if (!('preset' in quantity) || by === undefined || others.length > 0 || typeof value !== 'number')
        return [];
      if (graph.entry(name)!.written || graph.value(by) !== value) return [];
      const said = write(value, quantity.kind, shown, graph.mannerOf(by)).text;
      const field = restText(graph, quantity, shown);
      return field === said || quantity.manner ? [] : [`${name}: ${field}, where ${by} is ${said}`];
    });
    expect(amiss).toStrictEqual([]);
    expect(graph.mannerOf('flotation.weight')).toStrictEqual(graph.mannerOf('capacity.weight'));
    expect(graph.mannerOf('capacity.weight')).toMatchObject({ bound: 'most' });
    // Also where one thing is filled by another that is.
    expect(graph.mannerOf('bend.allowed')).toMatchObject({ bound: 'most' });
  },
);

test('two fields that fill each other are written as all numbers are', () => {
  const graph = createGraph({
    catalogue: () => wholeCatalogue(demoBoat),
    entries: () => ({ 'flotation.weight': 'flotation.persons', 'flotation.persons': 'flotation.weight' }),
    shown: plainShown,
  });
  expect(graph.mannerOf('flotation.weight')).toBeUndefined();
});

test('the money of a price is the sign typed with it', () => {
  expect(moneyIn('$5', 'money')).toBe('$');
  expect(moneyIn('0.89 €/m', 'pricePerLength')).toBe('€');
  expect(moneyIn('6.49 each', 'money')).toBeUndefined();
  expect(moneyIn('$5', 'length')).toBeUndefined();
});
