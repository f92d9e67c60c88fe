import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter, starters } from '../../../src/boat';
import { stemBevel } from '../../../src/cells/frames/stem-bevel';
import { withTwoChines } from '../odd-boats';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const DEGREE = Math.PI / 180;
const typed = {
  entry: '30 deg',
  rake: '0 deg',
  up: '300 mm',
  siding: '45 mm',
  landing: '30 mm',
  run: '700 mm',
};
const says = (entries: Record<string, string>) =>
  tryCell(stemBevel, { ...typed, ...entries }).warnings.map((one) => one.says);
const stemmed = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines] as const,
].filter(([, table]) => buildHull(offsetsOf(table)).fore.role === 'stem');

describe('stemBevel', () => {
  test('sides along the centreline ask for no bevel', () => {
    const tried = tryCell(stemBevel, { ...typed, entry: '0 deg' });
    expect(['bevel', 'inset', 'level'].map((key) => tried.number(key))).toEqual([0, 0, 0]);
    expect(tried.number('faceLeft')).toBeCloseTo(0.045, 12);
    expect(tried.number('cover')).toBeCloseTo(0.045 + 0.012, 12);
  });

  test('landing, inset and bearding line are a right triangle, and the face is what they leave', () => {
    const tried = tryCell(stemBevel, { ...typed, entry: '25 deg' });
    expect(Math.hypot(tried.number('inset'), tried.number('back'))).toBeCloseTo(0.03, 12);
    expect(tried.number('faceLeft') + 2 * tried.number('inset')).toBeCloseTo(0.045, 12);
    expect(tried.number('gauge') / DEGREE).toBeCloseTo(115, 9);
  });

  test('upright the level bevel is the bevel; raked it is smaller', () => {
    expect(tryCell(stemBevel, typed).number('level') / DEGREE).toBeCloseTo(30, 9);
    expect(tryCell(stemBevel, { ...typed, rake: '60 deg' }).number('level') / DEGREE).toBeCloseTo(
      Math.atan(Math.tan(30 * DEGREE) / 2) / DEGREE,
      9,
    );
  });

  // The second road: held level, the bevel is the angle in plan of the skin's own normal.
  test.each(stemmed)('on the %s the level bevel is that of the skin’s normal in plan', (_id, table) => {
    const hull = buildHull(offsetsOf(table));
    const side = hull.panels.at(-1)!;
    const [nx, ny] = hull.fore.normal(side.outer.name, 'side');
    const tried = tryCell(stemBevel, { place: 'head' }, table);
    expect(Math.abs(tried.number('level') - Math.atan2(nx, ny))).toBeLessThan(1e-4);
    expect(tried.number('bevel')).toBeCloseTo(hull.fore.bevel(side.outer.name, 'side'), 9);
  });

  test.each(stemmed)('on the %s the rows rise evenly from foot to head', (_id, table) => {
    const tried = tryCell(stemBevel, {}, table);
    const ups = ['foot', ...Array.from({ length: 9 }, (_, i) => `tenth${i + 1}`), 'head'].map((place) =>
      tried.number(`${place}.height`),
    );
    expect(ups[0]).toBe(0);
    expect(ups.at(-1)).toBeCloseTo(tried.number('run'), 12);
    ups.forEach((up, i) => expect(up).toBeCloseTo((tried.number('run') * i) / 10, 12));
  });

  test('a boat that ends in a transom at the bow has no stem, and says so', () => {
    const tried = tryCell(stemBevel, {}, starter('creek-punt')!);
    expect(tried.issues).toEqual({});
    expect(tried.words).toMatch(/^This boat has no stem: a transom closes her bow\./);
    expect(tryCell(stemBevel, { post: 'sternpost' }).words).toMatch(/^This boat has no sternpost/);
    expect(tryCell(stemBevel, typed, starter('creek-punt')!).words).toContain(
      'mark the bearding line 26 mm abaft',
    );
  });

  test('words name the faces, the lines and the gauge', () => {
    expect(tryCell(stemBevel, typed).words).toBe(
      '300 mm up from the foot: on each side of the stem mark the bearding line 26 mm abaft the forward face, and on the forward face a line 15 mm inside each edge. Plane the forward corners off between them; the gauge, its stock on the forward face, stands at 120°, and 15 mm of the face is left.',
    );
    expect(tryCell(stemBevel, { ...typed, post: 'sternpost' }).words).toContain('forward of the after face');
    // 2 x 30 mm x sin 55 degrees is 49.1 mm: no wood is left to plane, and nobody is told to.
    expect(tryCell(stemBevel, { ...typed, entry: '55 deg' }).words).toBe(
      '300 mm up from its foot the stem is too thin: bevels with a landing of 30 mm at 55° would meet inside it. Plane nothing before it is at least 49.2 mm thick, or the landing narrower.',
    );
    expect(tryCell(stemBevel, { ...typed, up: '0 mm' }).words).toMatch(/^At the foot: on each side/);
    const none = tryCell(stemBevel, { ...typed, landing: '50 mm' });
    expect(none.number('faceLeft')).toBeLessThan(0);
    expect(none.drawing?.says).toContain('leaves nothing of it');
  });

  describe('warnings', () => {
    test('none for a usual stem', () => expect(says({})).toEqual([]));
    test.each([
      ['no face left', { entry: '60 deg' }, 'asks for a stem at least 52 mm thick'],
      ['a thin face', { entry: '42 deg' }, 'of the face is left'],
      ['too deep', { entry: '5 deg', landing: '120 mm', moulded: '90 mm' }, 'only 90 mm deep'],
      ['past a saw', { entry: '50 deg', landing: '20 mm' }, 'past the tilt'],
      ['above the head', { up: '1 m' }, 'The stem is only 700 mm long'],
    ])('%s', (_what, entries, wanted) => expect(says(entries).join(' ')).toContain(wanted));
  });

  describe('drawing', () => {
    testDrawings(stemBevel, {
      'as the boat stands': {},
      fine: { ...typed, entry: '8 deg' },
      bluff: { ...typed, entry: '70 deg' },
      straight: { ...typed, entry: '0 deg' },
      sternpost: { ...typed, post: 'sternpost' },
    });
    test('its dimensions read as the figures and span them', () => {
      const drawing = provesItsDrawing(tryCell(stemBevel, { ...typed, entry: '28 deg' }).drawing);
      const inset = 30 * Math.sin(28 * DEGREE);
      expect(measured(drawing, `${inset.toFixed(1)} mm`)).toBeCloseTo(inset, 9);
      expect(measured(drawing, `${(45 - 2 * inset).toFixed(1)} mm`)).toBeCloseTo(45 - 2 * inset, 9);
    });
  });

  test('the chart goes from foot to head on a boat with a stem, and is empty without one', () => {
    expect(tryCell(stemBevel).chart?.lines[0]?.points).toHaveLength(51);
    const none = tryCell(stemBevel, {}, starter('creek-punt')!).chart;
    expect(none?.lines[0]?.points).toEqual([]);
    expect(none?.says).toMatch(/no stem on this boat/);
  });
});
