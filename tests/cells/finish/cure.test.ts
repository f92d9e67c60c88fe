import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { starters } from '../../../src/boat';
import { cure } from '../../../src/cells/finish/cure';
import { hardeners } from '../../../src/trade/hardeners';
import { isText } from '../../../src/drawing/shapes';
import { testDrawings } from '../proofs';
import { type Tried, tryCell } from '../try-cell';

const HOUR = 3600;
/** Steady 25 °C, so that all goes by the hardener's own times; a coat takes an hour, and one works round the clock. */
const warm = {
  told: 'steady',
  air: '25 °C',
  cold: '25 °C',
  startDay: 'monday',
  startHour: '8 h',
  tackFree: '7 h',
  window: '24 h',
  sandable: '24 h',
  cured: '6 d',
  workFrom: '0 h',
  workLasts: '24 h',
  coatTime: '1 h',
  sandTime: '4 h',
  fillCoats: '2',
  primerCoats: '1',
  paintCoats: '2',
  paintAfter: '3 d',
  primerRecoat: '20 h',
  recoat: '20 h',
  hard: '7 d',
};
const job = (entries: Record<string, string> = {}) => tryCell(cure, { ...warm, ...entries });
/** A word in a row of the table. */
const word = (tried: Tried, id: string, key: string): string => {
  const value = tried.inRow(id, key);
  if (typeof value !== 'string') throw new Error(`${id}.${key} is no word`);
  return value;
};
/** The jobs as `label: begins`, how. */
const listed = (entries: Record<string, string> = {}) => {
  const tried = job(entries);
  return tried.rows.map(
    ({ id, label }) => `${label}: ${word(tried, id, 'begins')}, ${word(tried, id, 'how')}`,
  );
};

