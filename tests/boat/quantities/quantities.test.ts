import { describe, expect, test } from 'vitest';
import {
  boatQuantities,
  isUnread,
  lists,
  readTable,
  starter,
  starters,
  type Table,
  writeTable,
} from '../../../src/boat';
import { isIssue, plainShown, read } from '../../../src/measure';
import { dihedral, lengthTo } from '../../../src/kernel';
import { deriveBoat } from '../derive';
import { degrees } from '../shapes';

const dory = starter('ferry-dory')!;
const named = (table: Table) => {
  const { given, derived } = boatQuantities(table);
  return [...given, ...derived];
};

describe.each(starters.map(({ id, table }) => [id, table] as const))('%s', (_, table) => {
  test('every quantity has a value and none an issue', () => {
    const boat = deriveBoat(table);
    const issues = boat.names.flatMap((name) => {
      const value = boat.value(name);
      return isIssue(value)
        ? [`${name}: ${value.issue}`]
        : typeof value === 'number' && !Number.isFinite(value)
          ? [name]
          : [];
    });
    expect(issues).toStrictEqual([]);
  });

  test('names are dotted camelCase and stand once; meanings are noun phrases', () => {
    const names = named(table).map(({ name }) => name);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toStrictEqual([]);
    for (const { name, meaning } of named(table)) {
      expect(name).toMatch(/^[a-z][A-Za-z0-9]+(\.[A-Za-z0-9]+)+$/);
      expect(meaning).toMatch(/[^.\s]$/);
    }
  });

  test('presets, limits and steps read, and presets lie within the limits', () => {
    const boat = deriveBoat(table);
    for (const entry of boatQuantities(table).given.filter(({ kind }) => kind !== 'choice')) {
      const preset = boat.number(entry.name);
      const [min, max, step] = [entry.min!, entry.max!, entry.step!].map((text) => {
        const reading = read(text, { kind: entry.kind, shown: plainShown, field: entry.name });
        const value = isIssue(reading) ? NaN : reading.evaluate(() => NaN);
        return isIssue(value) ? NaN : value;
      });
      expect(preset).toBeGreaterThanOrEqual(min!);
      expect(preset).toBeLessThanOrEqual(max!);
      expect(step).toBeGreaterThan(0);
    }
  });

  test('choices offer their preset', () => {
    for (const entry of boatQuantities(table).given.filter(({ kind }) => kind === 'choice')) {
      expect(entry.options!.map(({ id }) => id)).toContain(entry.preset);
    }
  });

  test('the bare hull weighs what its parts weigh, about their common middle', () => {
    const boat = deriveBoat(table);
    const parts = boat.names.filter((name) => /^\w+\.mass$/.test(name)).map((name) => name.split('.')[0]!);
    const mass = parts.reduce((sum, part) => sum + boat.number(`${part}.mass`), 0);
    expect(boat.number('hull.structureMass')).toBeCloseTo(mass, 9);
    const moment = parts.reduce(
      (sum, part) => sum + boat.number(`${part}.mass`) * boat.number(`${part}.centre.x`),
      0,
    );
    expect(boat.number('hull.structureCentre.x')).toBeCloseTo(moment / mass, 9);
    // A plywood boat of 3 to 5.5 m: tens of kilograms, its middle near amidships and within its depth.
    expect(mass).toBeGreaterThan(25);
    expect(mass).toBeLessThan(200);
    expect(boat.number('hull.structureCentre.x') / boat.number('hull.length')).toBeGreaterThan(0.38);
    expect(boat.number('hull.structureCentre.x') / boat.number('hull.length')).toBeLessThan(0.55);
  });

  test('lists name what quantities there are', () => {
    const all = new Set(named(table).map(({ name }) => name));
    const { edges, chines, panels, frames, stations } = lists(table);
    for (const { id } of edges) expect(all).toContain(`${id}.length`);
    for (const { id } of chines) expect(all).toContain(`${id}.meanAngle`);
    for (const { id } of panels) expect(all).toContain(`${id}.area`);
    for (const { id } of stations) expect(all).toContain(`${id}.position`);
    for (const { id } of frames) expect(all).toContain(`${id}.side.crown`);
    expect(frames).toHaveLength(stations.length - 2);
  });
});

