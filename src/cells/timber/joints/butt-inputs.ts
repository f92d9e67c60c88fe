/** What a butt joint is asked for. */
import type { Option } from '../../../boat';
import { PSI } from '../../../measure/si';
import { sheathing } from '../../../trade/butt-plates';
import { glassDensity, layups } from '../../../trade/glass';
import { citation, look } from '../../../trade/table';
import { choice, input } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { fromShop } from '../../form/from-shop';
import { screwInputs } from '../../common/screws/screw-choice';

const PRACTICE = 'common practice, no source';
/** To what a person says of the strength of wood, psi. */
const inPsi = (pascals: number) => Math.round(pascals / PSI / 50) * 50;

/** From a lowest to a highest strength, Pa. */
const range = ([low, high]: readonly [number, number]) =>
  `${low / 1e6} to ${high / 1e6} MPa (${inPsi(low)} to ${inPsi(high)} psi)`;

/** What the cell on resin has for cloth. */
const handLaid = look(layups, 'clothSqueegeed', 'glassShare')!; // a row of that table

export const buttKinds: readonly Option[] = [
  { id: 'block', label: 'block, glued and screwed' },
  { id: 'plate', label: 'plywood plate, glued' },
  { id: 'strap', label: 'glass on both faces' },
  { id: 'bare', label: 'nothing' },
];

const BLOCK = 'kind == "block"';
const STRAP = 'kind == "strap"';

export const buttInputs = {
  skin: choice('Panel', { options: 'panels', preset: 'side' }),
  thickness: fromBoat('{skin}.thickness'),
  frame: choice('Bay forward of', { options: 'frames', preset: 'frame3' }),
  plateLength: input('length', 'Length across the joint', {
    from: '{self}.usualLength',
    preset: '150 mm',
    min: '0 mm',
    max: '2 m',
    step: '10 mm',
    note: 'half to each side; of glass the widest ply',
  }),
  jointLength: input('length', 'Length of the joint', {
    from: '{frame}.{skin}.girth',
    preset: '450 mm',
    min: '50 mm',
    max: '3 m',
    step: '10 mm',
    note: 'across the panel, from keelson or chine to the next long timber',
  }),
  // The joint stands in one bay, so that one is asked, not the boat's mean as for a board bent through all of them.
  bay: input('length', 'This bay, line to line', {
    from: '{frame}.spacing',
    preset: '600 mm',
    min: '50 mm',
    max: '5 m',
    step: '10 mm',
    note: 'from this station line to the next one forward',
  }),
  plateThickness: input('length', 'Thickness of plate or block', {
    from: '{self}.usualPlate',
    preset: '6 mm',
    min: '1 mm',
    max: '60 mm',
    step: '1 mm',
    note: 'the panel’s own or more',
  }),
  faces: choice('Faces of the panels', {
    when: 'kind == "block" or kind == "plate"',
    options: [
      { id: 'sanded', label: 'sanded' },
      { id: 'unsanded', label: 'unsanded sheathing' },
    ],
    preset: 'sanded',
  }),
  limberGap: input('length', 'Gap at both ends for water', {
    when: 'kind != "bare"',
    preset: '12 mm',
    presetInch: '1/2 in',
    min: '0 mm',
    max: '100 mm',
    step: '1 mm',
    note: `10 to 15 mm (3/8 to 5/8 in): ${PRACTICE}`,
  }),
  rowIn: input('length', 'Rows in from joint and edges', {
    when: BLOCK,
    preset: '20 mm',
    presetInch: '3/4 in',
    min: '5 mm',
    max: '100 mm',
    step: '1 mm',
    note: PRACTICE,
  }),
  pitch: fromShop('screwPitch', { when: BLOCK, bound: 'most' }),
  soldIn: { ...screwInputs.soldIn, when: BLOCK },
  pull: input('stress', 'Pull in the panel', {
    when: 'kind == "block" or kind == "plate"',
    preset: '10 MPa',
    min: '0.1 MPa',
    max: '60 MPa',
    step: '1 MPa',
    note: `about a third of the ${range(sheathing.tension)} at which sheathing plywood parts: common practice`,
  }),
  rollingShear: input('stress', 'Rolling shear allowed', {
    when: 'kind == "block" or kind == "plate"',
    bound: 'most',
    preset: '0.6 MPa',
    min: '0.05 MPa',
    max: '3 MPa',
    step: '0.1 MPa',
    note: `about a third of the ${range(sheathing.rollingShear)} of sheathing plywood: common practice`,
  }),
  plies: input('count', 'Plies of glass on each face', {
    when: STRAP,
    from: '{self}.pliesNeeded',
    preset: '2',
    min: '1',
    max: '40',
    step: '1',
  }),
  fabric: input('areaDensity', 'Weight of the cloth', {
    when: STRAP,
    preset: '300 g/m²',
    min: '80 g/m²',
    max: '1200 g/m²',
    step: '10 g/m²',
    note: 'heavier than what sheathes a hull, for it carries the joint: 6 oz/yd² is 203 g/m²',
  }),
  glassShare: input('share', 'Glass in laminate, by weight', {
    when: STRAP,
    preset: `${100 * handLaid.value} %`,
    min: '20 %',
    max: '75 %',
    step: '1 %',
    note: `cloth laid by hand and squeegeed, as over the hull: ${citation(handLaid)}`,
  }),
  glassDensity: input('density', 'Density of glass', {
    when: STRAP,
    preset: `${glassDensity.value} kg/m³`,
    min: '2400 kg/m³',
    max: '2700 kg/m³',
    step: '10 kg/m³',
    note: `from memory: ${glassDensity.source}`,
  }),
  panelStrength: input('stress', 'Strength of the panel in tension', {
    when: STRAP,
    preset: '30 MPa',
    min: '5 MPa',
    max: '100 MPa',
    step: '1 MPa',
    note: `sheathing plywood ${range(sheathing.tension)} along the face grain: ${sheathing.source}`,
  }),
  glassStrength: input('stress', 'Strength of the glass laminate', {
    when: STRAP,
    preset: '150 MPa',
    min: '50 MPa',
    max: '500 MPa',
    step: '10 MPa',
    note: `woven cloth laid by hand: ${PRACTICE}`,
  }),
  firstPly: input('length', 'Narrowest ply', {
    when: STRAP,
    preset: '75 mm',
    presetInch: '3 in',
    min: '20 mm',
    max: '500 mm',
    step: '5 mm',
    note: PRACTICE,
  }),
  stepDown: input('length', 'Each next ply wider by', {
    when: STRAP,
    preset: '25 mm',
    presetInch: '1 in',
    min: '5 mm',
    max: '100 mm',
    step: '5 mm',
    note: PRACTICE,
  }),
  siding: fromBoat('frame.siding'),
  framePosition: input('length', 'Frame forward of the after end', {
    from: '{frame}.position',
    preset: '2.4 m',
    min: '-2 m',
    max: '45 m',
    step: '10 mm',
  }),
} as const;
