/** Fillet: how much thickened epoxy lies in the corner along a seam, and how far it reaches up each panel. */
import { drawing, mm, note } from '../../drawing';
import { filletRadius, flourShare, flourSpread, radiusToPanel, scrapings } from '../../trade/paste';
import { citation } from '../../trade/table';
import { choice, defineCell, input } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { fromShop } from '../form/from-shop';
import { tableOf } from '../form/row-quantities';
import { bothSides } from '../common/sizes/both-sides';
import { measures } from '../common/sizes/custom-sizes';
import { filletAngles } from '../../boat/quantities/fillet-quantities';
import { filletSection } from './fillet-drawing';
import { filletSteps } from './fillet-steps';

const thickness = (label: string, panel: string) =>
  fromBoat(`{${panel}}.thickness`, { label, hint: 'measure the sheet in hand' });

export const fillet = defineCell({
  id: 'fillet',
  stage: 'finish',
  title: 'Fillet along a seam',
  question: 'How much thickened epoxy goes into the fillet along this seam, and how far up each panel?',
  inputs: {
    along: choice('Seam', { options: 'chines', preset: 'chine' }),
    radius: input('length', 'Radius of the tool', {
      from: '{self}.usualRadius',
      preset: `${mm(filletRadius.value)} mm`,
      min: '3 mm',
      max: '100 mm',
      step: '1 mm',
      slider: true,
      note: `${citation(filletRadius)}; ${citation(radiusToPanel)}`,
    }),
    angle: input('angle', 'Inside angle', {
      from: '{along}.filletAngle',
      preset: '90 deg',
      min: '30 deg',
      max: '179 deg',
      step: '1 deg',
      note: 'between the faces, square to the seam; of a chine that which takes as much as all its stations do',
    }),
    length: input('length', 'Length of the seam', {
      from: '{along}.length',
      preset: '4.2 m',
      min: '10 mm',
      max: '100 m',
      step: '100 mm',
    }),
    sides: bothSides('How many such seams'),
    lower: choice('Panel below', { options: 'panels', preset: 'bottom' }),
    lowerThickness: thickness('Thickness below', 'lower'),
    upper: choice('Panel above', { options: 'panels', preset: 'side' }),
    upperThickness: thickness('Thickness above', 'upper'),
    outside: choice('Gap outside', {
      options: [
        { id: 'open', label: 'not from this pot' },
        { id: 'filled', label: 'filled with paste' },
      ],
      preset: 'open',
      note: 'between the square edges, where the panels touch at their inside corners only',
    }),
    laid: choice('Fillets on this boat', {
      options: [
        { id: 'none', label: 'none: logs lie behind her seams' },
        { id: 'here', label: 'along this seam' },
        { id: 'all', label: 'along all her chines', ofBoat: true },
        { id: 'seams', label: 'chines, keel, stem, transoms', ofBoat: true },
      ],
      preset: 'none',
      note: 'what is counted with the resin',
    }),
    at: choice('Station', { options: 'stations', preset: 'frame3' }),
    angleHere: input('angle', 'Inside angle at the station', {
      from: '{at}.{along}.angle',
      preset: '90 deg',
      min: '1 deg',
      max: '180 deg',
      step: '1 deg',
      note: 'square to the seam, by the skin’s own planes',
      ofBoat: true,
    }),
    measures,
    waste: input('share', 'Scrapings, on top', {
      preset: `${scrapings.value * 100} %`,
      min: '0 %',
      max: '100 %',
      step: '1 %',
      note: `${citation(scrapings)}; more than of glue between faces, for what is scraped off is thrown away`,
    }),
    fillerShare: fromShop('fillerShare'),
    fillerDensity: fromShop('fillerDensity'),
    epoxyDensity: fromShop('epoxyDensity'),
  },
  groups: {
    'The panels': ['lower', 'lowerThickness', 'upper', 'upperThickness', 'outside'],
    'Station by station': ['at', 'angleHere'],
    'The paste': ['laid', 'waste', 'fillerShare', 'fillerDensity', 'epoxyDensity', 'measures'],
  },
  steps: filletSteps,
  table: tableOf({
    caption: 'The corner at each station: tape the width on both faces',
    over: 'at',
    columns: [
      { of: 'openHere', label: 'inside angle' },
      { of: 'widthHere', label: 'width on each face' },
      { of: 'throatHere', label: 'throat' },
      { of: 'sectionHere', label: 'section' },
    ],
  }),
  brings: filletAngles,
  answers: [
    { of: 'paste', label: 'paste', from: 'for all these seams, scrapings included' },
    {
      of: 'toBuy',
      label: 'epoxy to buy',
      from: 'in packs that shops sell; resin and hardener together, before the filler goes in',
    },
    {
      of: 'width',
      label: 'width on each face',
      from: 'from the inside corner along each panel, to where the tape lies',
      tolerance: '1 mm',
    },
  ],
  inWords: [
    { when: 'sides > 1', says: 'For {sides} seams of {length} each' },
    'stir {fillerMass} of filler into {epoxy} of mixed epoxy: that makes {paste} of paste.',
    {
      when: 'angle > 100°',
      says: 'In so open a corner a tool of {radius} leaves a throat of {throat}; for as much as in a square corner take one of {evenRadius}.',
      otherwise: 'The fillet reaches {width} along each face and is {throat} thick in the throat.',
    },
  ],
  warnings: [
    {
      when: `radius < ${radiusToPanel.value} * thinner`,
      says: 'A radius of {radius} is small for a panel of {thinner}: {usualRadius} is usual.',
      limit: citation(radiusToPanel),
      weight: 'mind',
    },
    {
      when: 'waste < 20 %',
      says: 'Scrapings mostly come to more than {waste}.',
      limit: '20 to 30 % on top; common practice, no source',
      weight: 'mind',
    },
    {
      when: `fillerShare < ${flourShare.value * (1 - flourSpread)}`,
      says: 'With {fillerShare} of filler by weight a paste of wood flour sags out of the corner.',
      limit: citation(flourShare),
      weight: 'mind',
    },
    {
      when: `fillerShare > ${flourShare.value * (1 + flourSpread)}`,
      says: 'With {fillerShare} of filler by weight a paste of wood flour is dry and hardly wets the wood.',
      limit: citation(flourShare),
      weight: 'mind',
    },
  ],
  cautions: [
    'Epoxy sensitises: gloves, sleeves and fresh air, and no paste smoothed with a bare finger. The labels on can and bag outrank this cell.',
    'Dust of cured epoxy and of fumed fillers goes deep into the lungs: a P100 or FFP3 mask when you sand, and when you stir the filler in.',
    'A pot of paste heats, and a full one may smoke: mix what you can lay in one go, spread it along the seam at once, and carry a hot pot outdoors.',
    'The filler is a guess until your own pot stands as you like it: stir it in a little at a time, and note what you used.',
  ],
  sources: [
    { text: 'Section, width, throat and gap: geometry', known: 'geometry' },
    {
      text: 'Radius, scrapings, filler by weight, densities: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{along}'],
  draw: (v, on) => {
    const say = (metres: number) => on.say(metres, 'length');
    const angle = on.say(v.angle, 'angle');
    return drawing({
      title: 'Section of the fillet, square to the seam',
      says: `Two panels meet at ${angle} inside; a tool of ${say(v.radius)} radius leaves a fillet ${say(v.width)} wide on each face; its throat, from the corner to the hollow, is ${say(v.throat)}.`,
      shapes: [
        filletSection(
          {
            radius: mm(v.radius),
            angle: v.angle,
            width: mm(v.width),
            lower: mm(v.lowerThickness),
            upper: mm(v.upperThickness),
            filled: v.outside === 'filled',
          },
          { lower: v.lower, upper: v.upper },
          { radius: `R ${say(v.radius)}`, angle, width: say(v.width), throat: say(v.throat) },
        ),
        note('It is as wide on the other face.'),
      ],
    });
  },
});
