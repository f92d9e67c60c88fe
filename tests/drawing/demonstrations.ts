// Drawings such as cells make, for the stored figures. All boats and numbers invented.

import {
  angleDim,
  arc,
  arrow,
  breakLine,
  centreLine,
  circle,
  dim,
  drawing,
  hatch,
  label,
  line,
  linesPlan,
  mark,
  note,
  radiusDim,
  rectHatch,
  type Drawing,
  type Point,
  type SpaceLine,
} from '../../src/drawing';

/** A plain scarf from the side: two boards, the slope, the glue line, the nibless ends. */
export function scarf(thickness = 19, slope = 8): Drawing {
  const t = thickness;
  const taper = slope * t;
  const end = 2.4 * t;
  return drawing({
    title: 'Scarf joint, seen from the side',
    says: `Two boards ${t} mm thick joined by a taper of ${taper} mm, 1 in ${slope}, with glue between.`,
    shapes: [
      hatch(
        [
          [-end, 0],
          [taper, 0],
          [0, t],
          [-end, t],
        ],
        'plain',
        { part: 'keelson', pen: 'none' },
      ),
      hatch(
        [
          [taper, 0],
          [taper + end, 0],
          [taper + end, t],
          [0, t],
        ],
        'plain',
        { part: 'keelson', pen: 'none' },
      ),
      line(
        [
          [-end, t],
          [taper + end, t],
        ],
        { pen: 'outline', part: 'keelson' },
      ),
      line(
        [
          [-end, 0],
          [taper + end, 0],
        ],
        { pen: 'outline', part: 'keelson' },
      ),
      line(
        [
          [0, t],
          [taper, 0],
        ],
        { pen: 'outline', layer: 'glue' },
      ),
      breakLine([-end, 0], [-end, t]),
      breakLine([taper + end, 0], [taper + end, t]),
      dim([0, t], [taper, 0], `${taper} mm`, { run: 'horizontal', side: 'above' }),
      dim([taper + end, 0], [taper + end, t], `${t} mm`, { side: 'right' }),
      angleDim([taper, 0], Math.PI - Math.atan(1 / slope), Math.PI, `1 in ${slope}`, { reach: taper }),
      label([taper * 0.35, t * 0.65], 'glue line', { toward: 's' }),
      label([-end * 0.5, t * 0.5], 'keelson, after length', { toward: 'sw' }),
    ],
  });
}

/** Keelson slot and limbers at the bottom of a frame, seen from aft. */
export function limber(): Drawing {
  const half = 70;
  const keel = 19;
  const water = 18;
  const hole = 25;
  const deep = 90;
  const wide = 210;
  const centre = half + water - hole / 2;
  const top = keel - hole / 2;
  const outline: Point[] = [
    [-wide, 0],
    [-half - water, 0],
    [-half - water, top],
    ...bow([-centre, top], hole / 2, Math.PI, Math.PI / 2),
    [-centre, keel],
    [centre, keel],
    ...bow([centre, top], hole / 2, Math.PI / 2, 0),
    [half + water, top],
    [half + water, 0],
    [wide, 0],
    [wide, deep],
    [-wide, deep],
  ];
  return drawing({
    title: 'Slot for keelson and limbers in frame 3, seen from aft',
    says: 'A slot 176 mm wide and 19 mm deep takes the 140 mm keelson and leaves a limber of 18 mm on each side.',
    shapes: [
      hatch(outline, 'cedar', { part: 'frame3' }),
      rectHatch(-half, 0, 2 * half, keel, 'cedar', { falling: true, part: 'keelson' }),
      circle([-centre, top], hole / 2, { pen: 'hidden', part: 'frame3' }),
      circle([centre, top], hole / 2, { pen: 'hidden', part: 'frame3' }),
      mark([-centre, top]),
      mark([centre, top]),
      centreLine([0, -20], [0, deep + 20]),
      rectHatch(-wide, -9, 2 * wide, 9, 'ply', { part: 'bottom' }),
      dim([0, top], [centre, top], '75.5 mm', { run: 'horizontal', side: 'above' }),
      dim([-half, 0], [half, 0], '140 mm', { run: 'horizontal', side: 'below' }),
      dim([half, 0], [half + water, 0], '18 mm', { run: 'horizontal', side: 'below' }),
      dim([-half - water, 0], [half + water, 0], '176 mm', { run: 'horizontal', side: 'below', level: 1 }),
      dim([wide, 0], [wide, deep], '90 mm', { side: 'right' }),
      dim([-wide, 0], [-wide, keel], '19 mm', { side: 'left' }),
      dim([centre, 0], [centre, top], '6.5 mm', { run: 'vertical', side: 'right' }),
      label([-centre, top], 'hole 25 mm', { toward: 'nw' }),
      label([half + water / 2, 8], 'limber', { toward: 'ne' }),
      label([-half / 2, 8], 'keelson', { toward: 'n' }),
    ],
  });
}

