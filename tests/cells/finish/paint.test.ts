import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { starters } from '../../../src/boat';
import { paint } from '../../../src/cells/finish/paint';
import { paints } from '../../../src/trade/paints';
import { spans, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

/** Ten square metres of its own, a paint of half solids, nothing lost. */
const plain = {
  where: 'typed',
  ownArea: '10 m^2',
  solids: '50 %',
  film: '40 µm',
  coats: '2',
  handLoss: '0 %',
  unevenLoss: '0 %',
};
const job = (entries: Record<string, string> = {}) => tryCell(paint, { ...plain, ...entries });

describe('paint', () => {
  test('10 m² at 40 µm dry and half solids: 0.8 L a coat, 80 µm wet', () => {
    const tried = job();
    expect(tried.number('perCoat') * 1000).toBeCloseTo(0.8, 12);
    expect(tried.number('volume') * 1000).toBeCloseTo(1.6, 12);
    expect(tried.number('wetFilm') * 1e6).toBeCloseTo(80, 9);
    expect(tried.number('dryFilm') * 1e6).toBeCloseTo(80, 9);
  });

  test('thinner makes the wet film thicker and takes no more paint', () => {
    const [neat, thinned] = [job(), job({ thinner: '25 %' })];
    expect(thinned.number('volume')).toBeCloseTo(neat.number('volume'), 15);
    expect(thinned.number('wetFilm') / neat.number('wetFilm')).toBeCloseTo(1.25, 12);
    expect(thinned.number('thinnerVolume') * 1000).toBeCloseTo(0.4, 12);
  });

  test('what dries on the face is what was bought, less what was lost', () => {
    fc.assert(
      fc.property(
        fc.record({
          area: fc.integer({ min: 1, max: 60 }),
          solids: fc.integer({ min: 30, max: 70 }),
          hand: fc.integer({ min: 10, max: 30 }),
          uneven: fc.integer({ min: 0, max: 30 }),
          coats: fc.integer({ min: 1, max: 8 }),
        }),
        ({ area, solids, hand, uneven, coats }) => {
          const tried = job({
            ownArea: `${area} m^2`,
            solids: `${solids} %`,
            handLoss: `${hand} %`,
            unevenLoss: `${uneven} %`,
            coats: `${coats}`,
          });
          const dry = tried.number('volume') * (solids / 100) * (1 - hand / 100) * (1 - uneven / 100);
          expect(dry / (area * coats * 40e-6)).toBeCloseTo(1, 9);
          expect(1 - tried.number('lost')).toBeCloseTo((1 - hand / 100) * (1 - uneven / 100), 12);
        },
      ),
      { seed: 5, numRuns: 40 },
    );
  });

  test('takes the hull, outside, inside or both, and what is painted besides', () => {
    for (const { table } of starters) {
      const area = (where: string) => tryCell(paint, { where }, table).number('area');
      const hull = tryCell(paint, {}, table).number('outsideArea');
      expect(area('outside')).toBeCloseTo(hull, 12);
      expect(area('both')).toBeCloseTo(area('outside') + area('inside'), 12);
      expect(tryCell(paint, { where: 'inside', moreArea: '3 m^2' }, table).number('area')).toBeCloseTo(
        area('inside') + 3,
        12,
      );
    }
    // What is said of the inside when the resin is counted holds here too.
    expect(paint.inputs['insideArea']).toMatchObject({ from: 'resin.insideArea' });
  });

  test('another paint brings its own solids, film and coats; what is typed stays', () => {
    for (const { id, cells } of paints.rows) {
      const tried = tryCell(paint, { paint: id });
      expect(tried.number('solids')).toBe(cells.solids!.value);
      expect(tried.number('film')).toBe(cells.film!.value);
      expect(tried.number('coats')).toBe(cells.coats!.value);
      expect(tryCell(paint, { paint: id, coats: '3' }).number('coats')).toBe(3);
      expect(tried.inRow(id, 'volume')).toBe(tried.number('volume'));
    }
  });

  test('buys the tins that cost least, and says them', () => {
    // By hand: 1.6 L are 4 of 0.5 L at 72, 1 of 1 L with 2 of 0.5 L at 66, 2 of 1 L at 60, or 1 of 4 L at 100.
    const tried = job();
    expect(['small', 'middle', 'large', 'cost'].map((key) => tried.number(key))).toStrictEqual([0, 2, 0, 60]);
    expect(tried.number('leftOver') * 1000).toBeCloseTo(0.4, 9);
    expect(tried.words).toContain('Buy 2 tins of 1 L, for 60.00, and 2 roller covers; 400 mL will be left.');
    const more = job({ ownArea: '68 m^2', coats: '1' });
    expect(['small', 'middle', 'large'].map((key) => more.number(key))).toStrictEqual([1, 1, 1]);
    expect(more.words).toContain(
      'Buy 1 tin of 4 L, 1 of 1 L and 1 of 500 mL, for 148.00, and 7 roller covers',
    );
    expect(job({ ownArea: '50 m^2', coats: '1' }).words).toContain('Buy 1 tin of 4 L, for');
    expect(job({ ownArea: '0 m^2' }).words).toContain('There is nothing to paint.');
  });

  test('a cover does its face once, a fresh one for each coat', () => {
    expect(job({ ownArea: '10 m^2', coats: '3' }).number('rollers')).toBe(3);
    expect(job({ ownArea: '10.1 m^2', coats: '3' }).number('rollers')).toBe(6);
    expect(job({ ownArea: '0 m^2' }).number('rollers')).toBe(0);
  });

  test('refuses a shop that sells no tin', () => {
    const tried = job({ smallTin: '0 L', middleTin: '0 L', largeTin: '0 L' });
    expect(tried.issues['small']).toContain('at least one pack');
    expect(tried.number('volume') * 1000).toBeCloseTo(1.6, 12);
  });

  test('warns of varnish too thin for the sun, of much thinner and of little waste', () => {
    const says = (entries: Record<string, string>) => job({ handLoss: '15 %', ...entries }).warnings.length;
    expect(says({ paint: 'varnish', coats: '4' })).toBe(1);
    expect(says({ paint: 'varnish', coats: '5', thinner: '50 %' })).toBe(0);
    expect(says({ thinner: '21 %' })).toBe(1);
    expect(says({ handLoss: '9 %' })).toBe(1);
  });

  testDrawings(paint, {
    'as the boat stands': {},
    'one thick coat': { coats: '1', film: '500 µm' },
    'a dozen of varnish, thinned': { paint: 'varnish', coats: '12', thinner: '50 %' },
    'more coats than can be told apart': { coats: '25' },
  });
  test('its dimensions span what they say', () => {
    const { drawing } = job({ film: '50 µm', solids: '40 %', coats: '3' });
    expect(spans(drawing, '125 µm')[0]).toBeCloseTo(0.125, 9);
    expect(spans(drawing, '50 µm')[0]).toBeCloseTo(0.05, 9);
    expect(spans(drawing, '150 µm')[0]).toBeCloseTo(0.15, 9);
  });
});
