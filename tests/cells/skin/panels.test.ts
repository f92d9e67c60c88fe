import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter, starters, type Table } from '../../../src/boat';
import { flatPanel } from '../../../src/boat/hull/flat-panel';
import { farFaces, flat } from '../../../src/cells/skin/panels-facts';
import { openingLine } from '../../../src/cells/skin/panels-opening';
import { panelPatterns } from '../../../src/cells/skin/panels-pattern-drawing';
import { panels } from '../../../src/cells/skin/panels';
import { framePattern } from '../../../src/cells/frames/frame-pattern';
import type { PanelsValues } from '../../../src/cells/skin/panels-steps';
import { isIssue, plainShown, writeInPicture } from '../../../src/measure';
import '../../kernel/near';
import { blankTable } from '../../../src/boat/table/blank-table';
import { askFact } from '../alone';
import { withoutChines, withTwoChines } from '../odd-boats';
import { tryCell } from '../try-cell';

const hullOf = (table: Table) => buildHull(offsetsOf(table));
const dory = starter('ferry-dory')!;
const punt = starter('creek-punt')!;
const vee = starter('vee-launch')!;
const INCH = 0.0254;
const FOOT = 0.3048;
const tables = [...starters.map(({ table }) => table), withoutChines, withTwoChines];

describe.each(tables.map((table) => [table.name, table] as const))('%s', (_, table) => {
  const hull = hullOf(table);

  test.each(hull.panels.map(({ name }) => [name] as const))(
    '%s: sizes, twist, bend and crown are the hull’s',
    (panel) => {
      const tried = tryCell(panels, { panel }, table);
      const { length, width } = flatPanel(hull.panel(panel));
      expect(tried.number('length')).toBeNear(length, 1e-9, 1e-9);
      expect(tried.number('width')).toBeNear(width, 1e-9, 1e-9);
      expect(tried.number('area')).toBeNear(hull.panel(panel).area, 1e-9, 1e-9);
      expect(tried.number('twist')).toBeNear(hull.panel(panel).twist.angle, 1e-9, 1e-9);
      expect(tried.number('twistStrain')).toBeNear(hull.panel(panel).twist.angle ** 2 / 12, 1e-6, 1e-15);
      expect(tried.number('crossed')).toBe(hull.frames.length);
      const crowns = hull.frames.map((station) => ({ name: station.name, off: station.crown(panel) }));
      const most = Math.max(0, ...crowns.map(({ off }) => Math.abs(off)));
      expect(Math.abs(tried.number('crown'))).toBeNear(most, 1e-6, 1e-9);
      // Within a thousandth of a millimetre of the most is rounding.
      const named = crowns.filter(({ off }) => Math.abs(off) > most - 1e-6).map(({ name }) => name);
      expect([...named, 'none']).toContain(tried.all['crownFrame']);
      // Nothing on the panel takes more than the place that is named.
      expect(tried.number('bendShare') + tried.number('twistShare')).toBeNear(tried.number('share'), 1e-12);
      expect(tried.number('hardestAt')).toBeGreaterThanOrEqual(0);
      expect(tried.number('hardestAt')).toBeLessThanOrEqual(length);
    },
  );
});

