// The full lines plan, a sheet to hang on a wall: profile, half-breadth plan and body plan in their true relation,
// with base line, stations, waterlines and buttocks, each straight in two views and curved in the third, and all
// of them named.

import { drawing, label, line, mm, note } from './drawing';
import { extents } from './flatten';
import { type SpaceLine, view, type View } from './project';
import type { Box, Drawing, Pen, Point, Shape } from './shapes';

type Spatial = SpaceLine['points'][number];

/** A station of the plan: where it crosses the keel, and the section there, m. */
export interface PlanStation {
  /** Short, to stand on the drawing. */
  readonly name: string;
  readonly x: number;
  readonly section: SpaceLine;
}

/** A waterline at its height above the base line, or a buttock at its distance from the centreline, m. */
export interface PlanCut {
  readonly name: string;
  readonly at: number;
  readonly lines: readonly (readonly Spatial[])[];
  /** The one that the boat is drawn to float at. */
  readonly design?: boolean;
}

/** An edge of the hull with the name it has on the plan. */
export interface PlanEdge extends SpaceLine {
  readonly label: string;
}

export interface FullLines {
  readonly title: string;
  readonly says: string;
  /** What stands at the head of the sheet. */
  readonly heading: string;
  /** Keel outward. */
  readonly edges: readonly PlanEdge[];
  readonly stations: readonly PlanStation[];
  readonly waterlines: readonly PlanCut[];
  readonly buttocks: readonly PlanCut[];
  /** Where the body plan changes sides, m. */
  readonly amidships: number;
  readonly notes: readonly string[];
  /** Height of a row of text on the sheet, mm; by the hull's length unless given. */
  readonly row?: number;
}

/** The same reduced, so that its millimetres are those of a sheet at 1 : `by`. */
export function reduced(of: FullLines, by: number): FullLines {
  const less = (points: readonly Spatial[]) => points.map(([x, y, z]): Spatial => [x / by, y / by, z / by]);
  const cut = (one: PlanCut): PlanCut => ({ ...one, at: one.at / by, lines: one.lines.map(less) });
  return {
    ...of,
    edges: of.edges.map((edge) => ({ ...edge, points: less(edge.points) })),
    stations: of.stations.map(({ name, x, section }) => ({
      name,
      x: x / by,
      section: { ...section, points: less(section.points) },
    })),
    waterlines: of.waterlines.map(cut),
    buttocks: of.buttocks.map(cut),
    amidships: of.amidships / by,
  };
}

/** One view on the sheet: how much larger than the rest, where its origin lies, and what it takes up from there, mm. */
interface Place {
  readonly times: number;
  readonly at: Point;
  readonly box: Box;
}
type Places = Readonly<Record<View, Place>>;

/** Height of a row of text with its air, by the hull's length: what 14 px are on a sheet as narrow as a phone. */
const ROW = 0.077;
/** How far the straight lines of the grid run past the hull, in rows. */
const PAST = 0.3;
/** Between the views, and over the first, in rows of text. */
const GAPS = { head: 2.3, plan: 3.7, body: 4.2 };

/**
 * The three views below each other: profile, under it the half-breadth plan at the same stations, and at the
 * foot the body plan, forebody to the right of the centreline and afterbody to the left. The body plan is drawn
 * twice as large where there is room for that, and says so.
 */
export function fullLinesPlan(of: FullLines): Drawing {
  const places = placesOf(of);
  const row = rowOf(of, lengthOf(places));
  return drawing({
    title: of.title,
    says: of.says,
    shapes: [
      ...grid(of, places, PAST * row),
      ...cuts(of, places),
      ...hullIn(of, places),
      ...headings(of, places, row),
      ...stationNames(of, places, row),
      ...edgeNames(of, places, row),
      ...cutNames(of, places, PAST * row, row),
      ...of.notes.map((text) => note(text)),
    ],
  });
}

const rowOf = ({ row }: FullLines, length: number): number => row ?? ROW * length;
const lengthOf = ({ profile }: Places): number => profile.box.right - profile.box.left;

