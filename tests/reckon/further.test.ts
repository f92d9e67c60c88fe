/** What is asked further on the command line: rows against a number, and back from what is wanted; by the rule of the scarf. */
import { describe, expect, test } from 'vitest';
import { issue } from '../../src/measure';
import { reckon } from '../../src/reckon/reckon';
import '../kernel/near';

const run = (...args: string[]) => reckon(['ferry-dory', ...args], () => issue('there is no such file'));
/** The member of the taper, where nothing is refused. */
function taper(...args: string[]) {
  const { out, err } = run('scarf.taper', ...args);
  expect(err).toBe('');
  return (JSON.parse(out) as Record<string, unknown>)['scarf.taper'] as {
    readonly unit: string;
    readonly rows: readonly (readonly [number, number | null])[];
    readonly met: readonly (readonly [number, number])[];
    readonly write: readonly { readonly entry: string; readonly says?: string }[];
    readonly says: readonly string[];
  };
}
function refused(...args: string[]): string {
  const { out, err, code } = run(...args);
  expect({ out, code }).toStrictEqual({ out: '', code: 2 });
  return err;
}

describe('against a number', () => {
  test('a taper is the thickness times the slope, at a row of slopes and where it stands', () => {
    const { unit, rows, says } = taper(
      '--against',
      'scarf.slope',
      '--from',
      '6',
      '--to',
      '12',
      '--set',
      'scarf.thickness=18 mm',
    );
    expect(unit).toBe('m');
    expect(rows.map(([slope]) => slope)).toContain(8);
    expect([rows[0]![0], rows.at(-1)![0]]).toStrictEqual([6, 12]);
    for (const [slope, length] of rows) expect(length).toBeNear(0.018 * slope, 1e-12);
    expect(says).toStrictEqual(['It rises from 108 mm at 1 in 6 to 216 mm at 1 in 12.']);
  });

  test('never beyond what the entry takes, and says so', () => {
    const { rows, says } = taper('--against', 'scarf.slope', '--to', '1 in 500');
    expect(rows.at(-1)![0]).toBeLessThan(500);
    expect(says[0]).toMatch(/^Worked out no further: .* is at most 1 in /);
  });
});

describe('backwards', () => {
  const at18 = ['--set', 'scarf.thickness=18 mm', '--by', 'scarf.slope'];
  test('the slope of a taper is the taper over the thickness', () => {
    const { met, write, says } = taper('--wanted', '180 mm', ...at18);
    expect(met).toHaveLength(1);
    expect(met[0]![0]).toBeNear(10, 1e-9);
    expect(write).toStrictEqual([{ entry: '1 in 10' }]);
    expect(says[0]).toBe('It is 180 mm at 1 in 10.');
  });

  test('as a builder writes it, with what that gives', () => {
    expect(taper('--wanted', '200 mm', ...at18).write).toStrictEqual([
      { entry: '1 in 11.1', says: 'gives 199.8 mm, not 200 mm' },
    ]);
  });

  test('a limit is met over a stretch; what can’t be had is met nowhere', () => {
    const { met, says } = taper('--wanted', 'at most 180 mm', ...at18);
    expect(met).toHaveLength(1);
    expect(met[0]![1]).toBeNear(10, 1e-6);
    expect(says[0]).toContain('It is at most 180 mm from ');
    const none = taper('--wanted', '90 m', ...at18);
    expect(none.met).toStrictEqual([]);
    expect(none.says[0]).toMatch(/^No: nowhere from /);
  });
});

test.each([
  [['--from', '6'], '--from and --to are the ends of --against'],
  [['--against'], '--against has nothing after it'],
  [['--against', 'scarf.slope', '--wanted', '6'], 'ask one at a time'],
  [['--against', 'scarf.slope', '--against', 'scarf.slope'], 'said twice'],
  [['--wanted', '180 mm'], 'write --by NAME'],
  [['--by', 'scarf.slope'], "write --wanted 'ENTRY'"],
  [['scarf.slope', '--wanted', '180 mm', '--by', 'scarf.slope'], 'one quantity at a time'],
  [['--wanted', '18 kg', '--by', 'scarf.slope'], 'a mass'],
  [['--against', 'scarf.slop'], 'scarf.slope'],
  [['--against', 'rubRail.thickness'], 'does not hang on'],
  [['--wanted', '180 mm', '--by', 'rubRail.thickness'], 'does not hang on'],
  [['--against', 'scarf.slope', '--from', '12', '--to', '6'], 'the other way round'],
])('%j is refused in a sentence', (args, says) => {
  expect(refused('scarf.taper', ...args)).toContain(says);
});