describe('the side of the dory', () => {
  const tried = tryCell(panels, { panel: 'side', every: '500 mm' });
  const hull = hullOf(dory);

  test('is marked at every half metre, at its corners and at both edges of each frame, from aft forward', () => {
    const at = tried.rows.map(({ value }) => Number(value));
    expect(at).toStrictEqual(at.toSorted((a, b) => a - b));
    const labels = tried.rows.map(({ label }) => label);
    expect(labels.filter((label) => label.startsWith('ordinate'))).toHaveLength(tried.number('ordinates'));
    expect(tried.number('ordinates')).toBe(Math.ceil(tried.number('length') / 0.5) - 1);
    for (const { label } of hull.frames)
      for (const edge of ['chine', 'sheer']) expect(labels).toContain(`${label}, ${edge}`);
    for (const corner of [
      'after corner, chine',
      'after corner, sheer',
      'fore corner, chine',
      'fore corner, sheer',
    ])
      expect(labels).toContain(corner);
    expect(new Set(tried.rows.map(({ id }) => id)).size).toBe(labels.length);
  });

  test('has its frames’ marks where a tape along the sheet’s edge finds them, on the line itself', () => {
    const laid = flatPanel(hull.panel('side'));
    for (const { station, inner, outer } of laid.marks(hull.frames)) {
      const row = (edge: string) => tried.rows.find(({ label }) => label === `${station.label}, ${edge}`)!;
      expect(row('chine').value).toBeNear(inner.at[0], 1e-9);
      expect(Number(tried.inRow(row('chine').id, 'lower'))).toBeNear(inner.at[1], 0, 3e-5);
      expect(row('sheer').value).toBeNear(outer.at[0], 1e-9);
      expect(Number(tried.inRow(row('sheer').id, 'upper'))).toBeNear(outer.at[1], 0, 3e-5);
    }
  });

  test('is sawn proud of its line by the allowance, square to it', () => {
    const one = tryCell(panels, { panel: 'side', place: '2 m', leftOn: '10 mm' });
    const steep = (key: string) => {
      const near = (place: string) => tryCell(panels, { panel: 'side', place }).number(key);
      return (near('2005 mm') - near('1995 mm')) / 0.01;
    };
    expect(one.number('lower') - one.number('lowerCut')).toBeNear(0.01 * Math.hypot(1, steep('lower')), 1e-4);
    expect(one.number('upperCut') - one.number('upper')).toBeNear(0.01 * Math.hypot(1, steep('upper')), 1e-4);
    const none = tryCell(panels, { panel: 'side', place: '2 m', leftOn: '0 mm' });
    expect(none.number('upperCut')).toBe(none.number('upper'));
  });

  test('ends where it ends: an ordinate looked at past its end is its last', () => {
    const past = tryCell(panels, { panel: 'side', place: '9 m' });
    expect(past.number('at')).toBe(past.number('length'));
    expect(past.number('upper')).toBeNear(past.number('lower'), 1e-9, 1e-6);
    expect(past.warnings.map(({ says }) => says).join()).toContain('The panel is only 5569 mm long');
  });

  test('weighs its area times thickness and density, a cut-out taken off', () => {
    const whole = tryCell(panels, { panel: 'side', thickness: '6 mm', plyDensity: '500 kg/m³' });
    expect(whole.number('mass')).toBeNear(whole.number('area') * 0.006 * 500, 1e-12);
    expect(whole.number('openingArea')).toBe(0);
    const hole = { opening: 'hole', openingWide: '200 mm', openingAt: '1.2 m', openingUp: '300 mm' };
    const cut = tryCell(panels, { panel: 'side', thickness: '6 mm', plyDensity: '500 kg/m³', ...hole });
    expect(cut.number('openingArea')).toBeNear(Math.PI * 0.01, 1e-12);
    expect(whole.number('mass') - cut.number('mass')).toBeNear(Math.PI * 0.01 * 3, 1e-9);
  });

  test('says what is done at its edges: sides first, the bottom over them', () => {
    const told = (panel: string, table: Table) => {
      const { all } = tryCell(panels, { panel }, table);
      return [all['lowerEdge'], all['lowerJob'], all['upperEdge'], all['upperJob']];
    };
    expect(told('side', dory)).toStrictEqual([
      'chine',
      'planed to the face of the panel below it',
      'sheer',
      'planed to the top of the clamp',
    ]);
    expect(told('bottom', dory)).toStrictEqual([
      'keel',
      'fitted to its mirror on the centreline',
      'chine',
      'planed flush with the panel above it',
    ]);
    expect(told('bilge', withTwoChines).filter((_, i) => i % 2 === 1)).toStrictEqual([
      'planed to the face of the panel below it',
      'planed flush with the panel above it',
    ]);
  });
});

