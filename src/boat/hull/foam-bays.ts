/** Room for foam in the bays between stations, and the foam in each as a block. */
import { sectionsBelow, type Vec3 } from '../../kernel';
import { onceEach } from '../once';
import type { Hull } from './hull';

/** Where foam stands in a bay. Lengths in m. */
export interface FoamPlace {
  /** In a strip along both sides, high up; or across the boat, under a level. */
  readonly where: 'sides' | 'under';
  /** Of the strips: how far under the sheer their top lies, how far down and how far in they reach. */
  readonly below: number;
  readonly drop: number;
  readonly thick: number;
  /** Level of the other, above the keel at the widest station. */
  readonly under: number;
  /** Share of the room that foam fills: frames, clamps and gaps take the rest. */
  readonly fills: number;
}

/** A bay, named by the station at its after end; both sides together. */
export interface FoamBay {
  readonly name: string;
  readonly aft: number;
  readonly fore: number;
  /** m3 */
  readonly room: number;
  /** The block that stands for its foam: highest place, and from the centreline to its inner and outer face, m. */
  readonly top: number;
  readonly inner: number;
  readonly outer: number;
}

const ALONG_SHEER = 129;
/** Simpson's rule over four steps. */
const SIMPSON = [1, 4, 2, 4, 1] as const;
const mean = (of: (share: number) => number): number =>
  SIMPSON.reduce((sum, weight, at) => sum + weight * of(at / 4), 0) / 12;

export function foamBays(hull: Hull, place: FoamPlace): readonly FoamBay[] {
  const { body, stations } = hull;
  const sheer = hull.edges.at(-1)!.polyline(ALONG_SHEER); // two edges or more
  const level = hull.widest.corners[0]![2] + place.under;
  // Neighbouring bays ask at the station between them alike.
  const sectionAt = onceEach((x: number) => sectionsBelow(body, x));
  const halfAt = (x: number, z: number) => sectionAt(x)(z).halfBreadth;
  const topAt = (x: number) => heightAt(sheer, x) - place.below;
  const area = (x: number): number =>
    place.where === 'under'
      ? sectionAt(x)(level).area
      : 2 * place.drop * mean((share) => Math.min(place.thick, halfAt(x, topAt(x) - share * place.drop)));
  return stations.slice(0, -1).map(({ name, x: aft }, at): FoamBay => {
    const fore = stations[at + 1]!.x; // all but the last
    const middle = (aft + fore) / 2;
    const room = place.fills * (fore - aft) * mean((share) => area(aft + share * (fore - aft)));
    if (place.where === 'under')
      return { name, aft, fore, room, top: level, inner: 0, outer: 0.9 * halfAt(middle, level) };
    const outer = halfAt(middle, topAt(middle) - place.drop / 2);
    return { name, aft, fore, room, top: topAt(middle), inner: Math.max(outer - place.thick, 0), outer };
  });
}

function heightAt(line: readonly Vec3[], x: number): number {
  const at = line.findIndex(([to]) => to >= x);
  if (at <= 0) return line[at === 0 ? 0 : line.length - 1]![2];
  const [x0, , z0] = line[at - 1]!;
  const [x1, , z1] = line[at]!;
  return z0 + ((z1 - z0) * (x - x0)) / (x1 - x0);
}

/** Corners of a block of so much foam in a bay: the lowest and the highest, port side, m; null where there is none. */
export function blockOf(bay: FoamBay, volume: number): readonly [low: Vec3, high: Vec3] | null {
  const base = 2 * (bay.outer - bay.inner) * (bay.fore - bay.aft);
  if (volume <= 0 || base <= 0) return null;
  return [
    [bay.aft, bay.inner, bay.top - volume / base],
    [bay.fore, bay.outer, bay.top],
  ];
}
