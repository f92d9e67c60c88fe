/** What the cell `fair` asks of the hull, by its own inputs: the line chosen, its suspect, its mend, the hull with it. */
import type { Hull, Panel, Station } from '../../boat';
import { below, leastMend } from '../../kernel';
import type { Values } from '../form/define';
import { heightsOf } from './lines-form';
import { type LineView, type LongLine, longLine, postsOf } from './long-line';
import { type Move, movedHull } from './moved-hull';
import { type Reading, rivalOn, spreadOf, suspectOn, witnessesOf } from './suspects';

/** The inputs that each kind of question uses. */
export const lineKeys = ['edge', 'view', 'tried', 'shift'] as const;
export const runKeys = [...lineKeys, 'nearest', 'blunder'] as const;
const keepKeys = ['keep', 'keepAnother', 'keepThird'] as const;
export const mendKeys = [...lineKeys, 'nearest', 'meant', 'ends', ...keepKeys] as const;
export const mendedKeys = [...lineKeys, 'oddStation', 'proposed'] as const;

export const number = (values: Values, key: string) => Number(values[key]);
export const word = (values: Values, key: string) => String(values[key]);
export const viewOf = (values: Values): LineView => (values['view'] === 'profile' ? 'profile' : 'plan');
export const reading = (values: Values): Reading => ({
  nearest: number(values, 'nearest'),
  blunder: number(values, 'blunder'),
});

/** How far the station is moved on trial, m: what lies on the centreline by nature is not moved off it. */
export function trialBy(hull: Hull, values: Values): number {
  const { index } = hull.station(word(values, 'tried'));
  const stays = hull.edge(word(values, 'edge')).index === 0 || postsOf(hull).includes(index);
  return viewOf(values) === 'plan' && stays ? 0 : number(values, 'shift');
}

/** The line in hand, with the trial move. */
export function lineOf(hull: Hull, values: Values): LongLine {
  const trial = { index: hull.station(word(values, 'tried')).index, by: trialBy(hull, values) };
  return longLine(hull, hull.edge(word(values, 'edge')), viewOf(values), trial);
}

export const suspectOf = (hull: Hull, values: Values) =>
  suspectOn(hull, lineOf(hull, values), reading(values));
export const rivalOf = (hull: Hull, values: Values) => rivalOn(hull, lineOf(hull, values), reading(values));
/** The other signs that can be asked here, each for or against the oddest station. */
export function signsFor(hull: Hull, values: Values): readonly boolean[] {
  const { index } = hull.station(word(values, 'oddStation'));
  const { flare, duck, bend } = witnessesOf(hull, lineOf(hull, values), index, reading(values));
  return [...(flare === null ? [] : [flare]), duck, bend];
}
export const indexHere = (hull: Hull, values: Values) => hull.station(word(values, 'station')).index;

/** The least error that stands out at each station but the two ends, m. */
export function showsAtFrames(hull: Hull, values: Values): readonly number[] {
  const { nearest, blunder } = reading(values);
  const { corrections } = lineOf(hull, values).run(spreadOf(nearest));
  return corrections.slice(1, -1).map(({ hidden }) => Math.max(hidden, blunder));
}

/** Moves of the least mend, one a station; those under the mark the table is read to are none. */
export function mendOf(hull: Hull, values: Values): readonly number[] {
  const line = lineOf(hull, values);
  const nearest = number(values, 'nearest');
  const moves = leastMend(line.x, line.values, {
    held: [
      ...(values['ends'] === 'held' ? [0, line.x.length - 1] : []),
      ...(line.view === 'plan' ? postsOf(hull) : []),
      ...keepKeys
        .map((key) => word(values, key))
        .flatMap((kept) => (kept === 'none' ? [] : [hull.station(kept).index])),
    ],
    turn: line.turn,
    reverse: values['meant'] === 'yes',
    rounding: spreadOf(nearest),
  });
  if (!moves) throw new Error('no fair line runs through the stations held: let one of them go');
  return moves.map((move) => (Math.abs(move) < nearest / 2 ? 0 : move));
}

/** The panel whose frame side a wedge under the line lies on: above it in plan, below it in profile. */
export function panelUnder(hull: Hull, { edge, view }: LongLine): Panel {
  const last = hull.panels.length - 1;
  const index = view === 'plan' ? Math.min(edge.index, last) : Math.max(edge.index - 1, 0);
  return hull.panels[index]!; // there is a panel between each two edges
}

export const trialOf = (hull: Hull, values: Values): Move => ({
  edge: word(values, 'edge'),
  station: word(values, 'tried'),
  view: viewOf(values),
  by: trialBy(hull, values),
});
const mendAt = (hull: Hull, values: Values): Move => ({
  ...trialOf(hull, values),
  station: word(values, 'oddStation'),
  by: number(values, 'proposed'),
});
/** The hull with the trial move, and with the correction as well. */
export const before = (hull: Hull, values: Values) => movedHull(hull, [trialOf(hull, values)]);
export const after = (hull: Hull, values: Values) =>
  movedHull(hull, [trialOf(hull, values), mendAt(hull, values)]);

/** Flare of the frame side under the line, as a straight one from edge to edge of `of`, rad. */
export function leanOf(hull: Hull, of: Hull, values: Values): number {
  const panel = panelUnder(hull, lineOf(hull, values));
  return leanAt(of, panel, hull.station(word(values, 'oddStation')));
}

/** The same of any panel at any station. */
export function leanAt(
  { edges }: Hull,
  panel: Pick<Panel, 'index'>,
  station: Pick<Station, 'index'>,
): number {
  const [, y0, z0] = edges[panel.index]!.points[station.index]!; // a panel lies between two edges
  const [, y1, z1] = edges[panel.index + 1]!.points[station.index]!;
  return Math.atan2(y1 - y0, z1 - z0);
}

/** Skin, both sides, m2. */
export const skinOf = (hull: Hull) => 2 * hull.panels.reduce((sum, panel) => sum + panel.area, 0);

/** Under the water, m3. @param draught from the lowest point of the hull, m */
export function displacementOf(hull: Hull, draught: number): number {
  const height = heightsOf(hull).lowest + draught;
  return below(hull.body, { normal: [0, 0, 1], height }).volume;
}