describe('what the plywood says', () => {
  test('goes by layers: two of half the thickness take the punt’s side where one does not', () => {
    const thick = tryCell(panels, { panel: 'side', thickness: '1/2 in' }, punt);
    expect(thick.all['verdict']).toBe('refuses');
    expect(thick.warnings.map(({ says }) => says).join()).toContain('tighter than any table lets');
    expect(thick.number('takesAlong')).toBeNear(12 * FOOT, 1e-12);
    expect(thick.number('takesAcross')).toBeNear(6 * FOOT, 1e-12);
    const thin = tryCell(panels, { panel: 'side', thickness: '1/2 in', skinLayers: '2' }, punt);
    expect(thin.number('layerThickness')).toBeNear(INCH / 4, 1e-12);
    expect(thin.number('takesAlong')).toBeNear(5 * FOOT, 1e-9);
    expect(thin.number('takesAcross')).toBeNear(2 * FOOT, 1e-9);
    expect(thin.number('pickedAlong')).toBeNear(31 * INCH, 1e-9);
    expect(thin.number('pickedAcross')).toBeNear(20 * INCH, 1e-9);
    expect(thin.number('share')).toBeLessThan(thick.number('share'));
    expect(thin.all['verdict']).not.toBe('refuses');
  });

  test('of the grain the other way is what it says once the grain is turned', () => {
    for (const table of [dory, punt, vee])
      for (const panel of ['bottom', 'side']) {
        const along = tryCell(panels, { panel, grain: 'along' }, table);
        const across = tryCell(panels, { panel, grain: 'across' }, table);
        expect(along.number('otherShare')).toBe(across.number('share'));
        expect(along.all['otherVerdict']).toBe(across.all['verdict']);
        expect(across.number('otherShare')).toBe(along.number('share'));
      }
  });

  test('of a bend square across the panel is its radius against the printed one', () => {
    const tried = tryCell(panels, { panel: 'bottom', thickness: '3/8 in', grain: 'along' }, dory);
    const slant = Math.sin(tried.number('axis')) ** 2;
    const least = Math.max(3 * FOOT, 8 * FOOT * slant);
    expect(tried.number('bendShare')).toBeNear(least / tried.number('bendsTo'), 1e-9);
    expect(tried.number('twistShare')).toBeNear(
      tried.number('share') - tried.number('bendShare'),
      1e-6,
      1e-12,
    );
  });

  test('outside the table it says so', () => {
    const thin = tryCell(panels, { thickness: '5 mm' });
    expect(thin.words).toContain('The table begins at 1/4 in (6.4 mm); a thinner sheet is held to that row.');
    const thick = tryCell(panels, { thickness: '25 mm', panel: 'bottom' });
    expect(thick.all['verdict']).toBe('untabled');
    expect(thick.warnings.map(({ says }) => says).join()).toContain('the tables end at 3/4 in (19 mm)');
    expect(tryCell(panels, { thickness: '1/4 in' }).words).not.toContain('The table begins');
  });

  test('the launch’s bottom does not bend at the forefoot, and the map is solid there alone', () => {
    const tried = tryCell(panels, { panel: 'bottom' }, vee);
    expect(tried.all['verdict']).toBe('refuses');
    expect(tried.number('bendsTo')).toBeNear(hullOf(vee).panel('bottom').leastRadius!.radius, 1e-9);
    const solid = tried.drawing!.shapes.flatMap((shape) =>
      shape.shape === 'area' && shape.fill === 'glue' ? shape.rings[0]! : [],
    );
    expect(Math.min(...solid.map(([x]) => x))).toBeGreaterThan(2500);
  });

  test('straightens its graph at the limit: shares there are those of the answers', () => {
    const tried = tryCell(panels, { panel: 'side' }, punt);
    const most = (line: number) => Math.max(...tried.chart!.lines[line]!.points.map(([, share]) => share));
    expect(most(0)).toBeNear(tried.number('share'), 1e-12);
    expect(most(1)).toBeNear(tried.number('otherShare'), 1e-12);
  });
});

test('the crown is the one that the frame’s pattern speaks of', () => {
  for (const frame of ['frame1', 'frame3', 'frame5']) {
    const off = tryCell(framePattern, { frame, member: 'side' }).number('standsOff');
    expect(Math.abs(off)).toBeLessThanOrEqual(
      Math.abs(tryCell(panels, { panel: 'side' }).number('crown')) + 1e-12,
    );
  }
  const tried = tryCell(panels, { panel: 'side' });
  const frame = tried.all['crownFrame'] as string;
  expect(tryCell(framePattern, { frame, member: 'side' }).number('standsOff')).toBe(tried.number('crown'));
});

