/**
 * The hull as a still picture: quads of the skin painted from the farthest to the nearest, each with the lines that
 * run along its sides, so that what is hidden is painted over.
 */
import { type Hull, isPost, type Panel, type Station } from '../../boat';
import type { SvgNode } from '../../drawing';
import { cross, pointAt, subtract, unit, type Vec3 } from '../../kernel';
import { atHeel, axesOfLook, heelInWords, type Viewpoint, type LookAxes, seen, seenFrom } from './look';

export interface StillOptions {
  /** By which she lies over to port, rad. */
  readonly heel?: number;
  readonly look: Viewpoint;
  /** Of the boat. */
  readonly name: string;
  readonly lit: ReadonlySet<string>;
  /** Its edges are dashed over the picture. */
  readonly second: Hull | null;
}

/** A side of a quad that is a line of the hull. */
interface Side {
  readonly name: string;
  readonly kind: 'edge' | 'frame';
  readonly line: readonly [Vec3, Vec3];
}

interface Quad {
  readonly name: string;
  readonly corners: readonly Vec3[];
  /** Outward, unit; null where the quad has shrunk to a line. */
  readonly normal: Vec3 | null;
  readonly sides: readonly Side[];
}

/** px; the page sets the picture to the width it has. */
const WIDTH = 640;
const MARGIN = 8;
/** About as many slices as are wanted along the hull. */
const SLICES = 24;
/** Shades of the skin, dark to light: classes `tone-0` to `tone-11`. */
const TONES = 12;
/** Light from over the left shoulder, as seen; unit. */
const LIGHT = unit([-0.45, 0.65, 0.6]);
const ALONG = 49;

/** The picture as a tree; its classes are styled in hull.css. */
export function stillOf(hull: Hull, { look, heel = 0, name, lit, second }: StillOptions): SvgNode {
  const axes = atHeel(axesOfLook(look), heel);
  const quads = quadsOf(hull).toSorted((a, b) => depthOf(a, axes) - depthOf(b, axes));
  const ghosts = (second?.edges ?? []).flatMap((edge) => bothSides(edge.polyline(ALONG)));
  const paper = paperFor([...quads.flatMap(({ corners }) => corners), ...ghosts.flat()], axes);
  const painted = quads.flatMap((quad): SvgNode[] => [
    path(paper.d(quad.corners, true), `skin ${toneOf(quad, axes)}`, quad.name, lit),
    ...quad.sides.map((side) => path(paper.d(side.line, false), side.kind, side.name, lit)),
  ]);
  return {
    tag: 'svg',
    attrs: {
      class: 'hull-still',
      viewBox: `0 0 ${WIDTH} ${paper.height}`,
      role: 'img',
      'aria-label': `${name}, ${seenFrom(look)}${heelInWords(heel)}: ${partsInWords(hull)}${second ? ' The second version is dashed over it.' : ''}`,
    },
    kids: [...painted, ...ghosts.map((points) => path(paper.d(points, false), 'ghost', '', lit))],
  };
}

export function partsInWords({ panels, frames, edges }: Hull): string {
  const count = (n: number, one: string) => `${n} ${one}${n === 1 ? '' : 's'}`;
  return `${count(panels.length, 'panel')} a side, ${count(edges.length, 'long edge')} and ${count(frames.length, 'frame')}.`;
}

function path(d: string, className: string, part: string, lit: ReadonlySet<string>): SvgNode {
  const classes = lit.has(part) ? `${className} lit` : className;
  return { tag: 'path', attrs: { class: classes, 'data-part': part, d }, kids: [] };
}

/** Slices between the stations, straight across each panel as frames are, both sides; and the end faces. */
function quadsOf(hull: Hull): Quad[] {
  const port = hull.panels.flatMap((panel) => quadsOfPanel(panel, hull.stations));
  const ends = [hull.aft, hull.fore].filter(({ role }) => !isPost(role)).map(endFace);
  return [...port, ...port.map(quadToStarboard), ...ends];
}

function quadsOfPanel(panel: Panel, stations: readonly Station[]): Quad[] {
  const slices = Math.max(1, Math.round(SLICES / (stations.length - 1)));
  const inner = slicesAlong(panel.inner.batten, slices);
  const outer = slicesAlong(panel.outer.batten, slices);
  const frameAt = (i: number, a: Vec3, b: Vec3): Side[] =>
    i % slices === 0 ? [{ name: stations[i / slices]!.name, kind: 'frame', line: [a, b] }] : [];
  return inner.slice(1).map((b, i): Quad => {
    // Both edges are cut into as many slices, `slices` of them between each two stations.
    const [a, c, d] = [inner[i]!, outer[i + 1]!, outer[i]!];
    return {
      name: panel.name,
      corners: [a, b, c, d],
      normal: facing(subtract(c, a), subtract(b, d)),
      sides: [
        { name: panel.inner.name, kind: 'edge', line: [a, b] },
        { name: panel.outer.name, kind: 'edge', line: [d, c] },
        ...frameAt(i, a, d),
        ...frameAt(i + 1, b, c),
      ],
    };
  });
}

