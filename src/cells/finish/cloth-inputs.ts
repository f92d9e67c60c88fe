/** What the cell of the cloth asks for. */
import { choice, input } from '../form/define';

const PRACTICE = 'common practice, no source';
const HULL = 'over == "hull"';
const FLAT = 'over == "flat"';

const layers = (label: string, note: string, when: string) =>
  input('count', label, { preset: '1', min: '0', max: '4', step: '1', note, when });

const size = (label: string, preset: string, presetInch: string, note: string) =>
  input('length', label, { preset, presetInch, min: '50 mm', max: '12 m', step: '10 mm', note, when: FLAT });

const STRIPS = `${HULL} and strips != "none"`;
/** Strips lie over the joints of the bottom. */
const BOTTOM = `${HULL} and (strips == "allJoints" or strips == "all")`;

const jointCount = (label: string, panel: 'side' | 'bottom', where: string, when: string) =>
  input('count', label, {
    from: `sheets.${panel}Joints`,
    preset: '2',
    min: '0',
    max: '8',
    step: '1',
    note: `${where}, as the sheets are planned`,
    when: `strips != "none" and ${when}`,
    ofBoat: true,
  });

const jointLength = (label: string, panel: 'side' | 'bottom', when: string) =>
  input('length', label, {
    from: `sheets.${panel}JointLong`,
    preset: '450 mm',
    presetInch: '18 in',
    min: '0 mm',
    max: '5 m',
    step: '10 mm',
    note: 'on average, across the panel where the sheets are joined',
    when: `strips != "none" and ${when}`,
    ofBoat: true,
  });

export const clothInputs = {
  over: choice('To cover', {
    options: [
      { id: 'hull', label: 'the hull', ofBoat: true },
      { id: 'flat', label: 'a flat face' },
    ],
    preset: 'hull',
  }),
  bottomLayers: {
    ...layers('Bottom layers', '0 for bare wood; two where she works off a beach', HULL),
    ofBoat: true,
  },
  sideLayers: {
    ...layers('Layers elsewhere', 'sides, bilges and transoms; often none where the plywood is marine', HULL),
    ofBoat: true,
  },
  flatLength: size('Length of the flat face', '2.4 m', '8 ft', 'a deck, a hatch, a rudder'),
  flatWidth: size('Width of the flat face', '1.2 m', '4 ft', 'the side of it that runs across the roll'),
  layers: layers('Layers on the flat face', '0 for none', FLAT),
  width: input('length', 'Width of the roll', {
    preset: '1524 mm',
    presetInch: '60 in',
    min: '600 mm',
    max: '4 m',
    step: '10 mm',
    note: 'less 10 to 15 mm (1/2 in) where the selvedge is woven tight; 38, 50 and 60 in (965, 1270 and 1524 mm) are sold',
  }),
  weight: input('areaDensity', 'Weight of the cloth', {
    preset: '6 oz/yd^2',
    min: '20 g/m^2',
    max: '1500 g/m^2',
    step: '10 g/m^2',
    note: 'dry; cloth goes by oz/yd², mat by oz/ft², nine times as much',
  }),
  runs: choice('Runs of cloth', {
    options: [
      { id: 'least', label: 'the way that takes less' },
      { id: 'along', label: 'along the boat' },
      { id: 'across', label: 'across the bottom' },
    ],
    preset: 'least',
    note: 'on the bottom, or on the flat face; sides and bilges take theirs along',
  }),
  lap: input('length', 'Lap from run to run', {
    preset: '50 mm',
    min: '0 mm',
    max: '200 mm',
    step: '5 mm',
    note: `1 to 4 in (25 to 100 mm) by a glass dealer’s page, usually 2 to 3 in (50 to 75 mm): ${PRACTICE}`,
  }),
  seamShift: input('length', 'Seams shifted, layer to layer', {
    preset: '100 mm',
    presetInch: '4 in',
    min: '0 mm',
    max: '500 mm',
    step: '10 mm',
    note: `a hand’s breadth, so that no two seams stand one on the other: ${PRACTICE}`,
    when: 'seams > 0 and (over == "hull" ? max(bottomLayers, sideLayers) > 1 : layers > 1)',
  }),
  turn: input('length', 'Turned round an edge', {
    preset: '25 mm',
    min: '0 mm',
    max: '300 mm',
    step: '5 mm',
    note: 'past keel, chine, stem and transom, from both faces, so that the edge is doubled; 1 in (25 mm) is published advice',
  }),
  further: input('length', 'Each layer further by', {
    preset: '25 mm',
    min: '0 mm',
    max: '150 mm',
    step: '5 mm',
    note: `so that edges do not stack: ${PRACTICE}`,
  }),
  trim: input('length', 'Spare at each end', {
    preset: '50 mm',
    min: '0 mm',
    max: '300 mm',
    step: '5 mm',
    note: `50 to 75 mm (2 to 3 in), cut off when it has gone leathery: ${PRACTICE}`,
  }),
  slack: input('length', 'Smoothed out by hand', {
    preset: '10 mm',
    min: '0 mm',
    max: '100 mm',
    step: '1 mm',
    note: `how far a keel may leave the cloth’s straight thread before the cloth is cut open: ${PRACTICE}; try it dry`,
    when: HULL,
    ofBoat: true,
  }),
  strips: choice('Strips', {
    options: [
      { id: 'none', label: 'none' },
      { id: 'joints', label: 'side joints, transom corners' },
      { id: 'allJoints', label: 'bottom joints too' },
      { id: 'all', label: 'chines, keel and stem too' },
    ],
    preset: 'joints',
    when: HULL,
  }),
  stripWidth: input('length', 'Width of the strips', {
    preset: '150 mm',
    presetInch: '6 in',
    min: '20 mm',
    max: '300 mm',
    step: '5 mm',
    note: PRACTICE,
    when: STRIPS,
    ofBoat: true,
  }),
  stripCut: choice('Strips round corners', {
    options: [
      { id: 'straight', label: 'cut with the thread' },
      { id: 'bias', label: 'cut on the bias' },
    ],
    preset: 'straight',
    note: 'at 45° all its threads cross the corner, and it drapes round a stem; with the thread only half of them do',
    when: STRIPS,
  }),
  sideJoints: jointCount('Joints in each side', 'side', 'above the chine', HULL),
  sideJointLong: jointLength('Length of a side joint', 'side', `${HULL} and sideJoints > 0`),
  bottomJoints: jointCount('Joints in half the bottom', 'bottom', 'from keel to chine', BOTTOM),
  bottomJointLong: jointLength('Length of a bottom joint', 'bottom', `${BOTTOM} and bottomJoints > 0`),
  beyond: input('share', 'Bought beyond the plan', {
    preset: '10 %',
    min: '0 %',
    max: '100 %',
    step: '1 %',
    note: `10 % on the first boat is soon used up: ${PRACTICE}`,
  }),
  soldBy: input('length', 'Sold by the', {
    preset: '1 m',
    presetInch: '3 ft',
    min: '1 mm',
    max: '100 m',
    step: '100 mm',
    note: 'the shop cuts no less',
  }),
  price: input('pricePerLength', 'Price of the cloth', {
    preset: '9 /m',
    presetInch: '2.75 /ft',
    min: '0 /m',
    max: '1000 /m',
    step: '0.1 /m',
    note: 'by the length of the roll; an example: put in your shop’s',
  }),
  pieceInHand: input('count', 'Piece looked at', {
    preset: '1',
    min: '1',
    max: '999',
    step: '1',
    note: 'in the order of laying',
  }),
} as const;