function placesOf(of: FullLines): Places {
  const hull = [...of.edges, ...of.stations.map(({ section }) => section)];
  const seen = (which: View): Box =>
    extents({ title: '', says: '', shapes: view(hull, which, { amidships: of.amidships }) });
  const profile = withBase(seen('profile'));
  const plan = seen('plan');
  const once = withBase(seen('body'));
  const length = profile.right - profile.left;
  const times = 2 * (once.right - once.left) <= length ? 2 : 1;
  const body = {
    left: times * once.left,
    right: times * once.right,
    bottom: times * once.bottom,
    top: times * once.top,
  };
  const row = rowOf(of, length);
  const planY = profile.bottom - GAPS.plan * row - plan.top;
  const bodyY = planY + plan.bottom - GAPS.body * row - body.top;
  return {
    profile: { times: 1, at: [0, 0], box: profile },
    plan: { times: 1, at: [0, planY], box: plan },
    body: { times, at: [(profile.left + profile.right) / 2, bodyY], box: body },
  };
}

/** The base line belongs to the picture where it lies near the hull. */
function withBase(box: Box): Box {
  return nearBase(box) ? { ...box, bottom: Math.min(box.bottom, 0), top: Math.max(box.top, 0) } : box;
}

const nearBase = ({ top, bottom }: Box): boolean => bottom <= top - bottom && top >= bottom - top;

const onSheet = ({ at, times }: Place, right: number, up: number): Point => [
  at[0] + times * right,
  at[1] + times * up,
];

/** Straight lines: base, centrelines, stations, and waterlines and buttocks where they are seen edge on. */
function grid(of: FullLines, { profile, plan, body }: Places, past: number): Shape[] {
  const across = (place: Place, height: number, pen: Pen): Shape => {
    const [, y] = onSheet(place, 0, height);
    const from = place.at[0] + place.box.left - past;
    return line([[from, y], [place.at[0] + place.box.right + past, y]], { pen }); // prettier-ignore
  };
  const up = (place: Place, right: number, pen: Pen): Shape => {
    const [x] = onSheet(place, right, 0);
    const from = place.at[1] + place.box.bottom - past;
    return line([[x, from], [x, place.at[1] + place.box.top + past]], { pen }); // prettier-ignore
  };
  const bases = nearBase(profile.box) ? [across(profile, 0, 'thin'), across(body, 0, 'thin')] : [];
  return [
    ...bases,
    across(plan, 0, 'centre'),
    up(body, 0, 'centre'),
    ...of.stations.flatMap(({ x }) => [up(profile, mm(x), 'grid'), up(plan, mm(x), 'grid')]),
    ...of.waterlines.flatMap(({ at, design }) => {
      const pen = design ? 'design' : 'waterline';
      return [across(profile, mm(at), pen), across(body, mm(at), pen)];
    }),
    ...of.buttocks.flatMap(({ at }) => [
      across(plan, mm(at), 'buttock'),
      up(body, mm(at), 'buttock'),
      up(body, -mm(at), 'buttock'),
    ]),
  ];
}

/** Waterlines curved in the half-breadth plan, buttocks in the profile. A cut is no part that could be lit. */
function cuts(of: FullLines, { profile, plan }: Places): Shape[] {
  const curved = ({ lines }: PlanCut, which: 'profile' | 'plan', { at }: Place, pen: Pen): Shape[] =>
    lines.map((points) =>
      line(
        points.map(([x, y, z]): Point => [at[0] + mm(x), at[1] + mm(which === 'plan' ? y : z)]),
        { pen },
      ),
    );
  return [
    ...of.buttocks.flatMap((cut) => curved(cut, 'profile', profile, 'buttock')),
    ...of.waterlines.flatMap((cut) => curved(cut, 'plan', plan, cut.design ? 'design' : 'waterline')),
  ];
}

function hullIn(of: FullLines, { profile, plan, body }: Places): Shape[] {
  const sections = of.stations.map(({ section }) => section);
  const { amidships } = of;
  const enlarged = (shape: Shape): Shape =>
    shape.shape === 'line' ? { ...shape, points: shape.points.map(([x, y]) => onSheet(body, x, y)) } : shape;
  return [
    // An end's own line, raked as it stands; a frame's is the station line already drawn.
    ...view(sections, 'profile', { at: profile.at }).filter(isSlanted),
    ...view(sections, 'plan', { at: plan.at }).filter(isSlanted),
    ...view(of.edges, 'profile', { at: profile.at }),
    ...view(of.edges, 'plan', { at: plan.at }),
    ...view([...sections, ...of.edges], 'body', { amidships }).map(enlarged),
  ];
}