describe('the ferry dory, by tape and table', () => {
  const boat = deriveBoat(dory);

  test('offsets are entries with the plan’s numbers', () => {
    const entries = new Map(boatQuantities(dory).given.map((entry) => [entry.name, entry]));
    expect(entries.get('frame3.sheer.halfBreadth')).toMatchObject({
      preset: '865 mm',
      kind: 'length',
    });
    expect(entries.get('transom.sheer.x')!.preset).toBe('-160 mm');
    expect(entries.get('stem.sheer.height')!.preset).toBe('980 mm');
    expect(entries.get('keelson.timber')!.options!.length).toBeGreaterThan(20);
  });

  test('length, depth, spacing, frames', () => {
    expect(boat.number('hull.length')).toBeCloseTo(5.36, 12);
    expect(boat.number('hull.depth')).toBeCloseTo(0.55, 12);
    expect(boat.number('hull.widestAt')).toBeCloseTo(2.4, 12);
    expect(boat.number('hull.frames')).toBe(5);
    expect(boat.number('hull.longestBay')).toBeCloseTo(0.8, 12);
    expect(boat.number('hull.frameSpacing')).toBeCloseTo(4.75 / 6, 12);
    expect(boat.number('frame2.spacing')).toBeCloseTo(0.8, 12);
    expect(boat.number('frame5.spacing')).toBeCloseTo(0.75, 12);
    expect(boat.number('frame2.position')).toBeCloseTo(1.6, 12);
  });

  test('flare by the tangent of the table’s own numbers', () => {
    expect(boat.number('frame3.side.flare')).toBeCloseTo(Math.atan2(300, 550), 12);
    expect(boat.number('frame3.side.deadrise')).toBeCloseTo(Math.PI / 2 - Math.atan2(300, 550), 12);
    expect(boat.number('frame3.bottom.deadrise')).toBeCloseTo(0, 12);
    expect(boat.number('frame3.side.girth')).toBeCloseTo(Math.hypot(0.3, 0.55), 12);
  });

  test('transom: rake, height up the slope, width', () => {
    const rake = Math.atan2(160, 560);
    expect(boat.number('transom.rake')).toBeCloseTo(rake, 12);
    expect(boat.number('transom.height')).toBeCloseTo(Math.hypot(0.16, 0.56), 12);
    expect(boat.number('transom.width')).toBeCloseTo(1, 12);
    expect(boat.number('transom.area')).toBeCloseTo(0.8 * Math.hypot(0.16, 0.56), 12);
    expect(boat.number('transom.warp')).toBeLessThan(1e-12);
  });

  test('areas of skin and surface: both sides of each panel, and the one transom', () => {
    const skin = 2 * (boat.number('bottom.area') + boat.number('side.area'));
    expect(boat.number('hull.skinArea')).toBeCloseTo(skin, 12);
    expect(boat.number('hull.surfaceArea')).toBeCloseTo(skin + boat.number('transom.area'), 12);
  });

  test('stem: rake and length from its two ends', () => {
    expect(boat.number('stem.rake')).toBeCloseTo(Math.atan2(450, 620), 12);
    expect(boat.number('stem.length')).toBeCloseTo(Math.hypot(0.45, 0.62), 12);
  });

  test('chine angle is a right angle and the flare, near amidships', () => {
    const expected = 90 + degrees(boat.number('frame2.side.flare'));
    expect(Math.abs(degrees(boat.number('frame2.chine.angle')) - expected)).toBeLessThan(0.5);
    const mean = degrees(boat.number('chine.meanAngle'));
    expect(mean).toBeGreaterThan(113);
    expect(mean).toBeLessThan(119.5);
  });

  test('mean chine angle of the vee launch, by a fine walk along the skin', () => {
    const launch = deriveBoat(starter('vee-launch')!);
    const [bottom, side] = launch.hull().panels;
    const { batten, length } = launch.hull().edge('chine');
    const end = batten.knots.at(-1)!;
    const places = 500;
    let turned = 0;
    for (let k = 0; k < places; k++) {
      const t = ((k + 0.5) * end) / places;
      const inside = dihedral(bottom!.normalOn(bottom!.outer, t), side!.normalOn(side!.inner, t));
      turned += inside * (lengthTo(batten, ((k + 1) * end) / places) - lengthTo(batten, (k * end) / places));
    }
    // The quantity goes by its eight stations.
    expect(Math.abs(degrees(launch.number('chine.meanAngle') - turned / length))).toBeLessThan(1);
  });

  test('lengths along an edge end at its length', () => {
    expect(boat.number('transom.chine.along')).toBe(0);
    expect(boat.number('stem.chine.along')).toBe(boat.number('chine.length'));
  });

  test('the side takes its bend by the table of plywood, across and along the grain', () => {
    // Thinner than the table's first row, 1/4 in: that row's 2 and 5 ft are held and no row is scaled to it.
    expect(boat.number('side.bendLimitAcross')).toBeCloseTo(0.6096, 6);
    expect(boat.number('side.bendLimitAlong')).toBeCloseTo(1.524, 6);
    expect(deriveBoat(dory, { 'side.thickness': '25 mm' }).value('side.bendLimitAcross')).toMatchObject({
      issue: 'the published radii end at 3/4 in (19 mm), and the side is thicker',
    });
  });
});

