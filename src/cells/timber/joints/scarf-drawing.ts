/** A scarf from the side and on the face, and what it keeps against its slope, as the books print it. */
import {
  breakLine,
  dim,
  type Drawing,
  drawing,
  hatch,
  label,
  line,
  mm,
  note,
  type Point,
} from '../../../drawing';
import { otherPrinted, type PrintedScarfs, scarfSpread, scarfStrength } from '../../../trade/scarf-strength';
import type { Chart, OnHand } from '../../form/define';

interface Scarf {
  readonly part: string;
  readonly thickness: number;
  readonly width: number;
  readonly taper: number;
  readonly slope: number;
  readonly glueFace: number;
  readonly angle: number;
}

export function drawScarf(v: Scarf, on: Pick<OnHand, 'say'>): Drawing {
  const thickness = mm(v.thickness);
  const taper = mm(v.taper);
  const width = mm(v.width);
  const stub = Math.max(2 * thickness, taper / 3);
  const right = taper + stub;
  // The face to be cut away stands above the side view; of a wide panel only a strip.
  const whole = width <= 0.7 * taper;
  const face = whole ? width : 0.7 * taper;
  const faceFoot = thickness + taper / 5;
  const faceTop = faceFoot + face;
  const leftBoard: Point[] = [
    [-stub, 0],
    [taper, 0],
    [0, thickness],
    [-stub, thickness],
  ];
  const rightBoard: Point[] = [
    [right, 0],
    [taper, 0],
    [0, thickness],
    [right, thickness],
  ];
  return drawing({
    title: 'Scarf joint, from the side and on the face',
    says: `Two boards ${on.say(v.thickness, 'length')} thick, each tapered over ${on.say(v.taper, 'length')} at ${on.say(v.slope, 'slope')}, laid one on the other; the glue face is ${on.say(v.glueFace, 'length')} long.`,
    shapes: [
      hatch(leftBoard, 'cedar', { pen: 'none', part: v.part }),
      hatch(rightBoard, 'cedar', { pen: 'none', falling: true, part: v.part }),
      line(
        [
          [-stub, 0],
          [right, 0],
        ],
        { pen: 'outline' },
      ),
      line(
        [
          [-stub, thickness],
          [right, thickness],
        ],
        { pen: 'outline' },
      ),
      line(
        [
          [0, thickness],
          [taper, 0],
        ],
        { pen: 'outline', layer: 'glue line' },
      ),
      breakLine([-stub, 0], [-stub, thickness]),
      breakLine([right, 0], [right, thickness]),
      dim([0, thickness], [taper, 0], on.say(v.taper, 'length'), { run: 'horizontal', side: 'below' }),
      dim([right, 0], [right, thickness], on.say(v.thickness, 'length'), { side: 'right' }),
      label(
        [taper / 2, thickness / 2],
        `glue face ${on.say(v.glueFace, 'length')}, ${on.say(v.angle, 'angle')}`,
        { toward: 's' },
      ),
      line(
        [
          [0, faceTop],
          [0, faceFoot],
          [right, faceFoot],
          [right, faceTop],
        ],
        { pen: 'outline', part: v.part },
      ),
      line(
        [
          [0, faceTop],
          [right, faceTop],
        ],
        { pen: whole ? 'outline' : 'thin' },
      ),
      line(
        [
          [taper, faceFoot],
          [taper, faceTop],
        ],
        { pen: 'visible', layer: 'marks' },
      ),
      label([taper, faceFoot + face / 2], 'square across the face to be cut away', { toward: 'ne' }),
      whole
        ? dim([right, faceFoot], [right, faceTop], on.say(v.width, 'length'), { side: 'right' })
        : note('Part of the width is drawn.'),
    ],
  });
}

export function strengthChart({
  slope,
  strengthKept,
}: {
  readonly slope: number;
  readonly strengthKept: number;
}): Chart {
  return {
    title: 'Strength kept against slope',
    says: `Flatter scarfs keep more: steep gains up to 1 in 8, small ones beyond 1 in 12. Editions of one handbook stand 5 % to either side of the curve. Dots, printed elsewhere: ${otherPrinted.map(inFigures).join('; ')}.`,
    x: { label: 'Slope', kind: 'slope', from: 4, to: 20 },
    y: { label: 'Strength kept', kind: 'share', from: 0.5, to: 1 },
    lines: [
      { name: 'planning curve', points: curve(0) },
      { name: 'highest edition', points: curve(scarfSpread) },
      { name: 'lowest edition', points: curve(-scarfSpread) },
      ...otherPrinted.map(({ name, points }) => ({
        name,
        as: 'dots' as const,
        points: points.map((one) => [one.slope, one.kept] as const),
      })),
    ],
    limits: [
      { at: 8, axis: 'x', label: 'plywood' },
      { at: 12, axis: 'x', label: 'spars' },
    ],
    points: [{ x: slope, y: strengthKept, label: 'this joint' }],
  };
}

/** As printed: `plywood 75 % at 1 in 5`. */
export const inFigures = ({ name, points }: PrintedScarfs) =>
  `${name} ${points.map(({ slope, kept }) => `${Math.round(100 * kept)} % at 1 in ${slope}`).join(', ')}`;

const slopes = Array.from({ length: 33 }, (_, i) => 4 + i / 2);

function curve(shift: number): readonly (readonly [number, number])[] {
  return slopes.map((slope) => [slope, Math.min(1, scarfStrength(slope) + shift)] as const);
}
