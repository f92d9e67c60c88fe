import { describe, expect, test } from 'vitest';
import { buildHull, lists, offsetsOf, starter, starters, type Table } from '../../../src/boat';
import { chineLogNotch, sheerClampNotch } from '../../../src/boat/joinery/frame-notches';
import { frameOutline } from '../../../src/boat/joinery/frame-outline';
import { notch } from '../../../src/cells/frames/notch';
import { cross, dot, norm, scale, add, type Vec3 } from '../../../src/kernel';
import { plainShown, type Shown, write } from '../../../src/measure';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { mannerOf, plainInstance } from '../../../src/cells';
import { deriveBoat } from '../../boat/derive';
import { withoutChines, withTwoChines } from '../odd-boats';
import { provesItsDrawing, spans, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const degrees = (radians: number) => (radians * 180) / Math.PI;
const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '' };
/** Plumb sides, level and parallel lines, a timber 19 by 38 mm without play. */
const plain = {
  thickness: '19 mm',
  width: '38 mm',
  siding: '19 mm',
  moulded: '90 mm',
  fit: '0 mm',
  flare: '0 deg',
  deadrise: '0 deg',
  chinePlan: '0',
  chineProfile: '0',
  sheerFlare: '0 deg',
  sheerPlan: '0',
  sheerProfile: '0',
};
const tried = (entries: Record<string, string> = {}) => tryCell(notch, { ...plain, ...entries });
const says = (entries: Record<string, string>) => tried(entries).warnings.map((one) => one.says);

describe('notch', () => {
  test('where nothing slopes it is the timber itself, on both faces', () => {
    const flat = tried();
    for (const key of ['nearDepth', 'farDepth', 'bladeHeight', 'foot'])
      expect([key, flat.number(key)]).toStrictEqual([key, expect.closeTo(0.019, 12)]);
    expect(flat.number('along')).toBeCloseTo(0.038, 12);
    expect(flat.number('mitre')).toBe(0);
    expect(flat.number('tilt')).toBe(0);
    expect(flat.words).toContain('19 mm deep on the face on the station line and 19 mm on the other');
  });

  test('under a bevel of 20 deg 19 mm take 20.219 mm, and 6.915 mm more on the face that is planed', () => {
    const bevelled = tried({ chinePlan: 'tan(20 deg)' });
    expect(degrees(bevelled.number('bevel'))).toBeCloseTo(20, 9);
    expect(bevelled.number('nearDepth') * 1000).toBeCloseTo(20.219, 3);
    expect((bevelled.number('farDepth') - bevelled.number('nearDepth')) * 1000).toBeCloseTo(6.915, 3);
    expect(bevelled.number('along')).toBeCloseTo(0.038, 12);
  });

  test('on a plumb side an upsweep of 10 deg lengthens the notch by 1 / cos, and turns the gauge by 10 deg', () => {
    const climbing = tried({ timber: 'sheerClamp', sheerProfile: 'tan(10 deg)' });
    expect(climbing.number('along') * 1000).toBeCloseTo(38 / Math.cos(Math.PI / 18), 9);
    expect(degrees(climbing.number('mitre'))).toBeCloseTo(10, 9);
    expect(climbing.number('tilt')).toBe(0);
  });

  test('the foot of a log’s notch lies where its inner face meets the bottom', () => {
    const corner = tried({ flare: '25 deg', deadrise: '15 deg' });
    expect(corner.number('foot')).toBeCloseTo(0.019 / Math.sin((130 * Math.PI) / 180), 12);
    expect(tried({ timber: 'sheerClamp' }).number('foot')).toBe(0);
  });

  test('a clamp below the sheer begins and ends that much lower; a log has no such distance', () => {
    const lower = tried({ timber: 'sheerClamp', setBack: '20 mm' });
    expect(lower.number('startsAt')).toBeCloseTo(0.02, 12);
    expect(lower.number('endsAt')).toBeCloseTo(0.058, 12);
    expect(lower.number('keepFrom')).toBeCloseTo(0.0075, 12);
    expect(lower.number('keepTo')).toBeCloseTo(0.0705, 12);
    expect(tried({ setBack: '20 mm' }).number('startsAt')).toBe(0);
  });

  test('a timber left proud is let in that much less', () => {
    expect(tried({ proud: '1/16 in' }).number('nearDepth')).toBeCloseTo(0.019 - 0.0254 / 16, 12);
  });

  test('passes reach from mark to mark, with no land wider than asked', () => {
    for (const land of ['1/16 in', '1/8 in', '3/16 in', '1/4 in']) {
      const sawn = tried({ land });
      const [n, kerf, left] = [sawn.number('passes'), sawn.number('kerf'), sawn.number('landLeft')];
      expect(n * kerf + (n - 1) * left).toBeCloseTo(sawn.number('along'), 12);
      expect(left).toBeLessThanOrEqual(sawn.number('land') + 1e-9);
      // One pass fewer would leave wider lands.
      expect((sawn.number('along') - (n - 1) * kerf) / (n - 2)).toBeGreaterThan(sawn.number('land'));
      expect(sawn.number('chiselled')).toBeCloseTo((n - 1) * left, 12);
    }
  });

  test('a kerf wider than the notch takes one pass and leaves nothing', () => {
    const wide = tried({ width: '10 mm', kerf: '1 in' });
    expect(wide.number('passes')).toBe(1);
    expect(wide.number('landLeft')).toBe(0);
    expect(wide.number('chiselled')).toBe(0);
  });
});

