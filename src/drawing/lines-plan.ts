// The full lines plan: profile, half-breadth plan and body plan in their true relation, with base line,
// stations, waterlines and buttocks, each straight in two views and curved in the third.

import { drawing, label, line, mm, note } from './drawing';
import { extents } from './flatten';
import { type SpaceLine, view, type View } from './project';
import type { Box, Drawing, Pen, Point, Shape } from './shapes';

type Spatial = SpaceLine['points'][number];

/** A station of the plan: where it crosses the keel, and the section there, m. */
export interface PlanStation {
  /** Short, to stand on the drawing; null where its neighbours' names must do. */
  readonly name: string | null;
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

export interface FullLines {
  readonly title: string;
  readonly says: string;
  readonly edges: readonly SpaceLine[];
  readonly stations: readonly PlanStation[];
  readonly waterlines: readonly PlanCut[];
  readonly buttocks: readonly PlanCut[];
  /** Where the body plan changes sides, m. */
  readonly amidships: number;
  readonly notes: readonly string[];
}

/** One view on the sheet: how much larger than the rest, where its origin lies, and what it takes up from there, mm. */
interface Place {
  readonly times: number;
  readonly at: Point;
  readonly box: Box;
}
type Places = Readonly<Record<View, Place>>;

/** Height of a row of text, by the hull's length: what 14 px are on a sheet as narrow as a phone. */
const ROW = 0.09;
/** How far the straight lines of the grid run past the hull, in rows. */
const PAST = 0.25;

/**
 * The three views below each other: profile, under it the half-breadth plan at the same stations, and at the
 * foot the body plan, forebody to the right of the centreline and afterbody to the left. The body plan is drawn
 * twice as large where there is room for that, and says so.
 */
export function fullLinesPlan(of: FullLines): Drawing {
  const { profile, plan, body } = placesOf(of);
  const row = ROW * (profile.box.right - profile.box.left);
  return drawing({
    title: of.title,
    says: of.says,
    shapes: [
      ...grid(of, { profile, plan, body }, PAST * row),
      ...cuts(of, { profile, plan, body }),
      ...hullIn(of, { profile, plan, body }),
      ...names(of, { profile, plan, body }, row),
      ...of.notes.map((text) => note(text)),
    ],
  });
}

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
  const row = ROW * length;
  const planY = profile.bottom - 1.9 * row - plan.top;
  const bodyY = planY + plan.bottom - 2.1 * row - body.top;
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
  const bases = nearBase(profile.box) ? [across(profile, 0, 'dimension'), across(body, 0, 'dimension')] : [];
  return [
    ...bases,
    across(plan, 0, 'centre'),
    up(body, 0, 'centre'),
    ...of.stations.flatMap(({ x }) => [up(profile, mm(x), 'thin'), up(plan, mm(x), 'thin')]),
    ...of.waterlines.flatMap(({ at, design }) => {
      const pen = design ? 'visible' : 'thin';
      return [across(profile, mm(at), pen), across(body, mm(at), pen)];
    }),
    ...of.buttocks.flatMap(({ at }) => [
      across(plan, mm(at), 'thin'),
      up(body, mm(at), 'thin'),
      up(body, -mm(at), 'thin'),
    ]),
  ];
}

/** Waterlines curved in the half-breadth plan, buttocks in the profile. A cut is no part that could be lit. */
function cuts(of: FullLines, { profile, plan }: Places): Shape[] {
  const curved = ({ lines, design }: PlanCut, which: 'profile' | 'plan', { at }: Place): Shape[] =>
    lines.map((points) => {
      const seen = points.map(([x, y, z]): Point => [at[0] + mm(x), at[1] + mm(which === 'plan' ? y : z)]);
      return line(seen, { pen: design ? 'visible' : 'dimension' });
    });
  return [
    ...of.buttocks.flatMap((cut) => curved(cut, 'profile', profile)),
    ...of.waterlines.flatMap((cut) => curved(cut, 'plan', plan)),
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

function names(of: FullLines, { profile, plan, body }: Places, row: number): Shape[] {
  const { left, right, top, bottom } = profile.box;
  const ends = [...of.stations.slice(0, 1), ...of.stations.slice(1).slice(-1)];
  const frames = of.stations.slice(1, -1);
  const foot = body.at[1] + body.box.bottom - 0.85 * row;
  const outward = body.box.right / 2 + 1.2 * row;
  const beside = (all: readonly PlanCut[], place: Place): Shape[] =>
    apart(all, row).map(({ name, at }) => note(name, { at: [right + 1.3 * row, place.at[1] + mm(at)] }));
  return [
    note('Profile', { at: [(left + right) / 2, top + 0.85 * row] }),
    note('Half-breadth plan', { at: [(left + right) / 2, plan.at[1] + plan.box.bottom - 0.85 * row] }),
    note(body.times === 1 ? 'Body plan' : 'Body plan, twice as large', {
      at: [body.at[0], foot - 0.95 * row],
    }),
    note('aft', { at: [body.at[0] - outward, foot] }),
    note('forward', { at: [body.at[0] + outward, foot] }),
    // The ends stand above, beside the title, where their long names take no room from the frames'.
    ...named(ends).map(({ name, x }) => note(name, { at: [mm(x), top + 0.85 * row] })),
    ...frameRow(frames, row).map(({ name, x }) => note(name, { at: [mm(x), bottom - 0.9 * row] })),
    ...beside(of.waterlines, profile),
    ...beside(of.buttocks, plan),
    ...of.stations.flatMap((station) => sectionName(station, of.amidships, body)),
  ];
}

/** Mean width of a letter, in rows. */
const LETTER = 0.42;

interface StationName {
  readonly name: string;
  readonly x: number;
}

const named = (stations: readonly PlanStation[]): readonly StationName[] =>
  stations.flatMap(({ name, x }) => (name === null ? [] : [{ name, x }]));

/** As many names of frames as can stand beside each other, from aft forward. */
function frameRow(frames: readonly PlanStation[], row: number): readonly StationName[] {
  const half = ({ name }: StationName) => (LETTER * name.length * row) / 2;
  return named(frames).reduce<StationName[]>((kept, one) => {
    const last = kept.at(-1);
    const clear = !last || mm(one.x - last.x) > half(one) + half(last) + LETTER * row;
    return clear ? [...kept, one] : kept;
  }, []);
}

/** The name of a section at its sheer, outside the body plan. */
function sectionName({ name, section }: PlanStation, amidships: number, body: Place): Shape[] {
  const sheer = section.points.at(-1);
  if (name === null || !sheer || sheer[1] === 0) return [];
  const side = sheer[0] >= amidships ? 1 : -1;
  const at = onSheet(body, side * mm(sheer[1]), mm(sheer[2]));
  return [label(at, name, { toward: side > 0 ? 'ne' : 'nw' })];
}

/** As many of the cuts as can be named a row apart, the design waterline before all. */
function apart(all: readonly PlanCut[], row: number): PlanCut[] {
  const inOrder = [...all.filter(({ design }) => design), ...all.filter(({ design }) => !design)];
  return inOrder.reduce<PlanCut[]>(
    (kept, cut) => (kept.every(({ at }) => mm(Math.abs(at - cut.at)) > 0.95 * row) ? [...kept, cut] : kept),
    [],
  );
}
