/** Resin for sealing and sheathing: how much of each part, by stage, and which packs to buy. */
import { resinFunctions, resinSteps, NIEDERER } from './resin-steps';
import { drawing, mm, note } from '../../drawing';
import { counted, sheathing } from './sheathing-drawing';
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { resinInputs } from './resin-inputs';
import { drawReach } from './reach-drawing';
import { reach } from './resin-reach';

const STOCK = 'the stock in hand';

export const resin = defineCell({
  id: 'resin',
  stage: 'finish',
  title: 'Resin and hardener',
  question:
    'How much resin and hardener do I need, stage by stage, and how far does the stock in the shop go?',
  inputs: resinInputs,
  functions: resinFunctions,
  groups: {
    'The faces': ['bottomArea', 'bilgeArea', 'sideArea', 'transomArea', 'bowArea', 'flatArea'],
    'The cloth': ['laps', 'layup', 'glassShare'],
    'The coats': ['fillCoats', 'fillFilm', 'sealCoats', 'uptake', 'laterCoat', 'waste'],
    'Glue and pastes': ['glueEpoxy', 'layersArea', 'filletEpoxy', 'fillerEpoxy', 'stage'],
    'Resin and hardener': ['basis', 'resinParts', 'hardenerParts', 'resinDensity', 'hardenerDensity'],
    'As the shop sells it': [
      'margin',
      'smallPack',
      'smallPrice',
      'middlePack',
      'middlePrice',
      'largePack',
      'largePrice',
    ],
  },
  alone: ['flatArea', 'sideLayers'],
  steps: resinSteps,
  answers: [
    { of: 'total', label: 'mixed, in all', from: 'resin and hardener together, waste included' },
    { of: 'resin', label: 'resin', from: 'by volume, to be measured apart from the hardener' },
    { of: 'hardener', label: 'hardener', from: 'by volume, to be measured apart from the resin' },
  ],
  inWords: [
    {
      when: 'bottomBoth + bilgeArea + sideArea > 0',
      says: 'For both sides of the boat mix',
      otherwise: 'Mix',
    },
    '{total} in all, {resin} of resin and {hardener} of hardener, or on a scale {hardenerPer100} of hardener to 100 of resin: {sealing} to seal, {wetOut} to wet out {clothArea} of cloth, {filling} to fill the weave, and {waste} on top',
    {
      when: 'pastes > 0 L',
      says: '; glue, fillets and filler take {pastes} of it.',
      otherwise: '.',
    },
    {
      when: 'spread > 0 L',
      says: 'Rules like these scatter: it may take as little as {least} or as much as {most}. Have {wanted} on the shelf.',
    },
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
  table: tableOf({
    caption: 'Stage by stage, in the order of the work, waste included',
    over: 'stage',
    only: 'stageVolume',
    columns: [
      { of: 'stageArea', label: 'area', where: 'stageArea' },
      { of: 'stageRule', label: 'on each, without waste', where: 'stageArea' },
      { of: 'stageVolume', label: 'mixed' },
      { of: 'stageMass', label: 'by weight' },
      { of: 'stageResin', label: 'resin' },
      { of: 'stageHardener', label: 'hardener' },
    ],
  }),
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
      when: 'inHand > 0 L and inHand < pastes',
      says: 'The {inHand} in the shop run out in glue lines, fillets and filler: buy {toBuy} more.',
      limit: STOCK,
      weight: 'mind',
    },
    {
      when: 'inHand > 0 L and inHand >= pastes and inHand < sealEnds',
      says: 'The {inHand} in the shop run out while you are sealing: buy {toBuy} more.',
      limit: STOCK,
      weight: 'mind',
    },
    {
      when: 'inHand > 0 L and inHand >= sealEnds and inHand < wetEnds',
      says: [
        'The {inHand} in the shop run out while you are wetting out the cloth, when {wets} of {clothArea} are wet',
        {
          when: 'stops > 0',
          says: ': in piece {stops}, {stopsIn}, after {stopsAfter} of it.',
          otherwise: '.',
        },
        'That is the worst place: buy {toBuy} before you begin.',
      ],
      limit: STOCK,
      weight: 'stop',
    },
    {
      when: 'inHand >= wetEnds and inHand > 0 L and inHand < total',
      says: 'The {inHand} in the shop run out while you are filling the weave, after {fillsCoats} of {fillCoats} coats: buy {toBuy} more.',
      limit: STOCK,
      weight: 'mind',
    },
    {
      when: 'inHand > 0 L and inHand >= total and inHand < most',
      says: 'The {inHand} in the shop are enough by the rules, but rules scatter, and it may come to {most}: keep {toBuy} more at hand.',
      limit: 'the scatter of the rules',
      weight: 'mind',
    },
  ],
  cautions: [
    'Resin, hardener and thinners can sensitise for life, and most of all when wet. Nitrile gloves, changed often, sleeves and eye protection; never solvent on the skin: wipe it off, then soap and water. Stop at the first rash.',
    'The label and the data sheet of the can in hand outrank every figure here. Never alter the ratio to hasten or slow the cure.',
    'A potful left standing heats itself and can smoke and burn: mix what you can spread, pour it out at once into a wide tray, and carry a hot pot outdoors. Leftovers cure in thin layers before they go in the bin.',
    'Sand cured glass and epoxy only with a P100 or FFP3 mask and dust extraction; within the first days it is not cured through and its dust sensitises too.',
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
    const reached = v.inHand > 0 && on.hull ? on.ask(reach) : null;
    if (reached && on.hull) return drawReach(on.hull, reached, v, on.say);
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
        note('At the thickest place, laps apart.'),
        on.hull ? note('Type what is in the shop, and see on the hull how far it goes.') : [],
      ],
    });
  },
  chart: (v, on) => {
    const done = (
      [
        ['glued', v.glueEpoxy / v.mixDensity + v.layerGlue],
        ['filleted', v.filletEpoxy / v.mixDensity],
        ['holes filled', v.fillerEpoxy / v.mixDensity],
        ['sealed', (1 + v.waste) * v.sealing],
        ['wetted out', (1 + v.waste) * v.wetOut],
        ['weave filled', (1 + v.waste) * v.filling],
      ] as const
    ).filter(([, volume]) => volume > 0);
    const ends = done.map((_, i) => done.slice(0, i + 1).reduce((sum, [, volume]) => sum + volume, 0));
    return {
      title: 'Mixed so far, stage by stage, waste included',
      says: `Sealing takes ${on.say(v.sealing, 'volume')}, wetting out ${on.say(v.wetOut, 'volume')}, filling the weave ${on.say(v.filling, 'volume')}; with glue, fillets, filler and waste ${on.say(v.total, 'volume')} in all.`,
      x: { label: 'stages done', kind: 'count', from: 0, to: Math.max(1, done.length) },
      y: { label: 'mixed so far', kind: 'volume', from: 0 },
      lines: [
        {
          name: 'mixed so far',
          points: [[0, 0], ...ends.map((end, i) => [i + 1, end] as const)],
          as: 'line',
        },
      ],
      points: done.map(([name], i) => ({
        x: i + 1,
        y: ends[i] ?? 0,
        label: `${name}: ${on.say(ends[i] ?? 0, 'volume')}`,
      })),
      ...(v.inHand > 0 ? { limits: [{ at: v.inHand, axis: 'y' as const, label: 'in the shop' }] } : {}),
    };
  },
});
