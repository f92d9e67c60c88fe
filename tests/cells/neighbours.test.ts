/**
 * Neighbours: cells that ask the same question of a boat give one answer, on every starter and on the odd boats.
 *
 * A row is a question and who answers it, by names of quantities as the notebook has them. New cells add rows.
 */
import { describe, expect, test } from 'vitest';
import { type Table, type Value, starters } from '../../src/boat';
import { glues } from '../../src/cells/common/glue/glues';
import { isIssue, plainShown } from '../../src/measure';
import { createGraph } from '../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { withOtherNames, withoutChines, withTwoChines } from './odd-boats';

interface Question {
  readonly asks: string;
  /** What is answered to the cells first: `bend.part` as `chineLog`. */
  readonly with?: Readonly<Record<string, string>>;
  /** Two names or more. */
  readonly of: readonly string[];
  /** How near is the same; 1e-9 of the whole where not said. */
  readonly within?: number;
}

const parts = ['keelson', 'sheerClamp', 'rubRail'] as const;

/** Two layers of a part, glued: what the stack says of its one line, and the cells on glue and on clamps of the same. */
function gluedLayers(glue: string, part: string, joint: string, length?: string): readonly Question[] {
  const entries: Record<string, string> = {
    'laminate.part': part,
    'laminate.glue': glue,
    'glue.joint': joint,
    'glue.glue': glue,
    'clamps.joint': joint,
    'clamps.glue': glue,
  };
  if (length !== undefined)
    for (const cell of ['laminate', 'glue', 'clamps']) entries[`${cell}.length`] = length;
  const of = `between layers of the ${part}, of ${glue}`;
  const both = (key: string) => [`laminate.${key}`, `glue.${key}`];
  return [
    { asks: `how large a face is glued ${of}`, of: ['laminate.glueArea', 'glue.area'], with: entries },
    { asks: `how thick a line is ${of}`, of: ['laminate.line', 'glue.film'], with: entries },
    { asks: `how many grams are spread ${of}`, of: both('spread'), with: entries },
    { asks: `what glue to have ${of}`, of: both('volume'), within: 1e-12, with: entries },
    { asks: `what weight of glue to have ${of}`, of: both('glueMass'), with: entries },
    { asks: `what filler to have ${of}`, of: both('filler'), with: entries },
    { asks: `what part does not stay ${of}`, of: both('squeezedOut'), with: entries },
    { asks: `how far apart clamps stand ${of}`, of: ['laminate.clampPitch', 'clamps.pitch'], with: entries },
    { asks: `how many clamps press ${of}`, of: ['laminate.clamps', 'clamps.clamps'], with: entries },
  ];
}

const anyWood = {
  'bend.species': 'whiteAsh',
  'laminate.species': 'whiteAsh',
  'holding.species': 'whiteAsh',
  'batten.species': 'whiteAsh',
};

