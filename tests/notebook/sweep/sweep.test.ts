/** A number drawn against another over the graph, and the way back: against closed forms. */
import { describe, expect, test } from 'vitest';
import type { SweepAsk } from '../../../src/boat';
import { isIssue, type KindId, plainShown, writeInPicture } from '../../../src/measure';
import { moversOf } from '../../../src/notebook/sweep/movers';
import { foundBackwards, foundInWords } from '../../../src/notebook/sweep/backwards';
import type { Backwards } from '../../../src/notebook/sweep/wanted';
import { type Sweep, sweepFrom, swept } from '../../../src/notebook/sweep/sweep';
import { sweepChart } from '../../../src/notebook/sweep/sweep-chart';
import { bench, derived, given } from '../small-graph';
import '../../kernel/near';

const board = () =>
  bench(
    [
      given('scarf.thickness', 'plank.thickness', { min: '6 mm', max: '40 mm', label: 'Thickness' }),
      given('plank.thickness', '18 mm', { min: '2 mm', max: '100 mm' }),
      given('scarf.slope', '8', { kind: 'ratio', min: '4', max: '20', label: 'Slope' }),
      given('scarf.boards', '3', { kind: 'count', min: '1', max: '9' }),
    ],
    [
      derived('scarf.taper', (read) => read.number('scarf.thickness') * read.number('scarf.slope')),
      // An arch over the thickness, greatest at 20 mm.
      derived('scarf.arch', (read) => 1 - (100 * (read.number('scarf.thickness') - 0.02)) ** 2, 'share'),
      derived(
        'scarf.layers',
        (read) => Math.ceil(read.number('scarf.thickness') / 0.006 - 1e-9) + read.number('scarf.boards'),
        'count',
      ),
      derived(
        'scarf.only',
        (read) => {
          const thickness = read.number('scarf.thickness');
          return thickness < 0.01 ? { issue: 'the board is too thin to plane' } : 1 / thickness;
        },
        'number',
      ),
    ],
  );
