/** What is asked further of a boat's quantities: one against another, and back from what is wanted to what brings it. */
import type { Aim } from '../kernel';
import { toTheEnd } from '../kernel/to-the-end';
import { type Issue, isIssue, issue, type KindId, kindOf, plainShown, writeInPicture } from '../measure';
import type { Graph } from '../notebook/graph/graph';
import { comesToInWords, foundBackwards, foundInWords } from '../notebook/sweep/backwards';
import { moversOf } from '../notebook/sweep/movers';
import type { SayNumber } from '../notebook/sweep/say-number';
import { valueIn } from '../notebook/sweep/span';
import { sweepFrom, swept } from '../notebook/sweep/sweep';
import { sweepChart } from '../notebook/sweep/sweep-chart';

/** Each quantity at a row of values of another; empty ends are left to the notebook. */
export interface AskedAgainst {
  readonly against: string;
  readonly from: string;
  readonly to: string;
}

/** A quantity that is to come to something by changing another. */
export interface AskedBack {
  readonly wanted: Aim;
  readonly entry: string;
  readonly by: string;
}

export type AskedFurther = AskedAgainst | AskedBack;

/** What is printed of one quantity, or why it can't be asked. */
export function askedFurther(graph: Graph, name: string, asked: AskedFurther): object | Issue {
  return 'against' in asked ? rowsAgainst(graph, name, asked) : foundBack(graph, name, asked);
}

const say: SayNumber = (value, kind, options) => writeInPicture(value, kind, plainShown, options);
const unitOf = (kind: KindId) => kindOf(kind).si;

function rowsAgainst(graph: Graph, result: string, { against, from, to }: AskedAgainst): object | Issue {
  const sweep = sweepFrom({ result, against, from, to, lines: '', at: '' }, graph, plainShown);
  if (isIssue(sweep)) return sweep;
  const lines = toTheEnd(swept(graph, sweep));
  const { rows = [], says } = sweepChart(sweep, lines, graph, [], say);
  const ys = new Map(lines.flatMap(({ runs }) => runs.flat().map(({ x, y }) => [x, y])));
  return {
    unit: unitOf(sweep.kind),
    against: { name: against, unit: unitOf(sweep.against.given.kind) },
    rows: rows.map((x) => [x, ys.get(x) ?? null]),
    says: [...sweep.cut.map((cut) => `Worked out no further: ${cut}.`), says],
  };
}

function foundBack(graph: Graph, result: string, { wanted, entry, by: name }: AskedBack): object | Issue {
  const of = graph.quantity(result)!; // who asks has looked whether it is there
  if (of.kind === 'choice') return issue(`${of.meaning} is a choice; only numbers can be worked backwards`);
  const by = moversOf(graph, result).find((one) => one.name === name);
  if (!by) return issue(`${result} does not hang on ${name} as things stand`);
  const value = valueIn(entry, of, graph);
  if (isIssue(value)) return value;
  const asked = { result, kind: of.kind, by, wanted, value };
  const found = toTheEnd(foundBackwards(graph, asked, plainShown));
  const write = found.writes.map((one) => ({
    entry: one.text,
    ...(one.comesTo !== null && { says: comesToInWords(one, asked, say) }),
  }));
  return {
    unit: unitOf(of.kind),
    wanted: value,
    by: { name, unit: unitOf(by.given.kind) },
    met: found.met.map(({ from, to }) => [from, to]),
    write,
    says: foundInWords(found, asked, say),
  };
}
