/** Will this board bend to this curve, cold and dry? */
import { attempt, type Edge, type Hull } from '../../boat';
import { arrow, dim, drawing, hatch, label, line, mm, note, radiusDim, rectHatch } from '../../drawing';
import { curvatureAt, lengthTo } from '../../kernel';
import { isIssue } from '../../measure';
import { defineCell, input, step } from '../define';
import { bayOnCurve, BEAM, bentCautions, bentLayer, bentLine, bentSources, bentStock } from './bent-stock';

export const bend = defineCell({
  id: 'bend',
  stage: 'timber',
  title: 'Bending a board',
  question: 'Will this board bend to this curve, and how hard does it push back?',
  inputs: {
    thickness: input('length', 'Board thickness', {
      from: 'keelson.thickness',
      preset: '18 mm',
      min: '1 mm',
      max: '150 mm',
      step: '1 mm',
      slider: true,
      note: 'across the bend',
    }),
    ...bentStock,
  },
  steps: {
    strain: step('ratio', 'thickness / (2 * radius)', 'stretch of the outer face', BEAM),
    stress: step('stress', 'modulus * strain', 'stress in the outer face', 'beam theory, elastic'),
    share: step(
      'share',
      'stress / rupture',
      'stress as a share of what breaks this wood',
      'Wood Handbook, modulus of rupture',
    ),
    leastRadius: step(
      'length',
      'modulus * thickness / (2 * allowed * rupture)',
      'least radius that this board takes within the share allowed',
      BEAM,
    ),
    thickest: step(
      'length',
      '2 * allowed * rupture * radius / modulus',
      'thickest board that takes this curve within the share allowed',
      BEAM,
    ),
    plies: step(
      'count',
      'max(1, ceil(thickness / thickest - 0.001))',
      'equal layers that would make up the thickness within the share allowed',
      'beam theory; a thousandth of a layer is forgiven',
    ),
    radiusToThickness: step('ratio', 'radius / thickness', 'radius over thickness', 'geometry'),
    secondMoment: step(
      'secondMoment',
      'width * thickness^3 / 12',
      'second moment of the section',
      'geometry',
    ),
    moment: step(
      'moment',
      'modulus * secondMoment / radius',
      'moment that holds the board to the curve',
      'beam theory: M = EI/R',
    ),
    force: step(
      'force',
      'moment / bay',
      'pull that brings the board down to the frame one bay beyond the curve',
      'statics: that pull over one bay makes up the moment',
    ),
    rise: step(
      'length',
      'radius * (1 - sqrt(max(0, 1 - (bay / (2 * radius))^2)))',
      'rise of the curve in the middle of one bay',
      'geometry: sagitta of the chord',
    ),
  },
  answers: [
    { of: 'share', label: 'of breaking', from: 'in the outer face, where the curve is tightest' },
    {
      of: 'leastRadius',
      label: 'least radius',
      from: 'to the middle of the board, within the share allowed',
    },
    { of: 'force', label: 'pull to hold it', from: 'square to the board, one frame beyond the curve' },
  ],
  inWords:
    'Bent to a radius of {radius}, the outer face of a {thickness} board takes {share} of what breaks this wood; within {allowed} it goes no tighter than {leastRadius}.',
  warnings: [
    {
      when: 'share > allowed and share <= 0.67',
      says: 'The bend takes {share} of the rupture, over the {allowed} allowed: at most {thickest} thick, or {plies} layers.',
      limit: 'the share allowed: 50 % for clear, straight wood is common practice',
      weight: 'mind',
    },
    {
      when: 'share > 0.67',
      says: 'The bend takes {share} of what breaks this wood on average. At most {thickest} thick, or {plies} layers, or steam.',
      limit: '67 % of the mean modulus of rupture, for picked wood bent slowly: common practice',
      weight: 'stop',
    },
    {
      when: 'force > 300 N',
      says: 'It pulls with {force}: more than one person holds. Use clamps or a twisted rope, not hands.',
      limit: 'one person holds about 200 to 300 N at arm’s reach: common practice',
      weight: 'mind',
    },
    {
      when: 'bay > 2 * radius',
      says: 'The bay of {bay} is wider than the circle of this radius: measure the bay along a straight line between the frames.',
      limit: 'geometry',
      weight: 'mind',
    },
  ],
  cautions: [
    ...bentCautions,
    'The radius of an edge counts its bend in plan and in profile together. A board bends only across its thickness: what the curve asks edgewise, cut out of a wider board.',
  ],
  sources: [
    ...bentSources,
    {
      text: 'Grades of R/t: over 200 easy, 150 to 200 ordinary, 100 to 150 picked wood, under 100 laminate or steam',
      known: 'common practice',
    },
  ],
  lights: ['{along}'],

  draw: (v, on) => {
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
        note(`Board ${on.say(v.thickness, 'length')} thick; the chain line is the middle of its thickness.`),
      ],
    });
  },

  chart: (v, on) => {
    /** A point of the chart; none where the cell has no share for that radius: nothing would read as no bending. */
    const pointAt = (x: number, radius: number): readonly (readonly [number, number])[] => {
      const bent = on.rerun({ radius });
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
  },
});

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
