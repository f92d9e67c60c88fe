/** The notebooks that come with the page: what they name exists, and what they claim is so. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoBoat, type Option, starters, type Table, type Value } from '../../src/boat';
import {
  type Cell,
  type Instance,
  isAsked,
  isChoice,
  isTold,
  plainInstance,
  warningsOf,
} from '../../src/cells';
import { cells } from '../../src/cells/all';
import { cellOf } from '../cells/cell-of';
import { isIssue, plainShown, write } from '../../src/measure';
import { type Book, createBook } from '../../src/notebook/book';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { createFindings } from '../../src/notebook/graph/findings';
import { looseCatalogue } from '../../src/notebook/graph/loose-catalogue';
import { formulasIn } from '../../src/notebook/formulas/formulas-in';
import { placeFormulas } from '../../src/notebook/formulas/place-formulas';
import { withFormulas } from '../../src/notebook/formulas/with-formulas';
import { parseNotebook } from '../../src/notebook/markdown';
import { WORDS } from '../../src/notebook/text/glossary';
import type { NotebookPage } from '../../src/notebook/text/page-text';
import { freshState, noBoat } from '../../src/notebook/state/state';
import { partsOf } from '../../src/page/quick/parts';
import { triesOf } from './places';
import { saidOn } from './said';
import { epoxyDensity, flourDensity } from '../../src/trade/paste';
import { allOf } from './all-of';

const root = new URL('../../', import.meta.url);
const textOf = (path: string) => readFileSync(new URL(path, root), 'utf8');
const files = readdirSync(new URL('notebooks', root)).filter((name) => name.endsWith('.md'));
const texts = new Map(files.map((name) => [name, textOf(`notebooks/${name}`)]));
/** The examples of the guide: those blocks of it that are whole notebooks. */
const examples = [...textOf('docs/authoring.md').matchAll(/^````markdown\n(---\n[^]*?)^````$/gm)];
const pages: readonly NotebookPage[] = [
  ...[...texts].map(([name, text]) => parseNotebook(text, name)),
  ...examples.map(([, text = ''], at) => parseNotebook(text, `authoring example ${at + 1}.md`)),
];
const page = (id: string) => pages.find((one) => one.id === id)!;

const cell = (id: string): Cell => {
  const known = cellOf(id);
  if (!known) throw new Error(`there is no cell "${id}"`);
  return known;
};
const placed = (one: NotebookPage): Instance[] =>
  one.places.map(({ cell: id, instance, presets }) => ({ cell: cell(id), name: instance, presets }));
const named = pages.flatMap(placed).filter(({ cell: { id }, name }) => id !== name);
const { texts: formulas } = placeFormulas(pages, {}, () => false);
const bookOf = (table: Table): Book =>
  createBook(freshState(table), (of) =>
    withFormulas(catalogueOf(of, [...cells.map(plainInstance), ...named]), formulas),
  );
/** As the page has it: a notebook that knows no boat has none. */
const bookFor = (one: NotebookPage, table: Table): Book =>
  one.boat === 'none' ? createBook(freshState(noBoat), () => looseCatalogue(placed(one))) : bookOf(table);
const numberIn = (book: Book, name: string): number => {
  const value: Value = book.inHand.value.value(name);
  if (typeof value !== 'number') throw new Error(`${name}: ${JSON.stringify(value)}`);
  return value;
};

