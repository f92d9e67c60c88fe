import { describe, expect, test } from 'vitest';
import { buildHull, demoBoat, lists, offsetsOf, starters } from '../../../../src/boat';
import { laidBoard } from '../../../../src/boat/joinery/laid-board';
import { bend } from '../../../../src/cells/timber/bending/bend';
import { holding } from '../../../../src/cells/timber/bending/holding';
import { tryCell } from '../../try-cell';
import { measured, testBoats, testDrawings } from '../../proofs';
import { withoutChines, withTwoChines } from '../../odd-boats';

const log = { along: 'chine', thickness: '19 mm', width: '38 mm', modulus: '13.4 GPa', rupture: '85 MPa' };
const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(holding, entries)
    .warnings.map((warning) => warning.says)
    .join(' | ');
const stationsOf = (table = demoBoat) => lists(table).stations.map(({ id }) => id);

describe('holding', () => {
  test('names the station of the greatest of all pulls, and adds them up', () => {
    const tried = tryCell(holding, log);
    const pulls = stationsOf().map((id) => tried.number(`${id}.pull`));
    const sizes = pulls.map(Math.abs);
    expect(tried.number('greatest')).toBeCloseTo(Math.max(...sizes), 9);
    expect(tried.all['hardest']).toBe(stationsOf()[sizes.indexOf(Math.max(...sizes))]);
    expect(tried.number('allPulls')).toBeCloseTo(
      sizes.reduce((a, b) => a + b, 0),
      9,
    );
    // The middle of the boat is pushed out, the ends are drawn in.
    expect(pulls[0]).toBeLessThan(0);
    expect(pulls.at(-1)).toBeLessThan(0);
  });

  test('with free ends leaves no moment past its last station', () => {
    // A keelson lies in a plane, so beside the pulls only their turning with the slope is missed: some hundredths at a bow.
    const tried = tryCell(holding, { ...log, along: 'keel' });
    const ids = stationsOf();
    const at = ids.map((id) => tried.number(`${id}.at`));
    const pulls = ids.map((id) => tried.number(`${id}.pull`));
    const about = (i: number) =>
      pulls.slice(0, i).reduce((sum, pull, k) => sum + pull * (at[i]! - at[k]!), 0);
    const greatest = Math.max(...ids.map((_, i) => Math.abs(about(i))));
    expect(Math.abs(about(ids.length - 1))).toBeLessThan(0.03 * greatest);
  });

  test('twice as thick pulls eight times as hard, twice as wide twice; the boat’s shape stays', () => {
    const [once, thick, wide] = [{}, { thickness: '38 mm' }, { width: '76 mm' }].map((more) =>
      tryCell(holding, { ...log, ...more }),
    );
    expect(thick!.number('greatest') / once!.number('greatest')).toBeCloseTo(8, 9);
    expect(wide!.number('greatest') / once!.number('greatest')).toBeCloseTo(2, 9);
    expect(wide!.number('frame2.edgePull') / once!.number('frame2.edgePull')).toBeCloseTo(8, 9);
    for (const key of ['mostTurn', 'crook', 'mostBend', 'mostEdge'])
      expect(thick!.number(key)).toBe(once!.number(key));
  });

  test('a keelson neither twists nor bends edgewise', () => {
    const tried = tryCell(holding, { ...log, along: 'keel' });
    for (const key of ['mostTurn', 'crook', 'torque', 'edgeShare', 'shearShare'])
      expect(tried.number(key)).toBeCloseTo(0, 9);
    expect(tried.words).toContain('It lies without twist.');
    expect(tried.words).toContain('next to nothing');
  });

  test('a keelson bends as the bend cell has its edge, within what sixteen looks a bay step over', () => {
    const [held, bent] = [
      tryCell(holding, { ...log, along: 'keel' }),
      tryCell(bend, { thickness: '19 mm', modulus: '13.4 GPa', rupture: '85 MPa', along: 'keel' }),
    ];
    expect(held.number('flatShare') / bent.number('share')).toBeCloseTo(1, 2);
  });

  test('twists from station to station as the face turns, and no further than the last', () => {
    const tried = tryCell(holding, log);
    const { stations } = laidBoard(buildHull(offsetsOf(demoBoat)), 'chine');
    const ids = stationsOf();
    const sum = ids.reduce((all, id) => all + tried.number(`${id}.turnOn`), 0);
    expect(sum).toBeCloseTo(stations.at(-1)!.turn - stations[0]!.turn, 12);
    expect(tried.number(`${ids.at(-1)}.turnOn`)).toBe(0);
    expect(tried.number('mostTurn')).toBeCloseTo(
      Math.max(...ids.map((id) => Math.abs(tried.number(`${id}.turnOn`)))),
      12,
    );
  });

  test('a square bar twisted by a radian a metre takes the torque and shear of Saint-Venant', () => {
    const tried = tryCell(holding, { ...log, thickness: '38 mm', modulus: '16 GPa', rigidity: '16' });
    // Printed for a square: torque 0.1406 G b⁴ θ. G is 1 GPa here.
    expect(tried.number('torque') / (0.1406e9 * 0.038 ** 4 * tried.number('twistRate'))).toBeCloseTo(1, 2);
    expect(tried.number('shearStress')).toBeCloseTo(1e9 * 0.038 * tried.number('twistRate'), 3);
  });

  test('held fast at the ends is spared next to them', () => {
    const fast = tryCell(holding, { ...log, ends: 'fast' });
    expect(fast.number(`${stationsOf()[1]}.pull`)).toBeCloseTo(0, 6);
    expect(Math.abs(tryCell(holding, log).number(`${stationsOf()[1]}.pull`))).toBeGreaterThan(1);
  });

  describe('warnings', () => {
    test('none for a log of a dory', () => expect(says(log)).toBe(''));
    test('more than one person', () =>
      expect(says({ ...log, thickness: '60 mm', width: '90 mm' })).toContain('people'));
    test('sprung edgewise as well', () =>
      expect(says({ ...log, width: '400 mm' })).toContain('Sprung to this curve both ways'));
    test('twisted', () =>
      expect(says({ ...log, thickness: '100 mm', width: '150 mm', shear: '3 MPa' })).toContain(
        'shear strength',
      ));
  });

  testBoats(holding);
  test.each([
    ['without chines', withoutChines],
    ['with two chines', withTwoChines],
  ])('has an answer on a boat %s along each edge', (_, table) => {
    for (const { id: along } of lists(table).longEdges) {
      const tried = tryCell(holding, { along }, table);
      expect(tried.issues).toStrictEqual({});
      expect(tried.drawing).toBeDefined();
    }
  });

  testDrawings(holding, {
    'as it stands': {},
    'a keelson': { ...log, along: 'keel', width: '90 mm' },
    'a clamp, held fast': { ...log, along: 'sheer', ends: 'fast' },
    'a wide one': { ...log, width: '300 mm' },
  });

  test('the drawing measures what is asked edgewise, and the chart peaks where the cell says', () => {
    for (const { table } of starters) {
      const tried = tryCell(holding, { ...log, along: 'sheer' }, table);
      const crook = tried.number('crook');
      const told = tried.drawing?.shapes.flatMap((shape) => (shape.shape === 'dim' ? [shape.text] : []));
      expect(measured(tried.drawing, told?.[0] ?? '')).toBeCloseTo(1000 * crook, 6);
      const [flat, edgewise] = tried.chart!.lines.map(({ points }) => Math.max(...points.map(([, y]) => y)));
      expect(flat).toBeCloseTo(tried.number('flatShare'), 12);
      expect(edgewise).toBeCloseTo(tried.number('edgeShare'), 12);
    }
  });
});
