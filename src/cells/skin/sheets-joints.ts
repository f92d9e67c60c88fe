/** The joints of one panel as the sheets are planned: how many, and how long on average. */
import { distance2 } from '../../kernel';
import { flatPanel } from '../../boat/hull/flat-panel';
import { fact, tell } from '../form/fact';
import { best, problem } from './sheets-facts';
import type { SheetsAsked } from './sheets-problem';

const HOW = 'counted in the plan; what cloth is lapped over';

/** @param which of the hull's panels, from the keel outward: 0 the bottom, -1 the side */
function jointsOf(which: 0 | -1) {
  const spots = fact(HOW, 'geometry', (_: SheetsAsked, { ask, hull }) => {
    const panel = hull.panels.at(which)!; // every hull has a panel
    const at = ask(problem).panels.findLastIndex(({ name }) => name === panel.name);
    // One a panel, each a place in its spots; of layers the outermost, which cloth lies on.
    const joints = at < 0 ? null : ask(best).layout[at]!.port;
    const cut = at < 0 ? null : ask(problem).panels[at]!;
    const lines = joints?.map((spot) => cut!.spots[spot]!.line) ?? null; // no joints of what is not cut
    return { panel, lines, halves: cut?.whole ? 2 : 1 };
  });
  const count = fact(HOW, 'geometry', (v: SheetsAsked, { ask }) => {
    if (v.skinSides === 0) return 0;
    const { panel, lines } = ask(spots);
    if (!lines)
      throw new Error(`the sheets are planned without the ${panel.label}: count its joints yourself`);
    return lines.length;
  });
  const long = fact('from edge to edge of the flat panel', 'geometry', (v: SheetsAsked, { ask }) => {
    if (v.skinSides === 0) return 0;
    const { panel, lines, halves } = ask(spots);
    if (!lines || lines.length === 0) return panel.area / flatPanel(panel).length;
    return lines.reduce((sum, [inner, outer]) => sum + distance2(inner, outer), 0) / lines.length / halves;
  });
  return { count, long };
}

const [side, bottom] = [jointsOf(-1), jointsOf(0)];

const MEAN = 'on average; where none is planned, as high as the panel is on average';

export const jointSteps = {
  sideJoints: tell(side.count, 'count', 'joints in a side, the uppermost panel, port', (joints) => joints),
  sideJointLong: tell(side.long, 'length', `length of a joint of the side, ${MEAN}`, (long) => long),
  bottomJoints: tell(bottom.count, 'count', 'joints in the bottom, port half', (joints) => joints),
  bottomJointLong: tell(bottom.long, 'length', `length of a joint of the bottom, ${MEAN}`, (long) => long),
} as const;