describe.each(pages.map((one) => [one.id, one] as const))('%s', (_, one) => {
  test('is read without a fault, and says what it is', () => {
    expect(one.faults).toStrictEqual([]);
    expect(one.title).not.toBe('');
    expect(one.summary).toMatch(/\.$/);
    expect(one.order).toBeLessThan(1000);
  });

  test('stands cells that exist, with entries for inputs that they have', () => {
    const places = one.places;
    // The notebook of words tells what things are called, and works nothing out.
    expect(places.length > 0).toBe(one.id !== WORDS);
    for (const { cell: id, presets } of places) {
      expect(Object.keys(cell(id).inputs)).toEqual(expect.arrayContaining(Object.keys(presets)));
    }
  });

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'has a value for every cell on the %s',
    (_id, table) => {
      const book = bookFor(one, table);
      const silent = placed(one).flatMap(({ cell: { inputs, steps }, name }) =>
        [...Object.keys(inputs), ...Object.keys(steps)]
          .map((key) => [`${name}.${key}`, book.first.value.value(`${name}.${key}`)] as const)
          .filter(([, value]) => isIssue(value)),
      );
      expect(silent).toStrictEqual([]);
    },
  );

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'can make each comparison and has each value that is said on the %s',
    (_id, table) => {
      const book = bookFor(one, table);
      const silent = saidOn(book.first.value, one)
        .flatMap(({ values }) => values)
        .map(({ of, line }) => [line, of, book.first.value.value(of)] as const)
        .filter(([, , value]) => isIssue(value));
      expect(silent).toStrictEqual([]);
    },
  );

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'has formulas that can be read, with a value for each line on the %s',
    (_id, table) => {
      const book = bookFor(one, table);
      const silent = (one.formulas ?? []).flatMap(({ name }) =>
        formulasIn(book.catalogue.value)
          .get(name)!
          .lines.map(({ full, text, spot }) => [text, spot, book.first.value.value(full)] as const)
          .filter(([, spot, value]) => spot || isIssue(value)),
      );
      expect(silent).toStrictEqual([]);
    },
  );

  test('offers second versions that can be written and that move something', () => {
    for (const { changes, title } of triesOf(one)) {
      const book = bookFor(one, demoBoat);
      book.tryAnother(changes);
      const [first, second] = [book.first.value, book.second.value!];
      for (const name of Object.keys(changes)) {
        expect([name, first.entry(name)]).not.toContain(undefined);
        expect([name, second.value(name)]).toStrictEqual([name, expect.any(Number)]);
      }
      const results = placed(one).flatMap(({ cell: { steps }, name }) =>
        Object.keys(steps).map((key) => `${name}.${key}`),
      );
      const moved = results.filter((name) => first.value(name) !== second.value(name));
      expect([title, moved.length]).not.toContain(0);
    }
  });

  test('promises nothing that no number can', () => {
    expect(JSON.stringify(one)).not.toMatch(/\bsafe(ly|ty|r|st)?\b/i);
  });
});

test('a name stands for one cell in all notebooks, and for no part of a boat', () => {
  const names = named.map(({ name }) => name);
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toStrictEqual([]);
  const taken = new Set(cells.map(({ id }) => id));
  for (const { table } of starters) {
    const { given, derived } = allOf(catalogueOf(table, []));
    for (const quantity of [...given, ...derived]) taken.add(quantity.name.split('.')[0]!);
  }
  expect(names.filter((name) => taken.has(name))).toStrictEqual([]);
});

// The keelson of the guide's example by hand: breadth times depth, times length, times 550 kg to the cubic metre.
test('the formula of the guide comes to what is worked out by hand', () => {
  const book = bookOf(demoBoat);
  const [width, thickness, length] = ['width', 'thickness', 'length'].map((of) =>
    numberIn(book, `keelson.${of}`),
  ) as [number, number, number];
  const mass = width * thickness * length * 550;
  expect(numberIn(book, 'keelsonCarry.mass')).toBeCloseTo(mass, 9);
  expect(book.first.value.value('keelsonCarry.forOne')).toBe(mass < 20 ? 'yes' : 'no');
});

test('no two notebooks stand in the same place of the list', () => {
  expect(new Set(pages.map(({ order }) => order)).size).toBe(pages.length);
});

