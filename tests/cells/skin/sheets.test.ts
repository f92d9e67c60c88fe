/** What is cut from sheets: typed parts by hand, the skin of every starter, what a search finds. */
import { difference, type Geom, union } from 'polyclip-ts';
import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter, starters, type Table } from '../../../src/boat';
import { panelPieces } from '../../../src/boat/joinery/panel-pieces';
import type { SheetsAnswer, SheetsProblem } from '../../../src/boat/joinery/sheet-sections';
import { outlineArea } from '../../../src/kernel/outline';
import { panels } from '../../../src/cells/skin/panels';
import { sheets } from '../../../src/cells/skin/sheets';
import { asked, best, problem, shop } from '../../../src/cells/skin/sheets-facts';
import type { Values } from '../../../src/cells';
import { faultsOfNest } from '../../../src/kernel/nest';
import { searchSheets } from '../../../src/search/sheets';
import { isIssue } from '../../../src/measure';
import { scopeAlone } from '../alone';
import { noted } from '../proofs';
import { tryCell } from '../try-cell';

/** Parts alone, from sheets of 2440 by 1220 mm and nothing trimmed. */
const parts = {
  skinSides: '0',
  transoms: '0',
  gussets: '0',
  edge: '0 mm',
  outside: '0 mm',
  kerf: '3 mm',
  price: '60',
  priced: '9 mm',
  partThickness: '6 mm',
};
const strips = { ...parts, partAPieces: '9', partALength: '1219 mm', partAWidth: '635 mm' };

