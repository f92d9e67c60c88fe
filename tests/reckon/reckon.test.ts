/** The command line as a function: what it prints, and what it refuses and how. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat, starter, starters, writeBoatFile } from '../../src/boat';
import { issue } from '../../src/measure';
import { reckon, type Reckoned } from '../../src/reckon/reckon';

const file = writeBoatFile({
  name: 'Shed boat',
  table: demoBoat,
  entries: { 'keelson.thickness': '20 mm', 'scarf.slope': '1 in 12' },
});
const builtFile = writeBoatFile({
  name: 'Shed boat',
  table: demoBoat,
  entries: { 'keelson.thickness': '20 mm' },
  asBuilt: {
    measured: { 'keelson.thickness': '17 mm' },
    cut: { side: { held: { 'side.thickness': '5 mm' }, numbers: { 'side.mass': 12 } } },
  },
});
const files: Readonly<Record<string, string>> = {
  'built.json': builtFile,
  'measured-amiss.json': builtFile.replace('17 mm', '17 furlong'),
  'shed boat.json': file,
  'own/ferry': file,
  'cut-short.json': file.slice(0, 300),
  'scarf for a chine.json': writeBoatFile({
    name: 'Shed boat',
    table: { ...demoBoat, edges: demoBoat.edges.map((edge, at) => (at === 1 ? 'scarf' : edge)) },
    entries: {},
  }),
  'odd.json': file.replace('"outside of skin"', '"the skin"').replace('"battenbook boat"', '"a boat"'),
};
const run = (...args: string[]): Reckoned =>
  reckon(args, (path) => files[path] ?? issue('there is no such file'));

type Values = Readonly<Record<string, { readonly value: number | string; readonly unit: string }>>;
/** What is printed, where nothing is refused. */
function printed(...args: string[]): Values {
  const { out, err, code } = run(...args);
  expect({ err, code }).toStrictEqual({ err: '', code: 0 });
  return JSON.parse(out) as Values;
}
function refused(...args: string[]): string {
  const { out, err, code } = run(...args);
  expect({ out, code }).toStrictEqual({ out: '', code: 2 });
  expect(err).toMatch(/^(\S.*\n)+$/);
  expect(err).not.toMatch(/NaN|Infinity|undefined|\[object/);
  return err;
}
/** The number under one name of the ferry dory, in the unit that `per` is of. */
const dory = (name: string, per: number, ...set: string[]) =>
  (printed('ferry-dory', name, ...set.flatMap((entry) => ['--set', entry]))[name]!.value as number) / per;
const MM = 1e-3;

describe('what is printed', () => {
  test('is a member for each name, in SI', () => {
    expect(run('ferry-dory', 'scarf.taper').out).toBe(
      '{\n  "scarf.taper": {\n    "value": 0.144,\n    "unit": "m"\n  }\n}\n',
    );
    expect(printed('ferry-dory', 'scarf.slope', 'scarf.taper', 'hull.frames')).toStrictEqual({
      'scarf.slope': { value: 8, unit: '1' },
      'scarf.taper': { value: 0.144, unit: 'm' },
      'hull.frames': { value: 5, unit: '1' },
    });
  });

  test('is the id of a choice, without a unit', () => {
    expect(printed('ferry-dory', 'keelson.timber')).toStrictEqual({
      'keelson.timber': { value: 'douglasFirCoast', unit: '' },
    });
  });

  test('stands once for a name asked twice', () => {
    expect(Object.keys(printed('ferry-dory', 'scarf.taper', 'scarf.taper'))).toStrictEqual(['scarf.taper']);
  });

  test('follows from the boat that is named', () => {
    const of = (boat: string) => printed(boat, 'hull.length')['hull.length']!.value;
    expect(new Set(starters.map(({ id }) => of(id))).size).toBeGreaterThan(3);
    // The two tables of the dory differ at one place inside the boat.
    expect(of('ferry-dory')).toBe(of('ferry-dory-misread'));
  });
});

// Closed forms on the presets of the dory: 18 x 90 mm keelson, boards of 8 ft, 1 in 8; limber and drill 12 mm.
test.each([
  ['scarf.taper', MM, 144],
  ['scarf.glueFace', MM, 18 * Math.sqrt(65)],
  ['limber.slotWidth', MM, 90 + 2 * 12],
  ['limber.holeFromCentre', MM, 45 + 12 - 6],
  ['limber.holeAboveBottom', MM, 18 - 6],
  ['limber.cutDepth', MM, 18],
  ['laminate.springBack', 1, 1 / 4],
] as const)('%s of the ferry dory follows from its presets', (name, unit, expected) => {
  expect(dory(name, unit)).toBeCloseTo(expected, 9);
});

test('hull.length and hull.beam of the ferry dory are those of its table', () => {
  const points = demoBoat.stations.flatMap((station) => station.points);
  const xs = points.map(({ x }) => x!);
  expect(dory('hull.length', MM)).toBeCloseTo(Math.max(...xs) - Math.min(...xs), 6);
  // Between stations the batten bellies out by a hundredth or so, never in.
  const widest = 2 * Math.max(...points.map(({ y }) => y!));
  expect(dory('hull.beam', MM)).toBeGreaterThanOrEqual(widest - 1e-6);
  expect(dory('hull.beam', MM)).toBeLessThan(widest * 1.02);
});

/** Names that scripts may count on, with their units. */
const promised = {
  m: [
    'hull.length hull.beam hull.depth',
    'scarf.thickness scarf.taper scarf.glueFace scarf.joinedLength scarf.lost',
    'limber.keelsonWidth limber.keelsonThickness limber.limberWidth limber.holeDiameter',
    'limber.holeFromCentre limber.holeAboveBottom limber.slotWidth limber.cutDepth',
    'bend.radius bend.leastRadius',
  ],
  m2: ['bottom.area side.area'],
  m3: ['resin.total resin.resin resin.hardener'],
  '1': ['scarf.slope bend.strain bend.share laminate.springBack'],
  Pa: ['bend.stress'],
  N: ['laminate.force'],
} as const;

describe.each(starters.map(({ id }) => id))('%s', (id) => {
  const edges = starter(id)!.edges.map((edge) => `${edge}.length`);
  const wanted = Object.entries(promised).flatMap(([unit, lists]) =>
    [...lists.flatMap((list) => list.split(' ')), ...(unit === 'm' ? edges : [])].map(
      (name) => [name, unit] as const,
    ),
  );

  test('has every promised quantity, above zero and in its unit', () => {
    const values = printed(id, ...wanted.map(([name]) => name));
    expect(Object.keys(values)).toHaveLength(wanted.length);
    const amiss = wanted.filter(([name, unit]) => {
      const { value, unit: given } = values[name]!;
      // A boat that one board reaches loses nothing to scarfs.
      const least = name === 'scarf.lost' ? 0 : Number.MIN_VALUE;
      return !(given === unit && typeof value === 'number' && value >= least && value < Infinity);
    });
    expect(amiss).toStrictEqual([]);
  });

  test('has numbers that hang together', () => {
    const values = printed(
      id,
      'resin.total',
      'resin.resin',
      'resin.hardener',
      'bend.stress',
      'bend.share',
      'bend.rupture',
      'hull.length',
      'sheer.length',
    );
    const of = (name: string) => values[name]!.value as number;
    expect(of('resin.resin') + of('resin.hardener')).toBeCloseTo(of('resin.total'), 12);
    expect(of('bend.stress') / of('bend.rupture')).toBeCloseTo(of('bend.share'), 12);
    expect(of('sheer.length')).toBeGreaterThan(0.9 * of('hull.length'));
  });
});

describe('--set', () => {
  test('writes an entry over the preset', () => {
    expect(dory('scarf.taper', MM, 'scarf.thickness=20 mm')).toBeCloseTo(160, 9);
    expect(dory('scarf.taper', MM, 'scarf.slope=1 in 10')).toBeCloseTo(180, 9);
    expect(dory('scarf.taper', MM, 'scarf.slope=10')).toBeCloseTo(180, 9);
  });

  test('takes every notation of the trade, and a bare number in mm', () => {
    const notations = ['19.05', '19.05 mm', '3/4 in', '3/4"', '0-0-6', '1/2 in + 1/4 in', '0.01905 m'];
    const tapers = notations.map((entry) => dory('scarf.taper', MM, `scarf.thickness=${entry}`));
    expect(tapers).toStrictEqual(notations.map(() => expect.closeTo(152.4, 9) as number));
  });

  test('takes a link, and moves all that follows', () => {
    expect(dory('scarf.taper', MM, 'scarf.thickness=2 * side.thickness', 'side.thickness=8 mm')).toBeCloseTo(
      128,
      9,
    );
    expect(dory('limber.cutDepth', MM, 'keelson.thickness=25 mm')).toBeCloseTo(25, 9);
    expect(dory('hull.length', 1, 'frame3.sheer.halfBreadth=900 mm')).toBe(dory('hull.length', 1));
    expect(dory('side.area', 1, 'frame3.sheer.halfBreadth=900 mm')).not.toBe(dory('side.area', 1));
  });

  test('takes a choice', () => {
    const values = printed(
      'ferry-dory',
      'keelson.timber',
      'keelson.mass',
      '--set',
      'keelson.timber=sitkaSpruce',
    );
    expect(values['keelson.timber']!.value).toBe('sitkaSpruce');
    expect(values['keelson.mass']!.value).toBeLessThan(dory('keelson.mass', 1));
  });

  test('may stand before, between and after the names, in either spelling', () => {
    for (const args of [
      ['--set', 'scarf.slope=10', 'ferry-dory', 'scarf.taper'],
      ['ferry-dory', '--set=scarf.slope=10', 'scarf.taper'],
      ['ferry-dory', 'scarf.taper', '--set', ' scarf.slope = 10 '],
    ])
      expect(printed(...args)['scarf.taper']!.value).toBeCloseTo(0.18, 12);
  });
});

describe('a boat file', () => {
  const withEntries = (entries: Record<string, string>) =>
    reckon(['own.json', 'hull.length'], () => writeBoatFile({ name: 'Own', table: demoBoat, entries }));
  test.each([
    [undefined, '8'],
    ['second', '12'],
  ] as const)('with two versions answers for the one in hand: %s', (inHand, slope) => {
    const two = {
      name: 'Own',
      table: demoBoat,
      entries: { 'scarf.slope': '8' },
      second: { 'scarf.slope': '12' },
    };
    const { out } = reckon(['own.json', 'scarf.slope'], () =>
      writeBoatFile({ ...two, ...(inHand && { inHand }) }),
    );
    expect(out).toMatch(new RegExp(`\\b${slope}\\b`));
  });

  test.each([
    [{ 'scarf.slop': '8' }, /^there is no quantity "scarf.slop"; nearest: scarf.slope/],
    [{ 'scarf.thickness': '3 kg' }, /is a length; "3 kg" is a mass/],
    [{ 'scarf.taper': '100 mm' }, /^scarf.taper follows from others and can't be set/],
  ])('is refused for the entries %j', (entries, says) => {
    const { out, err, code } = withEntries(entries);
    expect([out, code]).toStrictEqual(['', 2]);
    expect(err).toMatch(says);
  });
  test('may hold entries of a notebook’s own cells, which bear on nothing here', () => {
    expect(withEntries({ 'quickScarf.thickness': '20 mm' }).code).toBe(0);
  });

  test('stands in the place of a starter, with its entries', () => {
    expect(printed('shed boat.json', 'scarf.taper')['scarf.taper']!.value).toBeCloseTo(0.24, 12);
    expect(printed('own/ferry', 'scarf.taper')['scarf.taper']!.value).toBeCloseTo(0.24, 12);
  });

  test('is written over by --set', () => {
    expect(
      printed('shed boat.json', 'scarf.taper', '--set', 'scarf.slope=8')['scarf.taper']!.value,
    ).toBeCloseTo(0.16, 12);
  });

  test('with an edge called as a cell is has no hull, and says so', () => {
    expect(refused('scarf for a chine.json', 'hull.length')).toContain(
      'the edge "scarf" has a name that the notebook needs for something else; give it another',
    );
  });

  test('that is not there, or is none, is told by its path', () => {
    expect(refused('none.json', 'scarf.taper')).toBe(
      'the boat file "none.json" can\'t be read: there is no such file\n',
    );
    expect(refused('cut-short.json', 'scarf.taper')).toMatch(/^the boat file "cut-short.json": .*not JSON/);
    const faults = refused('odd.json', 'scarf.taper');
    expect(faults).toContain('must be "battenbook boat"');
    expect(faults).toContain('must be "outside of skin" or "inside of skin"');
  });
});

describe('what is refused', () => {
  test.each([
    [['ferry-dory', 'scarf.tapr'], 'there is no quantity "scarf.tapr"; nearest: scarf.taper'],
    [['ferry-dory', 'qqqqqqqqqqqq'], 'there is no quantity "qqqqqqqqqqqq"\n'],
    [['ferry-dory', '__proto__'], 'there is no quantity "__proto__"'],
    [['ferry-dory', 'scarf.taper', '--set', '__proto__=1 mm'], 'there is no quantity "__proto__"'],
    [
      ['ferry-dory', 'scarf.taper', '--set', 'scarf.thicknes=1 mm'],
      'there is no quantity "scarf.thicknes"; nearest: scarf.thickness',
    ],
    [
      ['ferry-dory', 'scarf.taper', '--set', 'scarf.thickness=3 kg'],
      'thickness is a length; "3 kg" is a mass\n',
    ],
    [
      ['ferry-dory', 'scarf.taper', '--set', 'scarf.thickness=keelson.timber'],
      'thickness: timber of the keelson is a choice',
    ],
    [['ferry-dory', 'scarf.taper', '--set', 'scarf.thickness=1 km'], 'thickness must be at most 300 mm\n'],
    [['ferry-dory', 'scarf.taper', '--set', 'scarf.thickness=1 mm / 0'], 'thickness divides by zero\n'],
    [['ferry-dory', 'scarf.taper', '--set', 'scarf.thickness=wood'], 'there is no quantity "wood"'],
    [['ferry-dory', 'scarf.taper', '--set', 'scarf.thickness=((('], 'thickness'],
    [['ferry-dory', 'scarf.taper', '--set', 'scarf.boards=2.5'], 'not a whole number'],
    [['ferry-dory', 'scarf.taper', '--set', 'keelson.timber=bamboo'], 'timber of the keelson is one of '],
    [
      ['ferry-dory', 'scarf.taper', '--set', 'scarf.taper=100 mm'],
      "scarf.taper follows from others and can't be set\n",
    ],
    [
      ['ferry-dory', 'scarf.taper', '--set', 'scarf.thickness=scarf.taper'],
      'goes round in a circle: scarf.thickness -> scarf.taper -> scarf.thickness\n',
    ],
    [['ferry-dory', 'scarf.taper', '--set', 'scarf.slope'], "write --set NAME='ENTRY'"],
    [['ferry-dory', 'scarf.taper', '--set', '=10'], "write --set NAME='ENTRY'"],
    [['ferry-dory', 'scarf.taper', '--set', 'scarf.slope='], 'scarf.slope is set to nothing'],
    [['ferry-dory', 'scarf.taper', '--set'], '--set has nothing after it'],
    [
      ['ferry-dory', 'scarf.taper', '--set', 'scarf.slope=8', '--set', 'scarf.slope=9'],
      'scarf.slope is set twice',
    ],
    [['ferry-dory', 'scarf.taper', '--fast'], 'there is no option "--fast"'],
    [['ferry-dory', 'scarf.taper', '-s'], 'there is no option "-s"'],
    [[], 'name a boat, then the quantities to reckon'],
    [['ferry-dory'], 'name the quantities to reckon after "ferry-dory"'],
    [
      ['ferry-dori', 'scarf.taper'],
      'there is no starter boat "ferry-dori"; the nearest is ferry-dory; the starters are ferry-dory, ferry-dory-misread, class-skiff, creek-punt, vee-launch',
    ],
    [['galleon', 'scarf.taper'], 'there is no starter boat "galleon"; the starters are ferry-dory,'],
  ])('%j', (args, sentence) => {
    expect(refused(...args)).toContain(sentence);
  });

  test('all faults are told at once, each once', () => {
    const told = refused(
      'ferry-dory',
      'scarf.tapr',
      'scarf.tapr',
      'scarf.lost',
      '--set',
      'scarf.taper=1 m',
      '--set',
      'scarf.slope=x.y',
    );
    expect(told.trimEnd().split('\n')).toHaveLength(3);
  });

  test('a quantity without a value says what it waits for', () => {
    const wide = writeBoatFile({ name: 'Wide', table: demoBoat, entries: { 'keelson.thickness': '500 mm' } });
    const { out, err, code } = reckon(
      ['wide.json', 'scarf.taper', 'side.area', 'keelson.thickness'],
      () => wide,
    );
    expect({ out, code }).toStrictEqual({ out: '', code: 2 });
    const why = 'thickness of the keelson must be at most 300 mm\n';
    expect(err).toBe(
      `${why}scarf.taper waits for keelson.thickness: ${why}keelson.thickness has no value: ${why}`,
    );
  });

  test('an entry that no name asked depends on is refused all the same', () => {
    expect(refused('ferry-dory', 'hull.length', '--set', 'scarf.thickness=3 kg')).toContain('is a mass');
  });

  test('an entry is not blamed for the fault of what it links to', () => {
    const wide = writeBoatFile({ name: 'Wide', table: demoBoat, entries: { 'keelson.thickness': '500 mm' } });
    const link = ['--set', 'side.thickness=keelson.thickness / 2'];
    const ask = (...args: string[]) => reckon(['wide.json', ...args], () => wide);
    const why = 'thickness of the keelson must be at most 300 mm\n';
    expect(ask('hull.length', ...link).err).toBe(why);
    expect(ask('side.mass', ...link).err).toBe(`${why}side.mass waits for keelson.thickness: ${why}`);
  });

  test('whatever is asked, it is JSON or sentences, never both', () => {
    const word = fc.oneof(
      fc.string(),
      fc.constantFrom(
        'ferry-dory',
        '--set',
        'scarf.taper',
        'hull.length',
        '--help=x',
        '--',
        'scarf.slope=9',
        '-',
      ),
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 6 }), (args) => {
        const { out, err, code } = run(...args);
        expect(code === 0).toBe(err === '');
        expect(code === 0).toBe(out !== '');
        expect(err).not.toMatch(/NaN|Infinity|undefined|\[object/);
      }),
      { seed: 5, numRuns: 400 },
    );
  });
});

