/** One end of the hull on its lever, before a push and after it, and the stack beside it. */
import {
  arrow,
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
  rectHatch,
} from '../../drawing';
import type { OnHand } from '../form/define';

interface Lifted {
  readonly short: number;
  readonly longArm: number;
  readonly depth: number;
  readonly drop: number;
  readonly rise: number;
  readonly packed: number;
  readonly stands: number;
  readonly base: number;
  readonly push: number;
  readonly load: number;
}

export function liftView(v: Lifted, { say }: Pick<OnHand, 'say'>): Drawing {
  const length = (metres: number) => say(metres, 'length');
  const [short, long, deep] = [mm(v.short), mm(v.longArm), mm(v.depth)];
  const [drop, rise, stands, base] = [mm(v.drop), mm(v.rise), mm(v.stands), mm(v.base)];
  // The lever lies level halfway through its push.
  const pivot = stands + rise / 2;
  const before: readonly [Point, Point] = [
    [-long, pivot + drop / 2],
    [short, stands],
  ];
  const after: readonly [Point, Point] = [
    [-long, pivot - drop / 2],
    [short, stands + rise],
  ];
  const thick = ([from, to]: readonly [Point, Point]): Point[] => [
    from,
    to,
    [to[0], to[1] - deep],
    [from[0], from[1] - deep],
  ];
  // Beside the lever, clear of it.
  const stack = short + 0.35 * long;
  const broad = Math.max(0.9 * long, 3 * base);
  const high = 0.35 * long;
  const bottom = stands + rise;
  const floor: Point[] = [
    [-1.1 * long, 0],
    [stack + broad, 0],
  ];
  const hull: Point[] = [
    [short - 0.12 * long, bottom],
    [stack + broad * 0.8, bottom],
    [stack + broad * 0.8, bottom + high],
    [short, bottom + high],
  ];
  const block = Math.min(base, 0.5 * (short + long)) / 2;
  return drawing({
    title: 'The lever before and after a push',
    says: `${length(v.packed)} of packing goes in at this push.`,
    shapes: [
      line(floor),
      ...(pivot - deep > 1 ? [rectHatch(-block, 0, 2 * block, pivot - deep, 'plain')] : []),
      line(thick(before), { pen: 'hidden', closed: true }),
      hatch(thick(after), 'cedar'),
      hatch(hull, 'plain', { part: 'transom' }),
      breakLine([stack + broad * 0.8, bottom], [stack + broad * 0.8, bottom + high]),
      ...(stands > 1 ? [rectHatch(stack, 0, base, stands, 'cedar')] : []),
      rectHatch(stack, stands, base, mm(v.packed), 'glue'),
      arrow([short, bottom + high * 0.75], [short, bottom], { pen: 'visible' }),
      label([short, bottom + high * 0.75], `bears ${say(v.load, 'mass')}`, { toward: 'ne' }),
      arrow([-long, pivot - drop / 2 + high * 0.6], [-long, pivot - drop / 2], { pen: 'visible' }),
      label([-long, pivot - drop / 2 + high * 0.6], `push ${say(v.push, 'mass')}`, { toward: 'n' }),
      dim([-long, 0], [0, 0], length(v.longArm), { side: 'below' }),
      dim([0, 0], [short, 0], length(v.short), { side: 'below' }),
      dim(after[0], before[0], length(v.drop), { side: 'left', run: 'vertical' }),
      dim(before[1], after[1], length(v.rise), { side: 'right', run: 'vertical' }),
      ...(stands > 1
        ? [dim([stack + base, 0], [stack + base, stands], length(v.stands), { side: 'right' })]
        : []),
      note(
        'The hull’s end, upside down, to the right; under it the stack, and dark, what goes in at this push. Dashed: the lever before it.',
      ),
    ],
  });
}
