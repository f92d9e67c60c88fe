/** Bending a stack of layers: what each takes, what holds them down, what springs back, and the form for it. */
import { step } from '../../form/define';
import { BEAM } from './bent-stock';

const BEAM_STIFFNESS = 'beam theory: centre load, ends free to turn';
const SPRING =
  'beam theory: each layer holds its own moment, the glued stack gives back their sum; 1/n² for n alike';
const SHALLOW = 'boat-trade rule for a shallow curve: the rise goes with the curvature';

const LIST = 'layer1, layer2, layer3, layer4';
const LISTED = 'layer1 + layer2 + layer3 + layer4';

export const bendingSteps = {
  evenPly: step('length', 'thickness / plies', 'thickness of each layer, if all are alike', 'geometry'),
  whole: step(
    'length',
    `layup == "alike" ? thickness : ${LISTED}`,
    'thickness of all layers together',
    'geometry',
  ),
  layers: step(
    'count',
    `stackOf(layup == "alike" ? plies : layersIn(${LIST}))`,
    'layers in the stack',
    'what is typed',
  ),
  ply: step(
    'length',
    'layup == "alike" ? evenPly : max(layer1, layer2, layer3, layer4)',
    'thickness of one layer, of the thickest where they differ',
    'geometry',
  ),
  strain: step('ratio', 'ply / (2 * radius)', 'stretch of the outer face of that layer', BEAM),
  stress: step('stress', 'modulus * strain', 'stress in a layer as it is bent', 'beam theory, elastic'),
  share: step(
    'share',
    'stress / rupture',
    'stress as a share of what breaks this wood',
    'Wood Handbook, modulus of rupture',
  ),
  solidStress: step(
    'stress',
    'modulus * whole / (2 * radius)',
    'stress in one solid board of the whole thickness',
    BEAM,
  ),
  solidShare: step(
    'share',
    'solidStress / rupture',
    'the same as a share of what breaks this wood',
    'Wood Handbook, modulus of rupture',
  ),
  ownStrain: step(
    'ratio',
    `layup == "alike" ? evenPly / (2 * max(radius - (thickness - evenPly) / 2, evenPly / 2)) : mostStretched(radius, ${LIST})`,
    'greatest stretch with each layer on its own radius: the inner ones lie on a tighter curve',
    'beam theory and geometry',
  ),
  ownShare: step(
    'share',
    'modulus * ownStrain / rupture',
    'share of what breaks this wood in the layer that has most to bear, each on its own radius',
    'Wood Handbook, modulus of rupture',
  ),
  leastRadius: step(
    'length',
    'modulus * ply / (2 * allowed * rupture)',
    'least radius that these layers take within the share allowed',
    BEAM,
    'least',
  ),
  thickestCustom: step(
    'length',
    'radius / layerRatio',
    'thickest layer of glued laminated timber for this radius',
    'from memory: National Design Specification 5.3.8',
    'most',
  ),
  pliesNeeded: step(
    'count',
    'max(2, ceil(modulus * whole / (2 * allowed * rupture * radius) - 0.001))',
    'fewest layers, all alike, that take the curve within the share allowed',
    'beam theory; a thousandth of a layer is forgiven',
  ),
  looseMoment: step(
    'secondMoment',
    'width * (layup == "alike" ? plies * evenPly^3 : layer1^3 + layer2^3 + layer3^3 + layer4^3) / 12',
    'second moment of the layers, sliding on each other',
    'beam theory: the sum of the cubes',
  ),
  gluedMoment: step(
    'secondMoment',
    'width * whole^3 / 12',
    'second moment of the glued stack, or of one solid board',
    'beam theory: the cube of the sum',
  ),
  springBack: step(
    'share',
    'looseMoment / gluedMoment',
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
  lostRise: step(
    'length',
    'wholeRise * springBack',
    'rise lost, over the whole length, off a form of the curve itself',
    SHALLOW,
  ),
  formRise: step(
    'length',
    'wholeRise / (1 - springBack)',
    'rise of the form, end to end, for this curve',
    SHALLOW,
  ),
  moreRise: step(
    'length',
    'formRise - wholeRise',
    'how much more rise the form has than the curve, over the whole length',
    SHALLOW,
  ),
  rise: step(
    'length',
    'radius * (1 - sqrt(max(0, 1 - (bay / (2 * radius))^2)))',
    'rise of the curve in the middle of one bay',
    'geometry: sagitta of the chord',
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
  lockedMoment: step(
    'moment',
    'modulus * looseMoment / radius',
    'moment left in the glued stack: that of the loose layers, for the glue adds none',
    'beam theory: M = EI/R',
  ),
  laterForce: step(
    'force',
    '0.65 * force',
    'pull that a frame still feels some months after the stack was glued and fastened on it',
    'from memory: Wood Handbook, ch. 5: stress at a fixed curve relaxes to 60 to 70 % in a few months',
  ),
  fastenings: step(
    'count',
    'max(1, ceil(force / screwHolds - 0.001))',
    'fastenings at the frame that hold the layers down when the clamps come off',
    'statics; a thousandth of a fastening is forgiven',
  ),
  solidFastenings: step(
    'count',
    'max(1, ceil(solidForce / screwHolds - 0.001))',
    'the same for one solid board',
    'statics; a thousandth of a fastening is forgiven',
  ),
  stiffer: step(
    'ratio',
    'gluedMoment / looseMoment',
    'stiffness of the glued stack over that of the loose layers',
    'beam theory: the square of the number of layers where they are alike',
  ),
  looseStiffness: step(
    'stiffness',
    '48 * modulus * looseMoment / bay^3',
    'push in the middle of a bay for each unit of give, loose',
    BEAM_STIFFNESS,
  ),
  gluedStiffness: step('stiffness', '48 * modulus * gluedMoment / bay^3', 'the same, glued', BEAM_STIFFNESS),
  keptByEurocode: step(
    'share',
    'min(1, 0.76 + 0.001 * max(0, radius - whole / 2) / ply)',
    'bending strength that the curved stack keeps, European rule',
    'EN 1995-1-1, eq. 6.49, inner radius over layer thickness, 1 from 240 on',
  ),
  keptByAmericanCode: step(
    'share',
    'max(0, 1 - 2000 * (ply / radius)^2)',
    'the same by the American curvature factor',
    'from memory: National Design Specification, curvature factor of glued laminated timber',
  ),
  glueArea: step('area', '(layers - 1) * width * length', 'glue lines together, one face each', 'geometry'),
};