test('links between notebooks lead to notebooks', () => {
  const links = pages.flatMap((one) =>
    [...JSON.stringify(one).matchAll(/"type":"link","to":"([^"#]+)/g)].map(([, to]) => to!),
  );
  expect(links.length).toBeGreaterThan(0);
  expect(
    links.filter((to) => !/^https?:/.test(to) && !existsSync(new URL(`notebooks/${to}`, root))),
  ).toStrictEqual([]);
});

test('links to headings lead to headings of the page', () => {
  for (const one of pages) {
    const ids = one.blocks.flatMap((block) => (block.type === 'heading' ? [block.id] : []));
    const links = [...JSON.stringify(one).matchAll(/"to":"#([^"]+)/g)].map(([, to]) => to);
    expect(ids).toEqual(expect.arrayContaining(links));
  }
});

describe('quick answers', () => {
  const quick = page('quick-answers');
  const inside = placed(quick);
  const graph = bookFor(quick, demoBoat).first.value;

  test('holds every cell that can do without a hull, none of them plain', () => {
    // What asks the whole hull has no quick answer; boards are cut for a list of lengths too, sheets
    // for a list of parts, cloth and its resin for a flat face, a sheet is bent on any curve, and
    // some ask facts of their own numbers alone.
    const alone = cells.filter(
      ({ id, steps }) =>
        ['boards', 'cloth', 'cure', 'fillet', 'plyBend', 'resin', 'sand', 'sheets'].includes(id) ||
        !Object.values(steps).some(isTold),
    );
    expect([...new Set(quick.places.map((place) => place.cell))].sort()).toStrictEqual(
      alone.map(({ id }) => id).sort(),
    );
    expect(quick.places.filter((place) => place.cell === place.instance)).toStrictEqual([]);
  });

  test('knows nothing of the boat: on each boat the answers are the same', () => {
    const answers = (table: Table) => {
      const { first } = bookOf(table);
      return inside
        .filter(({ cell: { id } }) => id !== 'boards')
        .flatMap(({ cell: { answers: given }, name }) =>
          given.map(({ of }) => [`${name}.${of}`, first.value.value(`${name}.${of}`)]),
        );
    };
    const onDory = answers(demoBoat);
    for (const { table } of starters) expect(answers(table)).toStrictEqual(onDory);
  });

  test('asks for no part of a boat: none is among what can be chosen, and none of her own fields stands there', () => {
    const asked = inside.flatMap((instance) =>
      Object.entries(instance.cell.inputs)
        .filter(([key]) => isAsked(instance, key, graph))
        .map(([key, spec]) => ({ name: `${instance.name}.${key}`, spec })),
    );
    expect(asked.length).toBeGreaterThan(150);
    const speaking = asked.filter(({ spec }) => !isChoice(spec) && spec.ofBoat);
    const choosing = asked.flatMap(({ name, spec }) => {
      const { options = [] } = graph.quantity(name) as { options?: readonly Option[] };
      const among = options.some(({ ofBoat }) => ofBoat);
      return isChoice(spec) && (among || options.length < 2 || typeof spec.options === 'string')
        ? [name]
        : [];
    });
    expect([...speaking.map(({ name }) => name), ...choosing]).toStrictEqual([]);
    // A scarf is asked for a board, where a boat has her keelson.
    const { options } = graph.quantity('quickScarf.part') as { options: readonly Option[] };
    expect(options.map(({ label }) => label)).toStrictEqual(['a board', 'plywood, for a panel', 'spar']);
  });

  test('asks each question in a sentence, under the stage of the work', () => {
    const parts = partsOf(quick.blocks);
    expect(parts.map(({ heading }) => heading?.id)).toStrictEqual([
      undefined,
      ...quick.headings.map(({ id }) => id),
    ]);
    const questions = parts.flatMap((part) => part.questions);
    expect(questions.map(({ name }) => name)).toStrictEqual(quick.places.map(({ instance }) => instance));
    for (const { asks } of questions) expect(asks).toMatch(/^[A-Z].{5,110}\?$/);
    expect(new Set(questions.map(({ asks }) => asks)).size).toBe(questions.length);
  });
});

