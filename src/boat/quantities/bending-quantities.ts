/** The modulus of each wood in bending alone, and the edge along which each long part lies. */
import { layerRatio } from '../../trade/bend-grades';
import { citation, look } from '../../trade/table';
import { bendingRaise, timber } from '../../trade/timber';
import type { Layout } from './lists';
import type { Derived } from './quantity';

/** The same on every boat and without one: the cells that ask for them bring them. */
export const bendingModuli = timber.rows.flatMap(({ id, label }): Derived[] => {
  const printed = look(timber, id, 'modulus');
  if (!printed) return [];
  return [
    {
      name: `timber.${id}.bendingModulus`,
      kind: 'stress',
      meaning: `modulus of ${label} in bending alone, at 12 % moisture`,
      source: `${citation(printed)}, raised by a tenth; ${citation(bendingRaise)}`,
      from: () => printed.value * bendingRaise.value,
    },
    {
      name: `timber.${id}.layerRatio`,
      kind: 'number',
      meaning: `least radius over thickness of a glued layer of ${label}`,
      source: layerRatio(id).source,
      from: () => layerRatio(id).value,
    },
  ];
});

const lies = new WeakMap<Layout, readonly Derived[]>();

/** `chineLog.edge` and the like: along which edge a part lies, of two chines the lower; without a chine the sheer. */
export function partEdges(layout: Layout): readonly Derived[] {
  const before = lies.get(layout);
  if (before) return before;
  const { edges } = layout;
  const options = edges.map(({ name, label }) => ({ id: name, label }));
  const edgeOf = {
    keelson: edges[0],
    chineLog: edges.length > 2 ? edges[1] : edges.at(-1),
    sheerClamp: edges.at(-1),
    rubRail: edges.at(-1),
  };
  const all = Object.entries(edgeOf).flatMap(([part, edge]): Derived[] =>
    edge
      ? [
          {
            name: `${part}.edge`,
            kind: 'choice',
            meaning: `edge of the hull along which it lies`,
            source: 'custom of the trade',
            options,
            from: () => edge.name,
          },
        ]
      : [],
  );
  lies.set(layout, all);
  return all;
}
