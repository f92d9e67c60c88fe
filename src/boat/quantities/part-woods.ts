/** Of what wood a part is: a choice of the builder's, among those that the tables know. */
import { plywood } from '../../trade/plywood';
import { timber } from '../../trade/timber';
import type { Declared, Option } from './quantity';
import type { PartKind } from './scantlings';

const optionsOf = { timber: rowsOf(timber), plywood: rowsOf(plywood) } as const;

function rowsOf(table: { readonly rows: readonly Option[] }): readonly Option[] {
  return table.rows.map(({ id, label }) => ({ id, label }));
}

export const woodOf = (part: PartKind): Declared => ({
  name: `${part.id}.${part.of}`,
  kind: 'choice',
  label: `${part.of === 'timber' ? 'Wood' : 'Plywood'} of the ${part.label}`,
  brief: part.of === 'timber' ? 'Wood' : 'Plywood',
  meaning: `${part.of} of the ${part.label}`,
  source: 'common practice, no source',
  preset: part.material,
  options: optionsOf[part.of],
});