describe('parts that are typed', () => {
  test('three strips come off a sheet that is sawn across', () => {
    const cell = tryCell(sheets, { ...strips, partGrain: 'across' });
    expect(cell.number('count')).toBe(3);
    expect(cell.number('shopCount')).toBe(3);
    expect(cell.number('joints')).toBe(0);
    expect(cell.number('places')).toBe(0);
    expect(cell.number('pieces')).toBe(9);
    expect(cell.number('sheetsMarked')).toBe(3);
    expect(cell.number('ofSecond')).toBe(0);
    // 6 mm of what is 60 at 9 mm.
    expect(cell.number('cost')).toBeCloseTo(120, 9);
    expect(cell.number('leastCost')).toBeCloseTo(120, 9);
    expect(cell.all['proved']).toBe('yes');
    expect(cell.number('needed')).toBeCloseTo(9 * 1.219 * 0.635, 9);
    expect(cell.number('bought')).toBeCloseTo(3 * 2.44 * 1.22, 9);
    expect(cell.number('waste')).toBeCloseTo(1 - (9 * 1.219 * 0.635) / (3 * 2.44 * 1.22), 9);
    // Three strips and three kerfs from the end on.
    expect(cell.number('offcut')).toBeCloseTo((2.44 - 3 * 0.638) * 1.22, 9);
    expect(cell.inRow('cut5', 'onSheet')).toBe(2);
    expect(cell.inRow('cut5', 'name')).toBe('part 1, 5 of 9');
    expect(cell.inRow('cut5', 'fromEnd')).toBeCloseTo(0.638, 9);
    expect(cell.inRow('cut5', 'fromEdge')).toBe(0);
    expect(cell.inRow('cut5', 'long')).toBeCloseTo(0.635, 9);
    expect(cell.inRow('cut5', 'wide')).toBeCloseTo(1.219, 9);
    expect(cell.inRow('cut5', 'thick')).toBeCloseTo(0.006, 9);
    expect(cell.inRow('cut5', 'lies')).toBe('across');
  });

  test('the map tells of the sheet in hand with four pieces at most, and of all by their thickness', () => {
    const says = (entries: Record<string, string>) => {
      const drawn = tryCell(sheets, { ...parts, ...entries }).drawing!;
      return [noted(drawn), drawn.says].map((text) => text.replace(/^.*other face\. /, ''));
    };
    expect(says({ ...strips, partGrain: 'across' })).toStrictEqual([
      '1, part 1, 1 of 9; 2, part 1, 2 of 9; 3, part 1, 3 of 9.',
      'It is 6 mm thick. In all: 3 of 6 mm.',
    ]);
    // Twenty squares of 200 mm come off one sheet.
    const squares = { partAPieces: '20', partALength: '200 mm', partAWidth: '200 mm' };
    expect(says(squares)).toStrictEqual([
      '1, part 1, 1 of 20; 2, part 1, 2 of 20; 3, part 1, 3 of 20; 4, part 1, 4 of 20; and 16 more.',
      'It is 6 mm thick. In all: 1 of 6 mm.',
    ]);
  });

  test('and one where the grain is to run along them; two where the kerf leaves room', () => {
    // 1219 + 3 + 1219 is more than 2440.
    expect(tryCell(sheets, { ...strips, partGrain: 'along' }).number('count')).toBe(9);
    const cell = tryCell(sheets, { ...strips, partGrain: 'along', kerf: '1 mm' });
    expect(cell.number('count')).toBe(5);
    expect(cell.inRow('cut2', 'fromEnd')).toBeCloseTo(1.22, 9);
    expect(cell.inRow('cut2', 'lies')).toBe('along');
  });

  test('of a second size as many as are cheaper', () => {
    const second = { partAPieces: '10', otherLength: '3050 mm', otherWidth: '1220 mm', partGrain: 'across' };
    const dear = tryCell(sheets, { ...strips, ...second, otherPrice: '100' });
    expect(dear.number('ofSecond')).toBe(0);
    // Four strips from each of two, and two from one of the first size.
    const cheap = tryCell(sheets, { ...strips, ...second, otherPrice: '70' });
    expect(cheap.number('count')).toBe(3);
    expect(cheap.number('ofSecond')).toBe(2);
    expect(cheap.number('cost')).toBeCloseTo((200 * 6) / 9, 9);
  });

  test('what fits no sheet is said by name', () => {
    const cell = tryCell(sheets, { ...strips, partGrain: 'across', partALength: '1300 mm' });
    expect(cell.issues['count']).toMatch(/no sheet that is sold holds “part 1, 1 of 9” the way it may lie/);
  });

  test('a transom is built of layers of the skin’s own plywood where they make up its thickness', () => {
    const skin = { bottomThickness: '9 mm', sideThickness: '6 mm' };
    const layers = (transomThickness: string, more: Record<string, string> = {}) =>
      tryCell(sheets, { transomThickness, ...skin, ...more }).number('usualLayers');
    expect(layers('18 mm')).toBe(2);
    expect(layers('12 mm')).toBe(2);
    expect(layers('18 mm', { bottomThickness: '12 mm' })).toBe(3);
    expect(layers('19 mm')).toBe(1);
    // Two of 9 mm come off the bottom's sheets; one of 18 mm asks for a sheet of its own.
    const thick = (transomLayers: string) =>
      tryCell(sheets, { transomThickness: '18 mm', ...skin, transomLayers, gussets: '0' });
    const found = (cell: ReturnType<typeof thick>) =>
      Array.from({ length: cell.number('pieces') }, (_, i) => `cut${i + 1}`)
        .filter((row) => /transom/.test(cell.inRow(row, 'name') as string))
        .map((row) => Number(cell.inRow(row, 'thick')).toFixed(3));
    expect(found(thick('2'))).toStrictEqual(['0.009', '0.009']);
    expect(found(thick('1'))).toStrictEqual(['0.018']);
  });

  test('nothing to cut is said', () => {
    expect(tryCell(sheets, parts).issues['count']).toMatch(/nothing is to be cut/);
  });
});

/** A cell's facts on a boat, and what a search has found for them. */
function factsOf(table: Table, entries: Readonly<Record<string, string>>, found: unknown = null) {
  const { all } = tryCell(sheets, entries, table);
  const values = all as Values;
  return scopeAlone(
    (key) => values[key]!,
    buildHull(offsetsOf(table)),
    () => found,
  );
}

