import Natural from 'cubic-spline';
import { describe, expect, test } from 'vitest';
import { buildHull, lists, offsetsOf, starter, starters, type Table } from '../../../src/boat';
import { plainInstance, type Values } from '../../../src/cells';
import { fair } from '../../../src/cells/shape/fair';
import { longLine, type LineView } from '../../../src/cells/shape/long-line';
import { movedHull } from '../../../src/cells/shape/moved-hull';
import {
  flareSpread,
  rivalOn,
  signsInWords,
  suspectOn,
  witnessesOf,
} from '../../../src/cells/shape/suspects';
import { fairRun, hollows, type Vec2 } from '../../../src/kernel';
import { plainShown, write } from '../../../src/measure';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { createGraph } from '../../../src/notebook/graph/graph';
import { isText } from '../../../src/drawing/shapes';
import { extents } from '../../../src/drawing';
import '../../kernel/near';
import { measured, provesItsDrawing } from '../proofs';
import { tryCell, type Tried } from '../try-cell';
import { allOf } from '../../notebook/all-of';
import { onHandAlone } from '../alone';

const misread = starter('ferry-dory-misread')!;
const plan = starter('ferry-dory')!;
const says = ({ warnings }: Tried) => warnings.map((warning) => warning.says).join(' | ');
const reading = { nearest: 0.0015, blunder: 0.006 };

/** What the cell offers on a boat, with these entries. */
function offersOn(table: Table, entries: Readonly<Record<string, string>> = {}) {
  const { all } = tryCell(fair, entries, table);
  const hull = buildHull(offsetsOf(table));
  return fair.offers!(
    all as unknown as Values,
    onHandAlone(fair, all as unknown as Values, hull, (value, kind) => write(value, kind, plainShown).text),
  );
}

/** A line of a boat as it stands. */
function lineOn(table: Table, edge: string, view: LineView) {
  const hull = buildHull(offsetsOf(table));
  return longLine(hull, hull.edge(edge), view);
}

/** The same table with the half-breadth of the sheer at one station read otherwise, mm. */
function withSheer(table: Table, name: string, y: number): Table {
  const stations = table.stations.map((station) =>
    station.name === name
      ? { ...station, points: station.points.map((point, i) => (i === 2 ? { ...point, y } : point)) }
      : station,
  );
  return { ...table, stations };
}

/** The wedge or the cut at full size. */
function wedgeOn(table: Table, entries: Readonly<Record<string, string>> = {}) {
  const values = tryCell(fair, entries, table).all as unknown as Values;
  const hull = buildHull(offsetsOf(table));
  const [pattern, ...more] = fair.patterns!.draw(
    values,
    onHandAlone(fair, values, hull, (value, kind) => write(value, kind, plainShown).text),
  );
  expect(more).toStrictEqual([]);
  return pattern!;
}

/** The boat's values with an offer taken. */
function withOffer(table: Table, changes: Readonly<Record<string, string>>, name: string) {
  const catalogue = catalogueOf(table, [plainInstance(fair)]);
  return createGraph({ catalogue: () => catalogue, entries: () => changes, shown: plainShown }).value(name);
}

