/** What the cell `panels` knows of the panel in hand: its place on the sheet, its marks, its bends and who takes them. */
import { attempt } from '../../boat';
import { flatPanel } from '../../boat/hull/flat-panel';
import { ordinateAt, proudOf } from '../../boat/hull/ordinates';
import { panelBends } from '../../boat/hull/panel-bends';
import { sideOf } from '../../boat/hull/side-of';
import { judge, type Judged, worstOf } from '../../boat/joinery/plywood-bends';
import { stripSection, type Vec2 } from '../../kernel';
import { isIssue } from '../../measure';
import type { ListRow, ValuesOf } from '../form/define';
import { fact } from '../form/fact';
import type { panelInputs } from './panels-inputs';
import { GEOMETRY } from '../../trade/sources';

/** The inputs as facts read them. */
export type PanelsAsked = ValuesOf<typeof panelInputs>;

export const flat = fact(
  'the ruled skin laid flat strip by strip, and turned till it stands least high over a straight edge',
  GEOMETRY,
  ({ panel }: Pick<PanelsAsked, 'panel'>, { hull }) => flatPanel(hull.panel(panel)),
);

export const marks = fact(
  'where the plane of each station cuts the skin',
  GEOMETRY,
  (_: Pick<PanelsAsked, 'panel'>, { hull, ask }) => ask(flat).marks(hull.frames),
);

/** The other face of each frame, as a line on the panel; none where it doesn't reach across. */
export const farFaces = fact(
  'the frame’s thickness off its station line, to the side on which it stands',
  GEOMETRY,
  ({ siding, stands, panel }: Pick<PanelsAsked, 'siding' | 'stands' | 'panel'>, { hull, ask }) =>
    ask(marks).map(({ station }): readonly Vec2[] => {
      const way = sideOf(station, stands, false) === 'forward' ? siding : -siding;
      const section = stripSection(hull.panel(panel).strip, station.x + way);
      return section.map((point) => ask(flat).place(point.flat));
    }),
);

/** The outline with the allowance left on. */
export const cutLine = fact(
  'the outline moved out square to itself',
  GEOMETRY,
  ({ leftOn }: Pick<PanelsAsked, 'panel' | 'leftOn'>, { ask }) => proudOf(ask(flat).outline, leftOn),
);

/** The ordinate looked at, held to the panel. */
export const ordinate = fact(
  'the outline over that place of the straight edge',
  GEOMETRY,
  ({ place }: Pick<PanelsAsked, 'panel' | 'leftOn' | 'place'>, { ask }) => {
    const { outline, length } = ask(flat);
    const at = Math.min(place, length);
    const none = { lower: 0, upper: 0 };
    return { at, line: ordinateAt(outline, at) ?? none, cut: ordinateAt(ask(cutLine), at) ?? none };
  },
);

/** A place along the straight edge where something is marked. */
interface Place {
  readonly at: number;
  readonly label: string;
}

/** All places to mark, from aft forward: corners, ordinates, frames on both edges. */
export const places = fact(
  'ordinates at the interval, the frames on both edges, and the corners',
  GEOMETRY,
  ({ every }: Pick<PanelsAsked, 'panel' | 'every'>, { ask }) => {
    const { length, inner, outer, panel } = ask(flat);
    const corner = (line: readonly Vec2[], which: 0 | -1) => line.at(which)![0]; // an edge has points
    const named = (end: string, edge: { readonly label: string }) => `${end} corner, ${edge.label}`;
    const all: Place[] = [
      { at: corner(inner, 0), label: named('after', panel.inner) },
      { at: corner(outer, 0), label: named('after', panel.outer) },
      ...Array.from({ length: Math.ceil(length / every) - 1 }, (_, i) => ({
        at: (i + 1) * every,
        label: `ordinate ${i + 1}`,
      })),
      ...ask(marks).flatMap(({ station, inner: low, outer: high }) => [
        { at: low.at[0], label: `${station.label}, ${panel.inner.label}` },
        { at: high.at[0], label: `${station.label}, ${panel.outer.label}` },
      ]),
      { at: corner(inner, -1), label: named('fore', panel.inner) },
      { at: corner(outer, -1), label: named('fore', panel.outer) },
    ];
    return all
      .toSorted((a, b) => a.at - b.at)
      .map(({ at, label }, i): ListRow => ({ id: `place${i + 1}`, label, value: at }));
  },
);

