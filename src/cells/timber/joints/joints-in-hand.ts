/** The layout of the long timber that the cell looks at, by the cell's values. */
import type { Hull } from '../../../boat';
import { type JointRules, type JointLayout, layOut, timberOf } from '../../../boat/joinery/joint-layout';
import type { Values } from '../../form/define';

/** Keys of the cell that the whole layout follows from. */
export const layoutKeys = [
  'along',
  'thickness',
  'slope',
  'trim',
  'boardLength',
  'siding',
  'stands',
  'hardShare',
  'easyBend',
  'frameClearance',
  'stagger',
  'leastPiece',
  'portFirst',
  'starboardFirst',
] as const;

const known = new WeakMap<Hull, { readonly key: string; readonly layout: JointLayout }>();

/** The last is kept, since every step of every row asks for it. */
export function layoutOf(hull: Hull, v: Values): JointLayout {
  const key = layoutKeys.map((name) => v[name]).join(' ');
  const before = known.get(hull);
  if (before?.key === key) return before.layout;
  const of = (name: (typeof layoutKeys)[number]) => Number(v[name]);
  const layout = layOut(timberOf(hull, hull.edge(String(v['along'])), rulesOf(v)), {
    port: of('portFirst'),
    starboard: of('starboardFirst'),
  });
  known.set(hull, { key, layout });
  return layout;
}

export function rulesOf(v: Values): JointRules {
  const of = (name: (typeof layoutKeys)[number]) => Number(v[name]);
  return {
    thickness: of('thickness'),
    board: of('boardLength'),
    slope: of('slope'),
    trim: of('trim'),
    siding: of('siding'),
    stands: String(v['stands']),
    hardShare: of('hardShare'),
    easyBend: of('easyBend'),
    frameClearance: of('frameClearance'),
    stagger: of('stagger'),
    least: of('leastPiece'),
  };
}