describe('the build and the notebooks of the stages', () => {
  const order = cells.map(({ id }) => id);
  const inOrder = (ids: readonly string[]) => ids.toSorted((a, b) => order.indexOf(a) - order.indexOf(b));
  const plainIn = (one: NotebookPage) =>
    one.places.filter((place) => place.cell === place.instance).map((place) => place.cell);
  const ofStage = (stage: string) => pages.filter((one) => one.stage === stage && one.order < 20);

  test('go through the plain cells in the order of the work', () => {
    for (const one of [page('the-build'), ...pages.filter((other) => other.order >= 10 && other.order < 20)])
      expect([one.id, plainIn(one)]).toStrictEqual([one.id, inOrder(plainIn(one))]);
    expect(page('the-build').places.filter((place) => place.cell !== place.instance)).toStrictEqual([]);
  });

  test.each(cells.map(({ id, stage }) => [id, stage]))('hold %s plain, where its work comes', (id, stage) => {
    const places = [page('the-build'), ...ofStage(stage)].filter((one) => plainIn(one).includes(id));
    expect(places.length).toBeGreaterThan(0);
  });

  test.each(['shape', 'frames'])('leave out no cell of the stage "%s"', (stage) => {
    const own = cells.filter((one) => one.stage === stage).map(({ id }) => id);
    expect(ofStage(stage).flatMap(plainIn)).toStrictEqual(own);
  });
});