describe('the dory with one half-breadth read 50 mm short', () => {
  const tried = tryCell(fair, {}, misread);

  test('is told by station, line and view, first of all', () => {
    expect(tried.all['suspect']).toBe('frame2');
    expect([tried.all['suspectLine'], tried.all['suspectView']]).toStrictEqual(['sheer', 'plan']);
    expect(tried.number('suspectProof')).toBeGreaterThan(3);
    expect(tried.all['station']).toBe('frame2');
  });

  test('lacks 50 mm there, found within 8, and all three other signs agree', () => {
    expect(tried.all['oddStation']).toBe('frame2');
    expect(Math.abs(tried.number('correction') - 0.05)).toBeLessThan(0.008);
    expect(tried.number('corrected')).toBeCloseTo(0.801 + tried.number('correction'), 12);
    expect(tried.number('witnesses')).toBe(3);
    expect(tried.words).toMatch(
      /^In plan the sheer stands about 5\d(\.\d)? mm too far in at frame 2: half-breadth 85\d(\.\d)? mm instead of 801 mm\. Of the other signs, all three agree\./,
    );
    expect(says(tried)).toContain('The number at frame 2 is out by about');
  });

  test('is drawn with a bar beside each hollow', () => {
    const bars = tried.drawing!.shapes.filter((shape) => shape.shape === 'line' && shape.pen === 'visible');
    const hull = buildHull(offsetsOf(misread));
    const line = longLine(hull, hull.edge('sheer'), 'plan');
    expect(bars).toHaveLength(line.hollows.length);
    const notes = tried.drawing!.shapes.flatMap((shape) => (shape.shape === 'note' ? [shape.text] : []));
    expect(notes).toContain('Bar: hollow about frame 2, 2.6 mm deep.');
    // Too shallow to count is drawn all the same.
    const shallow = tryCell(fair, { view: 'profile' }, plan);
    expect(shallow.number('hollowCount')).toBe(0);
    const drawn = shallow.drawing!.shapes.filter(
      (shape) => shape.shape === 'line' && shape.pen === 'visible',
    );
    expect(drawn).toHaveLength(2);
  });

  test('is hollow there', () => {
    expect(tried.number('hollowCount')).toBe(1);
    expect(tried.number('frame2.bend')).toBeLessThan(0);
    expect(says(tried)).toContain('Hollows: 1,');
    expect(says(tryCell(fair, { meant: 'yes' }, misread))).not.toContain('Hollows: 1,');
    expect(tryCell(fair, { meant: 'yes' }, misread).words).toContain('Hollows in the line: 1');
  });

  test('is laid on a neighbour by the miss of a lifted duck, and not by the one correction', () => {
    const frames = ['frame1', 'frame2', 'frame3', 'frame4', 'frame5'];
    const most = (key: string) =>
      frames.toSorted(
        (a, b) => Math.abs(tried.number(`${b}.${key}`)) - Math.abs(tried.number(`${a}.${key}`)),
      )[0];
    expect(most('miss')).toBe('frame1');
    // A free batten through the others, by the library above all: natural ends.
    const { x, values } = lineOn(misread, 'sheer', 'plan');
    for (const [i, station] of frames.entries()) {
      const others = new Natural(x.toSpliced(i + 1, 1), values.toSpliced(i + 1, 1));
      expect(tried.number(`${station}.miss`)).toBeNear(values[i + 1]! - others.at(x[i + 1]!), 1e-9);
    }
    expect(tried.number('frame1.miss')).toBeNear(0.0531, 1e-3);
    expect(most('clears')).toBe('frame2');
    expect(most('duck')).toBe('frame2');
  });

  test('would take a wedge thicker than 25 mm: correction x cosine of the flare', () => {
    const flare = Math.atan2(801 - 543, 631 - 83);
    expect(tried.number('lean')).toBeCloseTo(flare, 12);
    expect(tried.number('wedge')).toBeCloseTo(tried.number('correction') * Math.cos(flare), 12);
    expect(tried.number('wedgeLength')).toBeCloseTo(Math.hypot(801 - 543, 631 - 83) / 1000, 12);
    expect(says(tried)).toMatch(
      /^.*If frame 2 is built already, 4\d\.\d mm of wood .* more than 25 mm: make a new one\./,
    );
    const leanAfter = Math.atan2(801 - 543 + 1000 * tried.number('correction'), 631 - 83);
    expect(tried.number('leanAfter')).toBeCloseTo(leanAfter, 12);
  });

  test('gains nearly the skin and displacement by which the plan’s hull is larger', () => {
    const skin = (table: Table) =>
      buildHull(offsetsOf(table)).panels.reduce((sum, { area }) => sum + 2 * area, 0);
    const gained = skin(plan) - skin(misread);
    // The correction is some 2 mm off the true 50.
    expect(tried.number('areaChange') / gained).toBeGreaterThan(0.9);
    expect(tried.number('areaChange') / gained).toBeLessThan(1.15);
    expect(tried.number('volumeChange')).toBeGreaterThan(0);
  });

  test('offers the number put right, a wedge of 25 mm, and the least mend', () => {
    const [right, wedge, mend, ...more] = offersOn(misread);
    expect(more).toStrictEqual([]);
    expect(right!.label).toMatch(/^frame 2, sheer: 5\d(\.\d)? mm outboard$/);
    expect(Object.keys(right!.changes)).toStrictEqual(['frame2.sheer.halfBreadth']);
    expect(withOffer(misread, right!.changes, 'frame2.sheer.halfBreadth')).toBeCloseTo(0.851, 2);
    expect(withOffer(misread, right!.changes, 'fair.suspect')).toBe('none');
    // 25 mm square to the side is 25 mm / cos(flare) outboard.
    const out = 25 / Math.cos(Math.atan2(801 - 543, 631 - 83));
    expect(withOffer(misread, wedge!.changes, 'frame2.sheer.halfBreadth')).toBeCloseTo(0.801 + out / 1000, 4);
    expect(Object.keys(mend!.changes)).toHaveLength(tried.number('mendCount'));
    expect(withOffer(misread, mend!.changes, 'fair.hollowCount')).toBe(0);
  });

  test('says of each offer what it does, as the boat then has it', () => {
    for (const { changes, effects } of offersOn(misread)) {
      const [flare, side, displacement, hollow] = effects!; // and of a wedge, the depths of the frame side
      expect(flare!.label).toMatch(/^Flare of the side at frame [23]$/);
      const station = flare!.label.endsWith('2') ? 'frame2' : 'frame3';
      const then = { flare: flare!.after, side: side!.after };
      expect(withOffer(misread, {}, `${station}.side.flare`)).toBeNear(flare!.before, 1e-9);
      expect(withOffer(misread, changes, `${station}.side.flare`)).toBeNear(then.flare, 1e-9);
      expect(withOffer(misread, {}, 'side.area')).toBeNear(side!.before, 1e-9);
      expect(withOffer(misread, changes, 'side.area')).toBeNear(then.side, 1e-9);
      expect(displacement!.label).toBe('Displacement to 137 mm');
      // Made wider she floats more; the least mend draws two other frames in.
      const gained = displacement!.after - displacement!.before;
      expect(gained > 0).toBe(Object.keys(changes).length === 1);
      // At the most the strip, 55 mm wide over half her length, down to the draught.
      expect(Math.abs(gained)).toBeLessThan(0.055 * 2.7 * 0.15);
      expect(hollow!.before).toBeNear(tried.number('hollowDepth'), 1e-9);
      expect(hollow!.after).toBeLessThan(hollow!.before);
    }
  });

  test('offers a wedge by its thickness at both ends where one will do', () => {
    const thick = { mostWedge: '50 mm' };
    const [right, mend] = offersOn(misread, thick);
    expect(right!.label).toMatch(
      /^frame 2, sheer: 5\d(\.\d)? mm outboard; in wood a wedge of 4\d(\.\d)? mm at the sheer, nothing at the chine$/,
    );
    expect(mend!.label).toMatch(/^The least mend/);
    const wood = write(tryCell(fair, thick, misread).number('wood'), 'length', plainShown).text;
    expect(right!.label).toContain(wood);
  });

  test('with frames held, the least mend moves others alone', () => {
    const alone = tryCell(fair, {}, misread);
    const kept = tryCell(fair, { keep: 'frame1', keepAnother: 'frame3', keepThird: 'frame4' }, misread);
    for (const station of ['frame1', 'frame3', 'frame4']) expect(kept.number(`${station}.move`)).toBe(0);
    expect(['frame1', 'frame3'].map((station) => alone.number(`${station}.move`))).not.toContain(0);
    expect(kept.number('mendCount')).toBeLessThan(alone.number('mendCount'));
    expect(kept.number('mendMost')).toBeGreaterThan(alone.number('mendMost'));
  });

  test('with the bad frame itself held, and its neighbours, there is no mend, in words', () => {
    const stuck = tryCell(fair, { keep: 'frame1', keepAnother: 'frame2', keepThird: 'frame3' }, misread);
    expect(stuck.issues['mendCount']).toContain('no fair line runs through the stations held');
    expect(stuck.number('correction')).toBeGreaterThan(0.04);
  });

  test('says what the wedge is and what it does to flare, skin and displacement', () => {
    expect(tried.words).toMatch(
      /a wedge 47\.\d mm thick there, tapering to nothing over the 605\.7 mm of the frame side\. The flare goes from 25\.2° to 29\.\d°, the skin changes by 0\.02\d+ m²/,
    );
    expect(tried.words).toMatch(
      /the same taper planed off inside, the frame side keeps its depth of 70 mm there, 22\.\d mm of it its own wood/,
    );
    expect(tried.number('ownWood')).toBeNear(0.07 - tried.number('wood'), 1e-12);
    // A wedge as thick as the side is deep would leave nothing of it.
    expect(tryCell(fair, { moulded: '40 mm' }, misread).words).toMatch(
      /In wood that is a wedge (?!.*taper planed off)/,
    );
  });

  test('offers the same taper inside with a wedge, and says what it leaves', () => {
    const [right, wedge] = offersOn(misread);
    expect(right!.effects).toHaveLength(4); // too thick for a wedge: the frame is made anew
    const [deep, left] = wedge!.effects!.slice(4);
    expect(deep).toMatchObject({
      label: 'Depth of the side member at the sheer',
      kind: 'length',
      before: 0.07,
    });
    expect(deep!.after).toBeNear(0.07 + 0.025, 1e-12);
    expect(left!.label).toContain('loses the same taper inside');
    expect(left!.before).toBe(0.07);
    expect(left!.after).toBeNear(0.07 - 0.025, 1e-12);
    // A side no deeper than the wedge can't lose as much inside; planing takes from the depth at once.
    expect(offersOn(misread, { moulded: '25 mm' })[1]!.effects).toHaveLength(5);
    const [, cut] = offersOn(withSheer(plan, 'frame 2', 901));
    expect(cut!.label).toContain('a cut of');
    expect(cut!.effects!).toHaveLength(5);
    expect(cut!.effects![4]!.after).toBeNear(0.07 - 0.025, 1e-12);
    const notes = wedgeOn(misread).shapes.flatMap((shape) => (shape.shape === 'note' ? [shape.text] : []));
    expect(notes).toContainEqual(
      expect.stringMatching(/^The same taper off the inner edge keeps the frame side 70 mm deep; 22\.\d mm/),
    );
  });

  test('gives the wedge at full size, as thick and long as it is said to be', () => {
    const pattern = provesItsDrawing(wedgeOn(misread));
    expect(pattern.title).toBe('Frame 2, side: wedge');
    const length = (key: string) => write(tried.number(key), 'length', plainShown).text;
    expect(measured(pattern, length('wedge'))).toBeNear(1000 * tried.number('wedge'), 1e-9);
    expect(measured(pattern, length('wedgeLength'))).toBeNear(1000 * tried.number('wedgeLength'), 1e-9);
    // Between the frame side as it is and as it should be: a triangle of half the length times the thickness.
    const outline = pattern.shapes.find((shape) => shape.shape === 'area');
    const area = outline?.shape === 'area' ? polygonArea(outline.rings[0]!) : Number.NaN;
    expect(area).toBeNear(0.5e6 * tried.number('wedge') * tried.number('wedgeLength'), 1e-9);
  });

  test('is pointed to from a line that is fair itself', () => {
    expect(tryCell(fair, { edge: 'chine' }, misread).words).toMatch(
      /^Look first at frame 2, the sheer in plan\. No number of the chine stands out in plan\. .* a small error stays hidden/,
    );
  });

  test('is pointed to from a line that is bad in a smaller way, with a key to its own', () => {
    const elsewhere = { edge: 'keel', view: 'profile', tried: 'frame3', shift: '30 mm' };
    const other = tryCell(fair, elsewhere, misread);
    expect(other.words).toMatch(
      /^Look first at frame 2, the sheer in plan\. In profile the keel stands about \d+(\.\d)? mm too high at frame 3/,
    );
    expect(tried.words).toMatch(/^In plan the sheer/);
    const [key] = offersOn(misread, elsewhere);
    expect(key).toStrictEqual({
      turns: 'Show that line',
      label: 'The number to look at first: frame 2, sheer in plan',
      changes: { '{self}.edge': 'sheer', '{self}.view': 'plan' },
    });
    expect(offersOn(misread).some(({ turns }) => turns !== undefined)).toBe(false);
    expect(offersOn(plan, elsewhere).some(({ turns }) => turns !== undefined)).toBe(false);
  });

  test('shows its run of third differences before and after', () => {
    const [stands, corrected] = tried.chart!.lines;
    // Third differences over the mean step, by the builder's way: 6 h^3 x the divided difference.
    const x = [-0.16, 0.8, 1.6, 2.4];
    const y = [0.5, 0.727, 0.801, 0.865];
    const divided = y.reduce(
      (sum, value, i) =>
        sum + value / x.reduce((product, at, k) => (k === i ? product : product * (x[i]! - at)), 1),
      0,
    );
    expect(stands!.points[0]![1]).toBeCloseTo(6 * (5.36 / 6) ** 3 * divided, 12);
    const swing = (points: readonly (readonly [number, number])[]) =>
      Math.max(...points.map(([, d]) => Math.abs(d)));
    expect(swing(corrected!.points)).toBeLessThan(swing(stands!.points) / 2);
  });
});

