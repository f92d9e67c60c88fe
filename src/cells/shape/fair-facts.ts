/** What the cell `fair` knows of the hull: the line in hand, its suspect, its mend, the hull with it. */
import type { Hull, Panel, Station } from '../../boat';
import { heightsOf } from '../../boat/hull/afloat';
import { below, leastMend } from '../../kernel';
import { fact } from '../form/fact';
import type { FairAsked } from './fair-inputs';
import { type LongLine, longLine, postsOf } from './long-line';
import { type Move, movedHull } from './moved-hull';
import { firstSuspect, rivalOn, spreadOf, suspectOn, witnessesOf } from './suspects';
import { GEOMETRY } from '../../trade/sources';

export const RUN = 'geometry of divided differences; how sure it is: docs/fairness.md';
export const BATTEN =
  'A. Saxena and B. Sahay, Computer Aided Engineering Design, chapter 5: a batten between ducks is a cubic';
export const LEAST = 'C. L. Lawson and R. J. Hanson, Solving Least Squares Problems, 1974, chapter 23';
export const TABLE = 'the table of offsets';

/** The likeliest bad number of the whole table. */
export const first = fact(
  'every line in plan and in profile is asked for the one correction that leaves its run of third differences likest a fair line’s; the one that stands out most',
  RUN,
  ({ nearest, blunder }: FairAsked, { hull }) => firstSuspect(hull, { nearest, blunder }),
);

export const trial = fact(
  'as typed; nothing for what lies on the centreline by nature: a stem in plan, and the keel',
  GEOMETRY,
  ({ edge, view, tried, shift }: FairAsked, { hull }): Move & { readonly index: number } => {
    const { index } = hull.station(tried);
    // What lies on the centreline by nature is not moved off it.
    const stays = hull.edge(edge).index === 0 || postsOf(hull).includes(index);
    return { edge, view, station: tried, index, by: view === 'plan' && stays ? 0 : shift };
  },
);

export const line = fact(
  'from the table, with the trial move',
  TABLE,
  ({ edge, view }: FairAsked, { hull, ask }) => longLine(hull, hull.edge(edge), view, ask(trial)),
);

/** The line as the table has it. */
export const still = fact('from the table', TABLE, ({ edge, view }: FairAsked, { hull }) =>
  longLine(hull, hull.edge(edge), view),
);

/** The likeliest bad number of the line. */
export const suspect = fact(
  'the station of this line whose one correction leaves the run of third differences likest a fair line’s',
  RUN,
  ({ nearest, blunder }: FairAsked, { hull, ask }) => suspectOn(hull, ask(line), { nearest, blunder }),
);

export const rival = fact(
  'the station whose one correction stands out next most',
  RUN,
  ({ nearest }: FairAsked, { hull, ask }) => rivalOn(hull, ask(line), { nearest }),
);

/** The least error that stands out at each station but the two ends, m. */
export const shows = fact(
  '2.5 times the spread of the correction among fair lines with these stations, or the smallest error worth a thought if that is more, at each station but the two ends',
  RUN,
  ({ blunder }: FairAsked, { ask }) =>
    ask(corrections)
      .slice(1, -1)
      .map(({ hidden }) => Math.max(hidden, blunder)),
);

/** The correction of each station, if it alone were the bad one. */
export const corrections = fact(
  'the one correction that would serve the run best, if it were this station’s',
  RUN,
  ({ nearest }: FairAsked, { ask }) => ask(line).run(spreadOf(nearest)).corrections,
);

/** The other signs that can be asked for, each for or against the oddest station. */
export const signs = fact(
  'counted: the run of flare is oddest there, where there is one; the duck there pushes hardest; the batten is hollow there, or its bend differs most from its neighbours’',
  'common practice, no source',
  ({ nearest, blunder }: FairAsked, { hull, ask }): readonly boolean[] => {
    const { index } = ask(suspect).station;
    const { flare, duck, bend } = witnessesOf(hull, ask(line), index, { nearest, blunder });
    return [...(flare === null ? [] : [flare]), duck, bend];
  },
);