describe('a cut-out', () => {
  const hole = { panel: 'side', opening: 'hole', openingWide: '100 mm', openingUp: '300 mm' };

  test('between two frames stands clear of both, over a frame it does not, over the edge it is stopped', () => {
    const marks = flatPanel(hullOf(dory).panel('side')).marks(hullOf(dory).frames);
    const at = (share: number) => {
      const [a, b] = [marks[1]!.inner.at[0], marks[2]!.inner.at[0]];
      return `${1000 * (a + share * (b - a))} mm`;
    };
    const clear = tryCell(panels, { ...hole, openingAt: at(0.5) });
    expect(clear.number('openingFrames')).toBe(0);
    expect(clear.number('openingWood')).toBeGreaterThan(0.1);
    expect(tryCell(panels, { ...hole, openingAt: at(0) }).number('openingFrames')).toBe(1);
    // A hole narrower than the frame, within its thickness alone.
    const tiny = { ...hole, openingWide: '8 mm', siding: '30 mm', stands: 'forward' };
    expect(
      tryCell(panels, { ...tiny, openingAt: `${1000 * marks[1]!.inner.at[0] + 15} mm` }).number(
        'openingFrames',
      ),
    ).toBe(1);
    const over = tryCell(panels, { ...hole, openingAt: at(0.5), openingUp: '20 mm' });
    expect(over.number('openingWood')).toBeLessThan(0);
    expect(over.warnings.map(({ says }) => says)).toContain('The cut-out runs over the edge of the panel.');
    expect(tryCell(panels, { panel: 'side' }).number('openingWood')).toBe(
      tryCell(panels, { panel: 'side' }).number('width'),
    );
  });

  test('as a slot has straight sides and round ends of its width', () => {
    const line = openingLine({
      opening: 'slot',
      openingAt: 1,
      openingUp: 0.3,
      openingLong: 0.5,
      openingWide: 0.1,
    });
    const area = line.reduce((sum, [x, y], i) => {
      const [x2, y2] = line[(i + 1) % line.length]!;
      return sum + (x * y2 - x2 * y) / 2;
    }, 0);
    // 24 sides to each half circle.
    expect(area).toBeNear(0.4 * 0.1 + Math.PI * 0.0025, 2e-3);
    expect(Math.max(...line.map(([x]) => x)) - Math.min(...line.map(([x]) => x))).toBeNear(0.5, 1e-9);
    const slot = { panel: 'side', opening: 'slot', openingLong: '500 mm', openingWide: '100 mm' };
    expect(tryCell(panels, slot).number('openingArea')).toBeNear(0.04 + Math.PI * 0.0025, 1e-12);
  });
});

describe('the full-size patterns', () => {
  const hull = hullOf(dory);
  const { all } = tryCell(panels, { panel: 'side' });
  const values = all as unknown as PanelsValues;
  const drawn = panelPatterns(values, {
    hull,
    say: (value, kind) => writeInPicture(value, kind, plainShown),
    ask: (of) => askFact(of, values, hull),
  });
  const saw = (i: number) =>
    drawn[i]!.shapes.flatMap((shape) =>
      shape.shape === 'line' && shape.layer === 'saw' ? shape.points : [],
    );

  test('are the port panel and its mirror', () => {
    expect(drawn.map(({ title }) => title)).toStrictEqual([
      'Side: port, outside up',
      'Side: starboard, outside up',
    ]);
    const long = 1000 * tryCell(panels, { panel: 'side' }).number('length');
    expect(saw(1)).toHaveLength(saw(0).length);
    saw(0).forEach(([x, y], i) => {
      expect(saw(1)[i]![0]).toBeNear(long - x, 0, 1e-9);
      expect(saw(1)[i]![1]).toBe(y);
    });
  });

  test('have every frame’s two faces, as far apart as it is thick or more', () => {
    const faces = askFact(farFaces, values, hull);
    const laid = askFact(flat, values, hull);
    laid.marks(hull.frames).forEach(({ inner }, i) => {
      const apart = Math.abs(faces[i]![0]![0] - inner.at[0]);
      expect(apart).toBeGreaterThan(0.0189);
      expect(apart).toBeLessThan(0.03);
    });
  });
});

test('nothing is said of a panel that can’t be laid flat but why', () => {
  const broken: Table = {
    ...dory,
    stations: dory.stations.map((station, i) =>
      i === 2 ? { ...station, points: station.points.map((point) => ({ ...point, y: null })) } : station,
    ),
  };
  const tried = tryCell(panels, { panel: 'side' }, broken);
  expect(isIssue(tried.all['length'])).toBe(true);
  expect(Object.values(tried.issues).join()).not.toMatch(/NaN|undefined/);
});

test('a hull that is not there yet has no crown to be weighed, and no warning kept', () => {
  const blank = blankTable({
    name: 'New',
    stations: 7,
    edges: 3,
    unit: 'mm',
    offsetsTo: 'outside of skin',
  });
  const tried = tryCell(panels, { panel: 'side' }, blank);
  expect(tried.issues).toHaveProperty('crown');
  expect(tried.warnings).toStrictEqual([]);
});
