/** A graph that grows: cells that come and go, names that come later, rows found when somebody asks. */
import { computed, effect, signal } from '@preact/signals-core';
import { describe, expect, test } from 'vitest';
import { demoBoat, type Derived, type Given, ownerOf, type Read } from '../../../src/boat';
import { type Instance, plainInstance } from '../../../src/cells';
import { plainShown } from '../../../src/measure';
import { createBook } from '../../../src/notebook/book';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { createGraph } from '../../../src/notebook/graph/graph';
import { catalogueFrom } from '../../../src/notebook/graph/on-hand';
import { freshState } from '../../../src/notebook/state/state';
import { cellOf } from '../../cells/cell-of';
import { derived, given, sentence, sum } from '../small-graph';

const noHull = (): never => {
  throw new Error('the offsets are missing');
};

/** A graph over owners that come and go, with a count of what was worked out. */
function growing(start: Readonly<Record<string, readonly (Given | Derived)[]>>) {
  let worked: string[] = [];
  const counted = (one: Given | Derived): Given | Derived =>
    'preset' in one
      ? one
      : {
          ...one,
          from: (read) => {
            worked.push(one.name);
            return one.from(read);
          },
        };
  const ownerWith = (quantities: readonly (Given | Derived)[]) => ownerOf(quantities.map(counted));
  const owners = signal(
    new Map(Object.entries(start).map(([name, quantities]) => [name, ownerWith(quantities)])),
  );
  const entries = signal<Readonly<Record<string, string>>>({});
  const catalogue = computed(() => catalogueFrom(owners.value.values(), { hull: noHull }));
  return {
    graph: createGraph({
      catalogue: () => catalogue.value,
      entries: () => entries.value,
      shown: plainShown,
    }),
    write: (name: string, text: string) => (entries.value = { ...entries.peek(), [name]: text }),
    come: (name: string, ...quantities: (Given | Derived)[]) =>
      (owners.value = new Map([...owners.peek(), [name, ownerWith(quantities)]])),
    go: (name: string) => (owners.value = new Map([...owners.peek()].filter(([other]) => other !== name))),
    worked: () => {
      const since = worked;
      worked = [];
      return since;
    },
  };
}

const keelson = [given('keelson.thickness', '18 mm'), sum('keelson.twice', 'keelson.thickness')];
/** Its link is to another owner's, where there is such a one. */
const linked = (name: string, to: string, preset: string): Given =>
  given(name, preset, { presetFrom: (read: Read) => (read.has(to) ? to : preset) });

describe('an owner that comes', () => {
  test('brings its own, and leaves what was worked out', () => {
    const { graph, come, worked } = growing({ keelson });
    expect(graph.value('keelson.twice')).toBe(0.018);
    expect(worked()).toStrictEqual(['keelson.twice']);
    come('scarf', given('scarf.slope', '8', { kind: 'slope' }), sum('scarf.length', 'keelson.twice'));
    expect([graph.has('scarf.length'), graph.value('scarf.length')]).toStrictEqual([true, 0.018]);
    expect(graph.value('keelson.twice')).toBe(0.018);
    expect(worked()).toStrictEqual(['scarf.length']);
    expect(graph.names).toContain('scarf.slope');
  });

  test('is followed by a link that had fallen back, and let go again', () => {
    const { graph, come, go } = growing({ own: [linked('own.thickness', 'keelson.thickness', '10 mm')] });
    expect([graph.value('own.thickness'), graph.entry('own.thickness')?.names]).toStrictEqual([0.01, []]);
    come('keelson', ...keelson);
    expect(graph.value('own.thickness')).toBe(0.018);
    expect(graph.entry('own.thickness')?.names).toStrictEqual(['keelson.thickness']);
    go('keelson');
    expect([graph.value('own.thickness'), graph.entry('own.thickness')?.names]).toStrictEqual([0.01, []]);
  });

  test('gives a value to what was typed over a name that was not there', () => {
    const { graph, write, come, go } = growing({ own: [given('own.thickness', '10 mm')] });
    write('own.thickness', '2 * keelson.thickness');
    expect(sentence(graph.value('own.thickness'))).toContain('no quantity "keelson.thickness"');
    come('keelson', ...keelson);
    expect(graph.value('own.thickness')).toBe(0.036);
    go('keelson');
    expect(sentence(graph.value('own.thickness'))).toContain('no quantity "keelson.thickness"');
  });

  test('is offered in place of a name that is nearly its own', () => {
    const { graph, write, come } = growing({ own: [given('own.width', '10 mm')] });
    write('own.width', 'keelson.thicknes');
    expect(sentence(graph.value('own.width'))).not.toContain('nearest');
    come('keelson', ...keelson);
    expect(sentence(graph.value('own.width'))).toContain('nearest: keelson.thickness');
  });

  test('wakes who looks at it, and nobody else', () => {
    const { graph, come, go } = growing({ keelson });
    const seen: unknown[] = [];
    let others = 0;
    const stops = [
      effect(() => void seen.push([graph.has('scarf.length'), graph.value('scarf.length')])),
      effect(() => {
        void [
          graph.value('keelson.twice'),
          graph.quantity('keelson.twice'),
          graph.entry('keelson.thickness'),
        ];
        others += 1;
      }),
    ];
    come('scarf', sum('scarf.length', 'keelson.twice'));
    go('scarf');
    expect(seen).toStrictEqual([
      [false, { issue: 'there is no quantity "scarf.length"' }],
      [true, 0.018],
      [false, { issue: 'there is no quantity "scarf.length"' }],
    ]);
    expect(others).toBe(1);
    for (const stop of stops) stop();
  });

  test('comes into what lies over the graph too', () => {
    const { graph, come, go, worked } = growing({ keelson });
    const thick = graph.with(() => ({ 'keelson.thickness': '30 mm', 'scarf.slope': '10' }));
    const built = graph.asBuilt(() => ({ 'keelson.thickness': '17 mm' }));
    const all = () => [graph, thick, built].map((one) => one.value('scarf.length'));
    const slope = given('scarf.slope', '8', { kind: 'slope' });
    const length = derived(
      'scarf.length',
      (read) => read.number('scarf.slope') * read.number('keelson.twice'),
    );
    expect(all().map(sentence)).toStrictEqual(Array(3).fill('there is no quantity "scarf.length"'));
    come('scarf', slope, length);
    expect(all()).toStrictEqual([0.144, 0.3, 0.136].map((value) => expect.closeTo(value, 12) as number));
    go('scarf');
    expect(all().map(sentence)).toStrictEqual(Array(3).fill('there is no quantity "scarf.length"'));
    worked();
    come('scarf', { ...slope, preset: '6' }, length);
    expect(all()).toStrictEqual([0.108, 0.3, 0.102].map((value) => expect.closeTo(value, 12) as number));
    expect(new Set(worked())).toStrictEqual(new Set(['scarf.length']));
  });

  test('may be another under the same name', () => {
    const { graph, come } = growing({ keelson, scarf: [given('scarf.slope', '8', { kind: 'slope' })] });
    expect(graph.value('scarf.slope')).toBe(8);
    come('scarf', sum('scarf.slope', 'keelson.thickness'));
    expect([graph.value('scarf.slope'), graph.entry('scarf.slope')]).toStrictEqual([0.018, undefined]);
    come('scarf', given('scarf.slope', '12', { kind: 'slope' }));
    expect([graph.value('scarf.slope'), graph.entry('scarf.slope')?.text]).toStrictEqual([12, '12']);
  });
});