test('--help says how, whatever else is asked', () => {
  for (const args of [['--help'], ['-h'], ['ferry-dory', '--help', '--set']]) {
    const { out, err, code } = run(...args);
    expect({ err, code }).toStrictEqual({ err: '', code: 0 });
    expect(out).toContain("BOAT NAME... [--set NAME='ENTRY']...");
  }
});

describe('a boat that is measured and cut', () => {
  test('is reckoned as it is built', () => {
    const { 'scarf.taper': taper, 'side.thickness': side } = printed(
      'built.json',
      'scarf.taper',
      'side.thickness',
    );
    expect(taper?.value).toBeCloseTo(8 * 0.017, 12);
    expect(side?.value).toBe(0.005);
  });

  test('is not moved by an entry, and says so', () => {
    expect(refused('built.json', 'scarf.taper', '--set', 'keelson.thickness=30 mm')).toBe(
      "keelson.thickness is measured or cut (17 mm), so --set can't move it\n",
    );
    expect(refused('built.json', 'scarf.taper', '--set', 'side.thickness=30 mm')).toMatch(/cut \(5 mm\)/);
    expect(printed('built.json', 'scarf.taper', '--set', 'scarf.slope=10')['scarf.taper']?.value).toBeCloseTo(
      0.17,
      12,
    );
  });

  test('with a measurement that can’t be read is refused with a sentence', () => {
    expect(refused('measured-amiss.json', 'hull.length')).toMatch(/furlong/);
  });
});

