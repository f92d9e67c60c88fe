import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batch } from '../../../src/cells/finish/batch';
import { filler } from '../../../src/cells/finish/filler';
import { cells } from '../../../src/cells/all';
import { demoBoat } from '../../../src/boat';
import { plainShown } from '../../../src/measure';
import { standing } from '../../../src/notebook/graph/standing';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

/** Twenty minutes as the label tells them, no pot too small. */
const calm = { air: '25 °C', labelAt: '25 °C', labelLife: '20 min', goodFor: '60 %' };
const says = (entries: Record<string, string>) =>
  tryCell(batch, entries)
    .warnings.map((one) => one.says)
    .join(' ');

describe('batch', () => {
  test('is the lesser of what the pot holds and of what is spread in time', () => {
    // 12 min of 20 are good; at 4 min a square metre that is 3 m², 0.9 kg at 300 g/m².
    const job = { ...calm, pace: '4 min', takes: '300 g/m^2' };
    expect(tryCell(batch, { ...job, most: '500 g' }).number('largest')).toBeCloseTo(0.5, 12);
    const slow = tryCell(batch, { ...job, most: '5 kg' });
    expect(slow.number('spread')).toBeCloseTo(0.9, 12);
    expect(slow.number('largest')).toBeCloseTo(0.9, 12);
    expect(slow.words).toContain('one pair of hands spreads no more');
    expect(tryCell(batch, { ...job, most: '500 g' }).words).toContain('more in a cup would heat itself');
    expect(tryCell(batch, { ...job, pot: 'tray', most: '500 g' }).words).toContain(
      'more at once would heat itself',
    );
  });

  test('fillets go by the metre', () => {
    const tried = tryCell(batch, {
      ...calm,
      work: 'fillets',
      pace: '2 min',
      perMetre: '50 g',
      most: '5 kg',
      mass: '1.2 kg',
    });
    // 12 min at 2 min a metre are 6 m, 300 g.
    expect(tried.number('largest')).toBeCloseTo(0.3, 12);
    expect(tried.number('batches')).toBe(4);
    expect(tried.number('runs')).toBeCloseTo(6, 9);
    expect(tried.number('covers')).toBe(0);
    expect(tried.number('spreading')).toBeCloseTo(720, 9);
  });

  test('all batches make up the whole, and none is over the largest nor out of time', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('seal', 'wet', 'fill', 'fillets'),
        fc.integer({ min: 1, max: 20_000 }),
        fc.integer({ min: 5, max: 35 }),
        fc.integer({ min: 1, max: 10 }),
        (work, grams, celsius, hours) => {
          const tried = tryCell(batch, {
            work,
            mass: `${grams} g`,
            air: `${celsius} °C`,
            within: `${hours} h`,
          });
          const n = (key: string) => tried.number(key);
          expect((n('batches') * n('batch')) / n('mass')).toBeCloseTo(1, 9);
          expect(n('batch')).toBeLessThanOrEqual(n('largest') * (1 + 1e-5));
          expect(n('spreading')).toBeLessThanOrEqual(n('workable') * (1 + 1e-5));
          expect((n('batches') - 1) * n('largest')).toBeLessThan(n('mass'));
          expect(n('resin') + n('hardenerMass')).toBeCloseTo(n('batch'), 12);
          expect(n('hardenerMass') / n('resin')).toBeCloseTo(n('hardenerPer100') / 100, 9);
          // One pair of hands fewer would be late.
          expect(n('alone')).toBeGreaterThan((n('hands') - 1) * n('within'));
          expect(n('alone') / n('hands')).toBeLessThanOrEqual(n('within') * (1 + 1e-5));
          expect(n('together')).toBeLessThanOrEqual(n('alone') + 1e-9);
        },
      ),
      { seed: 3, numRuns: 60 },
    );
  });

  test('smaller pots of a fast hardener and in heat; a tray takes more', () => {
    const most = (entries: Record<string, string>) => tryCell(batch, entries).number('most') * 1000;
    expect(most({})).toBeCloseTo(350, 9);
    expect(most({ hardener: 'fast' })).toBeCloseTo(150, 9);
    expect(most({ air: '28 °C' })).toBeCloseTo(150, 9);
    expect(most({ pot: 'tray' })).toBeCloseTo(800, 9);
    expect(most({ pot: 'tray', air: '28 °C' })).toBeCloseTo(250, 9);
    expect(tryCell(batch, { most: '100 g', pot: 'tray' }).number('usualMost') * 1000).toBeCloseTo(800, 9);
    expect(most({ measures: 'inch' }) / 28.349523125).toBeCloseTo(12, 9);
    expect(most({ measures: 'inch', pot: 'tray', hardener: 'fast' }) / 28.349523125).toBeCloseTo(8, 9);
  });

  test('each hardener brings its own pot life, and the filler takes the same', () => {
    const life = (entries: Record<string, string>) => {
      const { graph } = standing(() => demoBoat, wholeCatalogue, {
        entries: () => entries,
        shown: plainShown,
      })().value;
      return ['batch.labelLife', 'filler.potLife', 'filler.pot', 'batch.potLife'].map((name) =>
        Number(graph.value(name)),
      );
    };
    expect(cells.map(({ id }) => id)).toContain(filler.id);
    for (const [hardener, minutes] of [
      ['fast', 10],
      ['medium', 20],
      ['slow', 40],
    ] as const) {
      const [label, ofFiller, inPot, potLife] = life({ 'shop.hardener': hardener });
      expect(label).toBeCloseTo(minutes * 60, 9);
      expect(ofFiller).toBeCloseTo(minutes * 60, 9);
      expect(inPot).toBeCloseTo(potLife!, 9);
    }
    // A label that tells it at 15 °C: at 25 °C half as long.
    expect(life({ 'batch.labelLife': '30 min', 'batch.labelAt': '15 °C' })[1]).toBeCloseTo(900, 9);
  });

  test('tells of one batch, of several, of more hands, and of nothing to spread', () => {
    expect(tryCell(batch, { mass: '200 g' }).words).toMatch(/^Mix one batch of /);
    expect(tryCell(batch, { mass: '200 g' }).words).toContain('One pair of hands is done in');
    expect(tryCell(batch, { within: '30 min' }).words).toMatch(/it takes \d+ pairs of hands/);
    expect(tryCell(batch, { mass: '0 g' }).words).toBe('There is nothing to spread.');
    expect(tryCell(batch, { mass: '0 g' }).number('batches')).toBe(0);
  });

  describe('warnings', () => {
    test.each([
      ['gone before it is spread', { hardener: 'fast', air: '35 °C' }, 'goes off before it is spread'],
      ['too much in a cup', { most: '501 g' }, 'With 501 g in a cup it heats itself'],
      ['a hot cup', { air: '28 °C', most: '350 g' }, 'is the most for a cup'],
      ['too much for a tray', { pot: 'tray', most: '900 g' }, 'the most that is mixed for a tray'],
      ['a deep tray', { pot: 'tray', trayLength: '100 mm', trayWidth: '100 mm' }, 'that is a pot again'],
      ['cold', { air: '14 °C' }, 'resin is stiff'],
      ['too warm', { air: '36 °C' }, 'too warm to be laid up'],
      ['hardly stirred', { mixing: '50 s' }, 'never cures'],
    ])('%s', (_what, entries, wanted) => expect(says(entries)).toContain(wanted));
    test.each([{}, { pot: 'tray' }, { hardener: 'fast' }, { hardener: 'slow' }])(
      'none with %o in a mild shed',
      (entries) => expect(says(entries)).toBe(''),
    );
  });

  describe('drawing', () => {
    testDrawings(batch, {
      'a cup': {},
      'a tray': { pot: 'tray' },
      'next to nothing in it': { mass: '1 g' },
      'a narrow cup, brimming': { cupWidth: '20 mm', most: '5 kg' },
    });
    test('its dimensions span what they say', () => {
      // 314.159 mL in a cup of 10 cm stand 40 mm deep.
      const drawing = provesItsDrawing(
        tryCell(batch, { mass: '314.159265 g', epoxyDensity: '1000 kg/m^3', cupWidth: '100 mm' }).drawing,
      );
      expect(measured(drawing, '100 mm')).toBeCloseTo(100, 9);
      expect(measured(drawing, '40 mm deep')).toBeCloseTo(40, 6);
    });
  });
});
