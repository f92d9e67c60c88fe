/** Half the transom at full size, with its bevels' two faces and the cut-out. */
import { attempt } from '../../boat';
import { centreLine, type Drawing, drawing, label, line, mark, mm, note, type Point } from '../../drawing';
import { isIssue } from '../../measure';
import type { OnHand } from '../form/define';
import { largerFace, shape as shapeInHand } from './transom-facts';
import { cutOut, cutOutLine, type TransomDrawn } from './transom-drawing';

const MARKS = { layer: 'marks' } as const;

/** None where the boat has no such transom. */
export function transomPatterns(
  v: TransomDrawn,
  { hull, say, ask }: Pick<OnHand, 'say' | 'hull' | 'ask'>,
): readonly Drawing[] {
  if (!hull) return [];
  const shape = attempt(() => ask(shapeInHand));
  if (isIssue(shape)) return [];
  const name = shape.station.label.charAt(0).toUpperCase() + shape.station.label.slice(1);
  const face = v.face;
  const length = (metres: number) => say(metres, 'length');
  const paper = ([y, u]: readonly [number, number]): Point => [mm(y), mm(u)];
  const half = (points: readonly (readonly [number, number])[]): Point[] => {
    const [first, top] = [points[0]!, points.at(-1)!]; // every transom has a keel and a sheer
    const cut = cutOutLine(v).filter(([x]) => x >= 0);
    const head: Point[] = cut.length > 0 ? [...cut, [0, mm(v.alongFace)]] : [[0, mm(top[1])]];
    return [[0, mm(first[1])], ...points.map(paper), ...head];
  };
  const larger = ask(largerFace);
  const { there } = cutOut(v);
  return [
    drawing({
      title: `${name}: half`,
      says: `Full size, square to the ${face} face; turn it over on the centreline for the other half.`,
      shapes: [
        line(half(larger), { pen: 'outline', closed: true, part: shape.station.name, layer: 'transom' }),
        line(half(shape.inside), { pen: 'ghost', closed: true, layer: `${face} face` }),
        centreLine([0, -20], [0, mm(v.topUp) + 30], MARKS),
        label([0, mm(v.topUp) * 0.6], 'centreline', { toward: 'e' }),
        ...shape.inside.map((corner) => mark(paper(corner), MARKS)),
        ...shape.inside
          .slice(1)
          .map(([y, u]) =>
            label(paper([y, u]), `${length(y)} out, ${length(u)} up the slope`, { toward: 'w' }),
          ),
        there
          ? label([mm(v.cutWidth) / 4, mm(v.alongFace)], 'cut-out for the motor', {
              toward: 's',
            })
          : [],
        note(
          `${name}, ${say(v.rake, 'angle')} rake. Whole line: the larger face, saw to it. Short dashes: the ${face} face inside the skin, bevel to it. Heights up the slope from the outside of the bottom.`,
        ),
      ],
    }),
  ];
}
