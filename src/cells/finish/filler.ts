/** Filler: paste for the recesses over screw heads, for gaps and seams, and in how many pots it is mixed. */
import { input, choice, defineCell } from '../form/define';
import { constantsOf } from '../../boat/quantities/constants-of';
import { fillers, mostGrains, deepestPour } from '../../trade/fillers';
import { hardeners, usualHardener } from '../../trade/hardeners';
import { potful } from '../../trade/pots';
import { headDegrees } from '../../trade/screws';
import { scrapings } from '../../trade/paste';
import { citation, look } from '../../trade/table';
import { fromShop } from '../form/from-shop';
import { mm, drawing, note } from '../../drawing';
import { filledHole } from './filler-drawing';
import { fillerSteps } from './filler-steps';
import { CUSTOM } from '../../trade/sources';

const run = (label: string, preset: string, presetInch: string) =>
  input('length', label, { preset, presetInch, min: '0 m', max: '500 m', step: '100 mm' });
const across = (label: string, preset: string, presetInch: string, hint: string) =>
  input('length', label, {
    preset,
    presetInch,
    min: '0 mm',
    max: '100 mm',
    step: '0.5 mm',
    note: hint,
  });
const perPiece = (label: string, preset: string) =>
  input('minutes', label, {
    preset,
    min: '1 s',
    max: '1 h',
    step: '5 s',
    note: `an example, ${CUSTOM}: try it with a watch`,
  });

const fromTable = constantsOf(fillers);

/** The shop's number is that of wood flour; another filler has its own in the table. */
const ofOthers = (column: 'share' | 'density') => ({
  fromBy: {
    choice: 'filler',
    links: Object.fromEntries(
      fillers.rows
        .filter(({ id }) => id !== 'woodFlour')
        .map(({ id }) => [id, `fillers.${id}.${column}`] as const),
    ),
  },
});