describe('formulas of the builder’s own', () => {
  const set = (lines: string) => ['--set', `mine.lines=${lines}`];
  test('are written on the command line, and asked for by their names', () => {
    const {
      'mine.half': half,
      'mine.long': long,
      'hull.length': length,
    } = printed(
      'ferry-dory',
      'mine.half',
      'mine.long',
      'hull.length',
      ...set('half = hull.length / 2 | half of her\nlong = half > 2 m'),
    );
    expect(half).toStrictEqual({ value: (length!.value as number) / 2, unit: 'm' });
    expect(long).toStrictEqual({ value: 'yes', unit: '' });
  });
  test('stand in the notebooks of a boat’s file, with what is written in place of their lines', () => {
    const own = writeBoatFile({
      name: 'Shed boat',
      table: demoBoat,
      entries: { 'day.lines': 'b = 2 * 3 kg', 'mine.lines': 'c = day.b / 2' },
      notebooks: {
        day: {
          text: '```formula day\na = 1 mm\n```\n\n```formula night\nheavy = day.b + 1 kg\n```\n',
          away: false,
        },
        past: { text: '```formula past\na = 1 mm\n```\n', away: true },
      },
    });
    const asked = (...names: string[]) => reckon(['own.json', ...names], () => own);
    expect(JSON.parse(asked('mine.c', 'night.heavy').out)).toStrictEqual({
      'mine.c': { value: 3, unit: 'kg' },
      'night.heavy': { value: 7, unit: 'kg' },
    });
    expect(asked('past.a').err).toMatch(/^there is no quantity "past\.a"/);
  });
  test.each([
    ['a = hull.length + 2 kg', /^mine\.a has no value: can't add a mass to a length/],
    ['a = 1 +', /^mine\.a has no value: nothing stands after "\+"/],
    ['a = b\nb = a', /^mine\.a has no value: goes round in a circle: mine\.a -> mine\.b -> mine\.a/],
    ['b = 2', /^there is no quantity "mine\.a"/],
  ])('that come to nothing are refused in words: %j', (lines, says) => {
    expect(reckon(['ferry-dory', 'mine.a', ...set(lines)], () => '').err).toMatch(says);
  });
});
