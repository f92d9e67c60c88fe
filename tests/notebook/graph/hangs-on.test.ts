import { expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { plainShown } from '../../../src/measure';
import { createGraph } from '../../../src/notebook/graph/graph';
import { hangsOn, isOffset } from '../../../src/notebook/graph/hangs-on';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { bench, choice, derived, given, options, sum } from '../small-graph';

const namesOf = (graph: Parameters<typeof hangsOn>[0], name: string) => {
  graph.value(name);
  return hangsOn(graph, name).map(({ quantity, away }) => `${away} ${quantity.name}`);
};

test('links are followed to the number that is written, and a number that comes by two ways is one', () => {
  const { graph, write } = bench(
    [
      given('keelson.thickness', '18 mm'),
      given('scarf.thickness', 'keelson.thickness'),
      given('scarf.gap', '2 mm'),
    ],
    [
      sum('scarf.twice', 'scarf.thickness', 'keelson.thickness'),
      sum('scarf.taper', 'scarf.twice', 'scarf.gap'),
    ],
  );
  expect(namesOf(graph, 'scarf.taper')).toStrictEqual(['1 scarf.gap', '2 keelson.thickness']);
  expect(hangsOn(graph, 'scarf.taper').map(({ value }) => value)).toStrictEqual([0.002, 0.018]);
  write('scarf.thickness', '12 mm');
  expect(namesOf(graph, 'scarf.taper')).toStrictEqual([
    '1 scarf.gap',
    '2 scarf.thickness',
    '2 keelson.thickness',
  ]);
  write('scarf.gap', 'nothing');
  expect(namesOf(graph, 'scarf.thickness')).toStrictEqual([]);
});

test('an entry that a table fills is an end; a choice is none', () => {
  const { graph } = bench(
    [
      choice('bend.wood', 'oak', { options }),
      given('bend.modulus', 'bend.usual'),
      given('bend.width', '0.1 m'),
    ],
    [
      derived('bend.usual', (read) => (read.choice('bend.wood') === 'oak' ? 2 : 1)),
      sum('bend.stress', 'bend.modulus', 'bend.width'),
    ],
  );
  expect(namesOf(graph, 'bend.stress')).toStrictEqual(['1 bend.modulus', '1 bend.width']);
});

test('what hangs on the hull hangs on her offsets', () => {
  const graph = createGraph({
    catalogue: () => wholeCatalogue(demoBoat),
    entries: () => ({}),
    shown: plainShown,
  });
  graph.value('hull.length');
  const names = hangsOn(graph, 'hull.length').map(({ quantity }) => quantity.name);
  expect(names).toContain('frame3.sheer.halfBreadth');
  expect(names.filter((name) => !isOffset(name))).toStrictEqual([]);
  expect(isOffset('keelson.thickness')).toBe(false);
});
