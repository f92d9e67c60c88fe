/** A screwed joint in section with the way it gives, and its modes against the thickness screwed on. */
import {
  arrow,
  dim,
  type Drawing,
  drawing,
  label,
  line,
  mm,
  note,
  type Point,
  rectHatch,
} from '../../../drawing';
import { isIssue, type Issue } from '../../../measure';
import type { Chart, OnHand } from '../../form/define';
import { screwPicture } from './screw-drawing';
import { modes } from './yield-model';

type Mode = (typeof modes)[number]['of'];

/** What the pictures show, SI. */
export type ScrewedJoint = Readonly<Record<Mode | 'lateral', number>> & {
  readonly fastener: string;
  readonly diameter: number;
  readonly rootDiameter: number;
  readonly threadLength: number;
  readonly mainLength: number;
  readonly sideLength: number;
  readonly shear: string;
  readonly inDiameters: number;
};

/** The model reckons on below the least depth; the code does not. */
const counted = ({ inDiameters }: ScrewedJoint) =>
  inDiameters < 6 ? ' With so short a hold the code allows none of it.' : '';

export function strengthPicture(v: ScrewedJoint, { say }: Pick<OnHand, 'say'>): Drawing {
  const side = mm(v.sideLength);
  const main = mm(v.mainLength);
  const double = v.shear === 'double';
  const length = side + main + (double ? side : 0);
  const reach = Math.max(0.9 * length, 4 * mm(v.diameter));
  const mode = modeOf(v);
  return drawing({
    title: 'The joint in section, and how it gives',
    says: `${say(v.sideLength, 'length')} on ${say(v.mainLength, 'length')}, pushed sideways: ${say(v.lateral, 'force')} on one, by the yield model at normal duration and dry; it gives in mode ${mode.name}.${counted(v)}`,
    shapes: [
      rectHatch(-reach, -side, 2 * reach, side, 'ply', { falling: true }),
      rectHatch(-reach, -side - main, 2 * reach, main, 'cedar'),
      double ? rectHatch(-reach, -length, 2 * reach, side, 'ply', { falling: true }) : [],
      screwPicture([0, 0], {
        length,
        diameter: mm(v.diameter),
        root: mm(v.fastener === 'screw' ? v.rootDiameter : 0.9 * v.diameter),
        head: 2 * mm(v.diameter),
        thread: Math.min(mm(v.threadLength), 0.9 * length),
      }),
      line(givenWay(mode.of, side, main), { pen: 'hidden' }),
      arrow([reach, -side / 2], [reach + 0.3 * reach, -side / 2]),
      double ? arrow([reach, -length + side / 2], [1.3 * reach, -length + side / 2]) : [],
      arrow([-reach, -side - main / 2], [-1.3 * reach, -side - main / 2]),
      dim([-reach, -side], [-reach, 0], say(v.sideLength, 'length'), { side: 'left' }),
      dim([-reach, -side - main], [-reach, -side], say(v.mainLength, 'length'), { side: 'left' }),
      label([0.3 * reach, -side - 0.5 * main], `mode ${mode.name}`, { toward: 'se' }),
      note('Dashed: how the screw lies when it gives, exaggerated.'),
    ],
  });
}

/** The mode that comes first; of two shear planes only four can. */
function modeOf(v: ScrewedJoint): (typeof modes)[number] {
  return modes.find((one) => counts(one.of, v) && v[one.of] === v.lateral) ?? modes[0];
}

const counts = (of: Mode, { shear }: Pick<ScrewedJoint, 'shear'>) =>
  shear === 'single' || (of !== 'screwTilts' && of !== 'bendsInSide');

/** The screw's middle line from head to point; downward negative, mm. */
function givenWay(mode: Mode, side: number, main: number): Point[] {
  const slip = 0.3 * Math.min(side + main, 2 * side + 10);
  const top = 0;
  const point = -side - main;
  const inSide = -side / 2;
  const inMain = -side - 0.35 * main;
  const shapes: Readonly<Record<Mode, readonly Point[]>> = {
    mainCrushes: [
      [slip, top],
      [slip, point],
    ],
    sideCrushes: [
      [0, top],
      [0, point],
    ],
    screwTilts: [
      [slip, top],
      [-slip / 2, point],
    ],
    bendsInSide: [
      [slip, top],
      [slip, inSide],
      [-slip / 2, point],
    ],
    bendsInMain: [
      [slip, top],
      [0, inMain],
      [0, point],
    ],
    bendsTwice: [
      [slip, top],
      [slip, inSide],
      [0, inMain],
      [0, point],
    ],
  };
  return [...shapes[mode]];
}

const POINTS = 40;

/** The smallest of the modes against the thickness screwed on, each named in the middle of its stretch. */
export function strengthChart<V extends ScrewedJoint & { readonly olderAllowable: number }>(
  v: V,
  on: { readonly say: OnHand['say']; readonly with: (changes: Partial<V>) => V | Issue },
): Chart {
  const last = Math.max(0.03, 2 * v.sideLength);
  const swept = Array.from({ length: POINTS }, (_, i) =>
    on.with({ sideLength: ((i + 1) / POINTS) * last } as Partial<V>),
  ).flatMap((one) => (isIssue(one) ? [] : [one]));
  const stretches = modes.flatMap(({ name }) => {
    const own = swept.filter((one) => modeOf(one).name === name);
    const middle = own[Math.floor(own.length / 2)];
    return middle ? [{ x: middle.sideLength, y: middle.lateral, label: `mode ${name}` }] : [];
  });
  const older = v.olderAllowable > 0;
  return {
    title: 'Against the thickness screwed on',
    says: `Of the six modes the smallest counts: at ${on.say(v.sideLength, 'length')} it is mode ${modeOf(v).name}, ${on.say(v.lateral, 'force')}${older ? `; the older rule says ${on.say(v.olderAllowable, 'force')} whatever the thickness` : ''}.${counted(v)}`,
    x: { label: 'Thickness screwed on', kind: 'length', from: 0, to: last },
    y: { label: 'Push on one, normal duration, dry', kind: 'force', from: 0 },
    lines: [{ name: 'smallest mode', points: swept.map((one) => [one.sideLength, one.lateral] as const) }],
    limits: older ? [{ at: v.olderAllowable, axis: 'y', label: 'older rule, C D²' }] : [],
    points: [{ x: v.sideLength, y: v.lateral, label: 'this joint' }, ...stretches],
  };
}