describe('parts follow the hull and the scantlings', () => {
  const boat = deriveBoat(dory);

  test('long timbers have the length of their edge', () => {
    expect(boat.number('keelson.length')).toBe(boat.number('keel.length'));
    expect(boat.number('chineLog.length')).toBe(boat.number('chine.length'));
    expect(boat.number('chineLog.totalLength')).toBeCloseTo(2 * boat.number('chine.length'), 12);
    expect(boat.number('sheerClamp.pieces')).toBe(2);
    expect(boat.number('rubRail.length')).toBe(boat.number('sheer.length'));
  });

  test('mass is length, section and density', () => {
    const fir = 0.48 * 1.12 * 1000;
    expect(boat.number('keelson.mass')).toBeCloseTo(boat.number('keel.length') * 0.018 * 0.09 * fir, 9);
    expect(boat.number('bottom.mass')).toBeCloseTo(2 * boat.number('bottom.area') * 0.009 * 540, 9);
    expect(boat.number('transom.mass')).toBeCloseTo(boat.number('transom.area') * 0.018 * 540, 9);
  });

  test('twice the thickness, twice the mass, and the shape stays', () => {
    const thick = deriveBoat(dory, { 'bottom.thickness': '18 mm', 'bottom.plywood': 'okoume' });
    expect(thick.number('bottom.mass')).toBeCloseTo((boat.number('bottom.mass') * 2 * 450) / 540, 9);
    expect(thick.number('bottom.area')).toBe(boat.number('bottom.area'));
    expect(thick.number('hull.length')).toBe(boat.number('hull.length'));
  });

  test('frames: a member across the flat bottom and one up each side', () => {
    const girths = ['frame1', 'frame2', 'frame3', 'frame4', 'frame5'].map(
      (frame) => 2 * (boat.number(`${frame}.bottom.girth`) + boat.number(`${frame}.side.girth`)),
    );
    expect(boat.number('frame.pieces')).toBe(15);
    expect(boat.number('frame.totalLength')).toBeCloseTo(
      girths.reduce((sum, girth) => sum + girth, 0),
      12,
    );
    expect(boat.number('frame.length')).toBeCloseTo(2 * 0.565, 12);
    // A vee bottom has a member on each side.
    expect(deriveBoat(starter('vee-launch')!).number('frame.pieces')).toBe(6 * 4);
  });

  test('thwarts span the widest frame at their height', () => {
    const half = 0.565 + (0.3 * 180) / 550;
    expect(boat.number('thwart.length')).toBeCloseTo(2 * half, 12);
    expect(boat.number('thwart.pieces')).toBe(2);
    expect(boat.number('thwart.centre.z')).toBeCloseTo(0.085 + 0.18, 12);
    expect(deriveBoat(dory, { 'thwart.height': '0.9 m' }).value('thwart.length')).toMatchObject({
      issue: 'the thwarts lie above the sheer at frame 3',
    });
  });

  test('gussets: two faces of each corner', () => {
    expect(boat.number('gusset.pieces')).toBe(20);
    expect(boat.number('gusset.area')).toBeCloseTo(0.15 ** 2 / 2, 12);
  });

  test('a part the boat lacks has no quantities', () => {
    const punt = new Set(named(starter('creek-punt')!).map(({ name }) => name));
    expect(punt.has('stem.length')).toBe(false);
    expect(punt.has('stem.siding')).toBe(false);
    expect(punt.has('bowTransom.area')).toBe(true);
    expect(punt.has('bowTransom.rake')).toBe(true);
    expect(new Set(named(dory).map(({ name }) => name)).has('bowTransom.area')).toBe(false);
  });

  test('the punt’s bow transom rakes forward out of the boat', () => {
    const boat = deriveBoat(starter('creek-punt')!);
    expect(boat.number('bowTransom.rake')).toBeCloseTo(Math.atan2(160, 275), 12);
    expect(boat.number('transom.rake')).toBeCloseTo(Math.atan2(120, 310), 12);
    expect(boat.number('bowTransom.mass')).toBeCloseTo(boat.number('bowTransom.area') * 0.018 * 540, 9);
  });
});

