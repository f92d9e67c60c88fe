/** Words of the section: what is seen when the hull is cut across. */
import { buildHull, demoBoat, offsetsOf, starter, type Table } from '../../boat';
import { angleDim, centreLine, drawing, hatch, label, line, mm, type Point, type Shape } from '../../drawing';
import type { Sketches } from './small-drawing';

/** The widest section of a boat, from the keel out to the sheer, mm. */
function section(table: Table): readonly Point[] {
  return buildHull(offsetsOf(table)).widest.corners.map(([, y, z]): Point => [mm(y), mm(z)]);
}

const mirrored = (points: readonly Point[]): Point[] => points.map(([y, z]): Point => [-y, z]).toReversed();
const towards = ([ay, az]: Point, [by, bz]: Point) => Math.atan2(bz - az, by - ay);
const share = ([ay, az]: Point, [by, bz]: Point, t: number): Point => [
  ay + t * (by - ay),
  az + t * (bz - az),
];

/** The whole section in one line, with its centreline. */
function whole(points: readonly Point[]): Shape[] {
  const all = [...mirrored(points), ...points.slice(1)];
  const [low, high] = [points[0]![1], points.at(-1)![1]]; // a section has corners
  return [line(all, { pen: 'outline' }), centreLine([0, low], [0, high])];
}

export const sectionSketches: Sketches = {
  deadrise: () => {
    const points = section(starter('vee-launch') ?? demoBoat);
    const [keel, chine] = [points[0]!, points[1]!]; // a section has corners
    const out = chine[0] * 1.15;
    return drawing({
      title: 'Deadrise',
      says: 'A section of a vee-bottomed hull; the deadrise is the angle between the bottom and a level line.',
      shapes: [
        ...whole(points),
        line([keel, [out, keel[1]]], { pen: 'hidden' }),
        angleDim(keel, 0, towards(keel, chine), 'deadrise', { reach: chine[0] * 0.8 }),
      ],
    });
  },
  flare: () => {
    const points = section(demoBoat);
    const [chine, sheer] = [points.at(-2)!, points.at(-1)!]; // a section has corners
    const up = sheer[1] - chine[1];
    return drawing({
      title: 'Flare',
      says: 'A section of the hull; the flare is the angle between the side and a plumb line.',
      shapes: [
        ...whole(points),
        line([chine, [chine[0], chine[1] + up * 1.15]], { pen: 'hidden' }),
        angleDim(chine, towards(chine, sheer), Math.PI / 2, 'flare', { reach: up * 0.8 }),
      ],
    });
  },
  frame: () => {
    const points = section(demoBoat);
    const [keel, chine, sheer] = [points[0]!, points.at(-2)!, points.at(-1)!]; // a section has corners
    const deep = (sheer[1] - chine[1]) * 0.2;
    const inner: Point = [chine[0] - deep * 0.9, chine[1] + deep];
    const head: Point = [sheer[0] - deep, sheer[1]];
    const side = [chine, sheer, head, inner];
    const bottom: Point[] = [[keel[0], keel[1]], chine, inner, [0, keel[1] + deep]];
    const gusset: Point[] = [
      share(chine, sheer, 0.42),
      chine,
      [chine[0] - deep * 2.4, chine[1]],
      [chine[0] - deep * 2.2, chine[1] + deep],
      share(inner, head, 0.36),
    ];
    const both = (part: readonly Point[], draw: (points: readonly Point[]) => Shape) => [
      draw(part),
      draw(mirrored(part)),
    ];
    return drawing({
      title: 'Frame',
      says: 'A frame: a bottom member, two side members, and a gusset over each joint between them.',
      shapes: [
        ...both(bottom, (part) => hatch(part)),
        ...both(side, (part) => hatch(part, 'cedar', { falling: true })),
        ...both(gusset, (part) => hatch(part, 'ply')),
        label(share(head, sheer, 0.5), 'side member', { toward: 'n' }),
        label([0, keel[1] + deep / 2], 'bottom member', { toward: 'n' }),
        label(share(chine, sheer, 0.25), 'gusset', { toward: 'e' }),
      ],
    });
  },
};
