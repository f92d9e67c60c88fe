/** What the cell `holding` asks for. */
import { choice, input } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { bentStock } from './bent-stock';

const STATE =
  'mean of clear wood at 12 %, Wood Handbook; for wood wetter or warmer write here what the cell on bending works out';

export const holdingInputs = {
  part: { ...bentStock.part, preset: 'chineLog' },
  along: { ...bentStock.along, preset: 'chine' },
  ends: choice('Its ends', {
    options: [
      { id: 'free', label: 'held, free to turn' },
      { id: 'fast', label: 'held fast, turned along the curve' },
    ],
    preset: 'free',
    note: 'free while it goes on with a clamp at each end; fast once it is let into stem and transom, which spares the frame next to them. The shares go by the edge’s own curve in both cases',
  }),
  thickness: fromBoat('{part}.thickness', {
    hint: 'square to its face, which lies on the skin',
    slider: true,
  }),
  width: { ...bentStock.width, hint: 'of its face' },
  species: bentStock.species,
  holds: bentStock.holds,
  modulus: { ...bentStock.modulus, note: STATE },
  rupture: { ...bentStock.rupture, note: STATE },
  allowed: { ...bentStock.allowed, slider: false },
  shear: input('stress', 'Shear strength along the grain', {
    doubted: 'shear',
    from: 'timber.{species}.shear',
    preset: '7.8 MPa',
    min: '1 MPa',
    max: '40 MPa',
    step: '0.1 MPa',
    note: 'mean of clear wood at 12 % moisture, Wood Handbook',
  }),
  rigidity: input('ratio', 'Bending over shear stiffness', {
    preset: '16',
    min: '5',
    max: '40',
    step: '1',
    note: 'the Wood Handbook’s usual 16, as quoted in papers on it; single woods lie from about 10 to 20',
  }),
  buys: input('length', 'Width of board it is cut from', {
    from: '{part}.boardWidth',
    preset: '38 mm',
    min: '3 mm',
    max: '2 m',
    step: '1 mm',
    note: 'by the plan of pieces',
  }),
  station: choice('Station looked at', { options: 'stations', preset: 'frame2' }),
};