type MendAsked = Pick<FairAsked, 'nearest' | 'ends' | 'keep' | 'keepAnother' | 'keepThird' | 'meant'>;

/** Moves of the least mend, one a station; those under the mark the table is read to are none. */
function leastMoves(hull: Hull, of: LongLine, asked: MendAsked): readonly number[] {
  const { nearest, ends, keep, keepAnother, keepThird, meant } = asked;
  const moves = leastMend(of.x, of.values, {
    held: [
      ...(ends === 'held' ? [0, of.x.length - 1] : []),
      ...(of.view === 'plan' ? postsOf(hull) : []),
      ...[keep, keepAnother, keepThird].flatMap((kept) =>
        kept === 'none' ? [] : [hull.station(kept).index],
      ),
    ],
    turn: of.turn,
    reverse: meant === 'yes',
    rounding: spreadOf(nearest),
  });
  if (!moves) throw new Error('no fair line runs through the stations held: let one of them go');
  return moves.map((move) => (Math.abs(move) < nearest / 2 ? 0 : move));
}

const MENDED =
  'the least change, in its sum of squares, that leaves the batten no hollow and no duck harder than a fair line’s';

export const mend = fact(MENDED, LEAST, (asked: FairAsked, { hull, ask }) =>
  leastMoves(hull, ask(line), asked),
);

/** The same without the trial move. */
export const mendOfTable = fact(MENDED, LEAST, (asked: FairAsked, { hull, ask }) =>
  leastMoves(hull, ask(still), asked),
);

/** The panel whose frame side a wedge under the line lies on. */
export const panel = fact('above the line in plan, below it in profile', GEOMETRY, (_: FairAsked, at) =>
  panelUnder(at.hull, at.ask(line)),
);

/** The hull with the trial move. */
export const before = fact('the hull drawn anew with the trial move', GEOMETRY, (_: FairAsked, at) =>
  movedHull(at.hull, [at.ask(trial)]),
);

/** The hull with the correction as well. */
export const after = fact(
  'the hull drawn anew with the correction',
  GEOMETRY,
  ({ proposed }: FairAsked & { readonly proposed: number }, { hull, ask }) => {
    const move = ask(trial);
    return movedHull(hull, [move, { ...move, station: ask(suspect).station.name, by: proposed }]);
  },
);

export const here = fact(
  'the station looked at',
  TABLE,
  ({ station }: FairAsked, { hull }) => hull.station(station).index,
);

/** The panel whose frame side bounds the line: above it in plan, below it in profile. */
export function panelUnder(hull: Hull, { edge, view }: LongLine): Panel {
  const last = hull.panels.length - 1;
  const index = view === 'plan' ? Math.min(edge.index, last) : Math.max(edge.index - 1, 0);
  return hull.panels[index]!; // there is a panel between each two edges
}

/** Flare of a panel's frame side, as a straight one from edge to edge, rad. */
export function leanAt(
  { edges }: Hull,
  { index }: Pick<Panel, 'index'>,
  station: Pick<Station, 'index'>,
): number {
  const [, y0, z0] = edges[index]!.points[station.index]!; // a panel lies between two edges
  const [, y1, z1] = edges[index + 1]!.points[station.index]!;
  return Math.atan2(y1 - y0, z1 - z0);
}

/** Skin, both sides, m2. */
export const skinOf = (hull: Hull) => 2 * hull.panels.reduce((sum, { area }) => sum + area, 0);

/** Under the water, m3. @param draught from the lowest point of the hull, m */
export function displacementOf(hull: Hull, draught: number): number {
  const height = heightsOf(hull).lowest + draught;
  return below(hull.body, { normal: [0, 0, 1], height }).volume;
}
