/** A countersunk wood screw from the side, head up, to scale. */
import { hatch, line, type Point, type Shape } from '../../../drawing';
import { headAngle } from '../../../trade/screws';

export interface ScrewSizes {
  /** All mm. */
  readonly length: number;
  readonly diameter: number;
  readonly root: number;
  readonly head: number;
  readonly thread: number;
}

/** @param at middle of the head, flush with the face, mm; the screw points down */
export function screwPicture(at: Point, screw: ScrewSizes): Shape[] {
  const [x, top] = at;
  const half = screw.diameter / 2;
  const cone = (screw.head - screw.diameter) / 2 / Math.tan(headAngle / 2);
  const thread = Math.min(screw.thread, Math.max(0, screw.length - cone));
  const right = [
    [screw.head / 2, 0],
    [half, -cone],
    [half, thread - screw.length],
    ...threadSide(screw, thread),
  ] as const;
  const left = right.toReversed().map(([across, down]): Point => [x - across, top + down]);
  return [
    hatch(
      [...right.map(([across, down]): Point => [x + across, top + down]), [x, top - screw.length], ...left],
      'void',
      { pen: 'visible', layer: 'screws' },
    ),
    line(
      [
        [x, top + screw.diameter],
        [x, top - screw.length - screw.diameter],
      ],
      { pen: 'centre', layer: 'screws' },
    ),
  ];
}

/** One side of the thread, crest and root by turns, narrowing over the last turn to the point. */
function threadSide(screw: ScrewSizes, thread: number): Point[] {
  const turns = Math.max(2, Math.min(12, Math.round(thread / (0.4 * screw.diameter))));
  return Array.from({ length: turns - 1 }, (_, i): readonly Point[] => {
    const start = thread - screw.length - (thread * i) / turns;
    return [
      [screw.root / 2, start - thread / turns / 2],
      [screw.diameter / 2, start - thread / turns],
    ];
  })
    .flat()
    .slice(0, -1);
}
