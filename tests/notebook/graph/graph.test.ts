/** The graph of quantities: links, faults kept where they lie, choices, and how little is worked out. */
import { effect, signal } from '@preact/signals-core';
import { describe, expect, test } from 'vitest';
import { demoBoat, type Read } from '../../../src/boat';
import { isIssue, plainShown } from '../../../src/measure';
import { createGraph } from '../../../src/notebook';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { bench, choice, derived, given, sentence, sum } from '../small-graph';
import { allOf } from '../all-of';

describe('links', () => {
  const plank = () =>
    bench(
      [
        given('keelson.thickness', '18 mm'),
        given('scarf.thickness', 'keelson.thickness'),
        given('scarf.slope', '8', { kind: 'slope' }),
      ],
      [derived('scarf.taper', (read) => read.number('scarf.slope') * read.number('scarf.thickness'))],
    );

  test('fill an entry until something is written, and again when it is cleared', () => {
    const { graph, write } = plank();
    expect(graph.value('scarf.taper')).toBe(0.144);
    write('keelson.thickness', '20 mm');
    expect(graph.value('scarf.taper')).toBe(0.16);
    write('scarf.thickness', '30 mm');
    expect(graph.value('scarf.taper')).toBe(0.24);
    write('keelson.thickness', '40 mm');
    expect(graph.value('scarf.taper')).toBe(0.24);
    write('scarf.thickness', null);
    expect(graph.value('scarf.taper')).toBe(0.32);
    write('keelson.thickness', null);
    expect(graph.value('scarf.taper')).toBe(0.144);
  });

  test('may be sums over several quantities', () => {
    const { graph, write } = plank();
    write('scarf.thickness', '2 * keelson.thickness + 1/4 in');
    expect(graph.value('scarf.thickness')).toBeCloseTo(0.036 + 0.00635, 15);
    write('keelson.thickness', '10 mm');
    expect(graph.value('scarf.thickness')).toBeCloseTo(0.02 + 0.00635, 15);
  });

  test('say what they are: text, whether written, what they name', () => {
    const { graph, write } = plank();
    expect(graph.entry('scarf.thickness')).toStrictEqual({
      text: 'keelson.thickness',
      written: false,
      names: ['keelson.thickness'],
    });
    write('scarf.thickness', '2 * scarf.slope * keelson.thickness');
    expect(graph.entry('scarf.thickness')).toStrictEqual({
      text: '2 * scarf.slope * keelson.thickness',
      written: true,
      names: ['scarf.slope', 'keelson.thickness'],
    });
    write('scarf.thickness', 'three feet');
    expect(graph.entry('scarf.thickness')).toStrictEqual({ text: 'three feet', written: true, names: [] });
    expect(graph.entry('scarf.taper')).toBeUndefined();
    expect(graph.entry('scarf.length')).toBeUndefined();
  });

  test('name what a value was worked out from', () => {
    const { graph, write } = plank();
    graph.value('scarf.taper');
    expect(graph.dependsOn('scarf.taper')).toStrictEqual(['scarf.slope', 'scarf.thickness']);
    expect(graph.dependsOn('scarf.thickness')).toStrictEqual(['keelson.thickness']);
    write('scarf.thickness', '12 mm');
    graph.value('scarf.taper');
    expect(graph.dependsOn('scarf.thickness')).toStrictEqual([]);
  });

  test('offer only a name that helps, with what it is; else what can be typed, in the units chosen', () => {
    const says = (text: string, name = 'keelson.width', chosen = plainShown) => {
      const entries = () => ({ [name]: text });
      const parts = {
        catalogue: () => wholeCatalogue(demoBoat),
        entries,
        shown: plainShown,
        chosen: () => chosen,
      };
      const value = createGraph(parts).value(name);
      return sentence(value).replace(/^.*?there is/, 'there is');
    };
    expect(says('keelson.thicknes')).toBe(
      'there is no quantity "keelson.thicknes"; nearest: keelson.thickness (thickness of the keelson)',
    );
    for (const word of ['twelve', 'three', 'no.such']) {
      const text = word.includes('.') ? word : `${word} mm`;
      expect(says(text)).toBe(`there is no quantity "${word}"; write a length, as 12 mm`);
      const inches = { ...plainShown, length: 'feet' } as const;
      expect(says(text, 'keelson.width', inches)).toBe(
        `there is no quantity "${word}"; write a length, as 3/4 in`,
      );
    }
    // What measures something else would be refused in its turn.
    expect(says('keelson.thicknes', 'scarf.slope')).not.toContain('keelson.thickness');
  });

  test('to what is not there offer the nearest name', () => {
    const { graph, write } = plank();
    write('scarf.thickness', 'keelson.thicknes');
    expect(sentence(graph.value('scarf.thickness'))).toBe(
      'scarf.thickness as given: there is no quantity "keelson.thicknes"; nearest: keelson.thickness (keelson thickness as given)'.replace(
        'scarf.thickness',
        'scarf thickness',
      ),
    );
    expect(sentence(graph.value('scarf.length'))).toBe('there is no quantity "scarf.length"');
    expect(graph.has('scarf.length')).toBe(false);
    expect(graph.quantity('scarf.length')).toBeUndefined();
  });

  test('of another kind are refused', () => {
    const { graph, write } = plank();
    write('scarf.thickness', 'scarf.slope + 1 kg');
    expect(sentence(graph.value('scarf.thickness'))).toMatch(/can't add a mass/);
    write('scarf.slope', 'keelson.thickness');
    expect(sentence(graph.value('scarf.slope'))).toBe(
      'scarf slope as given is a slope; "keelson.thickness" is a length',
    );
  });

  test('list given and derived names', () => {
    const { graph } = plank();
    expect(graph.names).toStrictEqual(['keelson.thickness', 'scarf.thickness', 'scarf.slope', 'scarf.taper']);
    expect(graph.names.every((name) => graph.has(name) && graph.quantity(name)?.name === name)).toBe(true);
  });
});

describe('a fault', () => {
  const chain = () =>
    bench(
      [given('plank.width', '100 mm', { min: '10 mm', max: '1/2 m' }), given('plank.other', '7 mm')],
      [
        sum('plank.first', 'plank.width', 'plank.other'),
        sum('plank.second', 'plank.first'),
        sum('plank.apart', 'plank.other'),
      ],
    );

  test('stays with what depends on it, which says what it waits for', () => {
    const { graph, write } = chain();
    write('plank.width', '3 kg');
    const says = 'plank width as given is a length; "3 kg" is a mass';
    expect(graph.value('plank.width')).toStrictEqual({ issue: says });
    expect(graph.value('plank.first')).toStrictEqual({ issue: says, waitsFor: 'plank.width' });
    expect(graph.value('plank.second')).toStrictEqual({ issue: says, waitsFor: 'plank.width' });
    expect(graph.value('plank.apart')).toBe(0.007);
    write('plank.width', '93 mm');
    expect(graph.value('plank.second')).toBeCloseTo(0.1, 15);
  });

  test('names the limit that is passed, and the limit itself is allowed', () => {
    const { graph, write } = chain();
    for (const [text, found] of [
      ['9.99 mm', 'plank width as given must be at least 10 mm'],
      ['-1 m', 'plank width as given must be at least 10 mm'],
      ['501 mm', 'plank width as given must be at most 1/2 m'],
      ['10 mm', 0.01],
      ['50 cm', 0.5],
      ['plank.other', 'plank width as given must be at least 10 mm'],
    ] as const) {
      write('plank.width', text);
      const value = graph.value('plank.width');
      expect([text, isIssue(value) ? value.issue : value]).toStrictEqual([text, found]);
    }
  });

  test.each([
    ['saw kerf, each layer', '"saw kerf, each layer" must be at most 1 mm'],
    ['the end stands off by', '"the end stands off by" must be at most 1 mm'],
    ['board 1: length sold', '"board 1: length sold" must be at most 1 mm'],
    ['by-line', 'by-line must be at most 1 mm'],
  ])('names what is no noun by its label: %s', (meaning, why) => {
    const { graph } = bench([given('saw.kerf', '2 mm', { meaning, max: '1 mm' })]);
    expect(graph.value('saw.kerf')).toStrictEqual({ issue: why });
  });

  test('of an entry never becomes NaN, Infinity or a blank', () => {
    const { graph, write } = chain();
    for (const text of [
      '',
      ' ',
      '1/0',
      '0/0 mm',
      '1e400 mm',
      '-',
      'NaN',
      'Infinity',
      'plank.width',
      'sqrt(-1) * 1 m',
      '__proto__',
      'a.b.c',
      '('.repeat(500),
    ]) {
      write('plank.width', text);
      expect(sentence(graph.value('plank.width'))).toMatch(/^[^{}]{4,}$/);
      expect(graph.entry('plank.width')?.text).toBe(text);
    }
  });

  test('of a working is told in its own words', () => {
    const { graph } = bench(
      [given('plank.width', '100 mm')],
      [
        derived('plank.told', () => {
          throw new Error('no board is that wide');
        }),
        derived('plank.said', () => ({ issue: 'the board is straight' })),
        derived('plank.nan', () => Number.NaN),
        derived('plank.endless', (read) => read.number('plank.width') / 0),
        sum('plank.after', 'plank.width', 'plank.told'),
      ],
    );
    expect(graph.value('plank.told')).toStrictEqual({ issue: 'no board is that wide' });
    expect(graph.value('plank.said')).toStrictEqual({ issue: 'the board is straight' });
    expect(graph.value('plank.after')).toStrictEqual({
      issue: 'no board is that wide',
      waitsFor: 'plank.told',
    });
    for (const name of ['plank.nan', 'plank.endless'])
      expect(sentence(graph.value(name))).toMatch(/^plank\.\w+ as derived has no value with these numbers/);
  });

  test('of the program itself is not hushed up', () => {
    const { graph } = bench([], [derived('plank.slip', () => (undefined as unknown as string).length)]);
    expect(() => graph.value('plank.slip')).toThrow(TypeError);
  });

  test('of the hull keeps to what asks for the hull', () => {
    const { graph } = bench(
      [],
      [
        derived('hull.length', (read) => read.hull().length),
        sum('hull.half', 'hull.length'),
        derived('plank.width', () => 1),
      ],
    );
    expect(graph.hull()).toStrictEqual({ issue: 'the offsets are missing' });
    expect(sentence(graph.value('hull.half'))).toBe('the offsets are missing');
    expect(graph.value('plank.width')).toBe(1);
  });

  test('where a number is asked of a choice, or a choice of a number', () => {
    const { graph } = bench(
      [given('plank.width', '100 mm'), choice('plank.wood', 'oak')],
      [
        derived('plank.a', (read) => read.number('plank.wood')),
        derived('plank.b', (read) => read.choice('plank.width'), 'choice'),
        derived('plank.c', (read) => read.number('plank.length')),
      ],
    );
    expect(sentence(graph.value('plank.a'))).toBe('plank wood as given is a choice, not a number');
    expect(sentence(graph.value('plank.b'))).toBe('plank width as given is a number, not a choice');
    expect(sentence(graph.value('plank.c'))).toBe(
      'there is no quantity "plank.length"; nearest: plank.width (plank width as given)',
    );
  });
});

describe('choices', () => {
  const woods = () =>
    bench([
      choice('keelson.timber', 'oak'),
      choice('bend.timber', 'keelson.timber'),
      choice('scarf.timber', 'bend.timber'),
    ]);

  test('hold the id of an option, and may be linked', () => {
    const { graph, write } = woods();
    expect(graph.value('scarf.timber')).toBe('oak');
    write('keelson.timber', 'elm');
    expect(graph.value('scarf.timber')).toBe('elm');
    write('bend.timber', 'ash');
    expect([
      graph.value('bend.timber'),
      graph.value('scarf.timber'),
      graph.value('keelson.timber'),
    ]).toStrictEqual(['ash', 'ash', 'elm']);
    write('bend.timber', null);
    expect(graph.value('scarf.timber')).toBe('elm');
  });

  test('say what they name', () => {
    const { graph, write } = woods();
    expect(graph.entry('bend.timber')).toStrictEqual({
      text: 'keelson.timber',
      written: false,
      names: ['keelson.timber'],
    });
    write('bend.timber', 'ash');
    expect(graph.entry('bend.timber')).toStrictEqual({ text: 'ash', written: true, names: [] });
  });

  test('that are none of the options are told with the options', () => {
    const { graph, write } = woods();
    write('keelson.timber', 'pine');
    expect(sentence(graph.value('keelson.timber'))).toBe(
      'keelson timber as given is one of oak, ash, elm; "pine" is none of them',
    );
    expect(graph.value('scarf.timber')).toMatchObject({ waitsFor: 'keelson.timber' });
    write('keelson.timber', 'bent.timber');
    expect(sentence(graph.value('keelson.timber'))).toContain(
      'there is no quantity "bent.timber"; nearest: bend.timber',
    );
  });

  test('with nothing to choose from say so', () => {
    const { graph } = bench([choice('bevels.chine', 'chine', { options: [] })]);
    expect(sentence(graph.value('bevels.chine'))).toBe(
      'bevels chine as given: this boat has none to choose from',
    );
  });

  test('linked in a circle are named', () => {
    const { graph, write } = woods();
    write('keelson.timber', 'scarf.timber');
    expect(sentence(graph.value('bend.timber'))).toBe(
      'goes round in a circle: bend.timber -> keelson.timber -> scarf.timber -> bend.timber',
    );
    write('scarf.timber', 'ash');
    expect(graph.value('bend.timber')).toBe('ash');
  });

  test('pick the quantity that a preset links to', () => {
    const { graph, write } = bench([
      choice('scarf.along', 'oak'),
      given('oak.length', '4 m'),
      given('ash.length', '5 m'),
      given('scarf.wanted', '1 m', { presetFrom: (read) => `${read.choice('scarf.along')}.length` }),
    ]);
    expect(graph.value('scarf.wanted')).toBe(4);
    expect(graph.entry('scarf.wanted')).toStrictEqual({
      text: 'oak.length',
      written: false,
      names: ['oak.length'],
    });
    write('scarf.along', 'ash');
    expect(graph.value('scarf.wanted')).toBe(5);
    write('scarf.wanted', '2 m');
    write('scarf.along', 'oak');
    expect(graph.value('scarf.wanted')).toBe(2);
    write('scarf.wanted', null);
    expect(graph.value('scarf.wanted')).toBe(4);
  });

  test('that are at fault leave no other number in the place of the linked one', () => {
    const { graph, write } = bench([
      choice('scarf.along', 'oak'),
      given('oak.length', '4 m'),
      given('scarf.wanted', '1 m', { presetFrom: (read) => `${read.choice('scarf.along')}.length` }),
    ]);
    write('scarf.along', 'pine');
    expect(graph.value('scarf.wanted')).toMatchObject({ waitsFor: 'scarf.along' });
    write('scarf.wanted', '2 m');
    expect(graph.value('scarf.wanted')).toBe(2);
  });
});

describe('work', () => {
  const timber = () =>
    bench([given('a.width', '2 m'), choice('a.wood', 'oak')], [sum('a.twice', 'a.width', 'a.width')]);

  test('reads several quantities at once, or says what it waits for', () => {
    const { graph, write } = timber();
    const say = () => graph.workOut((read) => `${read.choice('a.wood')} ${read.number('a.twice')}`);
    expect(say()).toBe('oak 4');
    write('a.width', 'x');
    expect(say()).toMatchObject({ waitsFor: 'a.width' });
  });

  test('is tracked like a value', () => {
    const { graph, write } = timber();
    const seen: unknown[] = [];
    const stop = effect(() => void seen.push(graph.workOut((read) => read.number('a.twice'))));
    write('a.width', '3 m');
    stop();
    write('a.width', '4 m');
    expect(seen).toStrictEqual([4, 6]);
  });
});

describe('under other entries', () => {
  const plank = () =>
    bench(
      [
        given('keelson.thickness', '18 mm'),
        given('scarf.thickness', 'keelson.thickness'),
        given('scarf.slope', '8', { kind: 'slope' }),
      ],
      [
        derived('scarf.taper', (read) => read.number('scarf.slope') * read.number('scarf.thickness')),
        sum('scarf.twice', 'scarf.thickness', 'scarf.thickness'),
      ],
    );
  const slope = (text: string | null) => () => ({ 'scarf.slope': text });

  test('it answers what would be, works out only what hangs on them, and leaves the graph as it is', () => {
    const { graph, worked } = plank();
    expect([graph.value('scarf.taper'), graph.value('scarf.twice')]).toStrictEqual([0.144, 0.036]);
    worked();
    const steeper = graph.with(slope('12'));
    expect(steeper.value('scarf.taper')).toBeCloseTo(12 * 0.018, 12);
    expect(steeper.value('scarf.twice')).toBe(0.036);
    expect(steeper.entry('scarf.slope')).toStrictEqual({ text: '12', written: true, names: [] });
    expect(worked()).toStrictEqual({ 'scarf.taper': 1 });
    expect(graph.entry('scarf.slope')).toStrictEqual({ text: '8', written: false, names: [] });
    expect(worked()).toStrictEqual({});
  });

  test('it follows what is written in the graph, but for those; null goes back to the preset', () => {
    const { graph, write } = plank();
    const steeper = graph.with(slope('12'));
    const asPreset = graph.with(slope(null));
    write('scarf.slope', '10');
    write('keelson.thickness', '20 mm');
    expect([graph, steeper, asPreset].map((one) => one.value('scarf.taper'))).toStrictEqual(
      [10, 12, 8].map((of) => of * 0.02),
    );
  });

  test('it may lie over another such, and over what was measured', () => {
    const { graph } = plank();
    const built = graph.asBuilt(() => ({ 'keelson.thickness': '17 mm' }));
    const both = built.with(slope('12')).with(() => ({ 'scarf.thickness': '2 * keelson.thickness' }));
    expect(both.value('scarf.taper')).toBeCloseTo(12 * 0.034, 12);
    expect(both.entry('keelson.thickness')).toMatchObject({ text: '18 mm', built: '17 mm' });
    expect(both.designed('scarf.taper')).toBeCloseTo(12 * 0.036, 12);
    expect(built.designed('scarf.thickness')).toBe(0.018);
  });

  test('watched, it wakes its watcher only where it moves', () => {
    const { graph, write } = plank();
    const thickness = signal('20 mm');
    const other = graph.with(() => ({ 'scarf.thickness': thickness.value }));
    const seen: unknown[] = [];
    const stop = effect(() => void seen.push(other.value('scarf.twice')));
    write('scarf.slope', '9');
    write('keelson.thickness', '30 mm');
    thickness.value = '25 mm';
    stop();
    expect(seen).toStrictEqual([0.04, 0.05]);
  });

  test('a circle that they close is named, and one that they open is gone', () => {
    const { graph, write } = plank();
    const closed = graph.with(() => ({ 'keelson.thickness': 'scarf.twice' }));
    expect(graph.value('scarf.twice')).toBe(0.036);
    expect(sentence(closed.value('scarf.twice'))).toMatch(
      /^goes round in a circle: scarf.twice -> scarf.thickness -> keelson.thickness/,
    );
    write('keelson.thickness', 'scarf.twice');
    expect(sentence(graph.value('scarf.twice'))).toMatch(/circle/);
    expect(graph.with(() => ({ 'keelson.thickness': '5 mm' })).value('scarf.twice')).toBe(0.01);
  });
});

describe('how little is worked out', () => {
  test('only what is read, once, and again only when something it read has moved', () => {
    const { graph, write, worked } = bench(
      [given('a.one', '1 m'), given('a.two', '2 m')],
      [
        sum('a.left', 'a.one'),
        sum('a.right', 'a.two'),
        sum('a.top', 'a.left', 'a.right'),
        sum('a.never', 'a.top'),
      ],
    );
    expect(worked()).toStrictEqual({});
    graph.value('a.top');
    graph.value('a.top');
    expect(worked()).toStrictEqual({ 'a.top': 1, 'a.left': 1, 'a.right': 1 });
    write('a.one', '4 m');
    expect(worked()).toStrictEqual({});
    graph.value('a.top');
    expect(worked()).toStrictEqual({ 'a.left': 1, 'a.top': 1 });
    // The same length written otherwise moves nothing downstream.
    write('a.one', '400 cm');
    graph.value('a.top');
    expect(worked()).toStrictEqual({});
    write('a.one', '1 m');
    write('a.one', '4 m');
    graph.value('a.top');
    expect(worked()).toStrictEqual({});
  });

  test('an effect is told only of what moved', () => {
    const { graph, write } = bench([given('a.one', '1 m'), given('a.two', '2 m')], [sum('a.left', 'a.one')]);
    let told = 0;
    const stop = effect(() => {
      graph.value('a.left');
      told += 1;
    });
    write('a.two', '5 m');
    write('a.one', '1000 mm');
    expect(told).toBe(1);
    write('a.one', '3 m');
    expect(told).toBe(2);
    stop();
  });

  test('the hull is drawn when first asked for, and again only when an offset moves', () => {
    const catalogue = wholeCatalogue(demoBoat);
    let hulls = 0;
    const { graph, write, worked } = bench(allOf(catalogue).given, allOf(catalogue).derived, (read: Read) => {
      hulls += 1;
      return catalogue.hull(read);
    });
    expect(graph.value('timber.sitkaSpruce.modulus')).toBeGreaterThan(0);
    expect(hulls).toBe(0);
    for (const name of graph.names) graph.value(name);
    expect(hulls).toBe(1);
    worked();

    const mass = graph.value('side.mass') as number;
    write('side.thickness', '12 mm');
    for (const name of graph.names) graph.value(name);
    expect(graph.value('side.mass') as number).toBeCloseTo(2 * mass, 9);
    expect(hulls).toBe(1);
    const woken = Object.keys(worked());
    expect(woken).toContain('hull.structureMass');
    // What is kept free of screws at the sides of a frame follows the skin.
    const others = woken.filter((name) => !/\.keepOut\b/.test(name));
    expect(others.filter((name) => /^(chine|frame3|bottom)\./.test(name))).toStrictEqual([]);

    write('frame3.sheer.height', '700 mm');
    expect(hulls).toBe(1);
    graph.value('sheer.length');
    graph.value('side.area');
    expect(hulls).toBe(2);
  });

  test('two graphs of one boat do not disturb each other', () => {
    const catalogue = wholeCatalogue(demoBoat);
    const one = bench(allOf(catalogue).given, allOf(catalogue).derived, catalogue.hull);
    const other = bench(allOf(catalogue).given, allOf(catalogue).derived, catalogue.hull);
    other.write('keelson.thickness', '30 mm');
    expect([one.graph.value('scarf.taper'), other.graph.value('scarf.taper')]).toStrictEqual([0.144, 0.24]);
  });
});

test('two quantities of one name are refused, not one of them hidden', () => {
  const twice = [given('a', '1 mm'), given('b', '2 mm')];
  expect(() => bench([...twice, ...twice.slice(0, 1)])).toThrow('two quantities of one name: a');
});
