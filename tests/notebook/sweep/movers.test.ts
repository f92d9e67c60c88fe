/** Which numbers a result hangs on: along links and derived numbers, nearest first, and only as the choices stand. */
import { describe, expect, test } from 'vitest';
import { moversOf } from '../../../src/notebook/sweep/movers';
import { bench, choice, derived, given, sum } from '../small-graph';

const plank = () =>
  bench(
    [
      given('scarf.thickness', 'plank.thickness', { min: '2 mm', max: '40 mm' }),
      given('plank.thickness', '18 mm'),
      given('plank.width', '100 mm'),
      given('keelson.thickness', '30 mm'),
      choice('scarf.wood', 'oak'),
    ],
    [
      sum('scarf.both', 'scarf.thickness', 'plank.width'),
      derived('scarf.taper', (read) =>
        read.choice('scarf.wood') === 'oak'
          ? 8 * read.number('scarf.both')
          : read.number('keelson.thickness'),
      ),
    ],
  );

describe('what a result hangs on', () => {
  test('its inputs through what lies between, and what they are linked to', () => {
    const { graph } = plank();
    const found = moversOf(graph, 'scarf.taper');
    expect(found.map(({ name, away }) => [name, away])).toStrictEqual([
      ['scarf.thickness', 2],
      ['plank.width', 2],
      ['plank.thickness', 3],
    ]);
    expect(found[0]).toMatchObject({ value: 0.018, least: 0.002, most: 0.04 });
    expect(found[1]).toMatchObject({ value: 0.1, least: -Infinity, most: Infinity });
  });

  test('a number typed over a link hangs on nothing behind it; another answer brings its own', () => {
    const { graph, write } = plank();
    write('scarf.thickness', '20 mm');
    expect(moversOf(graph, 'scarf.taper').map(({ name }) => name)).toStrictEqual([
      'scarf.thickness',
      'plank.width',
    ]);
    write('scarf.wood', 'ash');
    expect(moversOf(graph, 'scarf.taper').map(({ name }) => name)).toStrictEqual(['keelson.thickness']);
  });

  test('the same in a graph laid over another', () => {
    const { graph } = plank();
    const over = graph.with(() => ({ 'plank.width': '80 mm' }));
    const found = moversOf(over, 'scarf.taper');
    expect(found.map(({ name, value }) => [name, value])).toStrictEqual([
      ['scarf.thickness', 0.018],
      ['plank.width', 0.08],
      ['plank.thickness', 0.018],
    ]);
    expect(moversOf(over, 'plank.width')).toStrictEqual([]);
    expect(moversOf(over, 'no.such')).toStrictEqual([]);
  });
});