describe('one thick board or two thin', () => {
  const lesson = page('one-thick-or-two-thin');
  const [twoThin, fourThin] = triesOf(lesson);
  const own = new Set(['chineBend', 'chineLayers']);

  test('tells its story with numbers of its own, the same whatever boat is on the bench', () => {
    const told = (table: Table) =>
      saidOn(bookOf(table).first.value, lesson)
        .filter(({ values }) => values.every(({ of }) => own.has(of.split('.')[0]!)))
        .map(({ words }) => words)
        .filter((words) => !/nobody need saw|goes round within/i.test(words));
    for (const { table } of starters) expect(told(table)).toStrictEqual(told(demoBoat));
  });

  test('tells of a log twice as thick as planned that is near to breaking and is stopped by the cell', () => {
    const book = bookOf(demoBoat);
    expect(numberIn(book, 'chineBend.thickness')).toBe(numberIn(book, 'chineLayers.thickness'));
    expect(numberIn(book, 'chineBend.leastRadius')).toBeGreaterThan(numberIn(book, 'chineBend.radius'));
    const [stop] = warningsOf(
      named.find(({ name }) => name === 'chineBend')!,
      (by) => book.first.value.workOut(by),
      (value, kind) => write(value, kind, plainShown),
    ).filter(({ warning }) => warning.weight === 'stop');
    expect(stop?.says).toMatch(/./);
    // A straight, clear board that creaks: of such boards so many break that it could be this one.
    expect(numberIn(book, 'chineBend.chance')).toBeGreaterThan(0.05);
  });

  test('halves the stretch and leaves an eighth of the pull in each board, on the same radius', () => {
    const book = bookOf(demoBoat);
    const before = ['strain', 'share', 'force', 'radius'].map((key) => numberIn(book, `chineBend.${key}`));
    book.tryAnother(twoThin!.changes);
    const after = ['strain', 'share', 'force', 'radius'].map((key) => numberIn(book, `chineBend.${key}`));
    const ratios = after.map((value, at) => value / before[at]!);
    [1 / 2, 1 / 2, 1 / 8, 1].forEach((expected, at) => expect(ratios[at]).toBeCloseTo(expected, 12));
    expect(numberIn(book, 'chineBend.share')).toBeLessThan(numberIn(book, 'chineBend.allowed'));
  });

  test('says of both layers what it says of one: half the share, a quarter of the pull, four times as stiff glued', () => {
    const book = bookOf(demoBoat);
    const of = (key: string) => numberIn(book, `chineLayers.${key}`);
    expect(of('share') / of('solidShare')).toBeCloseTo(1 / 2, 12);
    expect(of('solidShare')).toBeCloseTo(numberIn(book, 'chineBend.share'), 12);
    expect(of('force') / of('solidForce')).toBeCloseTo(1 / 4, 12);
    expect(of('stiffer')).toBeCloseTo(4, 12);
    expect(of('springBack')).toBeCloseTo(1 / 4, 12);
  });

  test('with four layers gains by their number in stretch, and by its square in pull and spring-back', () => {
    const book = bookOf(demoBoat);
    const keys = ['share', 'force', 'springBack'].map((key) => `chineLayers.${key}`);
    const before = keys.map((name) => numberIn(book, name));
    book.tryAnother(fourThin!.changes);
    const ratios = keys.map((name, at) => numberIn(book, name) / before[at]!);
    [1 / 2, 1 / 4, 1 / 4].forEach((expected, at) => expect(ratios[at]).toBeCloseTo(expected, 12));
  });

  test('tells that the chance of breaking falls far faster than the stretch, though there are two boards', () => {
    const book = bookOf(demoBoat);
    const of = (key: string) => numberIn(book, `chineLayers.${key}`);
    expect(of('chanceAny')).toBeGreaterThan(of('chance'));
    expect(of('chanceAny') / of('solidChance')).toBeLessThan(1 / 1000);
    expect(of('solidChance')).toBeCloseTo(numberIn(book, 'chineBend.chance'), 12);
    expect(of('solidOneIn')).toBe(numberIn(book, 'chineBend.oneIn'));
    // As they are read: the cap of the count hides nothing of it.
    expect(of('oneIn') / of('solidOneIn')).toBeGreaterThan(1000);
  });

  test('gives a bill in which stress, pull and fastenings get smaller and glue, clamps, wood and money larger', () => {
    const book = bookOf(demoBoat);
    const of = (key: string) => numberIn(book, `chineLayers.${key}`);
    for (const [layers, solid] of [
      ['stress', 'solidStress'],
      ['share', 'solidShare'],
      ['force', 'solidForce'],
      ['fastenings', 'solidFastenings'],
      ['solidBought', 'bought'],
      ['solidCost', 'cost'],
    ] as const)
      expect([layers, of(layers) < of(solid)]).toStrictEqual([layers, true]);
    const [long, wide] = [of('length'), of('width')];
    // One line along the whole log: neat epoxy on both faces, then paste that fills it, of epoxy and of filler.
    expect(of('glueArea')).toBeCloseTo(long * wide, 12);
    const neat = 2 * long * wide * of('primer') * (1 + of('waste'));
    const inPaste = of('glueMass') - neat;
    const paste = inPaste / epoxyDensity.value + of('filler') / flourDensity.value;
    expect(of('filler')).toBeCloseTo(of('fillerShare') * inPaste, 12);
    expect(paste).toBeCloseTo(long * wide * of('line') * (1 + of('waste')), 12);
    expect(of('clamps')).toBe(Math.ceil(long / of('clampPitch')));
    expect(of('clampsByForce')).toBeLessThan(of('clampsByPitch'));
    expect(of('laterForce') / of('force')).toBeCloseTo(2 / 3, 1);
  });

  test('has a form that rises so much more that what springs back leaves the curve', () => {
    const book = bookOf(demoBoat);
    const of = (key: string) => numberIn(book, `chineLayers.${key}`);
    const form = of('wholeRise') + of('moreRise');
    expect(form * (1 - of('springBack'))).toBeCloseTo(of('wholeRise'), 12);
    expect(of('formRadius') / of('radius')).toBeCloseTo(of('wholeRise') / form, 12);
  });

  test('with four layers pays for two glue lines and two kerfs more', () => {
    const book = bookOf(demoBoat);
    const keys = ['glueMass', 'bought', 'cost', 'dust'].map((key) => `chineLayers.${key}`);
    const before = keys.map((name) => numberIn(book, name));
    book.tryAnother(fourThin!.changes);
    const after = keys.map((name) => numberIn(book, name));
    expect(after[0]! / before[0]!).toBeCloseTo(3, 12);
    expect(after[1]! - before[1]!).toBeCloseTo(
      2 * (0.003 + 0.001) * numberIn(book, 'chineLayers.length') * numberIn(book, 'chineLayers.width'),
      12,
    );
    for (const at of [2, 3]) expect(after[at]).toBeGreaterThan(before[at]!);
  });

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'ends in a try that changes the boat when it is kept, and what follows from her: %s',
    (_id, table) => {
      const book = bookOf(table);
      const own = triesOf(page('one-thick-or-two-thin')).at(-1)!;
      const plain = cells.flatMap(({ id, steps }) => Object.keys(steps).map((key) => `${id}.${key}`));
      const before = plain.map((name) => book.first.value.value(name));
      book.tryAnother(own.changes);
      book.keepOnly('second');
      expect(numberIn(book, 'chineLog.thickness')).toBeCloseTo(0.015, 12);
      const moved = plain.filter((name, at) => book.first.value.value(name) !== before[at]);
      expect(new Set(moved.map((name) => name.split('.')[0]!)).size).toBeGreaterThan(1);
    },
  );

  test('leaves the boat as it is', () => {
    const book = bookOf(demoBoat);
    book.tryAnother({ ...twoThin!.changes, ...fourThin!.changes });
    const { given, derived } = allOf(catalogueOf(demoBoat, []));
    const moved = [...given, ...derived].filter(
      ({ name }) =>
        book.second.value?.value(name) !== book.first.value.value(name) &&
        !isIssue(book.first.value.value(name)),
    );
    expect(moved).toStrictEqual([]);
  });

  test('says of each boat whether her own logs go round in one piece', () => {
    const answers = starters.map(({ table }) => {
      const book = bookOf(table);
      const words = saidOn(book.first.value, lesson)
        .map((said) => said.words)
        .join('\n');
      const goes = numberIn(book, 'ownChineBend.share') <= numberIn(book, 'ownChineBend.allowed');
      expect([table.name, /logs go round in one piece/.test(words)]).toStrictEqual([table.name, goes]);
      expect([table.name, /layers it goes round/.test(words)]).toStrictEqual([table.name, !goes]);
      return goes;
    });
    expect(new Set(answers).size).toBe(2);
  });
});