describe('the saw', () => {
  /** Forward, along the member, and square out of the edge that lies on the table. */
  type Axes = readonly [fore: Vec3, along: Vec3, up: Vec3];
  /** The plane in which a blade cuts: turned by the gauge, tilted off plumb to either side. */
  function bladeNormal([fore, along, up]: Axes, mitre: number, tilt: number): Vec3 {
    const trace = add(scale(fore, Math.cos(mitre)), scale(along, Math.sin(mitre)));
    const side = add(scale(fore, -Math.sin(mitre)), scale(along, Math.cos(mitre)));
    return cross(trace, add(scale(up, Math.cos(tilt)), scale(side, Math.sin(tilt))));
  }
  const cases = [
    { flare: 20, plan: 0.3, profile: 0.2 },
    { flare: 35, plan: -0.4, profile: 0.25 },
    { flare: 0, plan: 0.2, profile: -0.3 },
    { flare: -15, plan: -0.1, profile: 0.5 },
  ];

  test.each(cases)(
    'set by the cell cuts along the timber and square to the skin: flare $flare, $plan, $profile',
    ({ flare, plan, profile }) => {
      const a = (flare * Math.PI) / 180;
      const run: Vec3 = [1, plan, profile];
      const edge: Vec3 = [0, Math.sin(a), Math.cos(a)];
      const square: Vec3 = [0, Math.cos(a), -Math.sin(a)];
      const skin = cross(run, edge);
      const unit = (v: Vec3) => scale(v, 1 / norm(v));
      const axes = {
        square: [[1, 0, 0], edge, square],
        planed: [unit(cross(edge, skin)), edge, unit(skin)],
      } as const satisfies Record<string, Axes>;
      for (const sawn of ['square', 'planed'] as const) {
        const cell = tried({
          sawn,
          flare: `${flare} deg`,
          chinePlan: String(plan),
          chineProfile: String(profile),
        });
        const [fore, along, up] = axes[sawn];
        const forward: Vec3 = fore[0] < 0 ? scale(fore, -1) : fore;
        const misses = [1, -1].map((way) => {
          const normal = bladeNormal([forward, along, up], cell.number('mitre'), way * cell.number('tilt'));
          return Math.max(Math.abs(dot(normal, unit(run))), Math.abs(dot(normal, unit(skin))));
        });
        expect(Math.min(...misses)).toBeLessThan(1e-12);
      }
    },
  );

  test('on the bevelled edge stands as high as the timber is thick, on the square one as deep as the nearer face', () => {
    const bevelled = { chinePlan: '0.4' };
    expect(tried({ ...bevelled, sawn: 'planed' }).number('bladeHeight')).toBeCloseTo(0.019, 12);
    expect(tried(bevelled).number('bladeHeight')).toBe(tried(bevelled).number('nearDepth'));
    expect(tried({ ...bevelled, sawn: 'planed' }).words).toContain('With the bevelled edge on the table');
  });
});

const boats: readonly (readonly [string, Table])[] = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines],
];

describe.each(boats)('on %s', (_, table) => {
  const hull = buildHull(offsetsOf(table));
  const boat = deriveBoat(table);

  test('every frame’s notches are those of its pattern, found from the planes of the skin', () => {
    const { frames, chines } = lists(table);
    const stick = (part: string) => ({
      thickness: boat.number(`${part}.thickness`),
      width: boat.number(`${part}.width`),
    });
    const skin = Object.fromEntries(hull.panels.map(({ name }) => [name, boat.number(`${name}.thickness`)]));
    const stock = { siding: 0.019, moulded: 0.07, joint: 'mitre', beyond: 0.025, skin } as const;
    const drawn = frames.map(({ id }) => frameOutline(hull, id, { ...stock, stands: 'forward' }));
    const compare = (
      cell: ReturnType<typeof tryCell>,
      found: readonly { depth: number; along: number }[],
    ) => {
      for (const [i, { id }] of frames.entries()) {
        expect(cell.number(`${id}.nearDepth`)).toBeCloseTo(found[i]!.depth, 9);
        expect(cell.number(`${id}.along`)).toBeCloseTo(found[i]!.along, 9);
      }
    };
    for (const { id: chine } of chines) {
      const logs = drawn.map((frame) => chineLogNotch(hull, frame, hull.edge(chine), stick('chineLog')));
      compare(tryCell(notch, { chine, fit: '0 mm' }, table), logs);
    }
    const clamps = drawn.map((frame) => sheerClampNotch(hull, frame, stick('sheerClamp'), 0.025));
    compare(tryCell(notch, { timber: 'sheerClamp', fit: '0 mm' }, table), clamps);
  });

  test('is drawn for both timbers at every frame', () => {
    for (const { id: frame } of lists(table).frames) {
      for (const timber of ['chineLog', 'sheerClamp']) {
        const cell = tryCell(notch, { frame, timber }, table);
        expect(cell.issues).toStrictEqual({});
        provesItsDrawing(cell.drawing);
      }
    }
  });

  test('brings the boxes kept free of screws as quantities of the boat', () => {
    const [frame] = lists(table).frames;
    const names = catalogueOf(table, [plainInstance(notch)]).names();
    expect(names).toContain(`${frame!.id}.sheer.notch.keepOut.lower`);
    expect(names).toContain(`${frame!.id}.keel.limber.keepOut.outboard`);
    expect(catalogueOf(table, []).names()).not.toContain(`${frame!.id}.sheer.notch.keepOut.lower`);
  });
});

