/** Filler: paste for the recesses over screw heads, for gaps and seams, and in how many pots it is mixed. */
import { constantsOf } from '../../boat/quantities/constants-of';
import { drawing, mm, note } from '../../drawing';
import { cupful, deepestPour, fillers, mostGrains, potLife, workable } from '../../trade/fillers';
import { epoxyDensity, flourDensity, flourShare, scrapings } from '../../trade/paste';
import { headDegrees } from '../../trade/screws';
import { citation } from '../../trade/table';
import { MIXING } from '../common/glue/glue-needs';
import { DOUBLING } from '../common/glue/glues';
import { packsToBuy } from '../common/sizes/packs-sold';
import { choice, defineCell, input, step } from '../form/define';
import { fromShop } from '../form/from-shop';
import { filledHole } from './filler-drawing';

const GEOMETRY = 'geometry';
const CUSTOM = 'common practice, no source';

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
const density = (label: string, from: string, preset: number, hint: string) =>
  input('density', label, {
    from,
    preset: `${preset} kg/m^3`,
    min: '100 kg/m^3',
    max: '4000 kg/m^3',
    step: '10 kg/m^3',
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

export const filler = defineCell({
  id: 'filler',
  stage: 'finish',
  title: 'Filler for holes and gaps',
  question: 'How much filler do the screw holes, gaps and seams take, and in how many pots do I mix it?',
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
    shape: choice('The hole above the head', {
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
    bears: choice('What lies on the filler', {
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
    fillerShare: input('share', 'Filler to epoxy, by weight', {
      from: 'fillers.{filler}.share',
      fromBy: { choice: 'filler', links: { woodFlour: 'fillet.fillerShare' } },
      preset: `${flourShare.value * 100} %`,
      min: '0 %',
      max: '200 %',
      step: '1 %',
      note: 'a paste that stands; half as much again or less, by your own pot',
    }),
    fillerDensity: {
      ...density('Density of the filler', 'fillers.{filler}.density', flourDensity.value, 'of its grains'),
      fromBy: { choice: 'filler', links: { woodFlour: 'fillet.fillerDensity' } },
    },
    bulk: input('density', 'The same, poured loose', {
      from: 'fillers.{filler}.bulk',
      preset: '200 kg/m^3',
      min: '10 kg/m^3',
      max: '4000 kg/m^3',
      step: '10 kg/m^3',
      note: 'weigh a level cup of it',
    }),
    epoxyDensity: density(
      'Density of the epoxy',
      'fillet.epoxyDensity',
      epoxyDensity.value,
      citation(epoxyDensity),
    ),
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
      preset: `${potLife.value / 60} min`,
      min: '2 min',
      max: '8 h',
      step: '5 min',
      note: `of 100 g (3 1/2 oz), from the sheet; ${citation(potLife)}`,
    }),
    cup: input('mass', 'Epoxy in one cup, at most', {
      preset: `${cupful.value * 1000} g`,
      presetInch: '12 oz',
      min: '10 g',
      max: '5 kg',
      step: '50 g',
      bound: 'most',
      note: citation(cupful),
    }),
    perHole: perPiece('Time to fill one hole', '5 s'),
    perMetre: perPiece('Time to fill a metre (3 ft 3 in)', '1 min'),
  },
  groups: {
    'The holes': ['head', 'shape', 'angle'],
    'Gaps and seams': ['gapWidth', 'gapDepth', 'seamWidth', 'seamDepth'],
    'The paste': ['bears', 'waste', 'fillerShare', 'fillerDensity', 'bulk', 'epoxyDensity', 'hardenerPer100'],
    'One pot': ['air', 'potLife', 'cup', 'perHole', 'perMetre'],
  },
  steps: {
    mouth: step(
      'caliper',
      'head + (shape == "flared" ? 2 * recess * tan(angle / 2) : 0 mm)',
      'width of the hole at the face',
      GEOMETRY,
    ),
    hole: step(
      'volume',
      'pi * recess * (head^2 + head * mouth + mouth^2) / 12',
      'filler over one head',
      'geometry: a cone cut off at the head; the slot of the screw left out',
    ),
    inHoles: step('volume', 'holes * hole', 'filler over all heads', GEOMETRY),
    inGaps: step('volume', 'gapLength * gapWidth * gapDepth', 'filler in the gaps', GEOMETRY),
    inSeams: step('volume', 'seamLength * seamWidth * seamDepth / 2', 'filler in the seams', 'geometry: a V'),
    deepest: step(
      'length',
      'max(holes > 0 ? recess : 0 mm, gapLength > 0 m ? gapDepth : 0 mm, seamLength > 0 m ? seamDepth : 0 mm)',
      'deepest of them',
      GEOMETRY,
    ),
    net: step('volume', 'inHoles + inGaps + inSeams', 'filler that stays', GEOMETRY),
    paste: step('volume', '(1 + waste) * net', 'paste to mix, with scrapings', 'scrapings added to the net'),
    pasteYield: step(
      'ratio',
      '1 + fillerShare * epoxyDensity / fillerDensity',
      'paste from one volume of epoxy',
      MIXING,
    ),
    grains: step('share', '1 - 1 / pasteYield', 'part of the paste that is grains, by volume', MIXING),
    epoxy: step('volume', 'paste / pasteYield', 'mixed epoxy in it, resin and hardener together', MIXING),
    toBuy: packsToBuy('epoxy', 'epoxy to buy for it, resin and hardener together'),
    epoxyMass: step('mass', 'epoxy * epoxyDensity', 'the same by weight', GEOMETRY),
    fillerMass: step('mass', 'fillerShare * epoxyMass', 'filler to weigh out', MIXING),
    pot: step('minutes', 'potLife * 2^((298.15 K - air) / (10 K))', 'pot life in this air', DOUBLING, 'most'),
    work: step(
      'minutes',
      'holes * perHole + (gapLength + seamLength) / (1 m) * perMetre',
      'time to fill all of it',
      GEOMETRY,
    ),
    byWork: step(
      'count',
      `ceil(work / (${workable.value} * pot) - 0.000001)`,
      'pots, so that each is spread while it is good',
      citation(workable),
    ),
    byCup: step(
      'count',
      'ceil(epoxyMass / cup - 0.000001)',
      'pots, so that none heats itself',
      citation(cupful),
    ),
    pots: step('count', 'net > 0 L ? max(1, byWork, byCup) : 0', 'pots, one after the other', GEOMETRY),
    resinEach: step(
      'mass',
      'epoxyMass / max(1, pots) * 100 / (100 + hardenerPer100)',
      'resin to weigh into one pot',
      MIXING,
    ),
    hardenerEach: step('mass', 'resinEach * hardenerPer100 / 100', 'hardener to weigh into it', MIXING),
    fillerEach: step('mass', 'fillerMass / max(1, pots)', 'filler to stir into it', MIXING),
    looseEach: step('volume', 'fillerEach / bulk', 'the same by volume, poured loose', GEOMETRY),
  },
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
    'Fumed silica and hollow spheres fly, and go deep into the lungs: a P2 or N95 mask when you stir them in, held low in the pot, and a P100 or FFP3 mask when you sand.',
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
        note('filled a little proud, and sanded flush'),
      ],
    });
  },
});