describe('the plan’s own dory', () => {
  test('has no suspect, and says what its stations can’t show', () => {
    const tried = tryCell(fair, {}, plan);
    expect(tried.all['suspect']).toBe('none');
    expect(tried.number('proposed')).toBe(0);
    expect(tried.words).toMatch(
      /With 7 stations a small error stays hidden: it shows from about .* mm at the frame that shows it best/,
    );
    expect(tried.number('showsBest')).toBeLessThan(0.02);
    expect(tried.number('showsEverywhere')).toBeGreaterThan(tried.number('showsBest'));
    expect(offersOn(plan)).toStrictEqual([]);
  });

  test.each([
    ['plan', '-40 mm', 'too far in'],
    ['plan', '40 mm', 'too far out'],
    ['profile', '-30 mm', 'too low'],
    ['profile', '30 mm', 'too high'],
  ])('with frame 3 of the sheer moved on trial in %s by %s: it %s', (view, shift, words) => {
    const tried = tryCell(fair, { view, shift, tried: 'frame3' }, plan);
    expect(tried.all['oddStation']).toBe('frame3');
    expect(tried.words).toContain(`${words} at frame 3`);
    expect(tried.all['suspect']).toBe('none');
    expect(offersOn(plan, { view, shift }).map(({ label }) => label)).toStrictEqual([
      expect.stringContaining('The trial: frame 3, sheer'),
    ]);
  });

  test('with the frame beside an end wrong, names that and the end', () => {
    const tried = tryCell(fair, { 'frame1.sheer.halfBreadth': '677 mm' }, plan);
    expect([tried.all['oddStation'], tried.all['rival']]).toStrictEqual(['transom', 'frame1']);
    expect(tried.words).toMatch(/Or, nearly as likely, frame 1 is out by about 49\.\d mm: look up both/);
    expect(says(tried)).not.toContain('make a new one');
    expect(tried.words).not.toContain('In wood');
    expect(tried.chart!.says).toContain('; at an end only one. So does transom');
    const right = tryCell(fair, {}, misread);
    expect(right.number('rivalNearly')).toBeLessThan(0.8);
    expect(right.chart!.says).toContain('e, −3e, 3e, −e; so near an end only 3 of them. So does frame 2');
  });

  test('with the frame beside an end wrong, offers both', () => {
    const [first, second] = offersOn(withSheer(plan, 'frame 1', 677));
    expect(first!.label).toContain('transom, sheer');
    expect(second!.label).toMatch(/^Or, nearly as likely, frame 1, sheer: 49\.\d mm outboard$/);
  });

  test('refuses a trial that would cross the centreline, in words', () => {
    const narrow = withSheer(plan, 'frame 5', 90);
    const tried = tryCell(fair, { shift: '-100 mm', tried: 'frame5' }, narrow);
    expect(tried.issues['correction']).toContain('cross the centreline');
  });

  test.each([
    ['stem', 'sheer'],
    ['frame3', 'keel'],
  ])('leaves %s of the %s on the centreline, and says so', (at, edge) => {
    const moved = tryCell(fair, { shift: '30 mm', tried: at, edge }, plan);
    const still = tryCell(fair, { tried: at, edge }, plan);
    expect(moved.number('trial')).toBe(0);
    expect(moved.all[`${at}.offset`]).toBe(0);
    expect(moved.drawing).toStrictEqual(still.drawing);
    expect(says(moved)).toContain('on the centreline, so in plan it is not moved');
    expect(
      offersOn(plan, { shift: '30 mm', tried: at, edge }).some(({ label }) => label.startsWith('The trial')),
    ).toBe(false);
    // Up and down it moves as any other.
    const up = tryCell(fair, { shift: '30 mm', tried: at, edge, view: 'profile' }, plan);
    expect(up.number('trial')).toBe(0.03);
    expect(says(up)).not.toContain('on the centreline');
  });

  test('gives no wedge where no number stands out, and a cut where one stands out too far', () => {
    expect(() => wedgeOn(plan)).toThrow('no number of this line stands out');
    const cut = wedgeOn(plan, { tried: 'frame3', shift: '40 mm' });
    expect(cut.title).toBe('Frame 3, side: wood to come off');
    expect(provesItsDrawing(cut).says).toMatch(/deep at the sheer, nothing at the chine/);
    const chine = wedgeOn(plan, { edge: 'chine', tried: 'frame3', shift: '-40 mm' });
    expect(chine.says).toMatch(/thick at the chine, nothing at the sheer/);
  });

  test('with a height wrong is planed off below, or wedged', () => {
    const high = tryCell(fair, { edge: 'chine', view: 'profile', tried: 'frame3', shift: '-30 mm' }, plan);
    expect(high.number('correction')).toBeGreaterThan(0);
    // A chine 30 mm too low on a level bottom: as much is planed off it.
    expect(high.number('wedge')).toBeCloseTo(-high.number('correction') * Math.sin(high.number('lean')), 12);
    expect(high.number('wedge')).toBeLessThan(-0.025);
  });
});

