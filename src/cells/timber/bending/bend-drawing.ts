/** The board over one bay, and how near to breaking it is along the edge or against the radius. */
import { attempt, type Edge, type Hull } from '../../../boat';
import {
  arrow,
  dim,
  type Drawing,
  drawing,
  hatch,
  label,
  line,
  mm,
  note,
  radiusDim,
  rectHatch,
} from '../../../drawing';
import { curvatureAt, lengthTo } from '../../../kernel';
import { isIssue } from '../../../measure';
import type { Chart, OnHand } from '../../form/define';
import { bayOnCurve, bentLayer, bentLine } from './bent-stock';

/** What the pictures look at. */
interface BentBoard {
  readonly along: string;
  readonly radius: number;
  readonly thickness: number;
  readonly bay: number;
  readonly rise: number;
  readonly force: number;
  readonly stress: number;
  readonly share: number;
  readonly allowed: number;
}

export function drawBoard(v: BentBoard, on: Pick<OnHand, 'say'>): Drawing {
  const radius = mm(v.radius);
  const half = mm(v.thickness) / 2;
  const { halfAngle, chord } = bayOnCurve(radius, mm(v.bay));
  const beyond = Math.min(halfAngle * 1.15, Math.PI / 2);
  const foot = Math.cos(halfAngle) * radius - radius;
  const post = Math.min(19, chord / 10);
  const inner = Math.sqrt(Math.max(0, (radius - half) ** 2 - chord ** 2 / 4)) - radius;
  const frame = (x: number) =>
    rectHatch(x - post / 2, inner - 4 * post, post, 4 * post, 'cedar', { falling: true });
  return drawing({
    title: 'The board bent over one bay',
    says: `A board ${on.say(v.thickness, 'length')} thick bent to a radius of ${on.say(v.radius, 'length')}; between frames ${on.say(v.bay, 'length')} apart it rises ${on.say(v.rise, 'length')}.`,
    shapes: [
      frame(-chord / 2),
      frame(chord / 2),
      hatch(bentLayer(radius, radius - half, radius + half, beyond), 'cedar', { part: v.along }),
      line(bentLine(radius, radius, beyond), { pen: 'centre' }),
      line(
        [
          [-chord / 2, foot],
          [chord / 2, foot],
        ],
        { pen: 'thin' },
      ),
      dim([-chord / 2, foot], [chord / 2, foot], on.say(chord / 1000, 'length'), { side: 'below' }),
      dim([0, foot], [0, 0], on.say(v.rise, 'length'), { run: 'vertical', side: 'right' }),
      radiusDim([0, -radius], radius, Math.PI / 2 + halfAngle / 2, `R ${on.say(v.radius, 'length')}`),
      arrow([chord / 2, half + chord / 5], [chord / 2, half + chord / 30]),
      label([chord / 2, half + chord / 5], on.say(v.force, 'force'), { toward: 'ne' }),
      note('Chain line: the middle of its thickness.'),
    ],
  });
}

export function shareChart(v: BentBoard, on: Pick<OnHand<BentBoard>, 'say' | 'hull' | 'with'>): Chart {
  /** A point of the chart; none where the cell has no share for that radius: nothing would read as no bending. */
  const pointAt = (x: number, radius: number): readonly (readonly [number, number])[] => {
    const bent = on.with({ radius });
    return isIssue(bent) ? [] : [[x, bent.share]];
  };
  const limits = [
    { at: v.allowed, axis: 'y', label: 'allowed' },
    { at: 1, axis: 'y', label: 'breaks, on average' },
  ] as const;
  const y = { label: 'Share of breaking', kind: 'share', from: 0 } as const;
  const edge = edgeOf(on.hull, v.along);
  // A radius that was typed is not the edge's: its curve would contradict the answer.
  if (!edge || !isRadiusOf(edge, v.radius)) {
    const radii = Array.from({ length: 60 }, (_, i) => v.radius * (0.3 + i / 20));
    return {
      title: 'Share of breaking against radius',
      says: `At a radius of ${on.say(v.radius, 'length')} the bend takes ${on.say(v.share, 'share')}; half the radius takes twice the share.`,
      x: { label: 'Radius', kind: 'length', from: 0 },
      y,
      lines: [{ name: 'this board', points: radii.flatMap((radius) => pointAt(radius, radius)) }],
      limits,
      points: [{ x: v.radius, y: v.share, label: 'this curve' }],
    };
  }
  const { batten, leastRadius: worst } = edge;
  const last = batten.knots.at(-1) ?? 0;
  const points = Array.from({ length: 81 }, (_, i) => i).flatMap((i) => {
    const at = (last * i) / 80;
    const curvature = curvatureAt(batten, at).magnitude;
    const along = lengthTo(batten, at);
    return curvature > 0 ? pointAt(along, 1 / curvature) : [[along, 0] as const];
  });
  const tightest = worst && { x: worst.along, y: v.share, label: 'tightest' };
  return {
    title: `Share of breaking along the ${edge.label}`,
    says: tightest
      ? `From the after end to the fore end; greatest, ${on.say(tightest.y, 'share')}, ${on.say(tightest.x, 'length')} from the after end.`
      : 'The edge is straight: no bending.',
    x: { label: 'Along the edge, from the after end', kind: 'length', from: 0, to: edge.length },
    y,
    lines: [{ name: 'this board', points }],
    limits,
    points: tightest ? [tightest] : [],
  };
}

function isRadiusOf({ leastRadius }: Edge, radius: number): boolean {
  return leastRadius !== null && Math.abs(leastRadius.radius - radius) <= 1e-9 * radius;
}

/** The edge, or null where the hull can't be drawn or its faults spoil that edge. */
function edgeOf(hull: Hull | null, name: string): Edge | null {
  if (!hull) return null;
  const edge = attempt(() => {
    const found = hull.edge(name);
    // Asked here, so that a fault in its points shows here and not while it is drawn.
    return found.length > 0 ? found : null;
  });
  return isIssue(edge) ? null : edge;
}
