/** A table of the trade as quantities, one for each number that its source gives: `timber.sitkaSpruce.modulus`. */
import { citation, type TradeTable } from '../../trade/table';
import type { Derived } from './quantity';

export function constantsOf<Column extends string>(table: TradeTable<Column>): Derived[] {
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