describe('on every boat', () => {
  /** Numbers of three figures and more in what is written, with the unit, and names of boats. */
  const numbers = (words: string) =>
    [...words.matchAll(/(?<![\d.,-])\d{3,}(?:\.\d+)?(?= ?(?:mm|m\b|in\b|kg|of\b))/g)].map(
      ([number]) => number,
    );
  /** What of a paragraph is written and not worked out, comparisons held. */
  const writtenOn = (one: NotebookPage, table: Table) =>
    saidOn(bookOf(table).first.value, withoutValues(one)).map(({ words }) => words);
  const ofBoat = (table: Table) => {
    const book = bookOf(table);
    const { given, derived } = allOf(catalogueOf(table, []));
    return new Set(
      [...given, ...derived].flatMap(({ name, kind }) => {
        const value = book.first.value.value(name);
        return typeof value === 'number' && kind === 'length' ? [String(Math.round(value * 1000))] : [];
      }),
    );
  };
  const own = new Map(starters.map(({ id, table }) => [id, ofBoat(table)]));
  /** A number that one boat has and another lacks. */
  const isOfSome = (number: string) => {
    const having = [...own.values()].filter((all) => all.has(number)).length;
    return having > 0 && having < own.size;
  };
  const names = starters.map(({ table }) => table.name);

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'no number of another boat stands in prose: %s',
    (id, table) => {
      for (const one of pages)
        for (const words of writtenOn(one, table))
          expect([
            words,
            numbers(words).filter((number) => isOfSome(number) && !own.get(id)!.has(number)),
          ]).toStrictEqual([words, []]);
    },
  );

  test.each(starters.map(({ table }) => [table.name, table] as const))(
    'no other boat is named, and none has to be chosen at the head of the page: %s',
    (name, table) => {
      const others = names.filter((other) => !name.startsWith(other));
      for (const one of pages)
        for (const words of writtenOn(one, table))
          expect([
            words,
            others.filter((other) => words.toLowerCase().includes(other.toLowerCase())),
          ]).toStrictEqual([words, []]);
    },
  );

  test('the boat on the bench is named by her name', () => {
    for (const { table } of starters)
      expect(saidOn(bookOf(table).first.value, page('the-build'))[1]?.words).toMatch(
        `called ${table.name}. She is `,
      );
  });

  test('a sentence that compares is said where it is so, and its opposite where not', () => {
    const said = new Map(
      starters.map(({ id, table }) => [
        id,
        saidOn(bookOf(table).first.value, page('the-build'))
          .map(({ words }) => words)
          .join('\n'),
      ]),
    );
    const hardness = ({ table }: (typeof starters)[number]) => {
      const of = (name: string) => numberIn(bookOf(table), name);
      return (
        (of('chineLog.thickness') / of('chineLog.edgeRadius') / of('keelson.thickness')) *
        of('keelson.edgeRadius')
      );
    };
    for (const starter of starters) {
      const more = /chine logs.*bent harder than the keelson/.test(said.get(starter.id)!);
      const less = /chine logs.*bent less than the keelson/.test(said.get(starter.id)!);
      expect([starter.id, more, less]).toStrictEqual([
        starter.id,
        hardness(starter) > 1.1,
        hardness(starter) < 1 / 1.1,
      ]);
    }
    expect(hardness(starters.find(({ id }) => id === 'vee-launch')!)).toBeLessThan(1 / 1.1);
  });
});