const ask = (part: Partial<SweepAsk>): SweepAsk => ({
  result: 'scarf.taper',
  against: 'scarf.thickness',
  from: '',
  to: '',
  lines: '',
  at: '',
  ...part,
});
const say = (value: number, kind: KindId) => writeInPicture(value, kind, plainShown);
function end<T>(steps: Generator<number, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
const of = (part: Partial<SweepAsk>, graph = board().graph): Sweep => {
  const sweep = sweepFrom(ask(part), graph, plainShown);
  if (isIssue(sweep)) throw new Error(sweep.issue);
  return sweep;
};
const why = (part: Partial<SweepAsk>): string => {
  const sweep = sweepFrom(ask(part), board().graph, plainShown);
  return isIssue(sweep) ? sweep.issue : 'it can be drawn';
};
const drawn = (part: Partial<SweepAsk>, graph = board().graph) => {
  const sweep = of(part, graph);
  return sweepChart(sweep, end(swept(graph, sweep)), graph, [], say);
};

describe('a sweep', () => {
  test('runs over what the entry takes, with the present point and a table of even rows', () => {
    const chart = drawn({});
    expect([chart.x.from, chart.x.to]).toStrictEqual([0.006, 0.04]);
    for (const [x, y] of chart.lines[0]!.points) expect(y).toBeNear(8 * x, 1e-12);
    expect(chart.points).toStrictEqual([{ x: 0.018, y: 0.144, label: 'now 144 mm' }]);
    expect(chart.rows).toHaveLength(12);
    for (const x of chart.rows!) expect(chart.lines[0]!.points.some(([at]) => at === x)).toBe(true);
    expect(chart.says).toBe('It rises from 48 mm at 6 mm to 320 mm at 40 mm.');
  });

  test('over a number behind a link, which is held to its own limits and the cell’s', () => {
    const chart = drawn({ against: 'plank.thickness', from: '10 mm', to: '300 mm' });
    expect(of({ against: 'plank.thickness', to: '300 mm' }).cut).toStrictEqual([
      'plank thickness as given is at most 100 mm',
    ]);
    expect(chart.x.to).toBe(0.1);
    // The cell takes no more than 40 mm: beyond it there is no value, and it says why.
    expect(chart.lines[0]!.points.at(-1)![0]).toBeNear(0.04, 0, 1e-3);
    expect(chart.says).toContain('must be at most 40 mm');
  });

  test('about the number now, where its entry takes far more, and nothing is told as cut that nobody asked for', () => {
    // 18 mm: from half of it to twice; the entry takes 2 to 100 mm and more.
    const wide = bench(
      [given('scarf.thickness', '18 mm', { min: '1 mm', max: '3 m' })],
      [derived('scarf.taper', (read) => 8 * read.number('scarf.thickness'))],
    );
    const sweep = of({}, wide.graph);
    expect(sweep.span).toMatchObject({ low: 0.009, high: 0.036 });
    expect(sweep.cut).toStrictEqual([]);
    expect(of({ from: '2 m' }, wide.graph).span).toMatchObject({ low: 2, high: 3 });
    expect(of({ to: '4 mm' }, wide.graph).span.low).toBeNear(0.002, 1e-12);
  });

  test('has a line for each value of a second number, named at its end', () => {
    const chart = drawn({ lines: 'scarf.slope', at: '6 or 8 or 12' });
    expect(chart.lines.map(({ end: name, points }) => [name, points.at(-1)![1] / 0.04])).toStrictEqual([
      ['6', expect.closeTo(6, 9)],
      ['8', expect.closeTo(8, 9)],
      ['12', expect.closeTo(12, 9)],
    ]);
    expect(of({ lines: 'scarf.slope' }).family?.values).toStrictEqual([6, 8, 10]);
    // A radius of 10802 mm stands between 8 and 14 m, or nearly.
    const bend = bench(
      [given('bend.radius', '10802 mm'), given('bend.thickness', '18 mm')],
      [derived('bend.share', (read) => read.number('bend.thickness') / read.number('bend.radius'), 'share')],
    );
    const asked = { result: 'bend.share', against: 'bend.thickness', lines: 'bend.radius' };
    expect(of(asked, bend.graph).family?.values).toStrictEqual([7.8, 10.802, 14]);
    expect(of({ lines: 'scarf.boards', result: 'scarf.layers' }).family?.values).toStrictEqual([2, 3, 4]);
  });

  test('goes in steps where it does, and is of whole numbers where they are counted', () => {
    const chart = drawn({ result: 'scarf.layers' });
    expect(chart.lines[0]!.begins).toHaveLength(6);
    expect(chart.says).toMatch(/^It rises in steps from 4 at 6 mm to 10 at 40 mm\.$/);
    const counted = drawn({ result: 'scarf.layers', against: 'scarf.boards' });
    expect(counted.lines[0]).toMatchObject({ as: 'dots' });
    expect(counted.lines[0]!.points.map(([x]) => x)).toStrictEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });

  test('leaves a gap where there is no value, and says why', () => {
    const chart = drawn({ result: 'scarf.only' });
    expect(chart.lines[0]!.points[0]![0]).toBeNear(0.01, 0, 1e-4);
    expect(chart.says).toContain('the board is too thin to plane');
  });

  test('says where it is least and most', () => {
    expect(drawn({ result: 'scarf.arch' }).says).toMatch(
      /^It is least, .*, at 40 mm, and most, 100 %, at 20 mm\.$/,
    );
  });

  test('that can’t be drawn says why', () => {
    expect(why({ result: 'no.such' })).toBe('there is no number "no.such" on this boat; choose another');
    expect(why({ against: 'scarf.boards' })).toContain('does not hang on');
    expect(why({ from: '30 mm', to: '20 mm' })).toContain('the other way round');
    expect(why({ from: 'thick' })).toContain('thick');
    expect(why({ lines: 'scarf.thickness' })).toContain('another number');
    expect(why({ lines: 'scarf.slope', at: '8 or 99' })).toContain('does not take');
    expect(why({ lines: 'scarf.slope', at: '4 or 5 or 6 or 7 or 8 or 9 or 10' })).toContain('6 lines');
  });
});

describe('backwards', () => {
  const back = (result: string, value: number, more: Partial<Backwards> = {}, graph = board().graph) => {
    const by = moversOf(graph, result).find(({ name }) => name === 'scarf.thickness')!;
    const kind = graph.quantity(result)!.kind;
    const asked: Backwards = { result, kind, by, wanted: 'exactly', value, ...more };
    const found = end(foundBackwards(graph, asked, plainShown));
    return {
      found,
      writes: found.writes.map(({ value: written }) => written),
      says: foundInWords(found, asked, say),
    };
  };

  test('one answer: the thickness of a taper is the taper over the slope', () => {
    const { writes, says } = back('scarf.taper', 0.2);
    expect(writes).toStrictEqual([0.025]);
    expect(says).toStrictEqual([
      'It is 200 mm at 25 mm.',
      'The least it can be is 48 mm, at 6 mm; the most is 320 mm, at 40 mm.',
    ]);
  });

  test('none: what lies beyond the range of the entry', () => {
    const { writes, says } = back('scarf.taper', 0.4);
    expect(writes).toStrictEqual([]);
    expect(says[0]).toBe('No: nowhere from 6 mm to 40 mm is it 400 mm.');
  });

  test('all of them, and where it turns', () => {
    // 1 - (100 x - 2)² = 3/4 at x = 15 mm and 25 mm.
    const { writes, says } = back('scarf.arch', 0.75);
    expect(writes).toStrictEqual([0.015, 0.025]);
    expect(says[0]).toBe('It is 75 % at 15 mm and at 25 mm: 2 answers.');
    expect(says[1]).toContain('the most is 100 %, at 20 mm, where it turns');
  });

  test('of a limit, from where to where, with the number to write within it', () => {
    const { found, writes } = back('scarf.arch', 0.75, { wanted: 'at least' });
    expect(found.met).toHaveLength(1);
    expect(found.met[0]!.from).toBeNear(0.015, 0, 1e-9);
    expect(writes).toStrictEqual([0.018]);
    const { writes: thick } = back('scarf.only', 30, { wanted: 'at most' });
    // 1/30 m = 33.333 mm; no thinner, to the tenth.
    expect(thick).toStrictEqual([0.0334]);
  });

  test('a size that is sold: from where to where it stays the same', () => {
    const { found, says } = back('scarf.layers', 7);
    expect(found.met).toHaveLength(1);
    expect(found.met[0]!.from).toBeNear(0.018, 0, 1e-6);
    expect(found.met[0]!.to).toBeNear(0.024, 0, 1e-6);
    expect(says[0]).toMatch(/^It is 7 from 18 mm to 24 mm\.$/);
    expect(back('scarf.layers', 7.5).says[1]).toMatch(/^At 24 mm it steps from 7 to 8/);
  });

  test('says where there is no value, and why', () => {
    expect(back('scarf.only', 50).says.at(-1)).toContain('the board is too thin to plane');
  });
});
