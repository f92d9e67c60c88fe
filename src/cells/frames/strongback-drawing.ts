/** The jig from above with its diagonals, and from the side with the boat upside down on it. */
import { attempt, type Hull } from '../../boat';
import { sideOf } from '../../boat/hull/side-of';
import {
  centreLine,
  dim,
  type Drawing,
  drawing,
  hatch,
  label,
  line,
  mark,
  mm,
  note,
  type Point,
  rect,
  rectHatch,
  type Shape,
} from '../../drawing';
import type { Vec3 } from '../../kernel';
import { isIssue } from '../../measure';
import type { OnHand } from '../form/define';
import { foreMark, type StationOnJig, standing, standings as standingsInHand } from './jig-facts';

type Say = (metres: number) => string;

/** From the boat's axes to the sheet: along the jig, and up from the floor or away from the jig's centreline. */
interface Sheet {
  readonly along: (x: number) => number;
  readonly up: (z: number) => number;
  /** Seen from above, port below: upside down the boat's sides have changed hands. */
  readonly across: (y: number) => number;
}

/** The values that the pictures read, m. */
type Length =
  | 'footAboveJig'
  | 'gauge'
  | 'jigDiagonal'
  | 'jigLength'
  | 'jigTop'
  | 'leg'
  | 'levelLine'
  | 'nailAhead'
  | 'nailLength'
  | 'overhang'
  | 'railDepth'
  | 'running'
  | 'sheerOut'
  | 'siding'
  | 'spallBeyond';
type JigDrawn = Readonly<Record<Length, number> & Record<'side' | 'face', string>>;

export function strongbackView(
  v: JigDrawn,
  { hull, say: on, ask }: Pick<OnHand, 'hull' | 'say' | 'ask'>,
): Drawing {
  const say: Say = (metres) => on(metres, 'length');
  const made = attempt(() => {
    if (!hull) throw new Error('There is no hull to set up.');
    return { hull, standings: ask(standingsInHand), here: ask(standing), fore: ask(foreMark) };
  });
  if (isIssue(made)) return drawing({ title: 'Strongback', says: made.issue, shapes: [note(made.issue)] });
  const { standings, here, fore } = made;
  const of = (key: Length) => v[key];
  const broad = mm(Math.max(of('gauge') / 2, ...standings.all.map(({ sheer }) => sheer[1])));
  const top = mm(of('jigTop') + v.levelLine - Math.min(...standings.all.map(({ foot }) => foot[2])));
  const middle = top + broad + 0.14 * mm(of('jigLength'));
  const sheet: Sheet = {
    along: (x) => mm(of('overhang') + x - standings.aftmost),
    up: (z) => mm(of('jigTop') + of('levelLine') - z),
    across: (y) => middle - mm(y),
  };
  const frames = standings.all.length;
  return drawing({
    title: 'The jig from above and from the side, the boat upside down on it',
    says: `${frames} stations on a jig ${say(of('jigLength'))} long. ${capital(here.station.label)}: line at ${say(of('running'))} from the after end, sheer marks ${say(of('leg'))} up and ${say(of('sheerOut'))} out, ${say(of('nailLength'))} from the nail; the jig’s diagonals ${say(of('jigDiagonal'))}.`,
    shapes: [
      sideView(made.hull, standings.all, here, v, sheet, say),
      planView(standings.all, here, fore, v, sheet, say),
      note('Forward to the right; running distances from the after end.'),
    ],
  });
}

function sideView(
  hull: Hull,
  all: readonly StationOnJig[],
  here: StationOnJig,
  v: JigDrawn,
  sheet: Sheet,
  say: Say,
): Shape[] {
  const of = (key: Length) => mm(v[key]);
  const [length, top] = [of('jigLength'), of('jigTop')];
  const deep = Math.min(of('railDepth'), top);
  const at = ([x, , z]: Vec3): Point => [sheet.along(x), sheet.up(z)];
  const curves = hull.edges.map((edge) => line(edge.polyline(24).map(at), { pen: 'thin', part: edge.name }));
  const [x, y] = at(here.sheer);
  const foot = at(here.foot);
  return [
    line([
      [-0.02 * length, 0],
      [1.02 * length, 0],
    ]),
    rectHatch(0, top - deep, length, deep, 'cedar'),
    ...[0.06, 0.5, 0.94].map((share) => rect(share * length - 20, 0, 40, top - deep, { pen: 'thin' })),
    ...curves,
    ...all.flatMap((standing) => upright(standing, standing === here, v, at, top)),
    dim([x, top], [x, y], say(v.leg), { side: 'left', run: 'vertical' }),
    dim([foot[0], top], foot, say(v.footAboveJig), { side: 'right', run: 'vertical' }),
    // As a tape lies: every one from the after end.
    ...told(all, here).map((standing, i) => {
      const along = sheet.along(standing.sheer[0]);
      return dim([0, 0], [along, 0], say(along / 1000), {
        side: 'below',
        run: 'horizontal',
        level: i,
      });
    }),
    dim([0, 0], [length, 0], say(v.jigLength), {
      side: 'below',
      run: 'horizontal',
      level: told(all, here).length,
    }),
  ];
}