/** The same page with its values left out of the words, so that only what is written stays. */
function withoutValues(one: NotebookPage): NotebookPage {
  return JSON.parse(JSON.stringify(one), (_, part: unknown) =>
    typeof part === 'object' && part !== null && 'type' in part && part.type === 'value'
      ? { type: 'text', text: '…' }
      : part,
  ) as NotebookPage;
}

describe('the calculators on their own', () => {
  const quick = page('quick-answers');
  const inFeet = { ...plainShown, length: 'feet', fraction: 16, mass: 'lb' } as const;
  const inInches = createBook(
    freshState(noBoat),
    () => looseCatalogue(placed(quick)),
    createFindings(),
    () => inFeet,
  );

  test('begin with sizes of the builder’s own system', () => {
    expect(numberIn(bookFor(quick, demoBoat), 'quickScarf.thickness')).toBeCloseTo(0.018, 12);
    expect(numberIn(inInches, 'quickScarf.thickness')).toBeCloseTo(0.75 * 0.0254, 12);
  });

  test('warn of nothing as they stand, but where a tape has found a fault to put right', () => {
    const warned = [bookFor(quick, demoBoat), inInches].flatMap((book) => {
      const graph = book.first.value;
      return placed(quick).flatMap((instance) =>
        warningsOf(
          instance,
          (by) => graph.workOut(by),
          (value, kind) => write(value, kind, inFeet),
        ).map(({ name, says }) => `${name}: ${says}`),
      );
    });
    expect(warned.filter((said) => !said.startsWith('quickSquare.1: Out of square'))).toStrictEqual([]);
    expect(warned).toHaveLength(2);
  });

  test('show no length in inches that a tape could not be set to at once', () => {
    const half = 0.0254 / 2;
    const odd = placed(quick).flatMap(({ name, presets }) =>
      Object.keys(presets).flatMap((key) => {
        const of = `${name}.${key}`;
        const value = inInches.first.value.value(of);
        if (inInches.first.value.quantity(of)?.kind !== 'length' || typeof value !== 'number') return [];
        // Over a foot and a half in whole or half inches, except what a tape has just read.
        const taped = /Length$|^diagonal/.test(key) && key !== 'boardLength' && key !== 'jointLength';
        const mark = value > 0.45 && !taped ? half : half / 32;
        const off = Math.abs(value / mark - Math.round(value / mark));
        return off < 1e-6 || value < 0.005 ? [] : [`${of}: ${value / 0.0254} in`];
      }),
    );
    expect(odd).toStrictEqual([]);
  });
});