/** What the skin must bend to, ruling by ruling. */
export const bends = fact(
  'the curvature across each ruling and the turn of the skin’s normal along it',
  GEOMETRY,
  ({ panel }: Pick<PanelsAsked, 'panel'>, { hull }) => panelBends(hull.panel(panel)),
);

type SheetAsked = Pick<PanelsAsked, 'panel' | 'grain' | 'allowed'> & LayerAsked;

/** Steps of the cell that facts read: one layer, and the least radii that the tables give it. */
export type LayerAsked = Readonly<
  Record<'layerThickness' | 'takesAlong' | 'takesAcross' | 'pickedAlong' | 'pickedAcross', number>
>;

/** Every place judged with the face grain as chosen, and the other way. */
export const judged = fact(
  'each ruling’s radius against the least published one, and its twist as a strain',
  'published radii; the yardstick of twist is derived',
  (v: SheetAsked, { ask }) => {
    const judgedBy = (grain: 'along' | 'across') =>
      ask(bends).map((place) => ({
        place,
        ...judge(place, {
          thickness: v.layerThickness,
          grain,
          common: { along: v.takesAlong, across: v.takesAcross },
          picked: { along: v.pickedAlong, across: v.pickedAcross },
          allowed: v.allowed,
        }),
      }));
    return { as: judgedBy(v.grain), other: judgedBy(v.grain === 'along' ? 'across' : 'along') };
  },
);

/** The place that takes most of what a common panel allows. */
export const hardestOf = <P extends Judged>(of: readonly P[]): P =>
  of.reduce((most, one) => (one.common.both > most.common.both ? one : most));

export const hardest = fact(
  'the place where bend and twist together take most',
  GEOMETRY,
  (_: SheetAsked, { ask }) => {
    const { as, other } = ask(judged);
    return {
      here: hardestOf(as),
      other: hardestOf(other),
      verdict: worstOf(as),
      otherVerdict: worstOf(other),
    };
  },
);

/** How far the skin stands off a straight frame side, where it does so most. */
export const crown = fact(
  'the skin’s section at each frame against the straight line from corner to corner',
  GEOMETRY,
  ({ panel }: Pick<PanelsAsked, 'panel'>, { hull, ask }) => {
    // A panel that is not there yet stands off no frame, but that is no finding.
    ask(flat);
    const all = hull.frames.flatMap((station) => {
      const off = attempt(() => station.crown(panel));
      return isIssue(off) ? [] : [{ off, frame: station.name }];
    });
    const none = { off: 0, frame: 'none' };
    return all.reduce((most, one) => (Math.abs(one.off) > Math.abs(most.off) ? one : most), none);
  },
);

/** What is done at the two long edges, by the order in which the panels are hung: sides first, the bottom last. */
export const edgeJobs = fact(
  'sides are hung first; each panel nearer the keel then laps over the edge of the one above',
  'custom of the trade; common practice, no source',
  (_: Pick<PanelsAsked, 'panel'>, { hull, ask }) => {
    const { panel } = ask(flat);
    const last = panel.index === hull.panels.length - 1;
    return {
      lower:
        panel.index === 0
          ? 'fitted to its mirror on the centreline'
          : 'planed to the face of the panel below it',
      upper: last ? 'planed to the top of the clamp' : 'planed flush with the panel above it',
      lowerEdge: panel.inner.name,
      upperEdge: panel.outer.name,
    };
  },
);