/** A board sprung round a radius over three duck points. */
export function bend(radius = 1200, thickness = 19): Drawing {
  const half = 0.42;
  const up = Math.PI / 2;
  const inner = bow([0, 0], radius, up + half, up - half);
  const outer = bow([0, 0], radius + thickness, up - half, up + half);
  const chord = radius * Math.sin(half);
  const seat = radius * Math.cos(half);
  return drawing({
    title: 'A board bent to a radius',
    says: `A board ${thickness} mm thick bent to a radius of ${radius} mm, held at both ends and pushed in the middle.`,
    shapes: [
      hatch([...inner, ...outer], 'plain', { part: 'chine' }),
      arc([0, 0], radius + thickness / 2, up - half, up + half, { pen: 'centre', part: 'chine' }),
      arrow([0, radius - 150], [0, radius]),
      arrow([-chord, seat + 150], [-chord, seat + thickness]),
      arrow([chord, seat + 150], [chord, seat + thickness]),
      dim([-chord, seat], [chord, seat], `${Math.round(2 * chord)} mm`, { side: 'below' }),
      dim([0, seat], [0, radius], `${Math.round(radius - seat)} mm`, { side: 'right', run: 'vertical' }),
      radiusDim([0, 0], radius, up + 0.22, `R ${radius} mm`),
      dim(
        [radius * Math.cos(up - 0.25), radius * Math.sin(up - 0.25)],
        [(radius + thickness) * Math.cos(up - 0.25), (radius + thickness) * Math.sin(up - 0.25)],
        `${thickness} mm`,
        { side: 'right' },
      ),
      label([radius * Math.cos(up + 0.1), (radius + thickness) * Math.sin(up + 0.1)], 'stretched face', {
        toward: 'n',
      }),
      label([radius * Math.cos(up - 0.12), radius * Math.sin(up - 0.12)], 'squeezed face', { toward: 's' }),
      label([0, radius - 150], 'push 180 N', { toward: 'e' }),
    ],
  });
}

/** A flared skiff of our own, as edges and stations. */
export function skiffLines(): SpaceLine[] {
  const stations = [0, 0.8, 1.6, 2.4, 3.2, 4];
  const half = (x: number, most: number): number => most * (1 - ((x - 1.5) / 2.6) ** 2);
  const edge = (name: string, most: number, z: (x: number) => number): SpaceLine => ({
    name,
    pen: 'outline',
    points: Array.from({ length: 41 }, (_, i) => {
      const x = i / 10;
      return [x, Math.max(0, half(x, most)), z(x)] as const;
    }),
  });
  const chine = edge('chine', 0.55, (x) => 0.12 * ((x - 1.4) / 2.6) ** 2);
  const sheer = edge('sheer', 0.74, (x) => 0.46 + 0.2 * ((x - 1.4) / 2.6) ** 2);
  const keel: SpaceLine = { name: 'keel', pen: 'outline', points: chine.points.map(([x, , z]) => [x, 0, z]) };
  return [
    keel,
    chine,
    sheer,
    ...stations.map((x, i): SpaceLine => {
      const rank = Math.round(x * 10);
      return {
        name: `frame${i}`,
        points: [keel, chine, sheer].flatMap((l) => {
          const p = l.points[rank];
          return p ? [p] : [];
        }),
      };
    }),
  ];
}

export const skiffPlan = (form: 'wide' | 'tall'): Drawing =>
  linesPlan(skiffLines(), {
    title: 'Lines of a flared skiff',
    says: 'Profile, half-breadth plan and body plan of a skiff 4 m long.',
    form,
  });

/** More texts than room: some must go to the key. */
export const crowded = (): Drawing =>
  drawing({
    title: 'Screws at a frame head',
    says: 'Eight screws round the head of a frame.',
    shapes: [
      rectHatch(0, 0, 60, 200, 'cedar', { part: 'frame1' }),
      ...Array.from({ length: 8 }, (_, i) => [
        mark([30, 20 + 23 * i], { form: 'ring' }),
        label([30, 20 + 23 * i], `screw ${i + 1}, gauge 8, 38 mm, clear of the later saw cut`),
        dim([0, 0], [30, 20 + 23 * i], `${20 + 23 * i} mm`, { run: 'vertical', side: 'right' }),
      ]),
      note('All screws of silicon bronze, holes bored before the frame is set up.'),
    ],
  });

/** Points of an arc, clockwise where `to` is less than `from`. */
function bow(centre: Point, radius: number, from: number, to: number): Point[] {
  return Array.from({ length: 25 }, (_, i): Point => {
    const angle = from + ((to - from) * i) / 24;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}