test.each(
  starters.flatMap(({ id, table }) => lists(table).edges.map((edge) => ({ id, edge: edge.id, table }))),
)('has an answer on $id for the $edge in both views, and accuses only the misread', ({ id, edge, table }) => {
  for (const view of ['plan', 'profile']) {
    const tried = tryCell(fair, { edge, view }, table);
    expect(tried.issues).toStrictEqual({});
    expect(tried.number('proof') > 1).toBe(
      id === 'ferry-dory-misread' && edge === 'sheer' && view === 'plan',
    );
  }
});

test('stations are written as in the table, and none of them can be kept', () => {
  const { given, derived } = allOf(catalogueOf(plan, [plainInstance(fair)]));
  const optionsOf = (name: string) => [...given, ...derived].find((one) => one.name === name)?.options;
  const stations = lists(plan).stations;
  expect(optionsOf('fair.suspect')).toStrictEqual(stations);
  expect(optionsOf('fair.keepThird')).toStrictEqual([{ id: 'none', label: 'none' }, ...stations]);
  expect(tryCell(fair, {}, plan).all['keep']).toBe('none');
});

test('the head of the cell is of the line chosen, whatever stands out elsewhere', () => {
  expect(fair.answers.map(({ of }) => of)).toStrictEqual(['standsOut', 'proposed', 'showsBest']);
  const chine = tryCell(fair, { edge: 'chine' }, misread);
  expect([chine.all['suspect'], chine.all['standsOut'], chine.number('proposed')]).toStrictEqual([
    'frame2',
    'none',
    0,
  ]);
  const keel = tryCell(fair, { edge: 'keel', view: 'profile', tried: 'frame3', shift: '30 mm' }, misread);
  expect([keel.all['suspect'], keel.all['standsOut']]).toStrictEqual(['frame2', 'frame3']);
  expect(keel.number('proposed')).toBeLessThan(-0.02);
  const sheer = tryCell(fair, {}, misread);
  expect([sheer.all['standsOut'], sheer.all['suspect']]).toStrictEqual(['frame2', 'frame2']);
});

