/** Any sheet of plywood and any curve: does it bend so, and what bends tighter? A panel of the boat is asked in `panels`. */
import { judge, type PlyLayer } from '../../boat/joinery/plywood-bends';
import { type Grain, AIRCRAFT_PANELS, FORM_PANELS } from '../../trade/plywood-bend';
import { choice, defineCell, input, step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import { firstOf } from '../form/in-words';
import { panelInputs } from './panels-inputs';
import { turnedOffers } from './panels-offers';
import { plyBendView } from './ply-bend-drawing';
import { plyFunctions, plyRadii } from './ply-radii';

const TABLES = 'APA concrete-form panel table and FAA AC 43.13-1B, aircraft plywood';
const BY_CHORD = 'curve == "chord"';

const inputs = {
  curve: choice('The curve is known by', {
    options: [
      { id: 'radius', label: 'its radius' },
      { id: 'chord', label: 'its depth' },
    ],
    preset: 'radius',
  }),
  bendRadius: input('length', 'Radius of the curve', {
    preset: '1800 mm',
    presetInch: '6 ft',
    min: '50 mm',
    max: '100 m',
    step: '50 mm',
    when: 'curve == "radius"',
  }),
  stick: input('length', 'Stick across the curve', {
    preset: '900 mm',
    presetInch: '36 in',
    min: '50 mm',
    max: '20 m',
    step: '50 mm',
    note: 'straight across the hollow side, end to end',
    when: BY_CHORD,
  }),
  hollow: input('length', 'Depth under its middle', {
    preset: '60 mm',
    presetInch: '2 1/4 in',
    min: '1 mm',
    max: '5 m',
    step: '5 mm',
    note: 'from the stick to the curve, square to the stick',
    when: BY_CHORD,
  }),
  plyThickness: input('length', 'Thickness of the plywood', {
    preset: '6 mm',
    presetInch: '1/4 in',
    min: '1 mm',
    max: '40 mm',
    step: '0.5 mm',
    note: 'as the caliper reads it',
  }),
  grain: choice('Face grain', {
    options: [
      { id: 'along', label: 'along the curve' },
      { id: 'across', label: 'across it' },
    ],
    preset: 'along',
    note: 'along the curve it is stiff and bends less',
  }),
  twist: input('angle', 'Twist from edge to edge', {
    preset: '0°',
    min: '0°',
    max: '30°',
    step: '1°',
    note: 'between the faces at its two long edges; 0 where it does not twist',
  }),
  skinLayers: input('count', 'Layers, glued in place', {
    from: 'panels.skinLayers',
    preset: '1',
    min: '1',
    max: '6',
    step: '1',
    note: 'each of its share of the thickness; two thin ones bend tighter than one thick one',
  }),
  wetness: panelInputs.wetness,
  allowed: { ...panelInputs.allowed, from: 'panels.allowed' },
} as const;

type Asked = ValuesOf<typeof inputs, typeof radii>;

const radii = {
  bendsTo: step(
    'length',
    `${BY_CHORD} ? (stick^2 / 4 + hollow^2) / (2 * hollow) : bendRadius`,
    'radius to which it bends',
    'geometry: the circle through both ends and the middle',
  ),
  layerThickness: step('length', 'plyThickness / skinLayers', 'thickness of one layer', 'geometry'),
  ...plyRadii,
} as const;

const judged = fact(
  'as of a panel, its axis square to the long edges',
  'both strains lie on one face and add up',
  (v: Asked) => {
    const place = { bend: 1 / v.bendsTo, axis: Math.PI / 2, twist: v.twist };
    const by = (grain: Grain) =>
      judge(place, {
        thickness: v.layerThickness,
        grain,
        common: { along: v.takesAlong, across: v.takesAcross },
        picked: { along: v.pickedAlong, across: v.pickedAcross },
        allowed: v.allowed,
      } satisfies PlyLayer);
    return { as: by(v.grain), other: by(v.grain === 'along' ? 'across' : 'along') };
  },
);

export const plyBend = defineCell({
  id: 'plyBend',
  stage: 'skin',
  title: 'Bending a sheet of plywood',
  question: 'Will this plywood take this bend and this twist?',
  inputs,
  groups: { 'Twist and layers': ['twist', 'skinLayers', 'wetness', 'allowed'] },
  functions: plyFunctions,
  steps: {
    ...radii,
    common: step(
      'length',
      'grain == "along" ? takesAlong : takesAcross',
      'least radius that a common panel takes this way',
      FORM_PANELS,
      'least',
    ),
    picked: step(
      'length',
      'grain == "along" ? pickedAlong : pickedAcross',
      'least radius that a picked panel takes this way',
      AIRCRAFT_PANELS,
      'least',
    ),
    share: tell(
      judged,
      'share',
      'bend and twist as a share of what a common panel takes',
      ({ as }) => as.common.both,
    ),
    otherShare: tell(
      judged,
      'share',
      'the same with the face grain the other way',
      ({ other }) => other.common.both,
    ),
    verdict: tell(judged, 'choice', 'what the plywood says to it', ({ as }) => as.verdict, {
      how: 'within both tables it bends, within one it is marginal, beyond both it does not bend',
    }),
  },
  answers: [
    {
      of: 'share',
      label: 'of what it takes',
      from: 'bend and twist together, of a common panel’s least radius',
    },
    { of: 'common', label: 'common panel', from: 'least radius, dry, with its face grain this way' },
    {
      of: 'picked',
      label: 'picked panel',
      from: 'least radius of aircraft grade, with its face grain this way',
    },
  ],
  inWords: [
    firstOf(
      [
        { when: 'verdict == "untabled"', says: 'No table speaks of so thick a layer.' },
        { when: 'verdict == "bends"', says: 'It bends.' },
        { when: 'verdict == "marginal"', says: 'It bends only if it is a picked sheet.' },
      ],
      'It does not bend: no table takes it so far.',
    ),
    'That is a layer of {layerThickness} round a radius of {bendsTo}, its face grain {grain}.',
    {
      when: 'layerThickness < 6.34 mm',
      says: 'The table of common panels begins at 1/4 in (6.4 mm); a thinner sheet is held to that row.',
    },
    'With the grain the other way this is {otherShare} of what it takes.',
  ],
  warnings: [
    {
      when: 'verdict == "refuses"',
      says: 'At {bendsTo} it bends tighter than any table lets a layer of {layerThickness}. Turn the grain, or glue up thinner layers.',
      limit: TABLES,
      weight: 'stop',
    },
    {
      when: 'verdict == "marginal"',
      says: 'One table lets a layer of {layerThickness} bend to {bendsTo}, and the other does not say so: try an off-cut, and take picked sheets without a patch there.',
      limit: TABLES,
      weight: 'mind',
    },
    {
      when: 'verdict == "untabled"',
      says: 'No published radius is for a layer of {layerThickness}: the tables end at 3/4 in (19 mm). Glue up thinner layers, or bend a strip for trial.',
      limit: TABLES,
      weight: 'mind',
    },
  ],
  cautions: [
    'A sheet bent near its limit can crack and whip back. Two people or more bend it, slowly, clamped before anybody lets go, with eye protection and no face over it.',
    'Hot water burns: wear gloves, pour it on towels laid over the sheet, and let it dry before it is glued.',
    'The sheet’s own maker and a trial with an off-cut outrank both tables.',
  ],
  sources: [
    {
      text: 'Least radii of common panels, dry: APA concrete-form panel table, Douglas-fir; now and then one cracks at them (APA TT-003)',
      known: 'published',
    },
    {
      text: 'Least radii of picked panels, dry and soaked: FAA AC 43.13-1B, aircraft plywood, as reproduced',
      known: 'published',
    },
    {
      text: 'Twist as a strain, held against the strain of the least radius along the grain: derived; no limit of twist was found published',
      known: 'common practice',
    },
  ],
  about: ['bottom', 'bilge', 'side'],
  draw: plyBendView,
  offers: (v, on) => turnedOffers(v, v.plyThickness, '{self}.skinLayers', on),
});