/** More than this many dimensions under one another are a ladder, not a drawing; the table has them all. */
const MOST_TOLD = 14;

function told(all: readonly StationOnJig[], here: StationOnJig): readonly StationOnJig[] {
  return all.length <= MOST_TOLD
    ? all
    : all.filter((standing, i) => i === 0 || i === all.length - 1 || standing === here);
}

/** A frame with its leg, or a transom or stem with the leg under its sheer mark. */
function upright(
  { station, sheer, foot }: StationOnJig,
  chosen: boolean,
  v: JigDrawn,
  at: (p: Vec3) => Point,
  top: number,
): Shape[] {
  const thick = mm(v.siding);
  const out = sideOf(station, v.side, v.face === 'outer') === 'forward' ? thick : -thick;
  const [head, base] = [at(sheer), at(foot)];
  return [
    hatch([head, base, [base[0] + out, base[1]], [head[0] + out, head[1]]], chosen ? 'cedar' : 'plain', {
      part: station.name,
      pen: chosen ? 'outline' : 'visible',
    }),
    line([[head[0], top], head], { pen: chosen ? 'visible' : 'thin' }),
  ];
}

function planView(
  all: readonly StationOnJig[],
  here: StationOnJig,
  fore: StationOnJig,
  v: JigDrawn,
  sheet: Sheet,
  say: Say,
): Shape[] {
  const of = (key: Length) => mm(v[key]);
  const [length, half] = [of('jigLength'), of('gauge') / 2];
  const middle = sheet.across(0);
  const at = ([x, y]: Vec3, side = 1): Point => [sheet.along(x), sheet.across(side * y)];
  const nail: Point = [sheet.along(fore.sheer[0]), middle];
  const aimed = here.sheer[1] > 0 && v.nailAhead > 0;
  const sheerLine = (side: 1 | -1) =>
    line(
      all.map(({ sheer }) => at(sheer, side)),
      { pen: 'thin', part: 'sheer' },
    );
  return [
    rect(0, middle - half, length, 2 * half),
    ...all.map((standing) => {
      const reach = Math.max(mm(standing.sheer[1]), half) + of('spallBeyond');
      const x = sheet.along(standing.sheer[0]);
      return line(
        [
          [x, middle - reach],
          [x, middle + reach],
        ],
        { pen: standing === here ? 'outline' : 'visible', part: standing.station.name },
      );
    }),
    sheerLine(1),
    sheerLine(-1),
    centreLine([-0.02 * length, middle], [1.02 * length, middle]),
    line(
      [
        [0, middle - half],
        [length, middle + half],
      ],
      { pen: 'hidden' },
    ),
    line(
      [
        [0, middle + half],
        [length, middle - half],
      ],
      { pen: 'hidden' },
    ),
    label([0.12 * length, middle + half * 0.76], `diagonals ${say(v.jigDiagonal)}`, {
      toward: 'n',
    }),
    mark(nail, { form: 'dot' }),
    label(nail, 'nail', { toward: 'se' }),
    ...(aimed
      ? [
          line([at(here.sheer), nail, at(here.sheer, -1)], { pen: 'visible' }),
          label(
            [(at(here.sheer)[0] + nail[0]) / 2, (at(here.sheer)[1] + nail[1]) / 2],
            `to either sheer mark ${say(v.nailLength)}`,
            { toward: 's' },
          ),
        ]
      : []),
    label(at(here.sheer), 'port', { toward: 's' }),
  ];
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