describe('at a stem, where every half-breadth is nothing by nature', () => {
  const withStems = starters.filter(({ table }) => lineOn(table, 'sheer', 'plan').values.includes(0));

  test('no number is doubted, whichever frame is out', () => {
    expect(withStems.length).toBeGreaterThan(2);
    for (const { table } of withStems) {
      const hull = buildHull(offsetsOf(table));
      const stem = hull.fore.index;
      for (const edge of hull.edges.slice(1)) {
        for (const { index } of hull.frames) {
          for (const by of [-0.1, -0.05, 0.05, 0.1]) {
            const line = longLine(hull, edge, 'plan', { index, by });
            expect(line.run(0.0004).corrections[stem]).toMatchObject({ correction: 0, clears: 0 });
            expect(suspectOn(hull, line, reading).station.index).not.toBe(stem);
            expect(rivalOn(hull, line, reading).station.index).not.toBe(stem);
          }
        }
      }
    }
  });

  test('nor moved by the least mend, where the ends may move', () => {
    const free = tryCell(fair, { ends: 'free', tried: 'frame3', shift: '60 mm' }, plan);
    expect(free.number('stem.move')).toBe(0);
    expect(free.number('transom.move')).not.toBe(0);
  });

  test('a transom’s number that is read as nothing is doubted all the same', () => {
    const points = [{ x: -160, y: 0, z: 735 }];
    const stations = plan.stations.map((station, i) =>
      i === 0 ? { ...station, points: [...station.points.slice(0, 2), ...points] } : station,
    );
    const tried = tryCell(fair, {}, { ...plan, stations });
    expect(tried.all['standsOut']).toBe('transom');
    expect(tried.number('proposed')).toBeGreaterThan(0.4);
  });
});

