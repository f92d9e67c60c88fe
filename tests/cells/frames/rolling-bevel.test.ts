import { describe, expect, test } from 'vitest';
import { buildHull, lists, offsetsOf, starters } from '../../../src/boat';
import { rollingBevel } from '../../../src/cells/frames/rolling-bevel';
import { withoutChines, withTwoChines } from '../odd-boats';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const DEGREE = Math.PI / 180;
const says = (entries: Record<string, string>) =>
  tryCell(rollingBevel, entries).warnings.map((one) => one.says);
const boats = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines] as const,
];

describe('rollingBevel', () => {
  test('a square corner leaves a square log square, however it lies', () => {
    for (const lies of ['side', 'bottom', 'upright']) {
      const tried = tryCell(rollingBevel, { lies, flare: '0 deg', deadrise: '0 deg' });
      expect(['sideOff', 'bottomOff'].map((key) => tried.number(key))).toEqual([0, 0]);
      expect(tried.number('angle') / DEGREE).toBeCloseTo(90, 12);
    }
  });

  test('flat on one panel the whole bevel goes off the other face; upright they share it', () => {
    const corner = { flare: '25 deg', deadrise: '15 deg', logThickness: '19 mm', logWidth: '38 mm' };
    const of = (lies: string) => {
      const tried = tryCell(rollingBevel, { ...corner, lies });
      return ['sideBevel', 'bottomBevel'].map((key) => Math.round(tried.number(key) / DEGREE));
    };
    expect(of('side')).toEqual([0, 40]);
    expect(of('bottom')).toEqual([40, 0]);
    expect(of('upright')).toEqual([25, 15]);
    const upright = tryCell(rollingBevel, { ...corner, lies: 'upright' });
    expect(upright.number('sideOff')).toBeCloseTo(0.038 * Math.tan(25 * DEGREE), 12);
    expect(upright.number('bottomOff')).toBeCloseTo(0.019 * Math.tan(15 * DEGREE), 12);
  });

  test('the two bevels make up all by which the corner differs from square', () => {
    for (const lies of ['side', 'bottom', 'upright']) {
      const tried = tryCell(rollingBevel, { lies, at: '3 m' });
      const both = tried.number('sideBevel') + tried.number('bottomBevel');
      expect(both).toBeCloseTo(tried.number('angle') - Math.PI / 2, 12);
    }
  });

  // The second road: at a frame the station's own normals, and the bevel cell's slopes, say the same angle.
  describe.each(boats)('on the %s', (_id, table) => {
    const hull = buildHull(offsetsOf(table));
    test.each(lists(table).chines.map(({ id }) => id))('agrees with the stations along the %s', (chine) => {
      const edge = hull.edge(chine);
      for (const { index, label } of hull.frames) {
        const along = edge.arcs[index]!;
        const aft = tryCell(rollingBevel, { chine, at: `${along} m` }, table);
        const fore = tryCell(rollingBevel, { chine, end: 'fore', at: `${edge.length - along} m` }, table);
        const wanted = hull.stations[index]!.angle(chine);
        expect(Math.abs(aft.number('angle') - wanted)).toBeLessThan(1e-6);
        expect(Math.abs(fore.number('angle') - wanted)).toBeLessThan(1e-6);
        expect(aft.all['place']).toBe(`at ${label}`);
      }
    });

    test('lists the marks that lie on the log, with running distances, and no others', () => {
      const tried = tryCell(rollingBevel, {}, table);
      const { rows } = tried;
      const length = tried.number('logLength');
      const marks = rows.slice(1, -1);
      expect(marks).toHaveLength(Math.floor(length / 0.15));
      marks.forEach(({ id }, i) => expect(tried.inRow(id, 'at')).toBeCloseTo(0.15 * (i + 1), 12));
      expect([rows[0]!.id, rows.at(-1)!.id]).toEqual(['first', 'last']);
      expect(tried.inRow('last', 'at')).toBe(length);
      const angles = rows.map(({ id }) => tried.number(`${id}.angle`));
      // It rolls: the rows differ, and no neighbour by more than a frame's bevel does over a step.
      expect(new Set(angles.map((angle) => angle.toFixed(9))).size).toBe(rows.length);
    });
  });

  test('says between which frames a mark stands', () => {
    expect(tryCell(rollingBevel, { at: '1.2 m' }).all['place']).toBe('between frame 1 and frame 2');
    expect(tryCell(rollingBevel, { at: '0 mm' }).all['place']).toBe('at transom');
    expect(tryCell(rollingBevel, { at: '0 mm', end: 'fore' }).all['place']).toBe('at stem');
  });

  test('a boat without a chine has none to choose from, in a sentence', () => {
    expect(tryCell(rollingBevel, {}, withoutChines).issues['chine']).toBe(
      'chine: this boat has none to choose from',
    );
  });

  describe('words', () => {
    const words = (entries: Record<string, string>) => tryCell(rollingBevel, entries).words;
    const wide = { flare: '25 deg', deadrise: '15 deg' };
    const sharp = { flare: '-25 deg', deadrise: '-5 deg' };
    test.each([
      ['side', wide, 'on the outer face a line 15.9 mm up from the lower edge'],
      ['side', sharp, 'on the inner face a line 11 mm up from the lower edge'],
      ['bottom', wide, 'on the under face a line 15.9 mm from the outer edge'],
      ['bottom', sharp, 'on top a line 11 mm from the outer edge'],
      ['upright', wide, 'mark both lines before you plane either'],
    ])('a log that lies on the %s', (lies, corner, wanted) =>
      expect(words({ ...corner, lies, logThickness: '19 mm', logWidth: '38 mm' })).toContain(wanted),
    );
    test('name the end, the place and the distance', () =>
      expect(words({ at: '1.2 m' })).toMatch(/^1200 mm from the after end, between frame 1 and frame 2:/));
  });

  describe('warnings', () => {
    test('none on the ferry dory', () => expect(says({})).toEqual([]));
    test.each([
      ['beyond the end', { at: '6 m' }, 'and the log only'],
      ['eats the log', { flare: '40 deg', deadrise: '35 deg' }, 'more than the log has'],
      ['past a saw', { flare: '30 deg', deadrise: '20 deg' }, 'past the tilt'],
      ['list too short', { interval: '20 mm' }, 'A hundred marks end'],
    ])('%s', (_what, entries, wanted) => expect(says(entries).join(' ')).toContain(wanted));
  });

  describe('drawing', () => {
    testDrawings(rollingBevel, {
      'as the boat stands': {},
      'on the bottom': { lies: 'bottom' },
      upright: { lies: 'upright', flare: '25 deg', deadrise: '30 deg' },
      'nearly one surface': { flare: '25 deg', deadrise: '57 deg' },
      tumblehome: { flare: '-20 deg', deadrise: '-10 deg', lies: 'upright' },
      square: { flare: '0 deg', deadrise: '0 deg' },
    });

    test('its angle and what goes are those of the figures', () => {
      const tried = tryCell(rollingBevel, { flare: '25 deg', deadrise: '15 deg', lies: 'upright' });
      const drawing = provesItsDrawing(tried.drawing);
      for (const key of ['sideOff', 'bottomOff']) {
        const off = tried.number(key) * 1000;
        expect(measured(drawing, `${off.toFixed(1)} mm`)).toBeCloseTo(off, 9);
      }
      const angle = drawing.shapes.find((shape) => shape.shape === 'angle' && shape.text === '130°');
      if (angle?.shape !== 'angle') throw new Error('no angle of the corner');
      expect(angle.to - angle.from).toBeCloseTo(tried.number('angle'), 9);
    });
  });

  test('the chart runs from the end chosen, and marks this place', () => {
    for (const end of ['aft', 'fore']) {
      const tried = tryCell(rollingBevel, { end, at: '1.2 m' });
      const [run, frames] = tried.chart?.lines ?? [];
      expect(run?.points[0]?.[0]).toBeCloseTo(0, 9);
      expect(run?.points.at(-1)?.[0]).toBeCloseTo(tried.number('logLength'), 9);
      expect(frames?.points).toHaveLength(5);
      expect(tried.chart?.points?.[0]).toMatchObject({ x: 1.2 });
    }
  });
});
