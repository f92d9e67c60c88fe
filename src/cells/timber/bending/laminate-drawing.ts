/** The stack over one bay with its section, and stress, pull and spring-back against the number of layers. */
import {
  dim,
  type Drawing,
  drawing,
  hatch,
  label,
  line,
  mm,
  note,
  radiusDim,
  rect,
  rectHatch,
} from '../../../drawing';
import { layersOf } from '../../../kernel/layers';
import { isIssue } from '../../../measure';
import type { Chart, OnHand, Values } from '../../form/define';
import { bayOnCurve, bentLayer, bentLine } from './bent-stock';

/** What the pictures ask of the cell. */
export interface Stack extends Values {
  readonly along: string;
  readonly layup: string;
  readonly held: string;
  readonly layer1: number;
  readonly layer2: number;
  readonly layer3: number;
  readonly layer4: number;
  readonly plies: number;
  readonly layers: number;
  readonly evenPly: number;
  readonly ply: number;
  readonly whole: number;
  readonly width: number;
  readonly bay: number;
  readonly radius: number;
  readonly formRadius: number;
  readonly allowed: number;
  readonly pliesNeeded: number;
  readonly share: number;
  readonly solidShare: number;
  readonly springBack: number;
  readonly chanceAny: number;
  readonly solidChance: number;
  readonly force: number;
  readonly solidForce: number;
}

/** Thicknesses from the hollow side outward, mm. */
function thicknessesOf(v: Stack): readonly number[] {
  if (v.layup === 'alike') return Array.from({ length: v.plies }, () => mm(v.evenPly));
  return layersOf([v.layer1, v.layer2, v.layer3, v.layer4]).map(mm);
}

/** How far each layer begins from the hollow side, mm. */
const startsOf = (layers: readonly number[]) =>
  layers.map((_, i) => layers.slice(0, i).reduce((sum, thickness) => sum + thickness, 0));

export function drawStack(v: Stack, on: OnHand<Stack>): Drawing {
  const radius = mm(v.radius);
  const whole = mm(v.whole);
  const layers = thicknessesOf(v);
  const starts = startsOf(layers);
  const { halfAngle, chord } = bayOnCurve(radius, mm(v.bay));
  const foot = radius * Math.cos(halfAngle) - radius;
  const onForm = v.held === 'form';
  const sectionFoot = foot - whole - Math.max(chord / 6, whole);
  const left = -mm(v.width) / 2;
  const right = -left;
  const thickest = layers.indexOf(Math.max(...layers));
  const how =
    v.layup === 'alike'
      ? `${on.say(v.layers, 'count')} layers of ${on.say(v.ply, 'length')}`
      : `layers of ${layers.map((thickness) => on.say(thickness / 1000, 'length')).join(', ')}`;
  return drawing({
    title: 'The stack over one bay, and its section',
    says: `${how.charAt(0).toUpperCase()}${how.slice(1)}, ${on.say(v.whole, 'length')} in all, at a radius of ${on.say(v.radius, 'length')}; ${
      onForm
        ? `glued on a form of ${on.say(v.formRadius, 'length')}`
        : 'glued on the frames, which hold them there'
    }.`,
    shapes: [
      onForm ? formOf(v, chord, on) : framesUnder(v, chord),
      hatch(bentLayer(radius, radius - whole / 2, radius + whole / 2, halfAngle), 'plain', { part: v.along }),
      starts.slice(1).map((start) =>
        line(bentLine(radius, Math.max(0, radius - whole / 2 + start), halfAngle), {
          pen: 'thin',
          layer: 'glue lines',
        }),
      ),
      dim([-chord / 2, foot], [chord / 2, foot], on.say(chord / 1000, 'length'), { side: 'below' }),
      radiusDim([0, -radius], radius, Math.PI / 2 + halfAngle / 2, `R ${on.say(v.radius, 'length')}`),
      layers.map((thickness, i) =>
        rectHatch(left, sectionFoot + starts[i]!, right - left, thickness, 'cedar', {
          pen: 'none',
          falling: i % 2 === 1,
          part: v.along,
        }),
      ),
      starts.slice(1).map((start) =>
        line(
          [
            [left, sectionFoot + start],
            [right, sectionFoot + start],
          ],
          { pen: 'thin', layer: 'glue lines' },
        ),
      ),
      rect(left, sectionFoot, right - left, whole),
      dim([left, sectionFoot], [right, sectionFoot], on.say(v.width, 'length'), { side: 'below' }),
      dim([left, sectionFoot], [left, sectionFoot + whole], on.say(v.whole, 'length'), { side: 'left' }),
      dim(
        [right, sectionFoot + starts[thickest]!],
        [right, sectionFoot + starts[thickest]! + layers[thickest]!],
        on.say(v.ply, 'length'),
        { side: 'right' },
      ),
      note('R to the middle of the stack. Below, its section to the same scale.'),
      onForm ? note('Dashed: the form on which it is glued.') : [],
      v.layup === 'alike'
        ? []
        : note(
            `From the hollow side: ${layers.map((thickness) => on.say(thickness / 1000, 'length')).join(', ')}.`,
          ),
    ],
  });
}