test('a line with four stations is not judged, in words', () => {
  const short: Table = { ...plan, stations: plan.stations.filter((_, i) => [0, 2, 4, 6].includes(i)) };
  const tried = tryCell(fair, {}, short);
  expect(tried.issues['suspect']).toContain('5 stations or more; there are 4');
  expect(tried.issues['frame2.offset']).toBeUndefined();
});

test('asks for no half-breadth beyond the centreline, whatever would be smoothest', () => {
  // The sheer closes on a stem raked by 0.4 m: ending 0.14 m on the other side it would be smoother.
  const out = [578.7, 635.4, 664.8, 660.7, 618.3, 534, 404.7, 227.5, 0];
  const stations = out.map((y, i) => ({
    name: `frame ${i}`,
    points: [
      { x: 750 * i, y: 0, z: 100 },
      { x: 750 * i, y: 0.7 * y, z: 100 },
      { x: i === 8 ? 6400 : 750 * i, y, z: 700 },
    ],
  }));
  const bow: Table = { ...plan, stations };
  const hull = buildHull(offsetsOf(bow));
  const line = longLine(hull, hull.edge('sheer'), 'plan');
  const free = fairRun(line.x, line.values, 0.0004).corrections;
  const { corrections } = line.run(0.0004);
  expect(free.at(-1)!.correction).toBeLessThan(-0.1);
  expect(corrections.at(-1)).toMatchObject({ correction: 0, clears: 0 });
  expect(corrections.slice(0, -1)).toStrictEqual(free.slice(0, -1));
  const tried = tryCell(fair, {}, bow);
  expect(tried.all['oddStation']).not.toBe('frame8');
  expect(tried.issues).toStrictEqual({});
  // Part of the way clears what a parabola clears that far from its top.
  const near = longLine(hull, hull.edge('sheer'), 'plan', { index: 8, by: 0.05 })
    .run(0.0004)
    .corrections.at(-1)!;
  const wanted = fairRun(line.x, [...line.values.slice(0, -1), 0.05], 0.0004).corrections.at(-1)!;
  expect(near.correction).toBeNear(-0.05, 1e-12);
  expect(near.clears).toBeNear(wanted.clears * (1 - (1 + 0.05 / wanted.correction) ** 2), 1e-9);
});

