// The full lines plan, a sheet to hang on a wall: profile, half-breadth plan and body plan in their true relation,
// with base line, stations, waterlines and buttocks, each straight in two views and curved in the third, and all
// of them named.

import { drawing, line, mm, note } from './drawing';
import { cutNames, edgeNames, headings, stationNames } from './lines-plan-names';
import {
  type FullLines,
  lengthOf,
  nearBase,
  onSheet,
  type ViewPlace,
  type ViewPlaces,
  placesOf,
  type PlanCut,
  rowOf,
  type Spatial,
} from './lines-plan-places';
import { view } from './project';
import type { Drawing, Pen, Point, Shape } from './shapes';

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

/** How far the straight lines of the grid run past the hull, in rows. */
const PAST = 0.3;
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

/** Straight lines: base, centrelines, stations, and waterlines and buttocks where they are seen edge on. */
function grid(of: FullLines, { profile, plan, body }: ViewPlaces, past: number): Shape[] {
  const across = (place: ViewPlace, height: number, pen: Pen): Shape => {
    const [, y] = onSheet(place, 0, height);
    const from = place.at[0] + place.box.left - past;
    return line([[from, y], [place.at[0] + place.box.right + past, y]], { pen }); // prettier-ignore
  };
  const up = (place: ViewPlace, right: number, pen: Pen): Shape => {
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
function cuts(of: FullLines, { profile, plan }: ViewPlaces): Shape[] {
  const curved = ({ lines }: PlanCut, which: 'profile' | 'plan', { at }: ViewPlace, pen: Pen): Shape[] =>
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

function hullIn(of: FullLines, { profile, plan, body }: ViewPlaces): Shape[] {
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
