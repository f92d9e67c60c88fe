import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat, starter, starters } from '../../../src/boat';
import { plainInstance } from '../../../src/cells';
import { stemCheck } from '../../../src/cells/frames/stem-check';
import { strongback } from '../../../src/cells/frames/strongback';
import { distance, type Vec3 } from '../../../src/kernel';
import { isIssue, plainShown, type Shown } from '../../../src/measure';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { createGraph } from '../../../src/notebook/graph/graph';
import { withoutChines, withTwoChines } from '../odd-boats';
import { measured, noted, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';
import { runSteps } from '../alone';

const typed = { cornerOut: '500 mm', ahead: '4 m', rise: '0 mm' };
const tried = (entries: Record<string, string>) => tryCell(stemCheck, { ...typed, ...entries });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Lengths taped from the corners to a stem that stands there, m. */
function lengths(cornerOut: number, [x, y, z]: Vec3) {
  const stem: Vec3 = [x, y, z];
  return {
    portLength: distance([0, cornerOut, 0], stem),
    starboardLength: distance([0, -cornerOut, 0], stem),
  };
}
const plan = { accepted: 0.003175, alongAccepted: 0.006 };

describe('stem', () => {
  test('along the boat it takes twice what is accepted of the difference, until another is written', () => {
    expect(tryCell(stemCheck).number('twiceAccepted')).toBeCloseTo(0.006, 12);
    expect(tryCell(stemCheck, { accepted: '4 mm' }).number('alongAccepted')).toBeCloseTo(0.008, 12);
  });

  test('tells of any stem where it stands: off the centreline and along', () => {
    const put = fc.record({
      cornerOut: between(0.15, 1.2),
      ahead: between(1, 8),
      rise: between(-0.5, 0.8),
      off: between(-0.3, 0.3),
      forward: between(-0.1, 0.1),
    });
    fc.assert(
      fc.property(put, ({ cornerOut, ahead, rise, off, forward }) => {
        const found = runSteps(stemCheck, {
          ...plan,
          cornerOut,
          ahead,
          rise,
          ...lengths(cornerOut, [ahead + forward, off, rise]),
        });
        if (isIssue(found)) throw new Error(found.issue);
        // Lengths of up to 8 m squared, over a half-breadth of 0.15 m.
        expect(Math.abs(Number(found['off']) - off)).toBeLessThan(1e-9);
        expect(Math.abs(Number(found['tooFar']) - forward)).toBeLessThan(1e-9);
      }),
    );
  });

  test('a stem on the string and a transom askew: the same lengths, read the other way', () => {
    fc.assert(
      fc.property(between(0.15, 1.2), between(1, 8), between(-0.4, 0.4), (cornerOut, ahead, askew) => {
        const stem: Vec3 = [ahead, 0, 0.2];
        const corner = (side: 1 | -1): Vec3 => [
          side * cornerOut * Math.sin(askew),
          side * cornerOut * Math.cos(askew),
          0,
        ];
        const found = runSteps(stemCheck, {
          ...plan,
          cornerOut,
          ahead,
          rise: 0.2,
          portLength: distance(corner(1), stem),
          starboardLength: distance(corner(-1), stem),
        });
        if (isIssue(found)) throw new Error(found.issue);
        expect(Math.abs(Number(found['skew']) - cornerOut * Math.sin(askew))).toBeLessThan(1e-9);
      }),
    );
  });

  test('by hand: half-breadth 500 mm, lengths 4027 and 4035 mm: (4035² − 4027²) / 2000 = 32.2 mm to port', () => {
    const one = tried({ portLength: '4027 mm', starboardLength: '4035 mm' });
    expect(one.number('off') * 1000).toBeCloseTo((4035 ** 2 - 4027 ** 2) / 2000, 9);
    expect(one.words).toContain('stands 32.2 mm to port: move it 32.2 mm to starboard');
    expect(one.warnings[0]?.says).toContain('its port corner');
  });

  test('to the other side the words turn round', () => {
    const one = tried({ portLength: '4035 mm', starboardLength: '4027 mm' });
    expect(one.words).toContain('stands 32.2 mm to starboard: move it 32.2 mm to port');
    expect(one.warnings[0]?.says).toContain('its starboard corner');
  });

  test('lengths that differ by 3 mm, or by 1/8 in on a tape in inches, are accepted, by more are not', () => {
    const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '' };
    for (const [shown, least, more] of [
      [plainShown, '3 mm', '3.1 mm'],
      [feet, '1/8 in', '9/64 in'],
    ] as const) {
      const off = (by: string) =>
        tryCell(
          stemCheck,
          { ...typed, portLength: '4031 mm', starboardLength: `4031 mm + ${by}` },
          demoBoat,
          shown,
        );
      expect(off(least).words).toContain('accepted as true');
      expect(off(least).warnings).toStrictEqual([]);
      expect(off(more).words).toContain('to port');
    }
  });

  test('what the accepted difference hides grows as the stern narrows', () => {
    const wide = tried({ portLength: '4031 mm', starboardLength: '4031 mm' });
    expect(wide.number('acceptedOff')).toBeCloseTo((0.003 * 4.031) / 1, 12);
    const narrow = tried({ cornerOut: '100 mm' });
    expect(narrow.warnings.map((one) => one.says).join(' ')).toContain('trust the string');
  });

  test.each([
    ['4045 mm', 'farther forward'],
    ['4010 mm', 'farther aft'],
  ])('both lengths %s: the stem stands %s than the plan', (length, wanted) => {
    const one = tried({ portLength: length, starboardLength: length });
    expect(one.warnings.map(({ says }) => says).join(' ')).toContain(wanted);
    expect(one.number('off')).toBe(0);
  });

  test('lengths that no triangle has are told, in the place of a number', () => {
    expect(tried({ portLength: '3 m', starboardLength: '5 m' }).issues['off']).toContain('no triangle');
    expect(tried({ portLength: '0.5 m', starboardLength: '0.5 m', rise: '1 m' }).issues['tooFar']).toContain(
      'too short to reach',
    );
  });

  test('with the jig beside it, every boat reads true until something is typed', () => {
    for (const table of [...starters.map((one) => one.table), withoutChines, withTwoChines]) {
      const graph = createGraph({
        catalogue: () => catalogueOf(table, [plainInstance(strongback), plainInstance(stemCheck)]),
        entries: () => ({}),
        shown: plainShown,
      });
      expect(graph.value('stemCheck.off')).toBe(0);
      expect(graph.value('stemCheck.tooFar')).toBeCloseTo(0, 9);
      expect(graph.value('stemCheck.ahead')).toBe(graph.value('strongback.stemAhead'));
    }
  });

  describe('drawing', () => {
    testDrawings(stemCheck, {
      true: typed,
      'to port': { ...typed, portLength: '4027 mm', starboardLength: '4035 mm' },
      'to starboard': { ...typed, portLength: '4035 mm', starboardLength: '4027 mm' },
      'far off': { ...typed, portLength: '3.7 m', starboardLength: '4.4 m' },
      punt: { ...typed, cornerOut: '490 mm', ahead: '3180 mm' },
    });

    test('spans the corners as it says, and overdraws the error by the factor it states', () => {
      const { drawing } = tried({ portLength: '4027 mm', starboardLength: '4035 mm' });
      expect(measured(drawing, '1000 mm')).toBe(1000);
      const times = Number(/drawn (\d+) times/.exec(noted(drawing!))?.[1]);
      const stem = drawing!.shapes.find((shape) => shape.shape === 'mark' && shape.part === 'stem');
      if (stem?.shape !== 'mark') throw new Error('the stem is not marked');
      // Port lies below, since the boat lies upside down.
      expect(-stem.at[1]).toBeCloseTo((times * (4035 ** 2 - 4027 ** 2)) / 2000, 6);
    });
  });

  test('the dory’s corners are her transom’s, inside the skin', () => {
    const graph = createGraph({
      catalogue: () =>
        catalogueOf(starter('ferry-dory')!, [plainInstance(strongback), plainInstance(stemCheck)]),
      entries: () => ({}),
      shown: plainShown,
    });
    // 500 mm by the table, to the outside of 6 mm sides that flare by 20° or so.
    expect(graph.value('stemCheck.cornerOut')).toBeGreaterThan(0.493);
    expect(graph.value('stemCheck.cornerOut')).toBeLessThan(0.495);
  });
});
