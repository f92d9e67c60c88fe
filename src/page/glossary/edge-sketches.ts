/** Words of edges and corners: bevels, logs, limbers, and what is cut into a frame. */
import { edgeSection } from '../../cells/frames/bevelled-edge-drawing';
import { limberView } from '../../cells/frames/limber-drawing';
import { drawing, hatch, label, line } from '../../drawing';
import { small, type Sketches } from './small-drawing';

const rad = Math.PI / 180;

export const edgeSketches: Sketches = {
  bevel: () =>
    drawing({
      title: 'Bevel',
      says: 'The edge of a board from its end: square at first, with a corner planed off to an angle.',
      shapes: edgeSection([0, 0], 20, 24 * rad, {
        name: 'edge',
        gauge: 'bevel',
        off: 'off',
        part: 'frame',
        faces: ['', ''],
      }).filter((shape) => shape.shape !== 'note' && shape.shape !== 'dim'),
    }),
  limber: (say) => {
    // A keelson of 90 x 18 mm in a member 90 mm deep, with a limber of 15 mm on each side of it.
    const seen = { keelsonWidth: 0.09, limberWidth: 0.015, holeDiameter: 0.012, cutDepth: 0.018 };
    const slotWidth = seen.keelsonWidth + 2 * seen.limberWidth;
    const whole = limberView(
      {
        ...seen,
        slotWidth,
        holeFromCentre: slotWidth / 2 - seen.holeDiameter / 2,
        holeAboveBottom: seen.cutDepth - seen.holeDiameter / 2,
        frame: 'frame',
        depthThere: 0.06,
        deadrise: 0,
      },
      (metres) => say(metres, 'length'),
      '',
    );
    // What is dimensioned there is for the bench; here it is the words that count.
    const wordless = whole.shapes.filter(({ shape }) => !['dim', 'label', 'note'].includes(shape));
    return drawing({
      title: 'Keelson and limbers',
      says: 'The bottom member of a frame with the keelson in its slot; what is left open on each side is a limber.',
      shapes: [
        ...wordless,
        label([0, 9], 'keelson', { toward: 'n' }),
        label([52, 6], 'limber', { toward: 'se' }),
        label([-52, 6], 'limber', { toward: 'sw' }),
      ],
    });
  },
  'chine-log': small(
    'Chine log',
    'A section through the corner of the hull: bottom and side are fastened to the log that lies inside the corner.',
    hatch(
      [
        [0, 0],
        [-60, 0],
        [-60, -6],
        [4, -6],
      ],
      'ply',
    ),
    hatch(
      [
        [0, 0],
        [24, 60],
        [30, 58],
        [4, -6],
      ],
      'ply',
      { falling: true },
    ),
    hatch([
      [0, 0],
      [-26, 0],
      [-26, 20],
      [8, 20],
    ]),
    label([-12, 11], 'chine log', { toward: 'n' }),
    label([-48, -3], 'bottom', { toward: 's' }),
    label([22, 45], 'side', { toward: 'e' }),
  ),
  notch: small(
    'Notch',
    'The edge of a frame with a timber let into it, flush with the edge.',
    hatch(
      [
        [-60, 0],
        [-15, 0],
        [-15, 20],
        [15, 20],
        [15, 0],
        [60, 0],
        [60, 60],
        [-60, 60],
      ],
      'plain',
    ),
    hatch([
      [-14, 0],
      [14, 0],
      [14, 19],
      [-14, 19],
    ]),
    label([0, 10], 'timber in its notch', { toward: 's' }),
    label([40, 40], 'frame', { toward: 'n' }),
  ),
  rabbet: small(
    'Rabbet',
    'A timber from its end with a step cut into its corner; the edge of a plank lies in the step.',
    hatch([
      [0, 0],
      [40, 0],
      [40, 30],
      [52, 30],
      [52, 60],
      [0, 60],
    ]),
    hatch(
      [
        [40, 20],
        [110, 20],
        [110, 30],
        [40, 30],
      ],
      'ply',
    ),
    label([80, 25], 'plank', { toward: 's' }),
    label([46, 30], 'rabbet', { toward: 'ne' }),
  ),
  'bearding-line': small(
    'Bearding line',
    'A stem from above: the side lies on the bevel, which begins at the bearding line and runs forward to the face.',
    hatch([
      [0, -20],
      [25, -20],
      [60, -6],
      [60, 6],
      [25, 20],
      [0, 20],
    ]),
    hatch(
      [
        [25, 20],
        [60, 6],
        [62, 11],
        [-40, 52],
        [-42, 47],
      ],
      'ply',
    ),
    line(
      [
        [25, 20],
        [25, -20],
      ],
      { pen: 'hidden' },
    ),
    label([25, 20], 'bearding line', { toward: 'n' }),
    label([60, 0], 'face', { toward: 'e' }),
    label([-30, 44], 'side', { toward: 'nw' }),
  ),
  countersink: small(
    'Countersink',
    'A screw through two pieces: its head lies in a cone below the face, its thread in a pilot hole.',
    hatch(
      [
        [-50, 0],
        [-3, 0],
        [-3, 14],
        [-9, 20],
        [-9, 24],
        [-50, 24],
      ],
      'ply',
    ),
    hatch(
      [
        [50, 0],
        [3, 0],
        [3, 14],
        [9, 20],
        [9, 24],
        [50, 24],
      ],
      'ply',
    ),
    hatch(
      [
        [-50, -45],
        [50, -45],
        [50, 0],
        [2, 0],
        [2, -34],
        [0, -38],
        [-2, -34],
        [-2, 0],
        [-50, 0],
      ],
      'cedar',
      { falling: true },
    ),
    line(
      [
        [-9, 20],
        [9, 20],
        [3, 14],
        [-3, 14],
      ],
      { closed: true, pen: 'outline' },
    ),
    label([9, 22], 'countersink', { toward: 'ne' }),
    label([3, 8], 'shank', { toward: 'e' }),
    label([2, -20], 'pilot hole', { toward: 'e' }),
  ),
};