function slicesAlong(batten: Panel['inner']['batten'], slices: number): readonly Vec3[] {
  const knots = Array.from(batten.knots);
  const places = knots.slice(1).flatMap((to, i) => {
    const from = knots[i]!; // the list shifted by one
    return Array.from({ length: slices }, (_, k) => from + ((to - from) * k) / slices);
  });
  return [...places, knots.at(-1)!].map((t) => pointAt(batten, t));
}

/** (first edge to second) x (forward) is outward on the port side; so is the product of the diagonals. */
function facing(across: Vec3, along: Vec3): Vec3 | null {
  const normal = cross(across, along);
  return Math.hypot(...normal) === 0 ? null : unit(normal);
}

function endFace({ name, corners, role }: Station): Quad {
  const round = [...corners.toReversed(), ...corners.map(toStarboard)];
  const sides = round.slice(1).map((to, i): Side => ({ name, kind: 'edge', line: [round[i]!, to] }));
  // A transom's plane holds its sheer on both sides and its keel.
  const [keel, sheer] = [corners[0]!, corners.at(-1)!];
  const normal = facing(subtract(sheer, keel), subtract(toStarboard(sheer), keel));
  const outward = normal && normal[0] < 0 === (role === 'transom');
  return { name, corners: round, normal: outward === false ? opposite(normal!) : normal, sides };
}

const toStarboard = ([x, y, z]: Vec3): Vec3 => [x, -y, z];
const opposite = ([x, y, z]: Vec3): Vec3 => [-x, -y, -z];
const bothSides = (line: readonly Vec3[]): (readonly Vec3[])[] => [line, line.map(toStarboard)];

function quadToStarboard({ name, corners, normal, sides }: Quad): Quad {
  return {
    name,
    corners: corners.map(toStarboard),
    normal: normal && toStarboard(normal),
    sides: sides.map((side) => ({ ...side, line: [toStarboard(side.line[0]), toStarboard(side.line[1])] })),
  };
}

/** Of the middle of a quad, towards the eye. */
function depthOf({ corners }: Quad, axes: LookAxes): number {
  return corners.reduce((sum, corner) => sum + seen(axes, corner)[2], 0) / corners.length;
}

/** How light a quad is: by its slope to the light, and darker inside the boat. */
function toneOf({ normal }: Quad, axes: LookAxes): string {
  if (!normal) return 'tone-0';
  const [x, y, z] = seen(axes, normal);
  const away = z < 0;
  const bright = (away ? -1 : 1) * (x * LIGHT[0] + y * LIGHT[1] + z * LIGHT[2]);
  const shade = (0.4 + 0.6 * Math.max(0, bright)) * (away ? 0.65 : 1);
  return `tone-${Math.round(shade * (TONES - 1))}`;
}

interface Paper {
  readonly height: number;
  readonly d: (points: readonly Vec3[], closed: boolean) => string;
}

function paperFor(points: readonly Vec3[], axes: LookAxes): Paper {
  const flat = points.map((point) => seen(axes, point));
  const [left, right] = [Math.min(...flat.map(([x]) => x)), Math.max(...flat.map(([x]) => x))];
  const [low, top] = [Math.min(...flat.map(([, y]) => y)), Math.max(...flat.map(([, y]) => y))];
  // Seen end on a hull is as high as it is broad: it gets no larger than it is from the side.
  const room = { width: WIDTH - 2 * MARGIN, height: 0.55 * WIDTH };
  const scale = Math.min(room.width / (right - left || 1), room.height / (top - low || 1));
  const indent = (WIDTH - scale * (right - left)) / 2;
  const round = (value: number) => Math.round(10 * value) / 10;
  return {
    height: Math.ceil(scale * (top - low) + 2 * MARGIN),
    d: (line, closed) => {
      const at = line.map((point) => {
        const [x, y] = seen(axes, point);
        return `${round(indent + scale * (x - left))} ${round(MARGIN + scale * (top - y))}`;
      });
      return `M${at.join('L')}${closed ? 'Z' : ''}`;
    },
  };
}
