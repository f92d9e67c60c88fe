/** One thick board or several thin ones: stress, force, spring-back, stiffness, glue. */
import { dim, drawing, hatch, label, line, mm, note, radiusDim, rect, rectHatch } from '../../drawing';
import { isIssue } from '../../measure';
import { defineCell, input, step } from '../define';
import { bayOnCurve, BEAM, bentCautions, bentLayer, bentLine, bentSources, bentStock } from './bent-stock';

const SPRING = 'beam theory: each layer holds its own moment, the glued stack gives back their sum';

export const laminate = defineCell({
  id: 'laminate',
  stage: 'timber',
  title: 'Laminating',
  question:
    'One thick board or several thin ones: how many layers, how hard do they pull, how far do they spring back?',
  inputs: {
    thickness: input('length', 'Thickness, all layers together', {
      from: 'keelson.thickness',
      preset: '38 mm',
      min: '2 mm',
      max: '300 mm',
      step: '1 mm',
    }),
    plies: input('count', 'Layers', {
      preset: '2',
      min: '2',
      max: '24',
      step: '1',
      slider: true,
      note: 'equal layers; on a form at least 3 is common practice',
    }),
    ...bentStock,
    length: input('length', 'Length of the stack', {
      seldom: true,
      from: '{along}.length',
      preset: '4.2 m',
      min: '100 mm',
      max: '100 m',
      step: '100 mm',
    }),
  },
  steps: {
    ply: step('length', 'thickness / plies', 'thickness of one layer', 'geometry'),
    strain: step('ratio', 'ply / (2 * radius)', 'stretch of the outer face of a layer', BEAM),
    stress: step('stress', 'modulus * strain', 'stress in a layer as it is bent', 'beam theory, elastic'),
    share: step(
      'share',
      'stress / rupture',
      'stress as a share of what breaks this wood',
      'Wood Handbook, modulus of rupture',
    ),
    solidShare: step(
      'share',
      'plies * share',
      'the same for one solid board',
      'beam theory: stress grows with the thickness bent',
    ),
    leastRadius: step(
      'length',
      'modulus * ply / (2 * allowed * rupture)',
      'least radius that these layers take within the share allowed',
      BEAM,
    ),
    pliesNeeded: step(
      'count',
      'max(2, ceil(modulus * thickness / (2 * allowed * rupture * radius) - 0.001))',
      'fewest layers that take the curve within the share allowed',
      'beam theory; a thousandth of a layer is forgiven',
    ),
    springBack: step(
      'share',
      '1 / plies^2',
      'part of the rise that is lost when the glued stack leaves its form',
      SPRING,
    ),
    formRadius: step('length', 'radius * (1 - springBack)', 'radius of the form for this curve', SPRING),
    releasedRadius: step(
      'length',
      'radius / (1 - springBack)',
      'radius to which the stack opens if the form has the radius of the curve',
      SPRING,
    ),
    opening: step('ratio', 'releasedRadius / radius', 'released radius over the radius of the form', SPRING),
    rise: step(
      'length',
      'radius * (1 - sqrt(max(0, 1 - (bay / (2 * radius))^2)))',
      'rise of the curve in the middle of one bay',
      'geometry: sagitta of the chord',
    ),
    looseMoment: step(
      'secondMoment',
      'plies * width * ply^3 / 12',
      'second moment of the layers, sliding on each other',
      'beam theory',
    ),
    gluedMoment: step(
      'secondMoment',
      'width * thickness^3 / 12',
      'second moment of the glued stack, or of one solid board',
      'beam theory',
    ),
    force: step(
      'force',
      'modulus * looseMoment / radius / bay',
      'pull that brings the loose layers down to the frame one bay beyond the curve',
      'beam theory and statics: M = EI/R over one bay',
    ),
    solidForce: step(
      'force',
      'modulus * gluedMoment / radius / bay',
      'the same for one solid board',
      'beam theory and statics',
    ),
    stiffer: step(
      'ratio',
      'gluedMoment / looseMoment',
      'stiffness of the glued stack over that of the loose layers',
      'beam theory: the square of the number of layers',
    ),
    looseStiffness: step(
      'stiffness',
      '48 * modulus * looseMoment / bay^3',
      'push in the middle of a bay for each unit of give, loose',
      'beam theory: centre load, ends free to turn',
    ),
    gluedStiffness: step(
      'stiffness',
      '48 * modulus * gluedMoment / bay^3',
      'the same, glued',
      'beam theory: centre load, ends free to turn',
    ),
    keptByEurocode: step(
      'share',
      'min(1, 0.76 + 0.001 * (radius - thickness / 2) / ply)',
      'bending strength that the curved stack keeps, European rule',
      'EN 1995-1-1, eq. 6.49, inner radius over layer thickness, 1 from 240 on',
    ),
    keptByAmericanCode: step(
      'share',
      'max(0, 1 - 2000 * (ply / radius)^2)',
      'the same by the American curvature factor',
      'from memory: National Design Specification, curvature factor of glued laminated timber',
    ),
    glueArea: step('area', '(plies - 1) * width * length', 'glue lines together, one face each', 'geometry'),
  },
  answers: [
    {
      of: 'share',
      label: 'of breaking, each layer',
      from: 'in the outer face of a layer, where the curve is tightest',
    },
    { of: 'springBack', label: 'spring-back', from: 'part of the rise lost off the form' },
    {
      of: 'force',
      label: 'pull to hold the layers',
      from: 'square to the stack, one frame beyond the curve, before gluing',
    },
  ],
  inWords:
    '{plies} layers of {ply} take {share} of breaking where one solid board takes {solidShare}, and pull with {force} where it pulls with {solidForce}; for {radius} make the form {formRadius}.',
  warnings: [
    {
      when: 'share > allowed and share <= 0.67',
      says: 'Each layer takes {share} of the rupture, over the {allowed} allowed: {pliesNeeded} layers keep within it.',
      limit: 'the share allowed: 50 % for clear, straight wood is common practice',
      weight: 'mind',
    },
    {
      when: 'share > 0.67',
      says: 'Each layer takes {share} of what breaks this wood on average. Use {pliesNeeded} layers or more.',
      limit: '67 % of the mean modulus of rupture, for picked wood bent slowly: common practice',
      weight: 'stop',
    },
    {
      when: 'ply > radius / 100',
      says: 'Layers of {ply} are thicker than a hundredth of the radius.',
      limit:
        'glued laminated timber: 1/100 of the radius for hardwood and southern pine, 1/125 for other softwood; from memory: National Design Specification 5.3.8',
      weight: 'mind',
    },
    {
      when: 'force > 300 N',
      says: 'The loose layers pull with {force}: more than one person holds. Clamp from the middle outward.',
      limit: 'one person holds about 200 to 300 N at arm’s reach: common practice',
      weight: 'mind',
    },
    {
      when: 'thickness >= radius',
      says: 'A stack {thickness} thick does not fit round a radius of {radius}.',
      limit: 'geometry',
      weight: 'stop',
    },
  ],
  cautions: [
    ...bentCautions,
    'Layers glued in place on the frames and fastened there have nowhere to spring to; the spring-back counts for a stack glued on a form. Wood creeps in the glue, so expect 80 to 100 % of it: common practice.',
    "Glue: follow the maker's sheet for open time, pressure, temperature, gloves and fresh air. Try the whole stack dry on the form first.",
  ],
  sources: [
    ...bentSources,
    {
      text: 'Spring-back 1/n^2 of the rise, as printed in boat-trade usage; M. Sanne and others, Forests 11(7):725 (2020): depends on the number of layers, hardly on the radius',
      known: 'published',
    },
    { text: 'EN 1995-1-1, eq. 6.49: strength of curved laminated timber', known: 'published' },
    { text: 'National Design Specification: curvature factor, layer over radius', known: 'from memory' },
  ],
  lights: ['{along}'],

  draw: (v, on) => {
    const radius = mm(v.radius);
    const form = mm(v.formRadius);
    const thickness = mm(v.thickness);
    const ply = mm(v.ply);
    const width = mm(v.width);
    const { halfAngle, chord } = bayOnCurve(radius, mm(v.bay));
    const foot = radius * Math.cos(halfAngle) - radius;
    const onForm = bayOnCurve(form, chord).halfAngle;
    const layers = Array.from({ length: v.plies }, (_, i) => i);
    const lines = layers.slice(1);
    const sectionLeft = -width / 2;
    const sectionFoot = foot - thickness - Math.max(chord / 6, thickness);
    const sectionRight = sectionLeft + width;
    return drawing({
      title: 'The stack over one bay, and its section',
      says: `${on.say(v.plies, 'count')} layers of ${on.say(v.ply, 'length')}, ${on.say(v.thickness, 'length')} in all, at a radius of ${on.say(v.radius, 'length')}; dashed, the form of ${on.say(v.formRadius, 'length')} on which they are glued.`,
      shapes: [
        line(bentLine(form, form - thickness / 2, onForm), { pen: 'ghost' }),
        line(bentLine(form, form + thickness / 2, onForm), { pen: 'ghost' }),
        hatch(bentLayer(radius, radius - thickness / 2, radius + thickness / 2, halfAngle), 'plain', {
          part: v.along,
        }),
        lines.map((i) =>
          line(bentLine(radius, Math.max(0, radius - thickness / 2 + i * ply), halfAngle), {
            pen: 'thin',
            layer: 'glue lines',
          }),
        ),
        dim([-chord / 2, foot], [chord / 2, foot], on.say(chord / 1000, 'length'), { side: 'below' }),
        radiusDim([0, -radius], radius, Math.PI / 2 + halfAngle / 2, `R ${on.say(v.radius, 'length')}`),
        label(
          [form * Math.sin(onForm), form * Math.cos(onForm) - form + thickness / 2],
          `form R ${on.say(v.formRadius, 'length')}`,
          { toward: 'ne' },
        ),
        layers.map((i) =>
          rectHatch(sectionLeft, sectionFoot + i * ply, width, ply, 'cedar', {
            pen: 'none',
            falling: i % 2 === 1,
            part: v.along,
          }),
        ),
        lines.map((i) =>
          line(
            [
              [sectionLeft, sectionFoot + i * ply],
              [sectionRight, sectionFoot + i * ply],
            ],
            { pen: 'thin', layer: 'glue lines' },
          ),
        ),
        rect(sectionLeft, sectionFoot, width, thickness),
        dim([sectionLeft, sectionFoot], [sectionRight, sectionFoot], on.say(v.width, 'length'), {
          side: 'below',
        }),
        dim(
          [sectionLeft, sectionFoot],
          [sectionLeft, sectionFoot + thickness],
          on.say(v.thickness, 'length'),
          { side: 'left' },
        ),
        dim([sectionRight, sectionFoot], [sectionRight, sectionFoot + ply], on.say(v.ply, 'length'), {
          side: 'right',
        }),
        note('R to the middle of the stack. Below, its section to the same scale.'),
      ],
    });
  },

  chart: (v, on) => {
    const last = Math.max(8, v.plies + 2);
    const stacks = Array.from({ length: last - 1 }, (_, i) => on.rerun({ plies: i + 2 })).flatMap((stack) =>
      isIssue(stack) ? [] : [stack],
    );
    return {
      title: 'Against the number of layers',
      says: `More layers, less stress and far less spring-back: at ${on.say(v.plies, 'count')} layers ${on.say(v.share, 'share')} of breaking and ${on.say(v.springBack, 'share')} spring-back.`,
      x: { label: 'Layers', kind: 'count', from: 1, to: last },
      y: { label: 'Share', kind: 'share', from: 0 },
      // One solid board stands first: it springs all the way back.
      lines: [
        {
          name: 'of breaking, each layer',
          points: [[1, v.solidShare], ...stacks.map(({ plies, share }) => [plies, share] as const)],
          as: 'dots',
        },
        {
          name: 'spring-back',
          points: [[1, 1], ...stacks.map(({ plies, springBack }) => [plies, springBack] as const)],
          as: 'dots',
        },
      ],
      limits: [{ at: v.allowed, axis: 'y', label: 'allowed' }],
      points: [
        { x: v.plies, y: v.share, label: 'this stack' },
        { x: v.plies, y: v.springBack, label: 'its spring-back' },
      ],
    };
  },
});