type Poly = Geom;
const poly = (outline: readonly (readonly [number, number])[]): Poly => [
  // That library loses its way in points that lie nearer than it tells apart: a thousandth of a millimetre.
  [outline.map(([x, y]): [number, number] => [Math.round(x * 1e6) / 1e6, Math.round(y * 1e6) / 1e6])],
];
const areaOf = (geom: Geom) =>
  (geom as [number, number][][][]).flat().reduce((sum, ring) => sum + Math.abs(outlineArea(ring)), 0);

describe.each(starters.map(({ id, table }) => [id, table] as const))('%s', (_, table) => {
  test.each(['butt', 'scarf'])('pieces with their laps make up each panel: %s', (joint) => {
    const { ask } = factsOf(table, { joint });
    const of: SheetsProblem = ask(problem);
    const { layout } = ask(shop);
    of.panels.forEach((panel, at) => {
      const joints = layout[at]!.port;
      const pieces = panelPieces(panel, joints);
      expect(pieces).toHaveLength(joints.length + 1);
      const [first, ...others] = pieces.map(poly);
      const whole = union(first!, ...others);
      // Square metres: a hundredth of a millimetre along a metre.
      expect(areaOf(difference(poly(panel.outline), whole))).toBeLessThan(1e-5);
      expect(areaOf(difference(whole, poly(panel.outline)))).toBeLessThan(1e-5);
      const laps = joints.reduce((sum, one) => {
        const [[ax, ay], [bx, by]] = panel.spots[one]!.line;
        return sum + panel.lap * Math.hypot(bx - ax, by - ay);
      }, 0);
      const cut = pieces.reduce((sum, piece) => sum + Math.abs(outlineArea(piece)), 0);
      expect(Math.abs(cut - Math.abs(outlineArea(panel.outline)) - laps)).toBeLessThan(0.02 * laps + 1e-6);
    });
  });

  test('the plan at once holds, and its figures are its own', () => {
    const { ask } = factsOf(table, {});
    const plan = ask(best);
    plan.sections.forEach(({ problem: one }, i) =>
      expect(faultsOfNest(plan.plans[i]!, one)).toStrictEqual([]),
    );
    const cell = tryCell(sheets, {}, table);
    expect(cell.number('count')).toBe(plan.plans.reduce((sum, { sheets: all }) => sum + all.length, 0));
    const [keptSide, keptPanel] = [cell.number('keptSide'), cell.number('keptPanel')];
    expect(keptSide).toBeLessThanOrEqual(cell.number('offSide'));
    expect(keptPanel).toBeLessThanOrEqual(cell.number('offPanel'));
    const { panels } = ask(problem);
    plan.layout.forEach(({ port, starboard }, at) => {
      const x = (joint: number, of = at) => panels[of]!.spots[joint]!.x;
      for (const one of port)
        for (const other of panels[at]!.whole ? [] : starboard)
          expect(Math.abs(x(one) - x(other))).toBeGreaterThan(keptSide - 1e-6);
      for (const one of port)
        for (const other of plan.layout[at - 1]?.port ?? [])
          expect(Math.abs(x(one) - x(other, at - 1))).toBeGreaterThan(keptPanel - 1e-6);
    });
  });
});