test('a fact is found anew where another owner has come under its name', () => {
  const times = (by: number) =>
    derived('scarf.told', (read) => read.fact('scarf.line', (at) => by * at.number('keelson.thickness')));
  const { graph, come } = growing({ keelson, scarf: [times(2)] });
  expect(graph.value('scarf.told')).toBe(0.036);
  come('scarf', times(3));
  expect(graph.value('scarf.told')).toBeCloseTo(0.054, 12);
});

test('a name that is asked for and was never listed is found all the same', () => {
  const hidden = sum('scarf.hidden', 'keelson.thickness');
  const owner = ownerOf([hidden]);
  const catalogue = catalogueFrom([ownerOf(keelson), { ...owner, names: () => [] }], { hull: noHull });
  const graph = createGraph({ catalogue: () => catalogue, entries: () => ({}), shown: plainShown });
  expect(graph.names).not.toContain('scarf.hidden');
  expect(graph.value('scarf.hidden')).toBe(0.018);
});

describe('an open book', () => {
  const placed = (...ids: string[]): readonly Instance[] => ids.map((id) => plainInstance(cellOf(id)!));
  const bookWith = (start: readonly Instance[]) => {
    const instances = signal(start);
    const book = createBook(freshState(demoBoat), (table, ends) => catalogueOf(table, instances.value, ends));
    return { book, instances };
  };

  test('keeps its graph when a cell comes, and says what one opened with that cell says', () => {
    const { book, instances } = bookWith(placed('scarf'));
    const graph = book.first.value;
    expect([graph.value('scarf.taper'), graph.has('laminate.force')]).toStrictEqual([0.144, false]);
    instances.value = placed('scarf', 'laminate', 'limber');
    expect(book.first.value).toBe(graph);
    const whole = bookWith(placed('scarf', 'laminate', 'limber')).book.first.value;
    expect(graph.names).toStrictEqual(whole.names);
    for (const name of whole.names)
      expect([name, graph.value(name)]).toStrictEqual([name, whole.value(name)]);
  });

  test('takes a cell for the same, though it is placed anew', () => {
    const { book, instances } = bookWith(placed('scarf'));
    const before = book.catalogue.value.find('scarf.taper');
    instances.value = placed('scarf', 'limber');
    expect(book.catalogue.value.find('scarf.taper')).toBe(before);
    instances.value = [{ ...plainInstance(cellOf('scarf')!), presets: { slope: '1 in 12' } }];
    expect(book.first.value.value('scarf.slope')).toBe(12);
  });
});

describe('rows of a table', () => {
  const catalogue = catalogueOf(demoBoat, [plainInstance(cellOf('limber')!)]);
  const graph = createGraph({ catalogue: () => catalogue, entries: () => ({}), shown: plainShown });

  test('are found by name, each once, and are none where the choice has no such answer', () => {
    const row = graph.quantity('limber.frame2.clearArea');
    expect(row?.meaning).toMatch(/, frame 2$/);
    expect(graph.quantity('limber.frame2.clearArea')).toBe(row);
    expect(typeof graph.value('limber.frame2.clearArea')).toBe('number');
    for (const none of [
      'limber.frame99.clearArea',
      'limber.frame2.frame',
      'limber.frame2.x.clearArea',
      'limber.frame2',
    ])
      expect([none, graph.has(none)]).toStrictEqual([none, false]);
  });

  test('are listed where names are listed', () => {
    expect(graph.namesOf('limber')).toContain('limber.frame2.clearArea');
    expect(graph.names).toContain('limber.frame2.clearArea');
  });
});
