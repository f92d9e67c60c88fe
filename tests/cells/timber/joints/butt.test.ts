import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildHull, lists, offsetsOf, starter, starters } from '../../../../src/boat';
import { butt } from '../../../../src/cells/timber/joints/butt';
import { plainShown } from '../../../../src/measure';
import { withoutChines, withTwoChines } from '../../odd-boats';
import { measured, testDrawings } from '../../proofs';
import { tryCell } from '../../try-cell';

const nine = { thickness: '9 mm', jointLength: '450 mm', bay: '600 mm', siding: '19 mm' };
const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(butt, { ...nine, ...entries })
    .warnings.map((warning) => warning.says)
    .join(' ');

describe('how long', () => {
  test('a plate is as long as the table or the rule has it, whichever is longer', () => {
    // 9 mm is the row of 3/8 in: 10 in; the rule gives 216 mm. From memory: APA, Plywood Design Specification.
    const tried = tryCell(butt, { ...nine, kind: 'plate' });
    expect(tried.number('byRule')).toBeCloseTo(0.216, 12);
    expect(tried.number('plateLength')).toBeCloseTo(0.254, 12);
    expect(tried.number('strengthKept')).toBe(1);
    // On 3/4 in the table stops at 16 in, and the rule goes on.
    const thick = tryCell(butt, { ...nine, kind: 'plate', thickness: '3/4 in' });
    expect(thick.number('printedLength')).toBeCloseTo(16 * 0.0254, 12);
    expect(thick.number('plateLength')).toBeCloseTo(18 * 0.0254, 12);
  });

  test('a block is 24 thicknesses wide, never under 150 mm, and never so short that the printed plate tells against it', () => {
    expect(tryCell(butt, { ...nine, thickness: '4 mm' }).number('plateLength')).toBeCloseTo(0.15, 12);
    // 24 x 9 is 216 mm; nine tenths of the 10 in printed for 3/8 in are 229, by the centimetre 230.
    expect(tryCell(butt, nine).number('plateLength')).toBeCloseTo(0.23, 12);
  });

  test('a strap’s plies step down from twelve thicknesses a side, or up from the narrowest', () => {
    const strap = tryCell(butt, { ...nine, kind: 'strap', thickness: '6 mm' });
    expect(strap.number('plies')).toBe(2);
    expect(strap.number('plateLength')).toBeCloseTo(0.144, 12);
    expect(strap.number('narrowest')).toBeCloseTo(0.119, 12);
    const thin = tryCell(butt, { ...nine, kind: 'strap', thickness: '3 mm', plies: '3' });
    expect(thin.number('plateLength')).toBeCloseTo(0.125, 12);
    expect(thin.number('narrowest')).toBeCloseTo(0.075, 12);
    // Two faces, three plies, 100 mm wide on the mean.
    expect(thin.number('clothArea')).toBeCloseTo(2 * 3 * 0.1 * 0.45, 12);
  });
});

test('in inches a block is cut and planed to marks of the tape', () => {
  const inch = 0.0254;
  const block = (thickness: string) => tryCell(butt, { ...nine, thickness, soldIn: 'inch' });
  // Nine tenths of the 10 in printed for 3/8 in; the shortest screw of 1/2 in stays 1/8 in inside behind 1/4 in.
  expect(block('3/8 in').number('plateLength') / inch).toBeCloseTo(9, 9);
  expect(block('1/4 in').number('plateLength') / inch).toBeCloseTo(6, 9);
  expect(block('1/4 in').number('plateThickness') / inch).toBeCloseTo(3 / 8, 9);
});

describe('how strong', () => {
  test('nothing behind it: a quarter, as the Wood Handbook prints', () => {
    expect(tryCell(butt, { ...nine, kind: 'bare' }).number('strengthKept')).toBe(0.25);
  });

  test('a plate half as long, or half as thick, keeps half', () => {
    const plate = { ...nine, kind: 'plate' };
    expect(tryCell(butt, { ...plate, plateLength: '127 mm' }).number('strengthKept')).toBeCloseTo(0.5, 12);
    expect(tryCell(butt, { ...plate, plateThickness: '4.5 mm' }).number('strengthKept')).toBeCloseTo(0.5, 12);
  });

  test('what the glue line carries and how far it must reach are one equation', () => {
    const tried = tryCell(butt, nine);
    expect(
      tryCell(butt, {
        ...nine,
        plateLength: `${2 * tried.number('bondHalf')} m`,
      }).number('bondHolds'),
    ).toBeCloseTo(10e6, 0);
  });

  test('more glass never keeps less', () => {
    const kept = [1, 2, 3, 4].map((plies) =>
      tryCell(butt, { ...nine, kind: 'strap', plies: `${plies}` }).number('strengthKept'),
    );
    expect(kept).toStrictEqual(kept.toSorted((a, b) => a - b));
    expect(kept[0]).toBeLessThan(1);
    expect(kept[3]).toBe(1);
  });

  test('a longer plate never keeps less', () => {
    const length = fc.integer({ min: 0, max: 600 });
    fc.assert(
      fc.property(length, length, (a, b) => {
        const kept = (mm: number) =>
          tryCell(butt, { ...nine, kind: 'plate', plateLength: `${mm} mm` }).number('strengthKept');
        expect(kept(Math.max(a, b))).toBeGreaterThanOrEqual(kept(Math.min(a, b)));
      }),
      { seed: 19, numRuns: 25 },
    );
  });
});