test('witnesses speak for the number that is wrong, and seldom for another', () => {
  const hull = buildHull(offsetsOf(plan));
  // Next to an end, 50 mm at seven stations is told from its neighbour only just.
  for (const index of [2, 3, 4]) {
    const line = longLine(hull, hull.edge('sheer'), 'plan', { index, by: 0.05 });
    const { station } = suspectOn(hull, line, reading);
    expect(station.index).toBe(index);
    const signs = witnessesOf(hull, line, index, reading);
    expect(Object.values(signs).filter(Boolean).length).toBeGreaterThanOrEqual(2);
    expect(witnessesOf(hull, line, (index + 2) % 7, reading).flare).toBe(false);
  }
});

test('ducks on a free batten are in balance, across it and about its end', () => {
  const hull = buildHull(offsetsOf(plan));
  const { ducks, freeBatten, x } = longLine(hull, hull.edge('keel'), 'profile');
  // Small slopes: the forces all but stand square to the base.
  const sum = ducks.reduce((total, force) => total + force, 0);
  const turning = ducks.reduce((total, force, i) => total + force * x[i]!, 0);
  const size = Math.max(...ducks.map(Math.abs));
  expect(Math.abs(sum)).toBeLessThan(0.02 * size);
  expect(Math.abs(turning)).toBeLessThan(0.05 * size * freeBatten.length);
});