const questions: readonly Question[] = [
  { asks: 'what her bare wood weighs', of: ['weights.bareWood', 'hull.structureMass'] },
  { asks: 'where its middle lies, forward', of: ['weights.woodForward', 'hull.structureCentre.x'] },
  { asks: 'how high it lies', of: ['weights.woodHeight', 'hull.structureCentre.z'] },
  {
    asks: 'what all aboard weigh',
    of: ['weights.loaded', 'float.mass', 'stability.mass', 'power.laden', 'curves.laden'],
  },
  // A level found to a share of her height, and what floats at it.
  { asks: 'what floats at the level that she floats at', of: ['curves.mass', 'float.mass'], within: 1e-6 },
  {
    asks: 'how stiff she stands upright',
    of: ['stability.metacentricHeight', 'float.stiffness'],
    within: 1e-6,
  },
  { asks: 'what is left of her sides', of: ['stability.freeboard', 'float.leastFreeboard'], within: 1e-6 },
  { asks: 'what boards and joints cost', of: ['buyList.timbersCost', 'boards.cost'] },
  { asks: 'what sheets cost', of: ['buyList.sheetsPlan', 'buyList.sheetsCost', 'sheets.cost'] },
  { asks: 'what epoxy costs', of: ['buyList.epoxyPlan', 'buyList.epoxyCost', 'resin.cost'] },
  { asks: 'what cloth costs', of: ['buyList.clothPlan', 'buyList.clothCost', 'cloth.cost'] },
  { asks: 'what paint costs', of: ['buyList.paintPlan', 'paint.cost'] },
  { asks: 'how many boxes of screws', of: ['buyList.screwsNeed', 'screwCount.boxes'] },
  {
    asks: 'where the middle of all aboard lies, forward',
    of: ['weights.centreForward', 'float.centreForward', 'stability.centreForward'],
  },
  {
    asks: 'how high the middle of all aboard lies',
    of: ['weights.centreHeight', 'float.centreHeight', 'stability.centreHeight', 'curves.centreHeight'],
  },
  {
    asks: 'what the bare hull weighs',
    of: ['weights.hull', 'roll.mass', 'lift.mass', 'capacity.boatWeight'],
  },
  { asks: 'how high the bare hull’s middle lies', of: ['weights.hullHeight', 'roll.centreHeight'] },
  {
    asks: 'how far forward the bare hull’s middle lies',
    of: ['weights.hullForward', 'roll.centreForward', 'flotation.hullForward'],
  },
  { asks: 'what she weighs on the road', of: ['weights.rigged', 'trailer.boat'] },
  { asks: 'where her middle lies on the road', of: ['weights.riggedForward', 'trailer.balance'] },
  {
    asks: 'what one person weighs',
    of: ['weights.person', 'float.mover', 'stability.person', 'flotation.person'],
  },
  { asks: 'how many people are aboard', of: ['weights.people', 'stability.people'] },
  { asks: 'how dense the water is', of: ['lines.density', 'float.density'] },
  {
    asks: 'how stiff a wood is in bending',
    with: anyWood,
    of: [
      'bend.modulus',
      'holding.modulus',
      'laminate.modulus',
      'batten.modulus',
      'timber.whiteAsh.bendingModulus',
    ],
  },
  {
    asks: 'what breaks it',
    with: anyWood,
    of: ['bend.rupture', 'holding.rupture', 'laminate.rupture', 'batten.rupture', 'timber.whiteAsh.rupture'],
  },
  ...parts.flatMap((part): readonly Question[] => [
    {
      asks: `how thick and how wide the ${part} is`,
      with: { 'scarf.part': part, 'bend.part': part, 'holding.part': part, 'laminate.part': part },
      of: [
        'scarf.thickness',
        'bend.thickness',
        'holding.thickness',
        'laminate.thickness',
        `${part}.thickness`,
      ],
    },
    {
      asks: `how wide the ${part} is`,
      with: { 'scarf.part': part, 'bend.part': part, 'holding.part': part, 'laminate.part': part },
      of: ['scarf.width', 'bend.width', 'holding.width', 'laminate.width', `${part}.width`],
    },
    {
      asks: `how hard the whole bend of the edge asks the ${part}`,
      with: { 'bend.part': part, 'holding.part': part },
      of: ['bend.share', 'holding.wholeShare'],
    },
    {
      asks: `of how many pieces a side of the ${part} is laid`,
      with: { 'scarf.part': part, 'joints.part': part },
      of: ['scarf.boards', 'joints.piecesMost'],
    },
    {
      asks: `in boards of what length the ${part} is laid`,
      with: { 'scarf.part': part, 'joints.part': part },
      of: ['scarf.boardLength', 'joints.boardLength', `${part}.boardLength`],
    },
    {
      asks: `how long a taper is in the ${part}`,
      with: { 'scarf.part': part, 'joints.part': part },
      of: ['scarf.taper', 'joints.taper'],
    },
    {
      asks: `what board is bought for the ${part}`,
      with: { 'holding.part': part },
      of: [
        'holding.buys',
        `boards.${{ keelson: 'keelson', sheerClamp: 'clamp', rubRail: 'rail' }[part]}Width`,
      ],
    },
  ]),
  ...['custom', 'aft'].map((side): Question => ({
    asks: `on which side of its line a frame stands, ${side}`,
    with: { 'frame.stands': side },
    of: ['framePattern.stands', 'screwMap.stands'],
  })),
  {
    asks: 'how many scarfs the boat has, when the keelson alone is cut',
    with: {
      'joints.part': 'keelson',
      'boards.logPieces': '0',
      'boards.clampPieces': '0',
      'boards.railPieces': '0',
    },
    of: ['joints.jointsAll', 'boards.joints'],
  },
  {
    asks: 'how many scarfs the boat has, when the sheer clamps alone are cut',
    with: {
      'joints.part': 'sheerClamp',
      'boards.keelsonPieces': '0',
      'boards.logPieces': '0',
      'boards.railPieces': '0',
    },
    of: ['joints.jointsAll', 'boards.joints'],
  },
  ...glues.flatMap(({ id: glue }) => [
    ...gluedLayers(glue, 'keelson', 'keelsonLayers'),
    // The cell on glue counts the clamps of both sides, the stack is one of them.
    ...gluedLayers(glue, 'sheerClamp', 'clampLayers', '3 m'),
  ]),
  {
    asks: 'from when on a bend is easy',
    of: ['joints.easyBend', 'clamps.tightness', 'laminate.tightness'],
  },
  {
    asks: 'how much paste a volume of epoxy makes with wood flour',
    of: ['fillet.pasteYield', 'filler.pasteYield', 'glue.pasteYield'],
  },
  {
    asks: 'how far apart screws stand along long timbers and blocks',
    of: ['fasten.pitch', 'screwCount.pitch', 'butt.pitch', 'clamps.screwPitch'],
  },
  {
    asks: 'how far apart screws stand where the skin lies on a frame',
    with: { 'screwMap.fastened': 'skin' },
    of: ['screwCount.framePitch', 'screwMap.pitch'],
  },
  { asks: 'what one person holds', of: ['bend.holds', 'holding.holds', 'laminate.holds'] },
  { asks: 'what share of breaking is allowed', of: ['bend.allowed', 'holding.allowed', 'laminate.allowed'] },
  { asks: 'at what slope long timbers are scarfed', of: ['scarf.slope', 'joints.slope', 'boards.slope'] },
  {
    asks: 'on which side of their lines the frames stand',
    of: ['joints.stands', 'framePattern.side', 'strongback.side'],
  },
];

