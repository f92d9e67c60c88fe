import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { filler } from '../../../src/cells/finish/filler';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const says = (entries: Record<string, string>) =>
  tryCell(filler, entries)
    .warnings.map((one) => one.says)
    .join(' ');
/** Holes alone, nothing scraped off. */
const holes = { holes: '100', gapLength: '0 m', seamLength: '0 m', waste: '0 %' };

describe('filler', () => {
  test('a hole is the sum of thin discs between the head and the face', () => {
    for (const [head, recess, angle] of [
      [8, 2, 82],
      [5, 6, 60],
      [10, 0.5, 90],
    ] as const) {
      const tried = tryCell(filler, { head: `${head} mm`, recess: `${recess} mm`, angle: `${angle} deg` });
      const slope = Math.tan((angle * Math.PI) / 360);
      const discs = 20_000;
      let sum = 0;
      for (let i = 0; i < discs; i += 1)
        sum += (Math.PI * (head / 2 + ((i + 0.5) / discs) * recess * slope) ** 2 * recess) / discs;
      expect((tried.number('hole') * 1e9) / sum).toBeCloseTo(1, 7);
      expect(tried.number('mouth') * 1000).toBeCloseTo(head + 2 * recess * slope, 9);
    }
  });

  test('a hole bored straight is a cylinder, and its countersink is not asked', () => {
    const straight = { ...holes, shape: 'straight', head: '10 mm', recess: '4 mm' };
    expect(tryCell(filler, straight).number('inHoles') * 1e9).toBeCloseTo(100 * Math.PI * 25 * 4, 6);
  });

  test('gaps are filled whole, seams to half, and what stays is their sum', () => {
    const tried = tryCell(filler, {
      ...holes,
      holes: '0',
      gapLength: '3 m',
      gapWidth: '2 mm',
      gapDepth: '5 mm',
      seamLength: '4 m',
      seamWidth: '6 mm',
      seamDepth: '3 mm',
      waste: '50 %',
    });
    expect(tried.number('inGaps') * 1e6).toBeCloseTo(30, 9);
    expect(tried.number('inSeams') * 1e6).toBeCloseTo(36, 9);
    expect(tried.number('net') * 1e6).toBeCloseTo(66, 9);
    expect(tried.number('paste') * 1e6).toBeCloseTo(99, 9);
    expect(tried.number('deepest') * 1000).toBeCloseTo(5, 9);
  });

  test('a skim is its area times its film, takes its time and counts with the rest', () => {
    const tried = tryCell(filler, { ...holes, skimArea: '4 m^2', skimFilm: '0.5 mm', perArea: '10 min' });
    expect(tried.number('inSkim') * 1000).toBeCloseTo(2, 12);
    expect(tried.number('net')).toBeCloseTo(tried.number('inHoles') + 2e-3, 15);
    const without = tryCell(filler, holes);
    expect(tried.number('work') - without.number('work')).toBeCloseTo(2400, 9);
    expect(
      tryCell(filler, { ...holes, holes: '0', skimArea: '1 m^2', skimFilm: '3 mm' }).number('deepest'),
    ).toBe(0.003);
  });

  test('what is weighed into the pots makes up the paste, by volume and by weight', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('woodFlour', 'silica', 'glassBubbles', 'phenolicBubbles'),
        fc.integer({ min: 1, max: 3000 }),
        (kind, count) => {
          const tried = tryCell(filler, { filler: kind, holes: `${count}` });
          const n = (key: string) => tried.number(key);
          const poured = (n('resinEach') + n('hardenerEach')) * n('pots');
          expect(poured / n('epoxyMass')).toBeCloseTo(1, 9);
          expect((n('fillerEach') * n('pots')) / n('fillerMass')).toBeCloseTo(1, 9);
          const volume = poured / n('epoxyDensity') + n('fillerMass') / n('fillerDensity');
          expect(volume / n('paste')).toBeCloseTo(1, 9);
          expect(n('grains')).toBeCloseTo(n('fillerMass') / n('fillerDensity') / n('paste'), 9);
          expect(n('toBuy')).toBeCloseTo(poured / n('epoxyDensity'), 12);
          expect(n('looseEach') * n('bulk')).toBeCloseTo(n('fillerEach'), 12);
          expect(n('hardenerEach') / n('resinEach')).toBeCloseTo(n('hardenerPer100') / 100, 12);
        },
      ),
      { seed: 9, numRuns: 25 },
    );
  });

  test('so many pots that each is spread within six tenths of its life, and none is over the cup', () => {
    // 100 holes of 9 s are 15 min; 12 min of 20 are good.
    const slow = { ...holes, potLife: '20 min', air: '25 °C', perHole: '9 s', cup: '5 kg' };
    expect(tryCell(filler, slow).number('work')).toBeCloseTo(900, 9);
    expect(tryCell(filler, slow).number('byWork')).toBe(2);
    expect(tryCell(filler, slow).number('pots')).toBe(2);
    // Ten kelvin colder gives twice as long.
    expect(tryCell(filler, { ...slow, air: '15 °C' }).number('pots')).toBe(1);
    // A litre at 1.1 kg/L, 500 g to the cup.
    const much = tryCell(filler, {
      ...holes,
      holes: '0',
      gapLength: '10 m',
      gapWidth: '10 mm',
      gapDepth: '10 mm',
      fillerShare: '0 %',
      epoxyDensity: '1.1 kg/L',
      cup: '500 g',
      potLife: '8 h',
    });
    expect(much.number('epoxy') * 1000).toBeCloseTo(1, 9);
    expect(much.number('byCup')).toBe(3);
    expect(much.number('pots')).toBe(3);
  });

  test('each filler goes in by its own share', () => {
    const share = (kind: string) => tryCell(filler, { filler: kind }).number('fillerShare');
    expect(share('silica')).toBeCloseTo(0.075, 12);
    expect(share('phenolicBubbles')).toBeCloseTo(0.2, 12);
  });

  test('tells of one pot, of several, and of nothing to fill', () => {
    expect(tryCell(filler, { ...holes, holes: '10' }).words).toMatch(/^Mix .* of paste in 1 pot\. Weigh /);
    expect(tryCell(filler, { ...holes, holes: '900' }).words).toMatch(/ pots\. Into each weigh /);
    expect(tryCell(filler, { ...holes, holes: '0' }).words).toBe('There is nothing to fill.');
    expect(tryCell(filler, { ...holes, holes: '0' }).number('pots')).toBe(0);
  });

  describe('warnings', () => {
    test.each([
      ['spheres that bear', { filler: 'glassBubbles', bears: 'load' }, 'Hollow spheres crush'],
      ['too dry', { fillerShare: '200 %', fillerDensity: '250 kg/m^3' }, 'dry and crumbles'],
      ['deep', { recess: '11 mm' }, 'in layers'],
      ['few scrapings', { waste: '19 %' }, 'With 19 % on top'],
    ])('%s', (_what, entries, wanted) => expect(says(entries)).toContain(wanted));
    test.each(['woodFlour', 'silica', 'glassBubbles', 'phenolicBubbles'])(
      'none with %s under paint',
      (kind) => expect(says({ filler: kind })).toBe(''),
    );
  });

  describe('drawing', () => {
    testDrawings(filler, {
      'as the boat stands': {},
      'a small head far down': { head: '3 mm', recess: '30 mm', shape: 'straight' },
      'a large head, hardly sunk': { head: '30 mm', recess: '0.1 mm' },
    });
    test('its dimensions span what they say', () => {
      const drawing = provesItsDrawing(
        tryCell(filler, { head: '9 mm', recess: '2 mm', angle: '90 deg' }).drawing,
      );
      expect(measured(drawing, '13 mm')).toBeCloseTo(13, 9);
      expect(measured(drawing, '2 mm')).toBeCloseTo(2, 9);
    });
  });
});