test('a moved hull moves the one point and keeps the rest', () => {
  const hull = buildHull(offsetsOf(plan));
  const move = { edge: 'sheer', station: 'frame2', view: 'profile', by: 0.02 } as const;
  const moved = movedHull(hull, [move]);
  expect(moved.edge('sheer').points[2]![2]).toBeCloseTo(0.651, 12);
  expect(moved.edge('chine')).toBe(hull.edge('chine'));
  expect(movedHull(hull, [{ ...move, by: 0 }])).toBe(hull);
  expect(hollows(moved.edge('sheer').batten, 'profile', 1, 0.001)).not.toStrictEqual([]);
});

test('rounding spreads the flare of a side by √2 marks / √12 over its width (closed form)', () => {
  // A side 0.6 m wide at 27° of flare, each number of its two corners anywhere within half a mark of 1.5 mm.
  const [width, flare, nearest] = [0.6, (27 * Math.PI) / 180, 0.0015];
  const parts = 8;
  const off = Array.from({ length: parts }, (_, i) => ((i + 0.5) / parts - 0.5) * nearest);
  let sum = 0;
  for (const [y0, z0] of pairs(off)) {
    for (const [y1, z1] of pairs(off)) {
      const out = width * Math.sin(flare) + y1 - y0;
      sum += (Math.atan2(out, width * Math.cos(flare) + z1 - z0) - flare) ** 2;
    }
  }
  const found = Math.sqrt(sum / parts ** 4);
  // Eight even steps have a spread of √(1 − 1/64) of what lies anywhere between.
  expect(flareSpread(nearest, width) * Math.sqrt(1 - 1 / parts ** 2)).toBeNear(found, 1e-4);
  expect(flareSpread(0.012 ** 0.5, 1)).toBeNear(Math.sqrt((2 * 0.012) / 12), 1e-12);
});

const pairs = (numbers: readonly number[]) => numbers.flatMap((a) => numbers.map((b) => [a, b] as const));

test('counts the other signs in words', () => {
  expect(signsInWords([true, true, true])).toBe('all three agree');
  expect(signsInWords([true, false, true])).toBe('two of three agree');
  expect(signsInWords([false, true])).toBe('one of two agrees');
  expect(signsInWords([false, false, false])).toBe('none of three agrees');
});

function polygonArea(points: readonly Vec2[]): number {
  const twice = points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice) / 2;
}

test('the stations are named close under the drawing, below a comb that hangs under the base', () => {
  for (const { table } of starters) {
    for (const view of ['plan', 'profile']) {
      const drawn = tryCell(fair, { view }, table).drawing!;
      const drawnLines = { ...drawn, shapes: drawn.shapes.filter((shape) => !isText(shape)) };
      const { bottom, left, right } = extents(drawnLines);
      const names = drawn.shapes.flatMap((shape) =>
        shape.shape === 'note' && shape.at ? [shape.at[1]] : [],
      );
      expect(names.length).toBeGreaterThan(2);
      for (const at of names) {
        // On a phone a row of text is about a twentieth of the length.
        expect(bottom - at).toBeGreaterThan(0.04 * (right - left));
        expect(bottom - at).toBeLessThan(0.08 * (right - left));
      }
    }
  }
});
