import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { starters } from '../../../src/boat';
import { plainInstance, type Values } from '../../../src/cells';
import { settingUp } from '../../../src/cells/frames/setting-up';
import { strongback } from '../../../src/cells/frames/strongback';
import { distance, type Vec3 } from '../../../src/kernel';
import { isIssue, plainShown } from '../../../src/measure';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { createGraph } from '../../../src/notebook/graph/graph';
import { withoutChines, withTwoChines } from '../odd-boats';
import { noted, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';
import { runSteps } from '../alone';

const says = (entries: Record<string, string>) =>
  tryCell(settingUp, { ...true3, ...entries }).warnings.map((one) => one.says);
/** A frame 600 mm out, 2.3 m abaft the nail, 550 mm up: typed, so that no hull enters. */
const true3 = { out: '600 mm', ahead: '2300 mm', height: '550 mm', depth: '500 mm' };

/** A frame as it was put: its marks in space, and what a tape, a plumb line and a level read of them; m. */
interface Put {
  readonly out: number;
  readonly ahead: number;
  readonly height: number;
  readonly swing: number;
  readonly forward: number;
  readonly toPort: number;
}

function readings({ out, ahead, height, swing, forward, toPort }: Put): Values {
  const nail: Vec3 = [ahead, 0, 0];
  const mark = (side: 1 | -1): Vec3 => [
    forward + side * out * Math.sin(swing),
    toPort + side * out * Math.cos(swing),
    height,
  ];
  return {
    frame: 'frame3',
    portLength: distance(nail, mark(1)),
    starboardLength: distance(nail, mark(-1)),
    offString: toPort,
    lean: 0,
    plumbHeight: 0.5,
    portHeight: height,
    starboardHeight: height,
    out,
    ahead,
    height,
    depth: 0.5,
    alongTolerance: 0.003,
    acrossTolerance: 0.0015,
  };
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('setting up', () => {
  test('across it takes half of what is accepted along, until another is written', () => {
    expect(tryCell(settingUp).number('halfAlong')).toBeCloseTo(0.0015, 12);
    expect(tryCell(settingUp, { alongTolerance: '5 mm' }).number('acrossTolerance')).toBeCloseTo(0.0025, 12);
    expect(
      tryCell(settingUp, { alongTolerance: '5 mm', acrossTolerance: '1 mm' }).number('acrossTolerance'),
    ).toBeCloseTo(0.001, 12);
  });

  test('tells of any set-up what it was: swing, place along and across', () => {
    const put = fc.record({
      out: between(0.15, 1.2),
      ahead: between(0.4, 6),
      height: between(0.05, 1.5),
      swing: between(-0.3, 0.3),
      forward: between(-0.1, 0.1),
      toPort: between(-0.1, 0.1),
    });
    fc.assert(
      fc.property(put, (set) => {
        const found = runSteps(settingUp, readings(set));
        if (isIssue(found)) throw new Error(found.issue);
        // Lengths of some metres squared and taken from each other: 1e-15 over a half-breadth of 0.15 m.
        expect(Math.abs(Number(found['swing']) - set.swing)).toBeLessThan(1e-10);
        expect(Math.abs(Number(found['portAhead']) - set.out * Math.sin(set.swing))).toBeLessThan(1e-10);
        expect(Math.abs(Number(found['centreAhead']) - set.forward)).toBeLessThan(1e-10);
      }),
    );
  });

  test('a frame put on its line reads true, whatever its place', () => {
    fc.assert(
      fc.property(between(0.15, 1.2), between(0.4, 6), between(0.05, 1.5), (out, ahead, height) => {
        const found = runSteps(settingUp, readings({ out, ahead, height, swing: 0, forward: 0, toPort: 0 }));
        if (isIssue(found)) throw new Error(found.issue);
        expect(Number(found['worst'])).toBeLessThan(1e-6);
      }),
    );
  });

  test('a swing of 10 mm at the sheer: the lengths of the closed form √(D² + b² + h² ∓ 2 D b sin φ)', () => {
    const [out, ahead, height, sine] = [0.6, 2.3, 0.55, 0.01 / 0.6];
    const square = out ** 2 + ahead ** 2 + height ** 2;
    const tried = tryCell(settingUp, {
      ...true3,
      portLength: `${Math.sqrt(square - 2 * ahead * out * sine) * 1000} mm`,
      starboardLength: `${Math.sqrt(square + 2 * ahead * out * sine) * 1000} mm`,
    });
    expect(tried.number('portAhead')).toBeCloseTo(0.01, 10);
    expect(tried.number('centreAhead')).toBeCloseTo(0, 10);
    expect(tried.warnings.map((one) => one.says)).toStrictEqual([
      'The frame is swung, its port side forward: turn it about its centre mark, port side 10 mm aft and starboard side 10 mm forward.',
    ]);
  });

  test('a frame beside the string and square gives unequal lengths, and is not called swung', () => {
    const found = runSteps(
      settingUp,
      readings({ out: 0.6, ahead: 2.3, height: 0.55, swing: 0, forward: 0, toPort: 0.02 }),
    );
    if (isIssue(found)) throw new Error(found.issue);
    expect(Number(found['difference'])).toBeGreaterThan(0.009);
    expect(Number(found['portAhead'])).toBeCloseTo(0, 12);
    // Had the string not been looked at, the same lengths would read as a swing.
    const unseen = runSteps(settingUp, {
      ...readings({ out: 0.6, ahead: 2.3, height: 0.55, swing: 0, forward: 0, toPort: 0.02 }),
      offString: 0,
    });
    if (isIssue(unseen)) throw new Error(unseen.issue);
    expect(Number(unseen['portAhead'])).toBeLessThan(-0.005);
  });

  test('a lean over a level of 600 mm is taken over the whole depth', () => {
    const tried = tryCell(settingUp, { ...true3, lean: '6 mm', plumbHeight: '600 mm' });
    expect(tried.number('footAhead')).toBeCloseTo(0.005, 12);
  });

  describe('says which way to move what, and nothing of what is within', () => {
    test('nothing where all is true, or within what is accepted', () => {
      expect(says({})).toStrictEqual([]);
      expect(says({ offString: '1.4 mm', lean: '2.9 mm', portHeight: '551 mm' })).toStrictEqual([]);
      expect(tryCell(settingUp, { ...true3, lean: '2.9 mm' }).words).toContain('stands true');
    });
    test.each([
      [{ offString: '5 mm', portLength: '2436 mm', starboardLength: '2439 mm' }, '5 mm to starboard'],
      [{ offString: '-5 mm', portLength: '2439 mm', starboardLength: '2436 mm' }, '5 mm to port'],
      [{ portLength: '2430 mm', starboardLength: '2430 mm' }, 'mm aft.'],
      [{ portLength: '2450 mm', starboardLength: '2450 mm' }, 'mm forward.'],
      [{ portLength: '2433 mm', starboardLength: '2443 mm' }, 'its port side forward'],
      [{ portLength: '2443 mm', starboardLength: '2433 mm' }, 'its starboard side forward'],
      [{ lean: '4 mm' }, 'bring that 4 mm aft'],
      [{ lean: '-4 mm' }, 'bring that 4 mm forward'],
      [{ portHeight: '552 mm' }, 'port sheer mark stands 2 mm above'],
      [{ starboardHeight: '552 mm' }, 'starboard sheer mark stands 2 mm above'],
      [{ portHeight: '552 mm', starboardHeight: '552 mm' }, '2 mm too high'],
      [{ portHeight: '548 mm', starboardHeight: '548 mm' }, '2 mm too low'],
    ])('%j: %s', (entries, wanted) => {
      expect(says(entries).join(' | ')).toContain(wanted);
      expect(tryCell(settingUp, { ...true3, ...entries }).words).toContain('Not true yet');
    });
  });

  test('lengths that no triangle has are told, in the place of a number', () => {
    const apart = tryCell(settingUp, { ...true3, portLength: '2000 mm', starboardLength: '3500 mm' });
    expect(apart.issues['portAhead']).toContain('differ by more than the two marks lie apart');
    const short = tryCell(settingUp, { ...true3, portLength: '700 mm', starboardLength: '700 mm' });
    expect(short.issues['portAhead']).toContain('too short to reach from one height to the other');
    const beside = tryCell(settingUp, {
      ...true3,
      portLength: '820 mm',
      starboardLength: '820 mm',
      offString: '-400 mm',
    });
    expect(beside.issues['portAhead']).toContain('farther off the string');
  });

  test('with the jig beside it, every frame of every boat reads true until something is typed', () => {
    for (const table of [...starters.map((one) => one.table), withoutChines, withTwoChines]) {
      const catalogue = catalogueOf(table, [plainInstance(strongback), plainInstance(settingUp)]);
      const frames = table.stations.slice(1, -1).map(({ name }) => name.replace(' ', ''));
      for (const frame of frames) {
        const graph = createGraph({
          catalogue: () => catalogue,
          entries: () => ({ 'settingUp.frame': frame }),
          shown: plainShown,
        });
        expect([frame, graph.value('settingUp.out')]).toStrictEqual([
          frame,
          graph.value(`strongback.${frame}.sheerOut`),
        ]);
        expect(graph.value('settingUp.trueLength')).toBeCloseTo(
          Number(graph.value(`strongback.${frame}.nailLength`)),
          12,
        );
        expect(graph.value('settingUp.worst')).toBeLessThan(1e-6);
      }
    }
  });

  describe('drawing', () => {
    testDrawings(settingUp, {
      true: true3,
      'all out': {
        ...true3,
        portLength: '2430 mm',
        starboardLength: '2450 mm',
        lean: '9 mm',
        offString: '7 mm',
        portHeight: '560 mm',
      },
      'the other way': {
        ...true3,
        portLength: '2450 mm',
        starboardLength: '2430 mm',
        lean: '-9 mm',
        offString: '-7 mm',
      },
      'narrow and near': { ...true3, out: '80 mm', ahead: '200 mm', height: '100 mm' },
      'wide and far': { ...true3, out: '1.2 m', ahead: '7 m' },
    });

    test('says by how many times it overdraws the error, and draws it so', () => {
      const { drawing } = tryCell(settingUp, {
        ...true3,
        lean: '0 mm',
        portLength: '2433.5 mm',
        starboardLength: '2442.5 mm',
      });
      const times = Number(/drawn (\d+) times too large/.exec(noted(provesItsDrawing(drawing)))?.[1]);
      const frame = drawing!.shapes.find((shape) => shape.shape === 'line' && shape.part === 'frame3');
      if (frame?.shape !== 'line') throw new Error('the frame is not drawn');
      const [port, starboard] = [frame.points[0]!, frame.points.at(-1)!];
      const tried = tryCell(settingUp, { ...true3, portLength: '2433.5 mm', starboardLength: '2442.5 mm' });
      expect((port[0] - starboard[0]) / 2).toBeCloseTo(times * tried.number('portAhead') * 1000, 6);
      expect(times).toBeGreaterThan(5);
    });
  });
});