test('a boat without a chine has a clamp to notch for', () => {
  const cell = tryCell(notch, { timber: 'sheerClamp' }, withoutChines);
  expect(cell.issues).toStrictEqual({});
  expect(cell.drawing).toBeDefined();
  expect(cell.number('nearDepth')).toBeGreaterThanOrEqual(0.019);
  expect(tryCell(notch, {}, withoutChines).words).toMatch(/no chine, so no log .* sheer clamp/);
});

test('follows the scantlings, and the other timber takes its own', () => {
  const boat = { 'sheerClamp.thickness': '25 mm', 'chineLog.thickness': '21 mm', 'frame.siding': '30 mm' };
  expect(tryCell(notch, boat).number('thickness')).toBeCloseTo(0.021, 12);
  expect(tryCell(notch, { ...boat, timber: 'sheerClamp' }).number('thickness')).toBeCloseTo(0.025, 12);
  expect(tryCell(notch, boat).number('siding')).toBeCloseTo(0.03, 12);
  expect(tryCell(notch, { 'frame.screwClearance': '20 mm' }).number('screwClear')).toBeCloseTo(0.02, 12);
});

describe('warnings', () => {
  test('none for a shallow notch in a deep member', () => {
    expect(says({})).toStrictEqual([]);
  });
  test.each([
    ['nothing let in', { thickness: '10 mm', proud: '10 mm' }, 'nothing to let in'],
    ['right through', { moulded: '20 mm', chinePlan: '0.2' }, 'right through'],
    ['over half', { moulded: '30 mm' }, 'leaves 13.4 % of the strength'],
    ['over a third', { moulded: '50 mm' }, 'take a deeper member'],
    ['clamp over a quarter', { timber: 'sheerClamp', moulded: '70 mm' }, 'where no gusset backs it'],
    ['wide lands', { land: '1/2 in' }, 'do not snap off'],
    ['kerf too wide', { width: '10 mm', kerf: '1/2 in' }, 'wider than the notch'],
    ['slantwise', { chinePlan: '1.2', moulded: '200 mm' }, 'by hand to marks'],
    ['screws near', { screwClear: '5 mm' }, 'set a little over meets them'],
  ])('%s', (_what, entries, wanted) => {
    expect(says(entries).join(' ')).toContain(wanted);
  });
});

describe('drawing', () => {
  testDrawings(notch, {
    'as it stands': {},
    clamp: { timber: 'sheerClamp' },
    'clamp below the sheer': { timber: 'sheerClamp', setBack: '60 mm' },
    'steep vee': { deadrise: '40 deg', flare: '10 deg' },
    tumblehome: { flare: '-30 deg', deadrise: '5 deg' },
    'cut through': { thickness: '80 mm' },
    'strong bevel': { chinePlan: '1.5' },
  });

  test('its dimensions read as the figures and span them', () => {
    const cell = tryCell(
      notch,
      { ...plain, chinePlan: '0.25', frame: 'frame2' },
      starter('ferry-dory')!,
      feet,
    );
    const text = (key: string) => write(cell.number(key), 'length', feet, mannerOf(notch, key)).told;
    for (const key of ['nearDepth', 'farDepth', 'along', 'keepTo', 'keepDepth'])
      expect(spans(cell.drawing, text(key)).map((span) => span.toFixed(6))).toContain(
        (cell.number(key) * 1000).toFixed(6),
      );
  });

  test('the dashed line stands the clearance off the notch, and says what it is', () => {
    const cell = tried({ timber: 'sheerClamp' });
    const { shapes, says: told } = provesItsDrawing(cell.drawing);
    const dashed = shapes.find(({ layer }) => layer === 'keep screws out');
    if (dashed?.shape !== 'line') throw new Error('no dashed line');
    // The clamp’s notch: 38 mm down a plumb edge from the origin, 19 mm in.
    const [xs, ys] = [dashed.points.map(([x]) => x), dashed.points.map(([, y]) => y)];
    expect(Math.min(...xs)).toBeCloseTo(-19 - 12.5, 9);
    expect(Math.min(...ys)).toBeCloseTo(-38 - 12.5, 9);
    expect(Math.max(...ys)).toBeCloseTo(12.5, 9);
    expect(told).toContain(write(cell.number('keepTo'), 'length', plainShown).text);
  });
});
