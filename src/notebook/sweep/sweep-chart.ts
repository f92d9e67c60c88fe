/** A sweep as the data of a graph, with what it shows in words. */
import type { Chart, ChartLine } from '../../cells';
import { FIRST_LOOK } from '../../kernel/sampling';
import { upToComma, wordsOf } from '../../measure';
import type { Graph } from '../graph/graph';
import type { SweptLimit } from './limits-along';
import { limitsDrawn, limitsInWords } from './limits-drawn';
import type { SayNumber } from './say-number';
import type { Gap, Sweep, SweptLine } from './sweep';

/** Stretches between the rows of the table. */
const ROWS = 10;
/** Letters of a name beside an axis, as many as fit a phone. */
const LONGEST_NAME = 34;

/**
 * @param graph one version's, for the point at which it stands
 * @param limits as the lines were followed along them
 */
export function sweepChart(
  sweep: Sweep,
  lines: readonly SweptLine[],
  graph: Graph,
  limits: readonly SweptLimit[],
  say: SayNumber,
): Chart {
  const { against, span, kind } = sweep;
  const x = { label: nameOfAxis(against.name, against.given.label), kind: against.given.kind };
  const y = { label: nameOfAxis(sweep.result), kind };
  const now = graph.value(sweep.result);
  const at = graph.value(against.name);
  const isSeen = typeof now === 'number' && typeof at === 'number' && at >= span.low && at <= span.high;
  const points = isSeen ? [{ x: at, y: now, label: `now ${say(now, kind)}` }] : [];
  return {
    title: titleOf(sweep),
    says: lines
      .flatMap((line) => [inWords(sweep, line, say), ...limitsInWords(sweep, line, limits, say)])
      .join(' '),
    x: { ...x, from: span.low, to: span.high },
    y,
    lines: lines.map((line) => lineOf(sweep, line, say)),
    ...limitsDrawn(sweep, lines, limits, say),
    points,
    rows: rowsOf(sweep, isSeen ? at : null, lines),
  };
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

const titleOf = ({ meaning, against }: Sweep): string =>
  `${capital(upToComma(meaning))}, by ${lower(upToComma(against.given.label ?? against.given.meaning))}`;
const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

function nameOfAxis(name: string, label?: string): string {
  const own = label !== undefined && label.length <= LONGEST_NAME ? label : null;
  return own ?? capital(wordsOf(name.split('.').at(-1)!)); // a name has a last part
}

function lineOf(
  { against, span, family, result }: Sweep,
  { value, runs }: SweptLine,
  say: SayNumber,
): ChartLine {
  const begins: number[] = [];
  let count = 0;
  for (const run of runs) {
    if (count > 0) begins.push(count);
    count += run.length;
  }
  const points = runs.flat().map(({ x, y }) => [x, y!] as const); // a run has values
  const name = family && value !== null ? say(value, family.of.given.kind) : nameOfAxis(result);
  return {
    name: against.name === result ? 'itself' : name,
    points,
    ...(span.whole && { as: 'dots' as const }),
    ...(begins.length > 0 && !span.whole && { begins }),
    ...(value !== null && { end: name }),
  };
}

function rowsOf({ span }: Sweep, now: number | null, lines: readonly SweptLine[]): number[] {
  const { low, high, whole } = span;
  const looked = lines.flatMap(({ runs }) => runs.flat().map(({ x }) => x));
  const even = Array.from({ length: FIRST_LOOK + 1 }, (_, i) => low + ((high - low) * i) / FIRST_LOOK);
  const wholes = [...new Set(looked)].toSorted((a, b) => a - b);
  const every = whole ? Math.max(1, Math.ceil(wholes.length / 2 / ROWS)) : FIRST_LOOK / ROWS;
  const rows = (whole ? wholes : even).filter((_, i) => i % every === 0);
  return [...new Set(now === null ? rows : [...rows, now])].toSorted((a, b) => a - b);
}

/** What a line does, in a sentence or two. */
function inWords({ against, kind, family }: Sweep, { value, runs, gaps }: SweptLine, say: SayNumber): string {
  const x = (at: number) => say(at, against.given.kind);
  const y = (at: number) => say(at, kind);
  const who = family && value !== null ? `At ${say(value, family.of.given.kind)}: ` : '';
  const all = runs.flat() as { x: number; y: number }[];
  const none = gaps.map((gap) => gapInWords(gap, x)).join(' ');
  const [first] = all;
  const last = all.at(-1);
  if (!first || !last) return `${who}${none}`.trim();
  const least = all.reduce((a, b) => (b.y < a.y ? b : a));
  const most = all.reduce((a, b) => (b.y > a.y ? b : a));
  const rises = all.every((one, i) => i === 0 || one.y >= all[i - 1]!.y);
  const falls = all.every((one, i) => i === 0 || one.y <= all[i - 1]!.y);
  const inSteps = all.filter((one, i) => i > 0 && one.y === all[i - 1]!.y).length > all.length / 2;
  const going = `from ${y(first.y)} at ${x(first.x)} to ${y(last.y)} at ${x(last.x)}`;
  const does =
    least.y === most.y
      ? `it stays ${y(least.y)} from ${x(first.x)} to ${x(last.x)}`
      : rises || falls
        ? `it ${rises ? 'rises' : 'falls'}${inSteps ? ' in steps' : ''} ${going}`
        : `it is least, ${y(least.y)}, at ${x(least.x)}, and most, ${y(most.y)}, at ${x(most.x)}`;
  const sentence = `${who}${who === '' ? capital(does) : does}.`;
  return none === '' ? sentence : `${sentence} ${none}`;
}

const gapInWords = ({ from, to, why }: Gap, x: (at: number) => string): string =>
  `No value ${from === to ? `at ${x(from)}` : `from ${x(from)} to ${x(to)}`}: ${why}.`;

/** Whether there is anything to draw. */
export const isDrawn = (chart: Chart): boolean => chart.lines.some(({ points }) => points.length > 0);