describe('joints kept apart', () => {
  test.each(starters.map(({ id, table }) => [id, table] as const))(
    '%s: at first look all distances are held, and nothing is warned of',
    (_, table) => {
      const cell = tryCell(sheets, {}, table);
      expect(cell.warnings).toStrictEqual([]);
      expect(cell.number('keptSide')).toBe(cell.number('offSide'));
      expect(cell.number('keptPanel')).toBe(cell.number('offPanel'));
    },
  );

  // Her sides are 5.57 m long, of three pieces; midway in the bays the forward joint has but one place, 3.6 m from aft.
  test('where midway leaves one place for both sides, one stands clear of the frames, and it is said', () => {
    const cell = tryCell(sheets);
    expect(cell.all['freed']).toBe('yes');
    const { ask } = factsOf(starter('ferry-dory')!, {});
    const { panels: cut } = ask(problem);
    const { port, starboard } = ask(best).layout[1]!;
    const places = [...port, ...starboard].map((joint) => cut[1]!.spots[joint]!);
    const clear = places.filter(({ words }) => /^(forward|aft) of/.test(words));
    expect(clear.length).toBeGreaterThan(0);
    expect(cell.number('offRule')).toBe(clear.length);
    expect(cell.words).toMatch(/clear of the frames but not by your rule/);
    // With room for the block between the joint and the frame.
    const frames = buildHull(offsetsOf(starter('ferry-dory')!)).frames.map(({ x }) => x);
    for (const { x } of clear)
      expect(Math.min(...frames.map((at) => Math.abs(at - x)))).toBeGreaterThan(
        cell.number('clear') + cell.number('blockLength') / 2 - 1e-9,
      );
  });

  test('where the rule has places enough all stand by it', () => {
    const skiff = tryCell(sheets, {}, starter('class-skiff')!);
    expect([skiff.all['freed'], skiff.number('offRule')]).toStrictEqual(['no', 0]);
    const near = tryCell(sheets, { offSide: '0 mm' });
    expect([near.all['freed'], near.number('offRule')]).toStrictEqual(['no', 0]);
  });

  test('what can’t be held at all is held by quarters, and warned of', () => {
    const cell = tryCell(sheets, { offSide: '3 m' });
    expect(cell.warnings.map(({ says }) => says).join()).toMatch(
      /No places are found for joints so far apart/,
    );
    expect([0, 0.75, 1.5, 2.25]).toContain(cell.number('keptSide'));
  });
});

describe('a skin in layers', () => {
  const layered = { 'bottom.layers': '2' };

  test('is bought layer by layer, each from sheets of its own thickness, its joints off those of the other', () => {
    for (const { table } of starters) {
      const [one, two] = [tryCell(sheets, {}, table), tryCell(sheets, layered, table)];
      const { ask } = factsOf(table, layered);
      const of = ask(problem);
      const bottoms = of.panels.flatMap(({ name }, at) => (name === 'bottom' ? [at] : []));
      expect(bottoms.map((at) => of.panels[at]!.label)).toStrictEqual(['bottom, layer 1', 'bottom, layer 2']);
      const half = of.groups.find(({ panels: own }) => own.includes(bottoms[0]!))!;
      expect(half.panels).toStrictEqual(expect.arrayContaining(bottoms));
      expect(half.thickness).toBeCloseTo(0.0045, 9);
      const { layout } = ask(best);
      const places = (at: number) => layout[at]!.port.map((joint) => of.panels[at]!.spots[joint]!.x);
      for (const x of places(bottoms[0]!))
        for (const other of places(bottoms[1]!))
          expect(Math.abs(x - other)).toBeGreaterThanOrEqual(two.number('keptPanel') - 1e-6);
      expect(two.number('keptPanel')).toBeGreaterThan(0);
      // One face between the two, port and starboard.
      expect(two.number('gluedArea')).toBeCloseTo(2 * buildHull(offsetsOf(table)).panel('bottom').area, 9);
      expect(one.number('gluedArea')).toBe(0);
      expect(two.number('count')).toBeGreaterThan(one.number('count'));
      expect(two.words).toMatch(/Layers are cut each by itself/);
    }
  });

  test('needs no blocks, for one layer backs the joint of the other', () => {
    const midway = { bottomAt: 'midway' };
    const blocks = (entries: Record<string, string>) => {
      const cell = tryCell(sheets, { ...midway, ...entries });
      return Array.from({ length: cell.number('pieces') }, (_, i) =>
        cell.inRow(`cut${i + 1}`, 'name'),
      ).filter((name) => (name as string).startsWith('butt block, bottom'));
    };
    expect(blocks({}).length).toBeGreaterThan(0);
    expect(blocks(layered)).toStrictEqual([]);
  });

  test('bends as thin sheets do', () => {
    const thick = { 'bottom.thickness': '12 mm' };
    const punt = starter('creek-punt')!;
    const taken = (entries: Record<string, string>) =>
      Number(/bottom (\d+) %/.exec(tryCell(sheets, entries, punt).all['takenAlong'] as string)![1]);
    expect(taken({ ...thick, ...layered })).toBe(taken({ 'bottom.thickness': '6 mm' }));
  });
});

