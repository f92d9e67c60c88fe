/** Resin for sealing and sheathing: how much of each part, by stage, and which packs to buy. */
import { drawing, mm, note } from '../../drawing';
import { fillFilm, laterCoat, partDensity, uptake, waste } from '../../trade/epoxy';
import { curedResinDensity, glassDensity, layups } from '../../trade/glass';
import { cheapestPacks } from '../../trade/packs';
import { citation } from '../../trade/table';
import { type CellFunction, choice, defineCell, input, step } from '../form/define';
import { soldPack } from '../common/sizes/packs-sold';
import { counted, sheathing } from './sheathing-drawing';

const GEOMETRY = 'geometry';
const MIXING = 'geometry of mixing: volumes add up, contraction left out';
const SHARES = 'definition of the share of glass by mass';
/** Densities of glass and of cured resin, as they stand in formulas. */
const GLASS = `${glassDensity.value} kg/m^3`;
const CURED = `${curedResinDensity.value} kg/m^3`;
const NIEDERER = 'B. Niederer, "Estimating Epoxy Amounts"';

const area = (label: string, from: string, preset: string, note: string) =>
  input('area', label, { from, preset, min: '0 m^2', max: '200 m^2', step: '0.1 m^2', note });
const layers = (label: string, note: string) =>
  input('count', label, { preset: '1', min: '0', max: '6', step: '1', note });
const pack = (label: string, preset: string, presetInch: string) =>
  soldPack(label, {
    preset,
    presetInch,
    min: '0 L',
    max: '250 L',
    step: '0.5 L',
    note: 'resin and hardener together; 0 for a size that is not sold',
  });
const price = (label: string, preset: string, presetInch = preset) =>
  input('money', label, {
    preset,
    presetInch,
    min: '0',
    max: '100000',
    step: '1',
    note: "an example; put in your shop's",
  });

/** How many of the pack in this place the cheapest purchase holds. */
const packsOf = (place: number, how: string): CellFunction => ({
  takes: ['volume', 'volume', 'money', 'volume', 'money', 'volume', 'money'],
  gives: 'count',
  how,
  run: (need, small = 0, smallPrice = 0, middle = 0, middlePrice = 0, large = 0, largePrice = 0) =>
    cheapestPacks(need ?? 0, [
      { holds: small, price: smallPrice },
      { holds: middle, price: middlePrice },
      { holds: large, price: largePrice },
    ]).counts[place] ?? 0,
});
const toBuy = 'total, smallPack, smallPrice, middlePack, middlePrice, largePack, largePrice';

/** `layup == "mat" ? 0.3 : …` from the table, the first row for the rest. */
const usualShare = layups.rows
  .slice(1)
  .reduceRight(
    (rest, row) => `layup == "${row.id}" ? ${row.cells.glassShare?.value} : ${rest}`,
    `${layups.rows[0]?.cells.glassShare?.value}`,
  );