function isSlanted(shape: Shape): boolean {
  if (shape.shape !== 'line') return true;
  const xs = shape.points.map(([x]) => x);
  return Math.max(...xs) - Math.min(...xs) > 1e-6;
}

/** What each view is, and the head of the sheet. */
function headings(of: FullLines, { profile, plan, body }: Places, row: number): Shape[] {
  const { left, right, top, bottom } = profile.box;
  const middle = (left + right) / 2;
  const foot = body.at[1] + body.box.bottom - 2.65 * row;
  const outward = Math.max(body.box.right, -body.box.left);
  return [
    note(of.heading, { at: [middle, top + GAPS.head * row] }),
    note('Profile', { at: [middle, bottom - 2.35 * row] }),
    note('Half-breadth plan', { at: [middle, plan.at[1] + plan.box.bottom - 2.4 * row] }),
    note('aft', { at: [body.at[0] - outward, foot] }),
    note('forward', { at: [body.at[0] + outward, foot] }),
    note(body.times === 1 ? 'Body plan' : 'Body plan, twice as large', { at: [body.at[0], foot - row] }),
  ];
}

/** The ends above, inward, where their long names take no room from the frames' nor from the hull; each section at its sheer. */
function stationNames(of: FullLines, { profile, body }: Places, row: number): Shape[] {
  const { left, right, top, bottom } = profile.box;
  const half = (name: string) => (LETTER * name.length * row) / 2;
  const ends = [...of.stations.slice(0, 1), ...of.stations.slice(1).slice(-1)];
  return [
    ...ends.map(({ name }, i) =>
      note(name, { at: [i === 0 ? left + half(name) : right - half(name), top + 1.2 * row] }),
    ),
    ...frameRow(of.stations.slice(1, -1), row).map(({ name, x }) =>
      note(name, { at: [mm(x), bottom - 1.25 * row] }),
    ),
    ...of.stations.flatMap((station) => sectionName(station, of.amidships, body, ends.includes(station))),
  ];
}

/** The sheer over the half-breadth plan and the chines under it, near their after ends, where nothing else is named. */
function edgeNames({ edges }: FullLines, { plan }: Places, row: number): Shape[] {
  const sheer = edges.at(-1);
  if (!sheer) return [];
  const at = (points: PlanEdge['points']): Point => {
    const [x, y] = points[Math.floor(points.length / 5)]!; // an edge has points
    return onSheet(plan, mm(x), mm(y));
  };
  const foot = at(sheer.points);
  const over = plan.at[1] + plan.box.top + 0.3 * row;
  const low = plan.at[1] + plan.box.bottom - 1.25 * row;
  const chines = edges.slice(1, -1);
  const widest = Math.max(0, ...chines.map(({ label: name }) => LETTER * name.length * row));
  const beside = spread(chines.map(({ points }) => at(points)[0]), widest + 0.3 * row); // prettier-ignore
  return [
    line([foot, [foot[0], over]], { pen: 'thin' }),
    note(sheer.label, { at: [foot[0], over + 0.5 * row] }),
    ...chines.flatMap(({ label: name, points }, i) => {
      const from = at(points);
      return [
        line([from, [from[0], plan.at[1] + plan.box.bottom], [beside[i]!, low + 0.8 * row]], { pen: 'thin' }), // prettier-ignore
        note(name, { at: [beside[i]!, low] }),
      ];
    }),
  ];
}

/**
 * Every waterline beside the profile and every buttock under the body plan, fanned out where they lie too close to be
 * named at their own ends; and where there is room for it, again in the other views, straight or curved.
 */