export const filler = defineCell({
  id: 'filler',
  stage: 'finish',
  title: 'Filler for holes and gaps',
  question:
    'How much filler do screw holes, gaps, seams and hollow faces take, and in how many pots do I mix it?',
  inputs: {
    filler: choice('Filler', {
      options: fillers.rows.map(({ id, label }) => ({ id, label })),
      preset: 'woodFlour',
    }),
    holes: input('count', 'Screw heads to fill over', {
      from: 'screwCount.total',
      preset: '200',
      min: '0',
      max: '100000',
      step: '10',
    }),
    recess: input('length', 'Heads lie below the face', {
      preset: '2 mm',
      presetInch: '1/16 in',
      min: '0.1 mm',
      max: '30 mm',
      step: '0.5 mm',
      note: 'measured on the head, with a caliper’s tail',
    }),
    gapLength: run('Gaps, length together', '2 m', '6 ft'),
    seamLength: run('Seams, length together', '5 m', '16 ft'),
    head: input('caliper', 'Diameter of the head', {
      from: 'fasten.head',
      preset: '8.4 mm',
      min: '1 mm',
      max: '30 mm',
      step: '0.1 mm',
    }),
    shape: choice('Hole above the head', {
      options: [
        { id: 'flared', label: 'countersunk on, wider at the face' },
        { id: 'straight', label: 'bored straight' },
      ],
      preset: 'flared',
    }),
    angle: input('angle', 'Angle of the countersink', {
      when: 'shape == "flared"',
      preset: `${headDegrees} deg`,
      min: '40 deg',
      max: '120 deg',
      step: '1 deg',
      note: 'included; inch heads 80° to 82°, metric ones mostly 90°',
    }),
    gapWidth: across('Gap, width', '2 mm', '1/16 in', 'with a card or a drill that just goes in'),
    gapDepth: across('Gap, depth', '6 mm', '1/4 in', 'as far as it is to be filled'),
    seamWidth: across('Seam, width at the face', '3 mm', '1/8 in', 'raked out to a V'),
    seamDepth: across(
      'Seam, depth',
      '3 mm',
      '1/8 in',
      'to the point of the V; the gap outside a chine is reckoned with its fillet',
    ),
    skimArea: input('area', 'Face filled all over', {
      preset: '0 m^2',
      min: '0 m^2',
      max: '200 m^2',
      step: '0.1 m^2',
      note: 'to be faired all over, both sides together: panels for their areas',
    }),
    skimFilm: across(
      'Layer left when sanded',
      '0.5 mm',
      '1/64 in',
      'on the mean: more over hollows, none on humps',
    ),
    bears: choice('What lies on the filler', {
      when: 'fillerDensity < 1000 kg/m^3',
      options: [
        { id: 'paint', label: 'paint or cloth' },
        { id: 'load', label: 'a fastening, or the load of a joint' },
      ],
      preset: 'paint',
    }),
    waste: input('share', 'Scrapings, on top', {
      from: 'fillet.waste',
      preset: `${scrapings.value * 100} %`,
      min: '0 %',
      max: '100 %',
      step: '1 %',
      note: citation(scrapings),
    }),
    fillerShare: fromShop('fillerShare', {
      ...ofOthers('share'),
      hint: 'of other fillers by their own table; half as much again or less, by your own pot',
    }),
    fillerDensity: fromShop('fillerDensity', {
      ...ofOthers('density'),
      hint: 'of other fillers by their own table',
    }),
    bulk: input('density', 'The same, poured loose', {
      from: 'fillers.{filler}.bulk',
      preset: '200 kg/m^3',
      min: '10 kg/m^3',
      max: '4000 kg/m^3',
      step: '10 kg/m^3',
      note: 'weigh a level cup of it',
    }),
    epoxyDensity: fromShop('epoxyDensity'),
    hardenerPer100: input('number', 'Hardener to 100 of resin, by weight', {
      from: 'resin.hardenerPer100',
      preset: '43',
      min: '0',
      max: '1000',
      step: '1',
      note: 'from the label',
    }),
    air: fromShop('air'),
    potLife: input('minutes', 'Pot life, at 25 °C (77 °F)', {
      from: 'batch.lifeAt25',
      preset: `${(look(hardeners, usualHardener, 'potLife')?.value ?? 0) / 60} min`,
      min: '2 min',
      max: '8 h',
      step: '5 min',
      note: 'of 100 g (3 1/2 oz), from the sheet',
    }),
    cup: input('mass', 'Epoxy in one cup, at most', {
      from: 'batch.cupful',
      preset: `${potful.cup.value * 1000} g`,
      presetInch: '12 oz',
      min: '10 g',
      max: '5 kg',
      step: '50 g',
      bound: 'most',
      note: citation(potful.cup),
    }),
    perHole: perPiece('Time to fill one hole', '5 s'),
    perArea: perPiece('Time to fill 1 m² (11 ft²)', '10 min'),
    perMetre: perPiece('Time to fill a metre (3 ft 3 in)', '1 min'),
  },
  groups: {
    'The holes': ['head', 'shape', 'angle'],
    'Gaps and seams': ['gapWidth', 'gapDepth', 'seamWidth', 'seamDepth'],
    'A face all over': ['skimArea', 'skimFilm'],
    'The paste': ['bears', 'waste', 'fillerShare', 'fillerDensity', 'bulk', 'epoxyDensity', 'hardenerPer100'],
    'One pot': ['air', 'potLife', 'cup', 'perHole', 'perMetre', 'perArea'],
  },
  steps: fillerSteps,
  answers: [
    { of: 'paste', label: 'paste', from: 'for all holes, gaps and seams, scrapings included' },
    { of: 'pots', label: 'pots', from: 'mixed one after the other, all alike' },
    {
      of: 'toBuy',
      label: 'epoxy to buy',
      from: 'in packs that shops sell; resin and hardener together, before the filler goes in',
    },
  ],
  inWords: {
    when: 'pots > 0',
    says: [
      'Mix {paste} of paste in {pots} {pots?pot:pots}.',
      { when: 'pots > 1', says: 'Into each weigh', otherwise: 'Weigh' },
      '{resinEach} of resin and {hardenerEach} of hardener, mix them, and then stir in {fillerEach} of filler: {looseEach}, poured loose.',
    ],
    otherwise: 'There is nothing to fill.',
  },
  warnings: [
    {
      when: 'bears == "load" and fillerDensity < 1000 kg/m^3',
      says: 'Hollow spheres crush: take wood flour or silica under a fastening and in a joint.',
      limit: `no low-density filler there; ${CUSTOM}`,
      weight: 'stop',
    },
    {
      when: `grains > ${mostGrains.value}`,
      says: 'Of this paste {grains} would be grains, more than lie close together: it stays dry and crumbles.',
      limit: citation(mostGrains),
      weight: 'stop',
    },
    {
      when: `deepest > ${mm(deepestPour.value)} mm`,
      says: 'Fill what is {deepest} deep in layers, each firm before the next.',
      limit: citation(deepestPour),
      weight: 'mind',
    },
    {
      when: 'waste < 20 %',
      says: 'With {waste} on top the pot mostly runs out before the holes do.',
      limit: `20 to 30 % on top; ${CUSTOM}`,
      weight: 'mind',
    },
  ],
  cautions: [
    'Fumed silica and hollow spheres fly, and go deep into the lungs: a P2 or N95 mask when you stir them in, held low in the pot, and a P100 or FFP3 mask when you sand. At work the US limit for pure fumed silica is 0.8 mg/m³ of air, 80 over the per cent of silica in it (29 CFR 1910.1000, Table Z-3).',
    'Epoxy sensitises for life: nitrile gloves and sleeves, no solvent on the skin, and no sanding before it is cured through. The sheets of can and bag outrank this cell.',
    'A pot left standing heats itself and may smoke: spread it at once, and carry a hot one outdoors.',
    'No low-density filler under fastenings or in a joint that bears.',
  ],
  sources: [
    { text: 'Holes, gaps, seams, mixing: geometry', known: 'geometry' },
    { text: 'Countersunk heads: ASME B18.6.1', known: 'from memory' },
    {
      text: "Epoxy makers' sheets: pot life doubles for each 10 K colder and halves for each 10 K warmer",
      known: 'published',
    },
    {
      text: 'Filler by weight, densities as poured, cupful, time to work, scrapings: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['bottom', 'bilge', 'side'],
  brings: () => fromTable,
  draw: (v, on) => {
    const say = (metres: number) => on.say(metres, 'caliper');
    return drawing({
      title: 'A screw head under its filler, in section',
      says: `A head of ${say(v.head)} lies ${on.say(v.recess, 'length')} below the face; the hole is ${say(v.mouth)} wide there.`,
      shapes: [
        filledHole(
          { head: mm(v.head), mouth: mm(v.mouth), recess: mm(v.recess), angle: v.angle },
          { head: say(v.head), mouth: say(v.mouth), recess: on.say(v.recess, 'length') },
        ),
        note('Filled a little proud, and sanded flush.'),
      ],
    });
  },
});