export const resin = defineCell({
  id: 'resin',
  stage: 'finish',
  title: 'Resin and hardener',
  question: 'How much resin and hardener do I need to seal the wood and sheathe the hull with glass?',
  inputs: {
    bottomArea: area('Bottom, one side', 'bottom.area', '0 m^2', 'laid flat; both sides are reckoned'),
    bilgeArea: area(
      'Bilge, one side',
      'bilge.area',
      '0 m^2',
      'laid flat; all panels between bottom and side',
    ),
    sideArea: area('Side, one side', 'side.area', '2.5 m^2', 'laid flat; both sides are reckoned'),
    transomArea: area('Transom, whole', 'transom.area', '0 m^2', 'its outer face'),
    bowArea: area('Bow transom, whole', 'bowTransom.area', '0 m^2', 'its outer face, if there is one'),
    bottomLayers: layers('Layers of cloth on the bottom', '0 for bare wood, which is sealed and no more'),
    sideLayers: layers(
      'Layers on bilges, sides and transoms',
      '0 for bare wood, which is sealed and no more',
    ),
    laps: input('share', 'Laps and edges turned round', {
      preset: '10 %',
      min: '0 %',
      max: '100 %',
      step: '1 %',
      note: 'cloth beyond the bare area; common practice, no source',
    }),
    clothWeight: input('areaDensity', 'Weight of the cloth', {
      preset: '6 oz/yd^2',
      min: '20 g/m^2',
      max: '1500 g/m^2',
      step: '10 g/m^2',
      note: 'dry; cloth goes by oz/yd², mat by oz/ft², nine times as much',
    }),
    layup: choice('Lay-up', {
      options: layups.rows.map(({ id, label: name }) => ({ id, label: name })),
      preset: 'clothSqueegeed',
    }),
    glassShare: input('share', 'Glass in the laminate, by weight', {
      from: '{self}.usualShare',
      preset: '50 %',
      min: '20 %',
      max: '75 %',
      step: '1 %',
      slider: true,
      note: 'weigh a square of your own lay-up to know',
    }),
    fillCoats: input('count', 'Fill coats over the cloth', {
      preset: '3',
      min: '0',
      max: '10',
      step: '1',
      note: 'two or three over cloth to 6 oz/yd² (200 g/m²), three or four from 10 oz/yd² (340 g/m²); common practice, no source',
    }),
    fillFilm: input('film', 'Film of a fill coat', {
      preset: `${fillFilm.value * 1e6} µm`,
      min: '0 µm',
      max: '2 mm',
      step: '10 µm',
      note: citation(fillFilm),
    }),
    insideArea: area(
      'Inside to seal',
      'hull.surfaceArea',
      '10 m^2',
      'panels and transoms; add frames and thwarts',
    ),
    sealCoats: input('count', 'Sealing coats on bare wood', {
      preset: '3',
      min: '0',
      max: '10',
      step: '1',
      note: 'two or three inside, three outside where there is no cloth; common practice, no source',
    }),
    uptake: input('wetRate', 'First coat on bare wood', {
      preset: `${(uptake.rows[0]?.cells.firstCoat?.value ?? 0) * 1e6} mL/m^2`,
      min: '0 mL/m^2',
      max: '500 mL/m^2',
      step: '10 mL/m^2',
      note: '100 to 200 mL/m² (0.3 to 0.6 fl oz/ft²) on softwood plywood, 60 to 120 mL/m² (0.2 to 0.4 fl oz/ft²) on hardwood; common practice, no source',
    }),
    laterCoat: input('wetRate', 'Each coat after it', {
      preset: `${laterCoat.value * 1e6} mL/m^2`,
      min: '0 mL/m^2',
      max: '500 mL/m^2',
      step: '10 mL/m^2',
      note: citation(laterCoat),
    }),
    waste: input('share', 'Waste, on top', {
      preset: `${waste.value * 100} %`,
      min: '0 %',
      max: '100 %',
      step: '1 %',
      note: `${citation(waste)}; 20 to 25 % on small jobs`,
    }),
    basis: choice('The label gives its ratio', {
      options: [
        { id: 'volume', label: 'by volume' },
        { id: 'mass', label: 'by weight' },
      ],
      preset: 'volume',
      note: 'the two are not the same number',
    }),
    resinParts: input('number', 'Parts of resin', {
      preset: '2',
      min: '1',
      max: '1000',
      step: '1',
      note: 'from the label',
    }),
    hardenerParts: input('number', 'Parts of hardener', {
      preset: '1',
      min: '1',
      max: '1000',
      step: '1',
      note: 'from the label',
    }),
    resinDensity: input('density', 'Density of the resin', {
      preset: `${partDensity.resin.value} kg/m^3`,
      min: '800 kg/m^3',
      max: '1500 kg/m^3',
      step: '10 kg/m^3',
      note: citation(partDensity.resin),
    }),
    hardenerDensity: input('density', 'Density of the hardener', {
      preset: `${partDensity.hardener.value} kg/m^3`,
      min: '800 kg/m^3',
      max: '1500 kg/m^3',
      step: '10 kg/m^3',
      note: citation(partDensity.hardener),
    }),
    inHand: input('volume', 'In the shop already', {
      preset: '0 L',
      min: '0 L',
      max: '500 L',
      step: '0.5 L',
      note: 'resin and hardener together',
    }),
    smallPack: pack('Small pack', '1 L', '1 qt'),
    smallPrice: price('Small pack costs', '30'),
    middlePack: pack('Middle pack', '4 L', '1 gal'),
    middlePrice: price('Middle pack costs', '96'),
    largePack: pack('Large pack', '15 L', '5 gal'),
    largePrice: price('Large pack costs', '300', '380'),
  },
  functions: {
    smallPacks: packsOf(0, 'small packs in the cheapest purchase that covers the need'),
    middlePacks: packsOf(1, 'middle packs in the cheapest purchase that covers the need'),
    largePacks: packsOf(2, 'large packs in the cheapest purchase that covers the need'),
  },
  groups: {
    'Other faces': ['bilgeArea', 'transomArea', 'bowArea'],
    'The cloth': ['sideLayers', 'laps', 'layup', 'glassShare'],
    'The coats': ['fillCoats', 'fillFilm', 'sealCoats', 'uptake', 'laterCoat', 'waste'],
    'Resin and hardener': ['basis', 'resinParts', 'hardenerParts', 'resinDensity', 'hardenerDensity'],
    'As the shop sells it': [
      'inHand',
      'smallPack',
      'smallPrice',
      'middlePack',
      'middlePrice',
      'largePack',
      'largePrice',
    ],
  },
  steps: {
    bottomBoth: step('area', '2 * bottomArea', 'bottom, port and starboard', GEOMETRY),
    restBoth: step(
      'area',
      '2 * (bilgeArea + sideArea) + transomArea + bowArea',
      'bilges and sides, port and starboard, and transoms',
      GEOMETRY,
    ),
    sheathedArea: step(
      'area',
      '(bottomLayers > 0 ? bottomBoth : 0 m^2) + (sideLayers > 0 ? restBoth : 0 m^2)',
      'hull under cloth',
      GEOMETRY,
    ),
    bareArea: step(
      'area',
      'insideArea + bottomBoth + restBoth - sheathedArea',
      'wood that is only sealed: the inside, and the outside without cloth',
      GEOMETRY,
    ),
    clothArea: step(
      'area',
      '(1 + laps) * (bottomLayers * bottomBoth + sideLayers * restBoth)',
      'cloth laid, laps and all layers',
      GEOMETRY,
    ),
    clothMass: step('mass', 'clothArea * clothWeight', 'dry weight of the cloth laid', GEOMETRY),
    usualShare: step(
      'share',
      usualShare,
      'share of glass usual with this lay-up',
      layups.rows
        .map((row) => `${row.label}: ${row.cells.glassShare ? citation(row.cells.glassShare) : ''}`)
        .join('; '),
    ),
    wetOutMass: step(
      'mass',
      'clothMass * (1 - glassShare) / glassShare',
      'resin that wets the cloth out',
      SHARES,
    ),
    resinByVolume: step(
      'number',
      'basis == "mass" ? resinParts / hardenerParts * hardenerDensity / resinDensity : resinParts / hardenerParts',
      'parts of resin to one of hardener by volume',
      MIXING,
    ),
    mixDensity: step(
      'density',
      '(resinByVolume * resinDensity + hardenerDensity) / (resinByVolume + 1)',
      'density of the mix',
      MIXING,
    ),
    hardenerPer100: step(
      'number',
      '100 * hardenerDensity / (resinByVolume * resinDensity)',
      'hardener to 100 parts of resin by weight, for the scale',
      MIXING,
    ),
    sealing: step(
      'volume',
      'sealCoats > 0 ? bareArea * (uptake + (sealCoats - 1) * laterCoat) + sheathedArea * uptake : 0 L',
      'sealing: all coats on bare wood, and what the wood under the cloth drinks',
      'common practice, no source',
    ),
    wetOut: step('volume', 'wetOutMass / mixDensity', 'wetting out the cloth', GEOMETRY),
    filling: step(
      'volume',
      'sheathedArea * fillCoats * fillFilm',
      'filling the weave',
      `${NIEDERER}, for the film of a coat`,
    ),
    net: step('volume', 'sealing + wetOut + filling', 'all stages, nothing wasted', GEOMETRY),
    total: step(
      'volume',
      '(1 + waste) * net',
      'mixed resin with waste',
      'waste as a share added to the net amount',
    ),
    resin: step('volume', 'total * resinByVolume / (resinByVolume + 1)', 'resin to pour', MIXING),
    hardener: step('volume', 'total / (resinByVolume + 1)', 'hardener to pour', MIXING),
    resinMass: step('mass', 'resin * resinDensity', 'resin by weight', GEOMETRY),
    hardenerMass: step('mass', 'hardener * hardenerDensity', 'hardener by weight', GEOMETRY),
    small: step('count', `smallPacks(${toBuy})`, 'small packs to buy', 'least cost, all purchases compared'),
    middle: step(
      'count',
      `middlePacks(${toBuy})`,
      'middle packs to buy',
      'least cost, all purchases compared',
    ),
    large: step('count', `largePacks(${toBuy})`, 'large packs to buy', 'least cost, all purchases compared'),
    cost: step(
      'money',
      'small * smallPrice + middle * middlePrice + large * largePrice',
      'price of the packs',
      GEOMETRY,
    ),
    leftOver: step(
      'volume',
      'small * smallPack + middle * middlePack + large * largePack - total',
      'bought beyond the need',
      GEOMETRY,
    ),
    glassVolumeShare: step(
      'share',
      `glassShare / (${GLASS}) / (glassShare / (${GLASS}) + (1 - glassShare) / (${CURED}))`,
      'share of glass by volume',
      `${SHARES}; densities of glass and cured resin ${citation(glassDensity)}`,
    ),
    laminateDensity: step(
      'density',
      `glassVolumeShare * ${GLASS} + (1 - glassVolumeShare) * ${CURED}`,
      'density of the cured laminate, without voids',
      `${SHARES}; ${citation(glassDensity)}`,
    ),
    plyThickness: step(
      'film',
      'clothWeight / glassShare / laminateDensity',
      'thickness of one wetted layer',
      'geometry; with these densities it is the form of ISO 12215-5, (w / 3.072) (2.56 / share - 1.36)',
    ),
    skinThickness: step(
      'film',
      'max(bottomLayers, sideLayers) > 0 ? max(bottomLayers, sideLayers) * plyThickness + fillCoats * fillFilm : 0 mm',
      'sheathing where it is thickest, laps apart',
      GEOMETRY,
    ),
    addedMass: step(
      'mass',
      'clothMass + net * mixDensity',
      'weight that sealing and sheathing add to the hull',
      GEOMETRY,
    ),
  },
  answers: [
    { of: 'total', label: 'mixed, in all', from: 'resin and hardener together, waste included' },
    { of: 'resin', label: 'resin', from: 'by volume, to be measured apart from the hardener' },
    { of: 'hardener', label: 'hardener', from: 'by volume, to be measured apart from the resin' },
  ],
  inWords: [
    'For both sides of the boat mix {total} in all, {resin} of resin and {hardener} of hardener, or on a scale {hardenerPer100} of hardener to 100 of resin: {sealing} to seal, {wetOut} to wet out {clothArea} of cloth, {filling} to fill the weave, and {waste} on top.',
    {
      when: 'large + middle + small > 0',
      says: [
        'Buy',
        { when: 'large > 0', says: '{large} {large?pack:packs} of {largePack}' },
        { when: 'large > 0 and middle > 0', says: { when: 'small > 0', says: ',', otherwise: 'and' } },
        { when: 'middle > 0', says: '{middle}' },
        { when: 'middle > 0 and large == 0', says: '{middle?pack:packs}' },
        { when: 'middle > 0', says: 'of {middlePack}' },
        { when: 'large + middle > 0 and small > 0', says: 'and' },
        { when: 'small > 0', says: '{small}' },
        { when: 'small > 0 and large + middle == 0', says: '{small?pack:packs}' },
        { when: 'small > 0', says: 'of {smallPack}' },
        ', for {cost}.',
      ],
      otherwise: 'There is nothing to buy.',
    },
  ],
  warnings: [
    {
      when: 'glassShare > 60 %',
      says: 'With {glassShare} of glass the cloth is starved: by hand it takes at least its own weight in resin, less a little.',
      limit: '45 to 55 % with a squeegee; common practice, no source',
      weight: 'stop',
    },
    {
      when: 'layup == "mat"',
      says: 'Chopped-strand mat is mostly held together by a binder that epoxy does not dissolve: ask for stitched or epoxy-compatible mat.',
      limit: 'common practice, no source',
      weight: 'mind',
    },
    {
      when: 'net < 2 L and waste < 20 %',
      says: 'On a job of {net} cups and rollers swallow more than {waste}.',
      limit: '20 to 25 % under 2 L (2 qt); common practice, no source',
      weight: 'mind',
    },
    {
      when: 'clothWeight >= 339 g/m^2 and sheathedArea > 0 m^2 and fillCoats < 3',
      says: 'Cloth of {clothWeight} shows its weave after {fillCoats} fill coats.',
      limit: 'three or four coats from 10 oz/yd² (340 g/m²) up; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'inHand > 0 L and inHand < (1 + waste) * sealing',
      says: 'The {inHand} in the shop run out while you are sealing.',
      limit: 'the stock in hand',
      weight: 'mind',
    },
    {
      when: 'inHand >= (1 + waste) * sealing and inHand > 0 L and inHand < (1 + waste) * (sealing + wetOut)',
      says: 'The {inHand} in the shop run out in the middle of wetting out the cloth, which is the worst place: buy before you begin.',
      limit: 'the stock in hand',
      weight: 'stop',
    },
    {
      when: 'inHand >= (1 + waste) * (sealing + wetOut) and inHand > 0 L and inHand < total',
      says: 'The {inHand} in the shop run out while you are filling the weave.',
      limit: 'the stock in hand',
      weight: 'mind',
    },
  ],
  cautions: [
    'Resin, hardener and thinners can sensitise for life, and most of all when wet. Nitrile gloves, changed often, sleeves and eye protection; never solvent on the skin; stop at the first rash.',
    'The label and the data sheet of the can in hand outrank every figure here. Never alter the ratio to hasten or slow the cure.',
    'A potful left standing heats itself and can smoke and burn: mix what you can spread, pour it out at once into a wide tray, and carry a hot pot outdoors. Leftovers cure in thin layers before they go in the bin.',
    'Sand cured glass and epoxy only with a P100 or FFP3 mask and dust extraction; within the first days it is not cured through and its dust sensitises too.',
    'Glue lines, fillets and fairing filler are not in this figure.',
  ],
  sources: [
    {
      text: `${NIEDERER} (an epoxy maker’s magazine): 50:50 by weight, three fill coats, about 15 % waste`,
      known: 'published',
    },
    { text: 'ISO 12215-5, Annex C: shares of glass by lay-up, thickness from weight', known: 'from memory' },
    {
      text: 'Practical Action, technical brief “Fibreglass boat building”: 30 % glass in mat, 45 % in woven roving',
      known: 'published',
    },
    {
      text: 'Uptake of bare wood, coats, laps, densities of the parts: custom of the trade',
      known: 'common practice',
    },
    {
      text: 'Contact Dermatitis 10(3) 146–150, 1984: of 135 exposed construction workers 27 were sensitised to epoxy',
      known: 'published',
    },
  ],
  about: ['bottom', 'bilge', 'side', 'transom', 'bowTransom'],
  draw: (v, on) => {
    const film = (metres: number) => on.say(metres, 'film');
    const layers = Math.max(v.bottomLayers, v.sideLayers);
    const coats = layers > 0 ? v.fillCoats : 0;
    return drawing({
      title: 'Section through the sheathing, much enlarged',
      says:
        layers > 0
          ? `On the wood ${counted(layers, 'layer')} of cloth at ${film(v.plyThickness)} and ${counted(coats, 'fill coat')} at ${film(v.fillFilm)}: ${film(v.skinThickness)} in all.`
          : 'No cloth: the wood is sealed and no more.',
      shapes: [
        sheathing(
          { layers, ply: mm(v.plyThickness), coats, film: mm(v.fillFilm) },
          { ply: film(v.plyThickness), film: film(v.fillFilm), whole: film(v.skinThickness) },
        ),
        note('thickest place, laps apart'),
      ],
    });
  },
  chart: (v, on) => {
    const ends = [v.sealing, v.wetOut, v.filling].reduce<number[]>(
      (sums, stage) => [...sums, (sums.at(-1) ?? 0) + (1 + v.waste) * stage],
      [],
    );
    const names = ['sealed', 'wetted out', 'filled'];
    return {
      title: 'Mixed so far, stage by stage, waste included',
      says: `Sealing takes ${on.say(v.sealing, 'volume')}, wetting out ${on.say(v.wetOut, 'volume')}, filling ${on.say(v.filling, 'volume')}; with waste ${on.say(v.total, 'volume')} in all.`,
      x: { label: 'stage done', kind: 'count', from: 0, to: 3 },
      y: { label: 'mixed so far', kind: 'volume', from: 0 },
      lines: [
        {
          name: 'mixed so far',
          points: [[0, 0], ...ends.map((end, i) => [i + 1, end] as const)],
          as: 'line',
        },
      ],
      points: ends.map((end, i) => ({ x: i + 1, y: end, label: `${names[i]}: ${on.say(end, 'volume')}` })),
      ...(v.inHand > 0 ? { limits: [{ at: v.inHand, axis: 'y' as const, label: 'in the shop' }] } : {}),
    };
  },
});