describe('what is written moves what follows', () => {
  test('one offset', () => {
    const wider = deriveBoat(dory, { 'frame3.sheer.halfBreadth': '900 mm' });
    const boat = deriveBoat(dory);
    expect(wider.number('frame3.side.flare')).toBeGreaterThan(boat.number('frame3.side.flare'));
    expect(wider.number('sheer.length')).not.toBe(boat.number('sheer.length'));
    expect(wider.number('keel.length')).toBe(boat.number('keel.length'));
  });

  test('a fault spoils what hangs on it and no more', () => {
    const boat = deriveBoat(dory, { 'frame3.sheer.height': '50 mm' });
    const why = 'frame 3: the sheer lies lower than the chine; from the keel outward each edge is higher';
    const spoilt = ['sheer.length', 'side.area', 'hull.volume', 'rubRail.length', 'frame3.sheer.planSlope'];
    expect(spoilt.map((name) => boat.value(name))).toStrictEqual(spoilt.map(() => ({ issue: why })));
    const standing = [
      'keel.length',
      'chine.leastRadius',
      'bottom.area',
      'keelson.mass',
      'timber.teak.density',
    ];
    expect(standing.filter((name) => typeof boat.value(name) !== 'number')).toStrictEqual([]);
  });

  test('a straight edge says that it has no bend', () => {
    const straight = Object.fromEntries(
      dory.stations.map(({ name }) => [`${name.replace(' ', '')}.keel.height`, '100 mm']),
    );
    const boat = deriveBoat(dory, {
      ...straight,
      'stem.keel.height': '100 mm',
      'stem.chine.height': '100 mm',
    });
    expect(boat.value('keel.leastRadius')).toMatchObject({
      issue: 'the keel is straight, so it has no tightest bend',
    });
  });
});

