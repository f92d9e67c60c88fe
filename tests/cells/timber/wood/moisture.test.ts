import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lists, starters } from '../../../../src/boat';
import { moved } from '../../../../src/cells/timber/wood/board-end-drawing';
import { moisture } from '../../../../src/cells/timber/wood/moisture';
import { withoutChines, withTwoChines } from '../../odd-boats';
import { measured, provesItsDrawing, testDrawings } from '../../proofs';
import { tryCell } from '../../try-cell';

const board = {
  width: '200 mm',
  thickness: '20 mm',
  sawn: 'flat',
  moveTangential: '0.003',
  moveRadial: '0.0015',
};
const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(moisture, entries)
    .warnings.map((warning) => warning.says)
    .join(' | ');
const settled = (air: number, humidity: number) =>
  tryCell(moisture, { air: `${air} °C`, humidity: `${humidity} %` }).number('settled');

describe('moisture', () => {
  test(
    'wood rises with the humidity of the air, and falls with its warmth from 0 to 40 °C',
    { timeout: 30_000 },
    () => {
      fc.assert(
        fc.property(
          fc.integer({ min: 0, max: 39 }),
          fc.integer({ min: 10, max: 90 }),
          fc.integer({ min: 1, max: 8 }),
          (air, humidity, more) => {
            const here = settled(air, humidity);
            expect(settled(air, humidity + more)).toBeGreaterThan(here);
            // At the dry and cold end the fit lies flat: a hundredth of a per cent is left to it.
            expect(settled(air + 1, humidity)).toBeLessThan(here + 1e-4);
          },
        ),
        { seed: 3, numRuns: 20 },
      );
    },
  );

  test('agrees with the same form fitted in degrees Fahrenheit', () => {
    // From memory: Wood Handbook, ch. 4, before its figures were given in degrees Celsius as well.
    const inFahrenheit = (fahrenheit: number, h: number) => {
      const w = 330 + 0.452 * fahrenheit + 0.00415 * fahrenheit ** 2;
      const k = 0.791 + 0.000463 * fahrenheit - 8.44e-7 * fahrenheit ** 2;
      const k1 = 6.34 + 0.000775 * fahrenheit - 9.35e-5 * fahrenheit ** 2;
      const k2 = 1.09 + 0.0284 * fahrenheit - 9.04e-5 * fahrenheit ** 2;
      const kh = k * h;
      const bound = k1 * kh + k1 * k2 * kh ** 2;
      return (18 / w) * (kh / (1 - kh) + (bound + k1 * k2 * kh ** 2) / (1 + bound));
    };
    for (const air of [0, 10, 21, 35]) {
      for (const humidity of [20, 50, 80, 95]) {
        // Both sets are rounded to three figures.
        const difference = settled(air, humidity) - inFahrenheit(32 + 1.8 * air, humidity / 100);
        expect(Math.abs(difference)).toBeLessThan(0.0006);
      }
    }
  });

  test('movement goes with the width and the change of moisture, and back again by as much', () => {
    const change = (now: number, later: number, width = '200 mm') =>
      tryCell(moisture, { ...board, width, now: `${now} %`, later: `${later} %` }).number('change');
    expect(change(8, 12) * 1000).toBeCloseTo(200 * 0.003 * 4, 9);
    expect(change(12, 8)).toBeCloseTo(-change(8, 12), 12);
    expect(change(8, 10) + change(10, 14)).toBeCloseTo(change(8, 14), 12);
    expect(change(8, 12, '400 mm') / change(8, 12)).toBeCloseTo(2, 12);
    expect(change(12, 12)).toBe(0);
  });

  test('above fibre saturation nothing moves', () => {
    const change = (now: string, later: string) =>
      tryCell(moisture, { ...board, now, later }).number('change');
    expect(change('35 %', '40 %')).toBe(0);
    expect(change('40 %', '12 %')).toBeCloseTo(change('30 %', '12 %'), 12);
  });

  test('quarter-sawn the width moves by the radial figure and the thickness by the other; a sheet hardly', () => {
    const at = { ...board, now: '8 %', later: '12 %' };
    const quarter = tryCell(moisture, { ...at, sawn: 'quarter' });
    expect(quarter.number('change') * 1000).toBeCloseTo(200 * 0.0015 * 4, 9);
    expect(quarter.number('thicker') * 1000).toBeCloseTo(20 * 0.003 * 4, 9);
    expect(quarter.number('cup')).toBe(0);
    const flat = tryCell(moisture, at);
    expect(flat.number('thicker') * 1000).toBeCloseTo(20 * 0.0015 * 4, 9);
    const sheet = tryCell(moisture, { ...at, sawn: 'plywood' });
    expect(sheet.number('change') * 1000).toBeCloseTo(200 * 0.0002 * 4, 9);
  });

  test('the wood in hand brings its figures: loblolly by table, slash pine by formula', () => {
    const of = (species: string) => tryCell(moisture, { species }).number('moveTangential');
    expect(of('loblollyPine')).toBe(0.00259);
    expect(of('slashPine')).toBeCloseTo(1 / (3000 / 7.6 - 20), 12);
  });

  test('the glue in hand brings its range', () => {
    const of = (glue: string, now: string) => tryCell(moisture, { glue, now });
    expect(of('resorcinol', '13 %').number('offGlue')).toBeCloseTo(0.01, 12);
    expect(of('resorcinol', '12 %').number('offGlue')).toBe(0);
    expect(of('resorcinol', '7 %').number('offGlue')).toBeCloseTo(0.01, 12);
    expect(of('epoxy', '13 %').words).toContain('and this glue takes');
    expect(of('resorcinol', '13 %').words).toContain('too much');
    expect(of('resorcinol', '7 %').words).toContain('too little');
  });

  test('it goes to where it settles unless another moisture is typed', () => {
    const here = tryCell(moisture, { humidity: '75 %' });
    expect(here.number('later')).toBe(here.number('settled'));
    expect(tryCell(moisture, { humidity: '75 %', later: '16 %' }).number('later')).toBe(0.16);
  });

  test('weight: dry wood, and the water in it', () => {
    const at = tryCell(moisture, { gravity: '0.48', now: '20 %', later: '10 %' });
    // Oven-dry wood in a cubic metre of green wood is the same at every moisture; the block shrinks round it.
    const green = at.number('gravityGreen');
    const shrunk = 1 - 0.265 * green * (1 - 20 / 30);
    expect(at.number('density') * shrunk).toBeCloseTo(1000 * green * 1.2, 9);
    expect(at.number('lighter')).toBeCloseTo(1.1 / 1.2 - 1, 12);
  });

  test('the cup is that of the board moved ring by ring about its pith', () => {
    const tried = tryCell(moisture, { ...board, pith: '80 mm', now: '14 %', later: '8 %' });
    const end = {
      width: 200,
      thickness: 20,
      pith: 80,
      ply: false,
      across: tried.number('acrossRings'),
      along: tried.number('alongRings'),
    };
    const [middle, edge] = [moved([0, 0], end), moved([100, 0], end)];
    // Drying, the edges rise on the bark's side. The formula is the first order of the turning.
    expect(edge[1] - middle[1]).toBeGreaterThan(0);
    expect((edge[1] - middle[1]) / (tried.number('cup') * 1000)).toBeCloseTo(1, 1);
    expect(Math.abs((edge[1] - middle[1]) / (tried.number('cup') * 1000) - 1)).toBeLessThan(0.02);
  });

  describe('warnings', () => {
    test('none at 12 % going to 11', () => expect(says({ now: '12 %', later: '11 %' })).toBe(''));
    test('too wet for any glue', () => expect(says({ now: '21 %' })).toContain('no glue can be relied on'));
    test('too wet for this one', () =>
      expect(says({ now: '13 %', glue: 'pva' })).toContain('this glue takes 12'));
    test('too dry', () => expect(says({ now: '5 %' })).toContain('asks for 6'));
    test('not as boats are built', () => expect(says({ now: '9 %' })).toContain('this holds 9'));
    test('beyond the coefficients', () =>
      expect(says({ now: '12 %', later: '16 %' })).toContain('a rough one'));
  });

  describe.each([
    ...starters,
    { id: 'no chines', table: withoutChines },
    { id: 'two chines', table: withTwoChines },
  ])('on the $id', ({ table }) => {
    test('every part has an answer and a row', () => {
      expect(lists(table).edges.length).toBeGreaterThan(1);
      const tried = tryCell(moisture, {}, table);
      expect(tried.issues).toEqual({});
      expect(tried.number('rubRail.change')).toBeLessThan(0);
      expect(tried.drawing).toBeDefined();
    });
  });

  testDrawings(moisture, {
    'as it stands': {},
    'quarter-sawn': { sawn: 'quarter' },
    plywood: { sawn: 'plywood', width: '1220 mm', thickness: '9 mm' },
    'close to the pith, soaked': { ...board, pith: '1 mm', now: '3 %', later: '30 %' },
    'thin and wide': { width: '3 m', thickness: '2 mm' },
    'thick and narrow': { width: '5 mm', thickness: '300 mm' },
  });

  test('the drawing carries the width now, and says what it becomes', () => {
    const drawing = provesItsDrawing(tryCell(moisture, { ...board, now: '8 %', later: '12 %' }).drawing);
    expect(measured(drawing, '200 mm')).toBeCloseTo(200, 9);
    expect(measured(drawing, '20 mm')).toBeCloseTo(20, 9);
    expect(drawing.shapes.some((shape) => 'text' in shape && shape.text.includes('202.4 mm'))).toBe(true);
  });

  test('the chart passes through the air in hand', () => {
    const tried = tryCell(moisture, { humidity: '60 %', air: '20 °C' });
    const at = tried.chart?.lines[0]?.points.find(([humidity]) => Math.abs(humidity - 0.6) < 1e-9);
    expect(at?.[1]).toBeCloseTo(tried.number('settled'), 12);
    expect(tried.chart?.points?.[0]?.y).toBe(tried.number('settled'));
  });
});
