/**
 * The tables of woods as quantities: `timber.sitkaSpruce.modulus`, `plywood.okoume.density`.
 */
import { plywood } from '../trade/plywood';
import { citation, type TradeTable } from '../trade/table';
import { timber } from '../trade/timber';
import type { Derived } from './quantity';

/** A number that the source does not give has no quantity. */
export function tradeQuantities(): readonly Derived[] {
  return woods;
}

const woods: readonly Derived[] = [...constantsOf(timber), ...constantsOf(plywood)];

function constantsOf<Column extends string>(table: TradeTable<Column>): Derived[] {
  const keys = Object.keys(table.columns) as Column[];
  return table.rows.flatMap((row) =>
    keys.flatMap((key): Derived[] => {
      const cited = row.cells[key];
      if (!cited) return [];
      const { kind, meaning } = table.columns[key];
      return [
        {
          name: `${table.id}.${row.id}.${key}`,
          kind,
          meaning: `${meaning} of ${row.label}`,
          source: citation(cited),
          from: () => cited.value,
        },
      ];
    }),
  );
}
