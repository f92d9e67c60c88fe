/** An edge with its screws: the face from outside, and the section along a row. */
import {
  breakLine,
  circle,
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
} from '../../../drawing';
import type { OnHand } from '../../form/define';
import { screwPicture } from './screw-drawing';

/** What is drawn, SI. */
export interface FastenedEdge {
  readonly screwLength: number;
  readonly diameter: number;
  readonly root: number;
  readonly head: number;
  readonly thread: number;
  readonly topThickness: number;
  readonly depth: number;
  readonly face: number;
  readonly length: number;
  readonly evenPitch: number;
  readonly endDistance: number;
  readonly edgeDistance: number;
  readonly perRow: number;
  readonly rows: number;
  readonly rowGap: number;
  readonly hold: number;
  readonly pilot: number;
  readonly skin: string;
  readonly into: string;
  readonly light: number;
}

const LIGHTS = [
  'Splitting light: green. Ends, edges and spaces keep both rules.',
  'Splitting light: amber. One rule is kept and another is not.',
  'Splitting light: red. Nearer, or less drilled, than any rule allows.',
] as const;

export function fastenPicture(v: FastenedEdge, { say }: Pick<OnHand, 'say'>): Drawing {
  const screw = {
    length: mm(v.screwLength),
    diameter: mm(v.diameter),
    root: mm(v.root),
    head: mm(v.head),
    thread: (2 / 3) * mm(v.screwLength),
  };
  const top = mm(v.topThickness);
  const depth = mm(v.depth);
  const face = mm(v.face);
  const pitch = mm(v.evenPitch);
  const first = Math.min(mm(v.endDistance), mm(v.length) / 2);
  const shown = Math.min(3, v.perRow);
  const whole = v.perRow <= 3;
  const end = whole ? mm(v.length) : first + 2.5 * pitch;
  const across = Array.from({ length: shown }, (_, i) => first + i * pitch);
  // The face stands above the section, screws over screws.
  const foot = Math.max(0.12 * end, 2 * screw.diameter);
  const outer = foot + mm(v.edgeDistance);
  const rows = Array.from({ length: v.rows }, (_, i) => i);
  const staggered = rows.flatMap((row) =>
    across
      .map((x): Point => [x + (row % 2) * (pitch / 2), outer + row * mm(v.rowGap)])
      .filter(([x]) => x <= end - first / 2 || row === 0),
  );
  const far = across.at(-1) ?? first;
  const length = (metres: number) => say(metres, 'length');
  return drawing({
    title: 'The edge from outside, and cut along the screws',
    says: `Screws ${length(v.evenPitch)} apart, the first ${length(v.endDistance)} from the end, ${length(v.edgeDistance)} from the edge of the timber; each reaches ${length(v.hold)} into it. ${LIGHTS[v.light] ?? ''}`,
    shapes: [
      rectHatch(0, -top, end, top, 'ply', { pen: whole ? 'outline' : 'none', falling: true, part: v.skin }),
      rectHatch(0, -top - depth, end, depth, 'cedar', {
        pen: whole ? 'outline' : 'none',
        part: v.into,
      }),
      whole ? [] : openEnd(end, [0, -top, -top - depth]),
      across.map((x) => screwPicture([x, 0], screw)),
      hatch(
        [
          [0, foot],
          [end, foot],
          [end, foot + face],
          [0, foot + face],
        ],
        'plain',
        { pen: whole ? 'outline' : 'none' },
      ),
      whole ? [] : openEnd(end, [foot + face, foot]),
      staggered.map((at) => circle(at, screw.head / 2)),
      dim([0, foot + face], [first, outer], length(v.endDistance), { run: 'horizontal', side: 'above' }),
      shown > 1
        ? dim([first, outer], [first + pitch, outer], length(v.evenPitch), {
            run: 'horizontal',
            side: 'above',
          })
        : [],
      v.edgeDistance > 0
        ? dim([0, foot], [first, outer], length(v.edgeDistance), { run: 'vertical', side: 'left' })
        : [],
      dim([0, -top], [0, 0], length(v.topThickness), { side: 'left' }),
      dim([end, 0], [far, -screw.length], say(v.screwLength, 'screwLength'), {
        run: 'vertical',
        side: 'right',
      }),
      label([first, -top - depth / 2], `pilot ${say(v.pilot, 'pilotDrill')}`, { toward: 'sw' }),
      note(`The face is ${length(v.face)} wide.`),
    ],
  });
}

/** Faces that run on past the drawing, ended by a break. */
function openEnd(end: number, faces: readonly number[]) {
  const highest = Math.max(...faces);
  const lowest = Math.min(...faces);
  return [
    ...faces.map((y) =>
      line(
        [
          [0, y],
          [end, y],
        ],
        { pen: 'outline' },
      ),
    ),
    line(
      [
        [0, lowest],
        [0, highest],
      ],
      { pen: 'outline' },
    ),
    breakLine([end, lowest], [end, highest]),
  ];
}