describe('tables of other kinds', () => {
  test('inches keep their numbers and step by an eighth', () => {
    const json = { ...writeTable(dory), unit: 'in' };
    const table = readTable(json);
    if (isUnread(table)) throw new Error(table.faults.join());
    const entry = boatQuantities(table).given.find(({ name }) => name === 'frame3.sheer.halfBreadth')!;
    expect(entry).toMatchObject({ preset: '865 in', step: '1/8 in' });
  });

  test('very small and long numbers are written without an exponent', () => {
    const table: Table = {
      ...dory,
      stations: dory.stations.map((station, s) =>
        s === 1
          ? {
              ...station,
              points: station.points.map((p, e) => (e === 2 ? { ...p, y: 1e-7, z: 668.123456789 } : p)),
            }
          : station,
      ),
    };
    const presets = new Map(boatQuantities(table).given.map(({ name, preset }) => [name, preset]));
    expect(presets.get('frame1.sheer.halfBreadth')).toMatch(/^0\.0000001\d* mm$/);
    expect(presets.get('frame1.sheer.height')).toBe('668.123456789 mm');
  });

  test('a number as large as none can be is kept whole, so that it is refused for what it is', () => {
    for (const y of [1e21, 1e30, 123e40]) {
      const table: Table = {
        ...dory,
        stations: dory.stations.map((station, s) =>
          s === 1
            ? { ...station, points: station.points.map((p, e) => (e === 2 ? { ...p, y } : p)) }
            : station,
        ),
      };
      const entry = boatQuantities(table).given.find(({ name }) => name === 'frame1.sheer.halfBreadth')!;
      expect(Number(entry.preset.replace(' mm', ''))).toBe(y);
      expect(entry.preset).not.toContain('e');
    }
  });

  test('a missing number is an empty entry, and the hull waits for it', () => {
    const table: Table = {
      ...dory,
      stations: dory.stations.map((station, s) =>
        s === 1
          ? { ...station, points: station.points.map((p, e) => (e === 2 ? { ...p, y: null } : p)) }
          : station,
      ),
    };
    const { given } = boatQuantities(table);
    expect(given.find(({ name }) => name === 'frame1.sheer.halfBreadth')!.preset).toBe('');
  });

  test('names that can not be told apart are offered once', () => {
    const table: Table = {
      ...dory,
      stations: dory.stations.map((station, s) => (s === 2 ? { ...station, name: 'Frame-1' } : station)),
    };
    const names = named(table).map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  test('four edges: chines, bilge, and quantities of each', () => {
    const table = readTable({
      name: 'Two chines',
      unit: 'm',
      offsetsTo: 'outside of skin',
      edges: ['keel', 'lower chine', 'upper chine', 'sheer'],
      stations: [0, 1, 2, 3].map((x) => ({
        name: `${x}`,
        keel: { x, y: 0, z: 0 },
        'lower chine': { x, y: 0.4, z: 0.05 },
        'upper chine': { x, y: 0.6, z: 0.2 },
        sheer: { x, y: 0.7, z: 0.6 },
      })),
    });
    if (isUnread(table)) throw new Error(table.faults.join());
    const boat = deriveBoat(table);
    expect(lists(table).chines).toStrictEqual([
      { id: 'lowerChine', label: 'lower chine' },
      { id: 'upperChine', label: 'upper chine' },
    ]);
    expect(lists(table).panels.map(({ id }) => id)).toStrictEqual(['bottom', 'bilge', 'side']);
    expect(boat.number('bilge.area')).toBeCloseTo(3 * Math.hypot(0.2, 0.15), 9);
    expect(boat.number('bilge.thickness')).toBe(0.009);
    expect(boat.number('chineLog.pieces')).toBe(4);
    const [bottom, bilge, side] = [Math.atan2(0.05, 0.4), Math.atan2(0.15, 0.2), Math.atan2(0.4, 0.1)];
    expect(boat.number('station1.lowerChine.angle')).toBeCloseTo(Math.PI - (bilge - bottom), 9);
    expect(boat.number('station1.upperChine.angle')).toBeCloseTo(Math.PI - (side - bilge), 9);
    expect(boat.number('station1.lowerChine.below.deadrise')).toBeCloseTo(bottom, 9);
    expect(boat.number('station1.lowerChine.above.flare')).toBeCloseTo(Math.PI / 2 - bilge, 9);
    expect(boat.number('station2.upperChine.bilge.bevel')).toBeCloseTo(0, 9);
  });
});