describe('a flat bottom in one width', () => {
  const skiff = starter('class-skiff')!;

  test('is cut once, from chine to chine, with fewer joints than two halves', () => {
    const [whole, halves] = ['whole', 'halves'].map((bottomIn) => tryCell(sheets, { bottomIn }, skiff));
    const bottom = (bottomIn: string) => factsOf(skiff, { bottomIn }).ask(problem).panels[0]!;
    const area = (bottomIn: string) => Math.abs(outlineArea(bottom(bottomIn).outline));
    // What is left over the transom runs square on from a whole one, and from a half along its two edges.
    expect(area('whole') / area('halves') / 2).toBeCloseTo(1, 3);
    const ys = bottom('whole').outline.map(([, y]) => y);
    expect(Math.max(...ys)).toBeCloseTo(-Math.min(...ys), 9);
    expect(whole!.number('bottomWide')).toBeCloseTo(2 * Math.max(...ys), 5);
    const own = (cell: typeof whole) =>
      Array.from({ length: cell!.number('pieces') }, (_, i) => cell!.inRow(`cut${i + 1}`, 'name') as string);
    const [oneWide, two] = [whole, halves].map((cell) =>
      own(cell).filter((name) => name.startsWith('bottom')),
    );
    expect(oneWide).not.toContainEqual(expect.stringMatching(/port|starboard/));
    // A piece more than joints; two halves have their joints apart, and the skiff one more for it.
    expect(oneWide).toHaveLength(whole!.number('bottomJoints') + 1);
    expect(two!.length).toBeGreaterThanOrEqual(2 * oneWide!.length);
    expect(halves!.number('joints') - whole!.number('joints')).toBe(two!.length - oneWide!.length - 1);
    // Of either half the same, for cloth is lapped over it a side at a time.
    expect(whole!.number('bottomJointLong')).toBeCloseTo(halves!.number('bottomJointLong'), 4);
  });

  test('is taken where a sheet is wide enough, and only of a bottom that is flat', () => {
    const usual = (entries: Record<string, string>, table = skiff) => {
      const { all } = tryCell(sheets, entries, table);
      return [all['flatBottom'], all['usualBottom'], all['bottomIn']];
    };
    expect(usual({})).toStrictEqual([1, 'whole', 'whole']);
    expect(usual({ width: '1155 mm' })).toStrictEqual([1, 'whole', 'whole']);
    // 1121 mm, and off both edges 15 mm or 18.
    expect(usual({ width: '1155 mm', edge: '8 mm' })).toStrictEqual([1, 'halves', 'halves']);
    expect(usual({ width: '1000 mm', otherLength: '3 m', otherWidth: '1.5 m' })[1]).toBe('whole');
    expect(usual({}, starter('vee-launch')!)).toStrictEqual([0, 'halves', 'halves']);
    expect(usual({ skinSides: '1' })[1]).toBe('halves');
    expect(tryCell(sheets, { width: '1000 mm', bottomIn: 'whole' }, skiff).issues['count']).toMatch(
      /the bottom can't be got from these sheets.*halves/,
    );
  });
});

