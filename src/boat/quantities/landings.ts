/** Where the skin lands: along each edge of the hull the long timber that lies there, and the panel screwed to it. */
import type { Layout } from './lists';
import type { Derived, Option } from './quantity';

/** Timbers that carry the skin's edges. */
export const landingTimbers: readonly Option[] = [
  { id: 'chineLog', label: 'chine log' },
  { id: 'sheerClamp', label: 'sheer clamp' },
  { id: 'keelson', label: 'keelson' },
];

const made = new WeakMap<Layout, readonly Derived[]>();

/** `chine.landsOn` and `chine.panel` and the like. Cells that bring them share one list a layout. */
export function landings(layout: Layout): readonly Derived[] {
  const before = made.get(layout);
  if (before) return before;
  const { edges, panels } = layout;
  const last = edges.length - 1;
  const panelOptions = panels.map(({ name, label }) => ({ id: name, label }));
  const all = edges.flatMap(({ name, label }, index): Derived[] => {
    const timber = index === 0 ? 'keelson' : index === last ? 'sheerClamp' : 'chineLog';
    const panel = panels[Math.min(index, panels.length - 1)]; // one above each edge but the sheer
    const lands: Derived = {
      name: `${name}.landsOn`,
      kind: 'choice',
      meaning: `long timber along the ${label}, on which the skin lands`,
      source: 'custom of the trade',
      options: landingTimbers,
      from: () => timber,
    };
    if (!panel) return [lands];
    const skin: Derived = {
      name: `${name}.panel`,
      kind: 'choice',
      meaning: `panel that lands along the ${label}, at a chine the upper of the two`,
      source: 'geometry',
      options: panelOptions,
      from: () => panel.name,
    };
    return [lands, skin];
  });
  made.set(layout, all);
  return all;
}
