/** What the cell `joints` knows of the long timber that it looks at: its edge, and how its boards are laid. */
import { layOut, type JointRules, timberOf } from '../../../boat/joinery/joint-layout';
import type { ListRow, ValuesOf } from '../../form/define';
import { fact } from '../../form/fact';
import type { jointInputs } from './joints-inputs';
import { GEOMETRY } from '../../../trade/sources';

/** The inputs as facts read them. */
export type JointsAsked = ValuesOf<typeof jointInputs>;

export const edge = fact(
  'the batten of the edge, measured along its bend',
  GEOMETRY,
  ({ along }: JointsAsked, { hull }) => hull.edge(along),
);

export const rules = fact('as typed', 'common practice, no source', (v: JointsAsked): JointRules => ({
  thickness: v.thickness,
  board: v.boardLength,
  slope: v.slope,
  trim: v.trim,
  siding: v.siding,
  stands: v.stands,
  hardShare: v.hardShare,
  easyBend: v.easyBend,
  frameClearance: v.frameClearance,
  stagger: v.stagger,
  least: v.leastPiece,
}));

export const layout = fact(
  'boards laid on from aft, each lapping the one before by a taper, the last cut off at the end of the edge',
  GEOMETRY,
  ({ portFirst, starboardFirst }: JointsAsked, { hull, ask }) =>
    layOut(timberOf(hull, ask(edge), ask(rules)), { port: portFirst, starboard: starboardFirst }),
);

/** Every joint, port before starboard, each side from aft. */
export const jointList = fact(layout.how, GEOMETRY, (_: JointsAsked, { ask }) =>
  ask(layout).joints.map(({ side, number }, i): ListRow => ({
    id: `${side}${number}`,
    label: `${side} ${number}`,
    value: i + 1,
  })),
);