describe('the face grain, panel by panel', () => {
  const ways = (entries: Record<string, string>, table = starter('creek-punt')!) =>
    tryCell(sheets, entries, table);

  test('is told as the panels laid flat have it', () => {
    const told = ways({});
    const shares = (grain: string) =>
      ['bottom', 'side']
        .map((panel) => {
          const share = tryCell(panels, { panel, grain }, starter('creek-punt')!).number('share');
          return `${panel} ${Math.round(100 * share)} %`;
        })
        .join(', ');
    expect(told.all['takenAlong']).toBe(shares('along'));
    expect(told.all['takenAcross']).toBe(shares('across'));
    expect(told.all['better']).toBe('bottom along, side along');
  });

  test('lies across where along it would break, and the plan goes by that', () => {
    // Of 12 mm the bottom bends across alone: its least radius along is twice as long.
    const thick = { bottomThickness: '12 mm', grain: 'better', skinSides: '2' };
    expect(ways(thick).all['better']).toBe('bottom across, side along');
    const { panels: cut } = factsOf(starter('creek-punt')!, thick).ask(problem);
    expect(cut.map(({ turns }) => turns)).toStrictEqual([
      [1, 3],
      [0, 2],
    ]);
    expect(ways({}, starter('vee-launch')!).all['better']).toBe('bottom neither, side along');
  });

  test('stiffness goes by the plies', () => {
    // Four plies: the two in the middle lie alike.
    expect(ways({ sheetPlies: '4' }).number('inFaces')).toBeCloseTo(1 - 1 / 8, 12);
    expect(ways({ sheetPlies: '3' }).number('stiffer')).toBeCloseTo((26 + 0.05) / (1 + 0.05 * 26), 9);
  });
});

describe('what the least cost of the sheets rests on', () => {
  test.each(
    starters.flatMap(({ id, table }) => ['clear', 'frames', 'midway'].map((at) => [id, at, table] as const)),
  )('%s, joints %s: a joint’s line, drawn on, meets its panel nowhere else', (_, at, table) => {
    const { ask } = factsOf(table, { bottomAt: at, sideAt: at });
    for (const { outline, spots } of ask(problem).panels)
      for (const { line } of spots) {
        const [[ax, ay], [bx, by]] = line;
        const off = outline.map(([x, y]) => (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 0);
        expect(off.filter((left, i) => left !== off.at(i - 1))).toHaveLength(2);
      }
  });
});

describe('a search', () => {
  const table = starter('creek-punt')!;
  const search = async (entries: Readonly<Record<string, string>>) => {
    const told: SheetsAnswer[] = [];
    const text = factsOf(table, entries).ask(asked);
    const says = await searchSheets(text, (answer) => told.push(answer as SheetsAnswer));
    return { told, says };
  };
  const few = { faces: 'one', gussets: '0', blockLength: '0 mm', transoms: '0' };

  test('tells better plans that all hold, and the cell takes them', async () => {
    const { told, says } = await search(few);
    expect(says).toMatch(/^(Proved|The best found)/);
    const plans = told.map((answer) => factsOf(table, few, answer).ask(best));
    expect(plans.map((plan) => plan.plans)).toStrictEqual(told.map((answer) => answer.plans));
    // Less money, or no more and no more joints.
    const worse = plans.filter((plan, i) => {
      const before = plans[i - 1];
      if (!before) return false;
      return (
        plan.cost > before.cost + 1e-9 || (plan.cost > before.cost - 1e-9 && plan.joints > before.joints)
      );
    });
    expect(worse).toStrictEqual([]);
  }, 90_000);

  test('a joint chosen by hand holds, and the rest is planned round it, the same again', async () => {
    const held = { ...few, heldOn: 'side', heldAt: '1.25 m', cutting: 'together' };
    const { told } = await search(held);
    expect((await search(held)).told).toStrictEqual(told);
    const { panels } = factsOf(table, held).ask(problem);
    const at = panels.findIndex(({ name }) => name === 'side');
    for (const { layout } of told) {
      const { port, starboard } = layout[at]!;
      expect(port.map((joint) => panels[at]!.spots[joint]!.x)).toContain(1.25);
      expect(starboard).toStrictEqual(port);
    }
  });

  test('a plan that does not hold is not believed', () => {
    const { ask } = factsOf(table, few);
    const plan = ask(shop);
    const [first, ...rest] = plan.plans;
    const wrong = {
      layout: plan.layout,
      least: plan.least,
      plans: [{ sheets: first!.sheets.slice(1) }, ...rest],
    };
    const { plans } = factsOf(table, few, wrong).ask(best);
    expect(plans).toStrictEqual(plan.plans);
    expect(isIssue(plans)).toBe(false);
  });
});