/** What is said once, in any of the cells, holds in all: the boat's own number, and who follows it. */
const followed: readonly { readonly says: string; readonly entry: string; readonly by: readonly string[] }[] =
  [
    { says: 'pieces.slope', entry: '12', by: ['scarf.slope', 'joints.slope', 'boards.slope'] },
    {
      says: 'shop.easyFrom',
      entry: '250',
      by: ['joints.easyBend', 'clamps.tightness', 'laminate.tightness'],
    },
    { says: 'shop.onePerson', entry: '200 N', by: ['bend.holds', 'holding.holds', 'laminate.holds'] },
    {
      says: 'shop.screwPitch',
      entry: '60 mm',
      by: ['fasten.pitch', 'screwCount.pitch', 'butt.pitch', 'clamps.screwPitch'],
    },
    { says: 'shop.air', entry: '15 °C', by: ['weather.air', 'moisture.air', 'glue.shop', 'clamps.shop'] },
    {
      says: 'shop.fillerShare',
      entry: '31 %',
      by: ['fillet.fillerShare', 'filler.fillerShare', 'glue.fillerShare'],
    },
    { says: 'sheerClamp.portFirst', entry: '2 m', by: ['joints.portFirst', 'boards.clampPort'] },
    { says: 'sheerClamp.boardLength', entry: '9 ft', by: ['joints.boardLength', 'boards.clampBoard'] },
    { says: 'frame.stands', entry: 'aft', by: ['joints.stands', 'framePattern.side', 'strongback.side'] },
  ];

const boats: readonly Table[] = [
  ...starters.map(({ table }) => table),
  withoutChines,
  withTwoChines,
  withOtherNames,
];

describe.each(boats.map((table) => [table.name, table] as const))('%s', (_, table) => {
  const catalogue = wholeCatalogue(table);
  const answers = (
    of: readonly string[],
    entries: Readonly<Record<string, string>> = {},
  ): readonly Value[] => {
    const graph = createGraph({ catalogue: () => catalogue, entries: () => entries, shown: plainShown });
    return of.map((name) => graph.value(name));
  };

  test.each(questions)('one answer to: $asks', ({ of, with: entries = {}, within = 1e-9 }) => {
    const [first, ...others] = answers(of, entries);
    if (first === undefined || isIssue(first)) throw new Error(`${of[0]}: ${JSON.stringify(first)}`);
    expect(others.length).toBeGreaterThan(0);
    const same = (other: Value | undefined) =>
      typeof first === 'number' && typeof other === 'number'
        ? Math.abs(other - first) <= within * Math.max(1, Math.abs(first))
        : other === first;
    expect(others.filter((other) => !same(other))).toStrictEqual([]);
  });

  test.each(followed)('$says, said once, holds wherever it is asked', ({ says, entry, by }) => {
    const [said, ...others] = answers([says, ...by], { [says]: entry });
    const before = answers([says])[0];
    expect(said).not.toEqual(before);
    for (const other of others) expect(other).toEqual(said);
  });
});
