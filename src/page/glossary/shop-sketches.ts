/** Words of the shop: wood, saw, jig, and drawing on the floor. */
import { centreLine, dim, hatch, label, line, type Point, rect } from '../../drawing';
import { round, small, type Sketches } from './small-drawing';

/** Growth rings on the end of a board: arcs about the pith within this angle of a direction, cut off at its edges. */
function rings(pith: Point, radii: readonly number[], [towards, spread]: readonly [number, number]) {
  return radii.flatMap((radius) => {
    const inside = round(pith, radius, towards - spread, towards + spread).filter(
      ([x, y]) => x >= 0 && x <= WIDE && y >= 0 && y <= THICK,
    );
    return inside.length < 2 ? [] : [line(inside, { pen: 'thin' })];
  });
}

/** Of that board, mm. */
const WIDE = 150;
const THICK = 36;

const steps = (from: number, to: number, by: number) =>
  Array.from({ length: Math.floor((to - from) / by) + 1 }, (_, i) => from + i * by);

const boardEnd = (word: string, ...cut: Parameters<typeof rings>) => [
  ...rings(...cut),
  rect(0, 0, WIDE, THICK),
  label([WIDE / 2, THICK], word, { toward: 'n' }),
];

export const shopSketches: Sketches = {
  'flat-sawn': small(
    'Flat-sawn',
    'The end of a board whose growth rings lie along its wide face.',
    ...boardEnd('flat-sawn', [75, -160], steps(164, 212, 8), [Math.PI / 2, 0.5]),
  ),
  'quarter-sawn': small(
    'Quarter-sawn',
    'The end of a board whose growth rings stand across its thickness.',
    ...boardEnd('quarter-sawn', [-400, 18], steps(412, 544, 12), [0, 0.05]),
  ),
  grain: small(
    'Grain',
    'A board on its face: fibres that run along it are strong, fibres that run out at its edge are not.',
    ...steps(8, 32, 8).map((y) =>
      line(
        [
          [2, y],
          [238, y],
        ],
        { pen: 'thin' },
      ),
    ),
    rect(0, 0, 240, 40),
    ...steps(0, 200, 24).map((x) =>
      line(
        [
          [x + 2, -60],
          [Math.min(238, x + 100), Math.min(-21, -60 + 0.4 * (Math.min(238, x + 100) - x))],
        ],
        { pen: 'thin' },
      ),
    ),
    rect(0, -60, 240, 40),
    label([120, 40], 'straight grain', { toward: 'n' }),
    label([120, -60], 'grain that runs out', { toward: 's' }),
  ),
  kerf: small(
    'Kerf',
    'A board from its edge with a cut of the saw in it; the kerf is as wide as the cut.',
    hatch([
      [0, 0],
      [140, 0],
      [140, 40],
      [74, 40],
      [74, 12],
      [68, 12],
      [68, 40],
      [0, 40],
    ]),
    dim([68, 40], [74, 40], 'kerf', { side: 'above', run: 'horizontal' }),
  ),
  diagonal: small(
    'Diagonals',
    'A jig from above; it is square when both diagonals are equally long.',
    rect(0, 0, 160, 80),
    line(
      [
        [0, 0],
        [160, 80],
      ],
      { pen: 'hidden' },
    ),
    line(
      [
        [0, 80],
        [160, 0],
      ],
      { pen: 'hidden' },
    ),
    label([40, 20], 'diagonals', { toward: 's' }),
  ),
  strongback: small(
    'Strongback',
    'Two rails from above, with a spall across them at each station and a string along the middle.',
    rect(0, 0, 240, 8),
    rect(0, 72, 240, 8),
    ...steps(20, 220, 50).map((x) =>
      hatch(
        [
          [x, -8],
          [x + 6, -8],
          [x + 6, 88],
          [x, 88],
        ],
        'plain',
      ),
    ),
    centreLine([-14, 40], [254, 40]),
    label([45, 4], 'rail', { toward: 's' }),
    label([123, 84], 'spall', { toward: 'n' }),
    label([246, 40], 'string', { toward: 'ne' }),
  ),
  expanding: small(
    'Expanding',
    'A leaning transom from the side, and its true shape beside it: taller than its height in the side view.',
    line(
      [
        [0, 0],
        [-26, 80],
      ],
      { pen: 'outline' },
    ),
    line(
      [
        [0, 0],
        [60, 0],
      ],
      { pen: 'thin' },
    ),
    line(
      [
        [-26, 80],
        [60, 80],
      ],
      { pen: 'thin' },
    ),
    dim([60, 0], [60, 80], 'in the plan', { run: 'vertical', side: 'right' }),
    hatch(
      [
        [150, 0],
        [210, 0],
        [226, 84],
        [134, 84],
      ],
      'plain',
    ),
    dim([226, 0], [226, 84], 'true', { run: 'vertical', side: 'right' }),
  ),
};
