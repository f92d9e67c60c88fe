/** What the cell of the paint asks for. */
import { coverReach, handLoss, paints, unevenLoss } from '../../trade/paints';
import { citation } from '../../trade/table';
import { choice, input } from '../form/define';

const SHEET = 'from the sheet of the tin';

const area = (label: string, when: string, note: string, from?: string) =>
  input('area', label, {
    when,
    ...(from === undefined ? {} : { from, ofBoat: true }),
    preset: from === undefined ? '0 m^2' : '10 m^2',
    min: '0 m^2',
    max: '500 m^2',
    step: '0.1 m^2',
    note,
  });

const tin = (size: string, preset: string, presetInch: string) =>
  input('pack', `${size} tin of paint`, {
    preset,
    presetInch,
    min: '0 L',
    max: '250 L',
    step: '0.25 L',
    note: '0 for a size that is not sold',
  });

const price = (size: string, preset: string) =>
  input('money', `${size} tin costs`, {
    preset,
    min: '0',
    max: '100000',
    step: '1',
    note: 'an example; put in your shop’s',
  });

const lost = (label: string, cited: typeof handLoss) =>
  input('share', label, {
    preset: `${cited.value * 100} %`,
    min: '0 %',
    max: '90 %',
    step: '1 %',
    note: citation(cited),
  });

export const paintInputs = {
  where: choice('Painted', {
    options: [
      { id: 'outside', label: 'outside', ofBoat: true },
      { id: 'inside', label: 'inside', ofBoat: true },
      { id: 'both', label: 'both', ofBoat: true },
      { id: 'typed', label: 'another area' },
    ],
    preset: 'outside',
  }),
  ownArea: input('area', 'Area to paint', {
    when: 'where == "typed"',
    preset: '5 m^2',
    min: '0 m^2',
    max: '500 m^2',
    step: '0.1 m^2',
    note: 'an oar, a deck, a rudder: length times width, both faces',
  }),
  paint: choice('Paint', {
    options: paints.rows.map(({ id, label }) => ({ id, label })),
    preset: 'enamel',
  }),
  coats: input('count', 'Coats', {
    from: 'paints.{paint}.coats',
    preset: '2',
    min: '1',
    max: '30',
    step: '1',
    note: `${SHEET}; an undercoat is reckoned by itself`,
  }),
  thinner: input('share', 'Thinned, by volume', {
    preset: '0 %',
    min: '0 %',
    max: '200 %',
    step: '5 %',
    note: 'thinner to the paint out of the tin; as the sheet says',
  }),
  outsideArea: area(
    'Hull outside, both sides',
    'where == "outside" or where == "both"',
    'panels and transoms, laid flat',
    'hull.surfaceArea',
  ),
  insideArea: area(
    'Hull inside',
    'where == "inside" or where == "both"',
    'panels and transoms; add frames and thwarts',
    'resin.insideArea',
  ),
  moreArea: area('Besides, rails and thwarts', 'where != "typed"', 'what is painted beyond the hull’s skin'),
  solids: input('share', 'Solids, by volume', {
    from: 'paints.{paint}.solids',
    preset: '50 %',
    min: '5 %',
    max: '100 %',
    step: '1 %',
    note: `${SHEET}; not the solids by weight, which are more`,
  }),
  film: input('film', 'Dry film of one coat', {
    from: 'paints.{paint}.film',
    preset: '35 µm',
    min: '5 µm',
    max: '1 mm',
    step: '5 µm',
    note: SHEET,
  }),
  handLoss: lost('Stays in tin, tray and roller', handLoss),
  unevenLoss: lost('Lost to an uneven film', unevenLoss),
  coverReach: input('area', 'One roller cover does', {
    preset: `${coverReach.value} m^2`,
    min: '0.1 m^2',
    max: '200 m^2',
    step: '1 m^2',
    note: citation(coverReach),
  }),
  smallTin: tin('Small', '0.5 L', '1 pt'),
  smallTinPrice: price('Small', '18'),
  middleTin: tin('Middle', '1 L', '1 qt'),
  middleTinPrice: price('Middle', '30'),
  largeTin: tin('Large', '4 L', '1 gal'),
  largeTinPrice: price('Large', '100'),
} as const;