test('screws stand in two rows a side, from both ends of the block, no farther apart than asked', () => {
  const tried = tryCell(butt, nine);
  // 450 less two gaps of 12 leaves 426; less 20 at both ends 386, in six spaces.
  expect(tried.number('tall')).toBeCloseTo(0.426, 12);
  expect(tried.number('perRow')).toBe(7);
  expect(tried.number('evenPitch')).toBeCloseTo(0.386 / 6, 12);
  expect(tried.number('screws')).toBe(28);
  // 9 + 9 - 3 mm; sold within it are 12 mm and 1/2 in
  expect(tried.number('insideBlock')).toBeCloseTo(0.015, 12);
  expect(tried.number('longestScrew')).toBeCloseTo(0.012, 12);
  expect(tried.words).toContain(
    'Its screws, 28 of 12 mm in two rows a side, 64.3 mm apart, only clamp while the glue sets and carry nothing: they reach 3 mm into the block, 20 mm from the panel’s end.',
  );
  const feet = { ...plainShown, length: 'feet' } as const;
  expect(tryCell(butt, nine, undefined, feet).words).toContain('Its screws, 28 of 1/2 in');
  expect(tryCell(butt, { ...nine, kind: 'plate' }).number('screws')).toBe(0);
});

describe('where', () => {
  test('midway between the frames, with room left on both sides', () => {
    const tried = tryCell(butt, { ...nine, framePosition: '2 m' });
    expect(tried.number('jointFrom')).toBeCloseTo((0.6 - 0.019) / 2, 12);
    expect(tried.number('room')).toBeCloseTo((0.6 - 0.019 - 0.23) / 2, 12);
    expect(tried.number('where')).toBeCloseTo(2.3, 12);
    expect(tried.number('acrossAft')).toBeCloseTo(1.7, 12);
    expect(tried.number('acrossForward')).toBeCloseTo(2.9, 12);
  });

  test('lists the bays of the boat’s own frames', () => {
    const dory = starter('ferry-dory')!;
    const hull = buildHull(offsetsOf(dory));
    const tried = tryCell(butt, {}, dory);
    hull.frames.forEach((frame) => {
      const next = hull.stations[frame.index + 1]!;
      expect(tried.number(`${frame.name}.freeBay`)).toBeCloseTo(next.x - frame.x - 0.019, 9);
      expect(tried.number(`${frame.name}.where`)).toBeCloseTo((frame.x + next.x) / 2, 9);
      expect(tried.number(`${frame.name}.fits`)).toBe(1);
      expect(tried.number(`${frame.name}.tall`)).toBeCloseTo(frame.girth('side') - 0.024, 9);
    });
  });

  test('leaves out a bay that is too short', () => {
    const tried = tryCell(butt, { plateLength: '750 mm' }, starter('class-skiff')!);
    expect(tried.number('frame1.fits')).toBe(0);
  });

  test.each([...starters.map(({ table }) => table), withoutChines, withTwoChines])(
    'has an answer for every panel of every boat',
    (table) => {
      for (const { id: skin } of lists(table).panels)
        for (const kind of ['block', 'plate', 'strap', 'bare'])
          expect(tryCell(butt, { skin, kind }, table).issues).toEqual({});
    },
  );
});

describe('warnings', () => {
  test('none as the cell proposes it', () => {
    expect(says({ kind: 'plate' })).toBe('');
    expect(says({ kind: 'strap', thickness: '6 mm' })).toBe('');
    expect(says({ thickness: '6 mm' })).toBe('');
  });
  test('a thick strap: three plies on 9 mm', () =>
    expect(says({ kind: 'strap' })).toMatch(/^The strap is 1.1 mm thick on each face[^|]*$/));
  test('a bay too short', () => expect(says({ bay: '200 mm' })).toContain('does not fit'));
  test('nothing behind it', () => expect(says({ kind: 'bare' })).toContain('keeps about 25 %'));
  test('a short plate', () => expect(says({ kind: 'plate', plateLength: '150 mm' })).toContain('254 mm'));
  test('a thin plate', () => expect(says({ kind: 'plate', plateThickness: '6 mm' })).toContain('thinner'));
  test('a block too thin for any screw', () =>
    expect(says({ thickness: '5 mm', plateThickness: '5 mm' })).toContain('take a thicker block'));
  test('no room for two rows', () => expect(says({ plateLength: '90 mm' })).toContain('no room'));
  test('too little glass', () => {
    const short = ' before the panel does: 3 are wanted.';
    expect(says({ kind: 'strap', plies: '1' })).toContain(`1 ply on each face parts${short}`);
    expect(says({ kind: 'strap', plies: '2' })).toContain(`2 plies on each face part${short}`);
  });
  test('a narrow strap', () =>
    expect(says({ kind: 'strap', plateLength: '150 mm' })).toContain('widest ply'));
  test('a thick strap', () => expect(says({ kind: 'strap', thickness: '12 mm' })).toContain('stand proud'));
});

const kinds = ['block', 'plate', 'strap', 'bare'] as const;
testDrawings(
  butt,
  Object.fromEntries(
    kinds.flatMap((kind) => [
      [kind, { kind }],
      [`${kind}, thick`, { kind, thickness: '25 mm', bay: '500 mm' }],
      [`${kind}, thin`, { kind, thickness: '3 mm', jointLength: '3 m' }],
    ]),
  ),
);

test.each(kinds)('the drawing of a %s measures what the figures say', (kind) => {
  const tried = tryCell(butt, { ...nine, kind });
  const mm = (key: string) => tried.number(key) * 1000;
  expect(measured(tried.drawing, '290.5 mm')).toBeCloseTo(mm('jointFrom'), 6);
  expect(measured(tried.drawing, '581 mm')).toBeCloseTo(mm('freeBay'), 6);
  if (kind === 'bare') return;
  expect(measured(tried.drawing, `${Math.round(mm('plateLength'))} mm`)).toBeCloseTo(mm('plateLength'), 6);
  expect(measured(tried.drawing, '426 mm')).toBeCloseTo(mm('tall'), 6);
});