describe('cure', () => {
  test('by hand: each coat eight hours after the one below, paint when the epoxy is three days old', () => {
    expect(listed()).toStrictEqual([
      'sealing: 8:00 on Mon, day 1, onto bare wood',
      'cloth: 16:00 on Mon, day 1, onto the tacky coat',
      'fill coat 1: 0:00 on Tue, day 2, onto the tacky coat',
      'fill coat 2: 8:00 on Tue, day 2, onto the tacky coat',
      // Laid at nine on Tuesday.
      'wash and sand: 9:00 on Wed, day 3, once hard enough',
      'primer 1: 9:00 on Fri, day 5, onto sanded epoxy',
      'paint 1: 6:00 on Sat, day 6, scuff first',
      'paint 2: 3:00 on Sun, day 7, scuff first',
      'turn over: 4:00 on Sun, day 14, once hard',
    ]);
    const tried = job();
    expect(tried.number('jobs')).toBe(9);
    expect(tried.number('missed')).toBe(0);
    expect(tried.number('lasts') / HOUR).toBeCloseTo(13 * 24 - 4, 9);
    const said = (keys: readonly string[]) => keys.map((key) => tried.all[key]);
    expect(said(['name', 'how', 'begins'])).toStrictEqual([
      'sealing',
      'onto bare wood',
      '8:00 on Mon, day 1',
    ]);
    expect(said(['recoatFrom', 'recoatUntil', 'sandFrom'])).toStrictEqual([
      '16:00 on Mon, day 1',
      '9:00 on Tue, day 2',
      '9:00 on Tue, day 2',
    ]);
    expect(said(['trimFrom', 'paintFrom', 'lastCoat', 'turnFrom'])).toStrictEqual([
      '0:00 on Tue, day 2',
      '9:00 on Fri, day 5',
      '3:00 on Sun, day 7',
      '4:00 on Sun, day 14',
    ]);
  });

  test('goes on from the work that is next', () => {
    expect(listed({ next: 'fill' })[0]).toBe('fill coat 1: 8:00 on Mon, day 1, as it stands');
    expect(listed({ next: 'sand' })).toStrictEqual([
      'wash and sand: 8:00 on Mon, day 1, once hard enough',
      'primer 1: 12:00 on Mon, day 1, onto sanded epoxy',
      'paint 1: 9:00 on Tue, day 2, scuff first',
      'paint 2: 6:00 on Wed, day 3, scuff first',
      'turn over: 7:00 on Wed, day 10, once hard',
    ]);
    expect(listed({ next: 'primer', primerCoats: '0', paintCoats: '0' })).toStrictEqual([
      'turn over: 8:00 on Mon, day 1, once hard',
    ]);
    // Without paint she is turned when the epoxy is through: laid at nine on Tuesday, and six days.
    expect(listed({ primerCoats: '0', paintCoats: '0' }).at(-1)).toBe(
      'turn over: 9:00 on Mon, day 8, once hard',
    );
    expect(job({ next: 'sand' }).all).toMatchObject({ trimFrom: 'not in this plan' });
  });

  test('one step that slips moves all that follow, and no step before', () => {
    const before = listed();
    const after = listed({ sandSlip: '48 h' });
    expect(after.slice(0, 4)).toStrictEqual(before.slice(0, 4));
    expect(after.slice(4, 6)).toStrictEqual([
      'wash and sand: 9:00 on Fri, day 5, once hard enough',
      'primer 1: 13:00 on Fri, day 5, onto sanded epoxy',
    ]);
    for (const slip of ['sealSlip', 'clothSlip', 'fillSlip', 'primerSlip', 'paintSlip'])
      expect(job({ [slip]: '10 h' }).number('lasts') - job().number('lasts')).toBeCloseTo(
        slip === 'sealSlip' ? 0 : 10 * HOUR,
        6,
      );
  });

  test('the coat that slips may be any of its kind, and the last where there are fewer', () => {
    const before = listed({ fillCoats: '3' });
    const second = listed({ fillCoats: '3', fillSlip: '10 h', fillSlipCoat: '2' });
    // Sealing, cloth and the first fill coat stand; the second and all after it move.
    expect(second.slice(0, 3)).toStrictEqual(before.slice(0, 3));
    expect(second[3]).not.toBe(before[3]);
    const last = listed({ fillCoats: '3', fillSlip: '10 h', fillSlipCoat: '3' });
    expect(last.slice(0, 4)).toStrictEqual(before.slice(0, 4));
    expect(last[4]).not.toBe(before[4]);
    expect(listed({ fillCoats: '3', fillSlip: '10 h', fillSlipCoat: '9' })).toStrictEqual(last);
    // Each kind has its own: here the third fill coat and the first paint.
    const both = { fillCoats: '3', fillSlip: '10 h', fillSlipCoat: '3', paintCoats: '2', paintSlip: '48 h' };
    expect(listed({ ...both, paintSlipCoat: '1' })).not.toStrictEqual(
      listed({ ...both, paintSlipCoat: '2' }),
    );
    expect(listed({ ...both, paintSlipCoat: '2' }).slice(0, 5)).toStrictEqual(last.slice(0, 5));
  });

  test('a coat that slips past the window waits until the one below is sanded', () => {
    // Cloth is laid at 17:00 on Monday and takes a coat unsanded for a day; 24 h after midnight on Tuesday is too late.
    expect(listed({ fillSlip: '24 h' })[2]).toBe('fill coat 1: 17:00 on Wed, day 3, wash and sand first');
    expect(listed({ fillSlip: '17 h' })[2]).toBe('fill coat 1: 17:00 on Tue, day 2, onto the tacky coat');
    expect(job({ fillSlip: '24 h' }).number('missed')).toBe(1);
    expect(
      job({ fillSlip: '24 h' })
        .warnings.map(({ says }) => says)
        .join(),
    ).toContain('too late for the one below: 1');
  });

  test('keeps to the builder’s hours and days', () => {
    const own = { workFrom: '17 h', workLasts: '3 h', startHour: '18 h', sandTime: '3 h' };
    expect(listed(own).slice(0, 3)).toStrictEqual([
      'sealing: 18:00 on Mon, day 1, onto bare wood',
      'cloth: 17:00 on Tue, day 2, onto the tacky coat',
      'fill coat 1: 17:00 on Wed, day 3, onto the tacky coat',
    ]);
    expect(listed({ ...warm, when: 'weekends' })[0]).toBe('sealing: 0:00 on Sat, day 1, onto bare wood');
    // Past midnight, and longer than the hours there are.
    expect(listed({ workFrom: '22 h', workLasts: '4 h', startHour: '23 h' }).slice(0, 2)).toStrictEqual([
      'sealing: 23:00 on Mon, day 1, onto bare wood',
      'cloth: 22:00 on Tue, day 2, onto the tacky coat',
    ]);
    expect(listed({ workFrom: '19 h', workLasts: '1 h', coatTime: '2 h' })[0]).toContain('19:00 on Mon');
  });

  test('half as warm a night as the rule has it takes as much longer, and cold hours count for nothing', () => {
    expect(job({ cold: '15 °C' }).number('byNight')).toBeCloseTo(2, 12);
    expect(job({ air: '35 °C' }).number('byDay')).toBeCloseTo(0.5, 12);
    // From nine in the morning, ten hours of day, and then fourteen more by day alone.
    const cold = job({ cold: '5 °C', dayFrom: '7 h', dayTo: '19 h' });
    expect(cold.number('coldHours') / HOUR).toBeCloseTo(12, 9);
    expect(cold.number('sandTimeOff') / HOUR).toBeCloseTo(10 + 12 + 12 + 12 + 2, 6);
    expect(cold.number('windowLasts') / HOUR).toBeCloseTo(48 - 7, 6);
    expect(cold.number('tackTime') / HOUR).toBeCloseTo(7, 6);
  });

  test('each begins when the one before lets it, in any days', () => {
    fc.assert(
      fc.property(
        fc.record({
          air: fc.integer({ min: 12, max: 32 }),
          fall: fc.integer({ min: 0, max: 15 }),
          told: fc.constantFrom('steady', 'swinging'),
          hardener: fc.constantFrom(...hardeners.rows.map(({ id }) => id)),
          when: fc.constantFrom('daily', 'weekends'),
          fillSlip: fc.integer({ min: 0, max: 40 }),
        }),
        ({ air, fall, told, hardener, when, fillSlip }) => {
          const tried = tryCell(cure, {
            air: `${air} °C`,
            cold: `${air - fall} °C`,
            told,
            hardener,
            when,
            fillSlip: `${fillSlip} h`,
          });
          expect(tried.issues).toStrictEqual({});
          const begins = tried.rows.map(({ id }) => dayHour(word(tried, id, 'begins')));
          expect(begins).toStrictEqual(begins.toSorted((a, b) => a - b));
          // Within the usual hours; the turning over needs none.
          for (const at of begins) expect(at % 24 >= 8 && at % 24 <= 20).toBe(true);
          const early = tried.rows.filter(({ id }, i) => {
            const below = tried.rows[i - 1];
            if (!below) return false;
            const at = (key: string) => dayHour(word(tried, below.id, key));
            const how = word(tried, id, 'how');
            return (
              (how === 'onto the tacky coat' && begins[i]! > at('recoatUntil') + 0.25) ||
              (how === 'wash and sand first' && begins[i]! < at('sandFrom') - 0.25)
            );
          });
          expect(early).toStrictEqual([]);
        },
      ),
      { seed: 13, numRuns: 40 },
    );
  });

  test('says that it never gets warm enough', () => {
    const tried = job({ air: '5 °C', cold: '4 °C' });
    expect(tried.issues['begins']).toContain('never gets so far');
    expect(tried.warnings.some(({ warning }) => warning.weight === 'stop')).toBe(true);
    expect(tried.number('coldHours') / HOUR).toBeCloseTo(24, 9);
  });

  test('a night may be heated, and a day run past midnight', () => {
    const heated = job({ air: '15 °C', cold: '25 °C', dayFrom: '7 h', dayTo: '19 h' });
    // From nine: ten hours at half the rate, and two by the stove.
    expect(heated.number('tackTime') / HOUR).toBeCloseTo(12, 6);
    expect(heated.warnings.map(({ says }) => says).join()).toContain('By night it is said to be warmer');
    const late = job({ air: '25 °C', cold: '15 °C', dayFrom: '12 h', dayTo: '6 h' });
    // Three hours of night from nine, worth one and a half, and five and a half of day.
    expect(late.number('tackTime') / HOUR).toBeCloseTo(8.5, 6);
  });

  test('has its own times of each hardener, and takes the coats of resin and paint', () => {
    for (const { id, cells } of hardeners.rows)
      expect(tryCell(cure, { hardener: id }).number('tackFree')).toBe(cells.tackFree!.value);
    expect(cure.inputs).toMatchObject({
      fillCoats: { from: 'resin.fillCoats' },
      paintCoats: { from: 'paint.coats' },
    });
  });

  test.each(starters.map(({ id, table }) => [id, table] as const))('has a plan on the %s', (_id, table) => {
    const tried = tryCell(cure, {}, table);
    expect(tried.issues).toStrictEqual({});
    expect(tried.number('epoxied')).toBe(1);
    expect(tried.number('coated')).toBe(1);
    expect(tried.warnings).toStrictEqual([]);
  });

  describe('its drawing', () => {
    testDrawings(cure, {
      'as the boat stands': {},
      'at weekends': { when: 'weekends' },
      'in the cold': { air: '14 °C', cold: '6 °C' },
      'from the paint on': { next: 'primer' },
      'many coats': { fillCoats: '10', paintCoats: '12', primerCoats: '3' },
    });

    test('names every job of a short plan, and the days', () => {
      const texts = job().drawing!.shapes.flatMap((shape) => (isText(shape) ? [shape.text] : []));
      for (const name of ['sealing', 'cloth', 'fill coat 1', 'wash and sand', 'primer 1', 'paint 2'])
        expect(texts).toContain(name);
      for (const day of ['Mon', 'Tue', 'Sun']) expect(texts).toContain(day);
      expect(job().drawing!.toScale).toBe(false);
    });

    test('says where the plan begins and ends', () => {
      expect(job().drawing!.says).toContain(
        'From sealing at 8:00 on Mon, day 1 to paint 2 at 3:00 on Sun, day 7',
      );
    });

    test('its bars are as long as the jobs last, and two versions share an hour', () => {
      // From eight to tack-free at four, open for seventeen hours more: 1.4 mm an hour.
      const widths = (of: Tried) =>
        of.drawing!.shapes.flatMap((shape) =>
          shape.shape === 'area' && shape.pen === 'thin'
            ? [Math.max(...shape.rings[0]!.map(([x]) => x)) - Math.min(...shape.rings[0]!.map(([x]) => x))]
            : [],
        );
      const [wet, open] = widths(job());
      expect(wet! / open!).toBeCloseTo(8 / 17, 9);
      expect(widths(job({ fillSlip: '60 h' }))[0]).toBeCloseTo(wet!, 9);
    });
  });
});

/** Hours since the first job's midnight, of `14:30 on Sat, day 2`. */
function dayHour(words: string): number {
  const [, hour = '', minute = '', day = ''] = /^(\d+):(\d+) on \w+, day (\d+)$/.exec(words) ?? [];
  return (Number(day) - 1) * 24 + Number(hour) + Number(minute) / 60;
}
