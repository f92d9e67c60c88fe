/** Words of joints and glue. */
import { drawScarf } from '../../cells/timber/joints/scarf-drawing';
import {
  arrow,
  breakLine,
  drawing,
  hatch,
  label,
  line,
  type Point,
  radiusDim,
  rectHatch,
} from '../../drawing';
import { curve, round, small, type Sketches } from './small-drawing';

const half = Math.PI / 2;

/** Layers on a curve, each of this thickness, from the inside out. */
function layers(
  radius: number,
  thickness: number,
  count: number,
  spread: number,
): readonly (readonly Point[])[] {
  return Array.from({ length: count }, (_, i) => {
    const inner = radius + i * thickness;
    const [from, to] = [half - spread, half + spread];
    return [...round([0, 0], inner, from, to), ...round([0, 0], inner + thickness, to, from)];
  });
}

export const jointSketches: Sketches = {
  scarf: (say) => {
    // A board of 18 mm at 1 in 8.
    const [thickness, slope] = [0.018, 8];
    const taper = thickness * slope;
    const whole = drawScarf(
      {
        part: 'keelson',
        thickness,
        width: 2 * taper,
        taper,
        slope,
        glueFace: Math.hypot(taper, thickness),
        angle: Math.atan(1 / slope),
      },
      { say },
    );
    // The side view alone: what stands above it is the face to be cut.
    const low = (point: Point) => point[1] <= 18.001;
    const beside = whole.shapes.filter(
      (shape) =>
        ('points' in shape && shape.points.every(low)) || ('rings' in shape && shape.rings.flat().every(low)),
    );
    return drawing({
      title: 'Scarf',
      says: 'Two boards from the side, each planed to a long taper, glued slope on slope.',
      shapes: [...beside, label([72, 9], 'glue line', { toward: 'n' })],
    });
  },
  butt: small(
    'Butt joint',
    'Two boards end to end, with a block behind that reaches over both.',
    hatch(
      [
        [-90, 0],
        [0, 0],
        [0, 10],
        [-90, 10],
      ],
      'ply',
    ),
    hatch(
      [
        [0, 0],
        [90, 0],
        [90, 10],
        [0, 10],
      ],
      'ply',
      { falling: true },
    ),
    hatch([
      [-50, 10],
      [50, 10],
      [44, 20],
      [-44, 20],
    ]),
    breakLine([-90, 0], [-90, 10]),
    breakLine([90, 0], [90, 10]),
    label([0, 15], 'block', { toward: 'n' }),
    label([0, 0], 'butt', { toward: 's' }),
  ),
  fillet: small(
    'Fillet',
    'Two panels that meet in a corner, and a rounded bead of thickened epoxy in it.',
    hatch(
      [
        [-10, -10],
        [90, -10],
        [90, 0],
        [0, 0],
        [-10, 0],
      ],
      'ply',
    ),
    hatch(
      [
        [-10, 0],
        [0, 0],
        [0, 90],
        [-10, 90],
      ],
      'ply',
      { falling: true },
    ),
    hatch([[0, 0], [40, 0], ...round([40, 40], 40, 3 * half, 2 * half)], 'glue'),
    label([11, 11], 'fillet', { toward: 'ne' }),
  ),
  laminate: small(
    'Laminate',
    'Three thin layers on a curve, glued on each other.',
    ...layers(150, 8, 3, 0.55).map((layer, i) => hatch(layer, 'cedar', { falling: i % 2 === 1 })),
    label([0, 174], 'three layers', { toward: 'n' }),
  ),
  'spring-back': small(
    'Spring-back',
    'A bent stack as it lay on the form, and, dashed, flatter, as it comes off.',
    ...layers(150, 8, 2, 0.6).map((layer) => hatch(layer)),
    line(round([0, -52], 202, half - 0.47, half + 0.47), { pen: 'hidden' }),
    line(round([0, -52], 218, half - 0.47, half + 0.47), { pen: 'hidden' }),
    label([97, 140], 'spring-back', { toward: 'ne' }),
  ),
  caul: small(
    'Caul',
    'Two clamps press on a caul, and the caul presses the joint below it all along.',
    hatch(
      [
        [-80, 0],
        [80, 0],
        [80, 12],
        [-80, 12],
      ],
      'ply',
    ),
    hatch([
      [-80, -30],
      [80, -30],
      [80, 0],
      [-80, 0],
    ]),
    hatch(
      [
        [-80, 12],
        [80, 12],
        [80, 30],
        [-80, 30],
      ],
      'cedar',
      { falling: true },
    ),
    arrow([-45, 62], [-45, 31]),
    arrow([45, 62], [45, 31]),
    label([0, 21], 'caul', { toward: 'n' }),
    label([0, 0], 'glue line', { toward: 's' }),
  ),
  chord: small(
    'Chord',
    'A curve, the straight chord between two of its points, and how far the curve rises off its middle.',
    line(round([0, 0], 160, half - 0.7, half + 0.7), { pen: 'outline' }),
    line(
      [
        [-103, 122.4],
        [103, 122.4],
      ],
      { pen: 'visible' },
    ),
    line(
      [
        [0, 122.4],
        [0, 160],
      ],
      { pen: 'dimension' },
    ),
    label([50, 122.4], 'chord', { toward: 's' }),
    label([0, 140], 'rise', { toward: 'e' }),
    radiusDim([0, 0], 160, half + 0.55, 'radius'),
  ),
  batten: small(
    'Batten',
    'A batten bent through a row of marks, with a nail on each side of it at every mark.',
    line(
      curve((t) => [t * 240, 60 * Math.sin(t * 2.6)]),
      { pen: 'outline' },
    ),
    line(
      curve((t) => [t * 240, 60 * Math.sin(t * 2.6) + 6]),
      { pen: 'outline' },
    ),
    ...[0.1, 0.35, 0.6, 0.85].flatMap((t) => {
      const [x, y] = [t * 240, 60 * Math.sin(t * 2.6)];
      return [rectHatch(x - 2, y + 7, 4, 4, 'plain'), rectHatch(x - 2, y - 5, 4, 4, 'plain')];
    }),
    label([144, 66], 'batten', { toward: 'n' }),
    label([84, 43], 'nails', { toward: 'se' }),
  ),
  fair: small(
    'Fair',
    'Two lines: the upper one bends steadily, the lower one has a hollow.',
    line(
      curve((t) => [t * 240, 60 + 46 * Math.sin(t * Math.PI)]),
      { pen: 'outline' },
    ),
    line(
      curve((t) => [t * 240, 46 * Math.sin(t * Math.PI) - 17 * Math.exp(-(((t - 0.42) / 0.09) ** 2))]),
      { pen: 'outline' },
    ),
    label([120, 106], 'fair', { toward: 'n' }),
    label([101, 27], 'hollow', { toward: 's' }),
  ),
};