/** The form, over the same chord. */
function formOf(v: Stack, chord: number, on: OnHand<Stack>) {
  const form = mm(v.formRadius);
  const whole = mm(v.whole);
  const { halfAngle } = bayOnCurve(form, chord);
  return [
    line(bentLine(form, form - whole / 2, halfAngle), { pen: 'ghost' }),
    line(bentLine(form, form + whole / 2, halfAngle), { pen: 'ghost' }),
    label(
      [form * Math.sin(halfAngle), form * Math.cos(halfAngle) - form + whole / 2],
      `form R ${on.say(v.formRadius, 'length')}`,
      { toward: 'ne' },
    ),
  ];
}

/** A frame under each end of the bay; its thickness and depth are drawn as they come. */
function framesUnder(v: Stack, chord: number) {
  const post = Math.min(19, chord / 10);
  const radius = mm(v.radius);
  const inner = Math.max(0, radius - mm(v.whole) / 2);
  const top = Math.sqrt(Math.max(0, inner ** 2 - chord ** 2 / 4)) - radius;
  return [-chord / 2, chord / 2].map((x) =>
    rectHatch(x - post / 2, top - 2 * post, post, 2 * post, 'cedar', { falling: true }),
  );
}

export function chartStack(v: Stack, on: OnHand<Stack>): Chart {
  const last = Math.max(8, v.layers + 2);
  // Alike, and as thick together as the stack in hand, whatever its own layers are.
  const stacks = Array.from({ length: last - 1 }, (_, i) =>
    on.with({ layup: 'alike', thickness: v.whole, plies: i + 2 }),
  ).flatMap((stack) => (isIssue(stack) ? [] : [stack]));
  // Where hardly a board in a thousand breaks the line would lie on the axis.
  const chancy = v.solidChance > 0.001;
  const enough = v.pliesNeeded <= last ? [{ at: v.pliesNeeded, axis: 'x', label: 'enough' } as const] : [];
  return {
    title: 'Against the number of layers, all alike',
    says: `More layers, less stress and far less pull and spring-back: at ${on.say(v.layers, 'count')} layers ${on.say(v.share, 'share')} of breaking, ${on.say(v.springBack, 'share')} spring-back, and a pull of ${on.say(v.force, 'force')} to the ${on.say(v.solidForce, 'force')} of one board.`,
    x: { label: 'Layers', kind: 'count', from: 1, to: last },
    y: { label: 'Share', kind: 'share', from: 0 },
    // One solid board stands first: it springs all the way back. Points of the stack in hand name the lines.
    lines: [
      {
        name: 'of breaking, each layer',
        points: [[1, v.solidShare], ...stacks.map(({ plies, share }) => [plies, share] as const)],
      },
      {
        name: 'spring-back; also the pull, beside one board’s',
        points: [[1, 1], ...stacks.map(({ plies, springBack }) => [plies, springBack] as const)],
      },
      ...(chancy
        ? [
            {
              name: 'chance that one of them breaks',
              points: [
                [1, v.solidChance] as const,
                ...stacks.map(({ plies, chanceAny }) => [plies, chanceAny] as const),
              ],
            },
          ]
        : []),
    ],
    limits: [
      { at: v.allowed, axis: 'y', label: 'allowed' },
      { at: 1, axis: 'y', label: 'breaks, on average' },
      ...enough,
    ],
    points: [
      { x: v.layers, y: v.share, label: 'of breaking' },
      { x: v.layers, y: v.springBack, label: 'spring-back, pull' },
      ...(chancy ? [{ x: v.layers, y: v.chanceAny, label: 'one breaks' }] : []),
    ],
  };
}
