/** The buying list as the page and a spreadsheet show it: line by line under its shop, then what it comes to. */
import type { Instance } from '../../cells';
import {
  type BuyLine,
  buyLines,
  type LineId,
  type Shop,
  shops,
  soldAs,
} from '../../cells/buying/buy-list-lines';
import { isIssue } from '../../measure';
import type { Graph } from '../../notebook';

/** How a number of the cell is written, by its key. */
export type SayKey = (key: string) => string;

export interface ListedLine extends BuyLine {
  readonly id: LineId;
  /** How many, of what; and planned and paid, as written. */
  readonly many: string;
  readonly planned: string;
  readonly paid: string;
  readonly bought: boolean;
  /** Whether any of it is wanted. */
  readonly wanted: boolean;
}

/** The lines of every shop that has some, in the order of the errands. */
export function linesByShop(
  { name }: Instance,
  graph: Graph,
  say: SayKey,
): readonly { readonly shop: string; readonly sum: string; readonly lines: readonly ListedLine[] }[] {
  return (Object.keys(shops) as Shop[]).map((shop) => ({
    shop: shops[shop],
    sum: say(`${shop}Shop`),
    lines: buyLines
      .filter((line) => line.shop === shop)
      .map((line) => ({
        ...line,
        sold: soldAs(line, Number(graph.value(`${name}.${line.id}Buy`))),
        many: `${say(`${line.id}Buy`)} ${soldAs(line, Number(graph.value(`${name}.${line.id}Buy`)))}`,
        planned: say(`${line.id}Plan`),
        paid: say(`${line.id}Spent`),
        bought: graph.value(`${name}.${line.id}Got`) === 'yes',
        wanted: isSome(graph, `${name}.${line.id}Buy`),
      })),
  }));
}

function isSome(graph: Graph, name: string): boolean {
  const value = graph.value(name);
  return isIssue(value) || value !== 0;
}

/** Rows for a spreadsheet: plain numbers of money, one line a thing, and what it comes to below. */
export function listRows(instance: Instance, graph: Graph, say: SayKey): readonly (readonly string[])[] {
  const number = (key: string) => {
    const value = graph.value(`${instance.name}.${key}`);
    return typeof value === 'number' ? `${Math.round(value * 100) / 100}` : '';
  };
  return [
    ['Shop', 'Line', 'Buy', 'Of', 'Planned', 'State', 'Paid'],
    ...linesByShop(instance, graph, say).flatMap(({ shop, lines }) =>
      lines.map(({ id, label, sold, bought, wanted }) => [
        shop,
        label,
        number(`${id}Buy`),
        sold,
        number(`${id}Plan`),
        bought ? 'bought' : wanted ? 'to buy' : 'nothing to buy',
        number(`${id}Spent`),
      ]),
    ),
    ['', 'planned', '', '', number('planned'), '', number('spent')],
    ['', 'set aside for surprises', '', '', number('setAside'), '', ''],
    ['', 'in all', '', '', number('cost'), '', ''],
  ];
}