function cutNames(of: FullLines, { profile, plan, body }: Places, past: number, row: number): Shape[] {
  const again = true;
  const half = (name: string) => (LETTER * name.length * row) / 2;
  const levels = spread(of.waterlines.map(({ at }) => profile.at[1] + mm(at)), 1.15 * row); // prettier-ignore
  const widest = Math.max(0, ...of.buttocks.map(({ name }) => 2 * half(name)));
  const offs = spread(of.buttocks.map(({ at }) => body.at[0] + body.times * mm(at)), widest + 0.3 * row); // prettier-ignore
  const right = profile.box.right + past;
  const under = body.at[1] + body.box.bottom - past;
  return [
    ...of.waterlines.flatMap(({ name, at }, i) => [
      line([[right, profile.at[1] + mm(at)], [right + 0.8 * row, levels[i]!]], { pen: 'thin' }), // prettier-ignore
      note(name, { at: [right + 1.5 * row + half(name), levels[i]!] }),
    ]),
    ...of.buttocks.flatMap(({ name, at }, i) => [
      line([[body.at[0] + body.times * mm(at), under], [offs[i]!, under - 0.5 * row]], { pen: 'thin' }), // prettier-ignore
      note(name, { at: [offs[i]!, under - 1.25 * row] }),
    ]),
    ...of.waterlines.flatMap((cut) => {
      const fore = farthest(cut, 0);
      return [
        label([body.at[0] + body.box.right + past, body.at[1] + body.times * mm(cut.at)], cut.name, {
          toward: 'e',
          again,
        }),
        ...(fore ? [label(onSheet(plan, mm(fore[0]), mm(fore[1])), cut.name, { toward: 'se', again })] : []),
      ];
    }),
    ...of.buttocks.flatMap((cut) => {
      const high = farthest(cut, 2);
      return [
        label([body.at[0] - body.times * mm(cut.at), under], cut.name, { toward: 's', again }),
        label([plan.at[0] + plan.box.right + past, plan.at[1] + mm(cut.at)], cut.name, {
          toward: 'e',
          again,
        }),
        ...(high
          ? [label(onSheet(profile, mm(high[0]), mm(high[2])), cut.name, { toward: 'n', again })]
          : []),
      ];
    }),
  ];
}

/** Places at least so far apart, each as near to its own as it may be; in the order given. */
function spread(places: readonly number[], apart: number): readonly number[] {
  const order = places.map((_, i) => i).toSorted((a, b) => places[a]! - places[b]!); // indices of the list
  // Neighbours too close are pooled, and stand evenly about the middle of where they would be.
  const pools: { readonly of: readonly number[]; readonly middle: number }[] = [];
  for (const i of order) {
    let pool = { of: [i], middle: places[i]! };
    for (let last = pools.at(-1); last; last = pools.at(-1)) {
      const needed = (apart * (last.of.length + pool.of.length)) / 2;
      if (pool.middle - last.middle >= needed) break;
      pools.pop();
      const all = [...last.of, ...pool.of];
      pool = { of: all, middle: all.reduce((sum, k) => sum + places[k]!, 0) / all.length };
    }
    pools.push(pool);
  }
  const made = [...places];
  for (const { of, middle } of pools)
    of.forEach((i, k) => (made[i] = middle + apart * (k - (of.length - 1) / 2)));
  return made;
}

/** The place of a cut that lies farthest along an axis. */
const farthest = ({ lines }: PlanCut, axis: 0 | 2): Spatial | null =>
  lines.flat().reduce<Spatial | null>((far, p) => (far && far[axis] >= p[axis] ? far : p), null);

/** Mean width of a letter, in rows. */
const LETTER = 0.5;

/** As many names of frames as can stand beside each other, from aft forward. */
function frameRow(frames: readonly PlanStation[], row: number): readonly PlanStation[] {
  const half = ({ name }: PlanStation) => (LETTER * name.length * row) / 2;
  return frames.reduce<PlanStation[]>((kept, one) => {
    const last = kept.at(-1);
    const clear = !last || mm(one.x - last.x) > half(one) + half(last) + 0.3 * row;
    return clear ? [...kept, one] : kept;
  }, []);
}

/** The name of a section at its sheer, outside the body plan. */
function sectionName(
  { name, section }: PlanStation,
  amidships: number,
  body: Place,
  again: boolean,
): Shape[] {
  const sheer = section.points.at(-1);
  if (!sheer || sheer[1] === 0) return [];
  const side = sheer[0] >= amidships ? 1 : -1;
  const at = onSheet(body, side * mm(sheer[1]), mm(sheer[2]));
  return [label(at, name, { toward: side > 0 ? 'ne' : 'nw', again })];
}
