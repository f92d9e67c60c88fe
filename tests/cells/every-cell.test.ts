/**
 * What holds of every cell, whoever wrote it: its form, its links, its words, its pictures, and that no
 * accepted entry makes nonsense of it. A new cell in the registry is held to all of it.
 */
import { basename } from 'node:path';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat, lists, starters, type Value } from '../../src/boat';
import {
  answerInWords,
  asksFor,
  type Cell,
  compiled,
  fillIn,
  aboutOf,
  type InputSpec,
  isChoice,
  isFormula,
  keysIn,
  type OnHand,
  optionsOf,
  partsOf,
  plainInstance,
  registry,
  type Say,
  type Values,
  warningsOf,
  type Words,
} from '../../src/cells';
import { cells } from '../../src/cells/all';
import { collisions, setOut } from '../../src/drawing';
import {
  inchTwin,
  isIssue,
  kindOf,
  type KindId,
  nameOf,
  plainShown,
  read,
  sameDimension,
  type Shown,
  write,
  writeInPicture,
} from '../../src/measure';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { createGraph } from '../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { bench, type Bench } from '../notebook/small-graph';
import { withLeaningFrame, withTwoChines } from './odd-boats';
import { tryCell } from './try-cell';
import { isTaken } from '../../src/boat/table/names';
import { acceptedEntries, acceptedValues, asEntries, someEntries } from './proofs';
import { allOf } from '../notebook/all-of';
import { onHandAlone } from './alone';

const say: Say = (value, kind, options) => write(value, kind, plainShown, options);
const sayInPicture: OnHand['say'] = (value, kind, options) =>
  writeInPicture(value, kind, plainShown, options);
const boats = [...starters, { id: 'a boat with two chines', table: withTwoChines }].map(({ id, table }) => ({
  id,
  lists: lists(table),
  graph: createGraph({ catalogue: () => wholeCatalogue(table), entries: () => ({}), shown: plainShown }),
}));
const everywhere = new Set(boats.flatMap(({ graph }) => graph.names));
/** No sentence holds any of it: no number where one should be, or a place left empty. */
const NONSENSE = /NaN|Infinity|undefined|[{}]/;
/** Times that a cell is filled in at random. */
const RUNS = 25;
/** Of a picture on a phone and in a wide window, px: one after the other. */
const WIDTHS = [340, 700] as const;
const keysOf = ({ inputs, steps }: Cell) => [...Object.keys(inputs), ...Object.keys(steps)];

/** The cell alone on the ferry dory, to be written and watched. */
function alone(cell: Cell): Bench & { readonly valuesNow: () => Readonly<Record<string, Value>> } {
  const { given, derived, hull } = allOf(catalogueOf(demoBoat, [plainInstance(cell)]));
  const made = bench(given, derived, hull);
  const own = made.graph.names.filter((name) => name.startsWith(`${cell.id}.`));
  return {
    ...made,
    valuesNow: () =>
      Object.fromEntries(own.map((name) => [name.slice(cell.id.length + 1), made.graph.value(name)])),
  };
}

/** A text of the cell's own as an entry: its value, or why it has none. */
function entryValue(spec: InputSpec, text: string): number | string {
  const reading = read(text, { kind: spec.kind, shown: plainShown, field: spec.label });
  const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  return isIssue(value) ? value.issue : value;
}

/** All ways to fill in the choices of a link on a boat. */
function filledOn(cell: Cell, link: string, boat: (typeof boats)[number]): string[] {
  const [, key] = /\{(\w+)\}/.exec(link) ?? [];
  if (key === undefined) return [link];
  if (key === 'self') return filledOn(cell, link.replace('{self}', cell.id), boat);
  const by = cell.inputs[key];
  const { edges, panels } = boat.lists;
  const places = new Map([
    ['keel', edges[0]],
    ['sheer', edges.at(-1)],
    ['bottom', panels[0]],
  ]);
  const ids =
    by && isChoice(by) ? optionsOf(by, boat.lists).map(({ id }) => id) : [places.get(key)?.id ?? `{${key}?}`];
  return ids.flatMap((id) => filledOn(cell, link.replaceAll(`{${key}}`, id), boat));
}

/** Answers of a choice for which an input says itself what fills it. */
const ownLinks = (spec: Cell['inputs'][string]): readonly string[] =>
  'fromBy' in spec && spec.fromBy ? Object.keys(spec.fromBy.links) : [];

/** Whether a boat has anything of the part that a quantity is of. */
function hasPart({ graph }: (typeof boats)[number], name: string): boolean {
  const [part = ''] = name.split('.');
  return graph.names.some((other) => other.startsWith(`${part}.`));
}

const placeholders = keysIn;

/** The texts that the words can end on. */
function endsOf(words: Words): readonly string[] {
  if (typeof words === 'string') return [words];
  if ('when' in words) return [words.says, words.otherwise ?? []].flatMap(endsOf);
  const always = words.findLastIndex(
    (one) => typeof one === 'string' || !('when' in one) || one.otherwise !== undefined,
  );
  return words.slice(Math.max(0, always)).flatMap(endsOf);
}

test('the registry holds each file of cells once, under its own name', async () => {
  const modules = await Promise.all(
    Object.entries(import.meta.glob('../../src/cells/*/**/*.ts')).map(
      async ([file, load]) => [file.replace('../../src/cells/', ''), await load()] as const,
    ),
  );
  const made = modules.flatMap(([file, module]) =>
    Object.values(module as object)
      .filter(isCell)
      // A file is called what its cell is: `sheet-joints.ts` holds `sheetJoints`. Its stage is the room it lies in.
      .map(({ id, stage }): readonly [string, string] => [
        `${stage}/${id}`,
        `${file.split('/')[0]}/${nameOf(basename(file, '.ts'))}`,
      ]),
  );
  expect(made.filter(([cell, file]) => cell !== file)).toStrictEqual([]);
  expect(made.map(([cell]) => cell).toSorted()).toStrictEqual(
    cells.map(({ id, stage }) => `${stage}/${id}`).toSorted(),
  );
  expect(cells.map(({ id }) => id)).toStrictEqual(registry.map(({ id }) => id));
});

function isCell(value: unknown): value is Cell {
  return typeof value === 'object' && value !== null && 'steps' in value && 'question' in value;
}

describe.each(cells.map((cell) => [cell.id, cell] as const))('%s', (_id, cell) => {
  const keys = keysOf(cell);
  const numbers = Object.entries(cell.inputs).flatMap(([key, spec]) =>
    isChoice(spec) ? [] : [[key, spec] as const],
  );
  const choices = Object.entries(cell.inputs).flatMap(([key, spec]) =>
    isChoice(spec) ? [[key, spec] as const] : [],
  );

  test('has keys of its own for inputs, steps and functions, that formulas can name', () => {
    const all = [...keys, ...Object.keys(cell.functions ?? {})];
    expect(all.filter((key, i) => all.indexOf(key) !== i)).toStrictEqual([]);
    const reserved =
      /^(pi|rad|K|g|and|or|not|self|sqrt|a?(sin|cos|tan)|atan2|hypot|abs|min|max|round|ceil|floor|exp|ln|log10)$/;
    expect(all.filter((key) => !/^[a-z][A-Za-z0-9]*$/.test(key) || reserved.test(key))).toStrictEqual([]);
  });

  test('works in steps over inputs and earlier steps, and uses every function', () => {
    const early: string[] = [];
    const called = new Set<string>();
    Object.entries(cell.steps).forEach(([key, spec], at) => {
      const known = new Set([...Object.keys(cell.inputs), ...Object.keys(cell.steps).slice(0, at)]);
      const names = asksFor(cell, spec);
      early.push(...names.filter((name) => !known.has(name)).map((name) => `${key} uses ${name}`));
      if (isFormula(spec)) for (const name of compiled(cell, spec.formula).functions) called.add(name);
    });
    expect(early).toStrictEqual([]);
    expect(Object.keys(cell.functions ?? {}).filter((name) => !called.has(name))).toStrictEqual([]);
  });

  test('asks yes or no in its warnings, over its own keys', () => {
    const said = [cell.inWords, ...cell.warnings.map(({ says }) => says)];
    const conditions = said.flatMap((words) => partsOf(words).flatMap(({ where }) => where));
    const asked = [...cell.warnings, ...conditions, ...cell.answers].flatMap(({ when }) => when ?? []);
    const amiss = asked.filter((when) => {
      const { asks, names } = compiled(cell, when);
      return asks !== 'truth' || names.some((name) => !keys.includes(name));
    });
    expect(amiss).toStrictEqual([]);
  });

  test('names only its own keys in answers, words, warnings, table and what it is about', () => {
    const table = cell.table ? [cell.table.over, ...cell.table.columns.map(({ of }) => of)] : [];
    const named = [
      ...cell.answers.map(({ of }) => of),
      ...partsOf(cell.inWords).flatMap(({ text }) => placeholders(text)),
      ...cell.warnings.flatMap(({ says }) => partsOf(says).flatMap(({ text }) => placeholders(text))),
      ...table,
      ...cell.about.flatMap(placeholders),
      ...(cell.lies === undefined ? [] : [cell.lies]),
    ];
    expect(named.filter((key) => !keys.includes(key))).toStrictEqual([]);
    // A table over a list runs over a number, of which each row has its own.
    const chosen = [
      ...(cell.table && !cell.table.rows ? [cell.table.over] : []),
      ...cell.about.flatMap(placeholders),
    ];
    expect(chosen.filter((key) => cell.inputs[key]?.kind !== 'choice')).toStrictEqual([]);
    expect(cell.answers.length).toBeGreaterThanOrEqual(1);
    expect(cell.answers.length).toBeLessThanOrEqual(3);
  });

  test('has a value in every row of its table: a row has steps of its own, and no inputs', () => {
    const { table, steps } = cell;
    const empty = (table?.columns ?? []).filter(({ of }) => of !== table?.over && !Object.hasOwn(steps, of));
    expect(empty).toStrictEqual([]);
  });

  test('has limits, presets and steps that read as what they are, in their order', () => {
    const amiss = numbers.flatMap(([key, spec]) => {
      const texts = {
        min: spec.min,
        preset: spec.preset,
        presetInch: spec.presetInch ?? spec.preset,
        max: spec.max,
        step: spec.step,
      };
      const values = Object.fromEntries(
        Object.entries(texts).flatMap(([end, text]) =>
          text === undefined ? [] : [[end, entryValue(spec, text)]],
        ),
      );
      const unread = Object.entries(values).filter(([, value]) => typeof value === 'string');
      if (unread.length > 0) return unread.map(([end, says]) => `${key}.${end}: ${says}`);
      const {
        min = -Infinity,
        preset = 0,
        presetInch = 0,
        max = Infinity,
        step = 1,
      } = values as Record<string, number>;
      const within = [preset, presetInch].every((value) => min <= value && value <= max);
      const ordered = within && min < max && step > 0;
      const slides = !spec.slider || (min > -Infinity && max < Infinity && step <= (max - min) / 4);
      return ordered && slides ? [] : [`${key}: ${JSON.stringify(texts)}`];
    });
    expect(amiss).toStrictEqual([]);
  });

  test('has presets among the options of its choices, which are named once', () => {
    const amiss = choices.flatMap(([key, spec]) => {
      const options = optionsOf(spec, boats[0]!.lists);
      const ids = options.map(({ id }) => id);
      const whole =
        ids.includes(spec.preset) &&
        ids.includes(spec.presetInch ?? spec.preset) &&
        new Set(ids).size === ids.length &&
        options.every(({ label }) => label.trim() !== '');
      return whole ? [] : [`${key}: ${spec.preset} of ${ids.join(' ')}`];
    });
    expect(amiss).toStrictEqual([]);
  });

  test('links to quantities of its kind, which the ferry dory or another starter has', () => {
    const amiss = Object.entries(cell.inputs).flatMap(([key, { from, kind }]) => {
      if (from === undefined) return [];
      const [dory, ...others] = boats;
      const there = filledOn(cell, from, dory!).filter((name) => dory!.graph.has(name));
      const elsewhere = others.flatMap((boat) =>
        filledOn(cell, from, boat).filter((name) => boat.graph.has(name)),
      );
      const linked = there.length > 0 ? there : elsewhere;
      if (linked.length === 0) return [`${key}: no boat has ${from}`];
      // Only a part that the dory hasn't, as a bow transom, may be missing there.
      const [part = ''] = from.split('.');
      if (there.length === 0 && dory!.graph.names.some((name) => name.startsWith(`${part}.`)))
        return [`${key}: the dory has no ${from}`];
      return linked.filter((name) => {
        const of = boats.find(({ graph }) => graph.has(name))!.graph.quantity(name)!.kind;
        return kind === 'choice' || of === 'choice'
          ? kind !== of
          : !sameDimension(kindOf(kind).dimension, kindOf(of).dimension);
      });
    });
    expect(amiss).toStrictEqual([]);
  });

  test('fills in a link for every answer of its choices, on every boat', () => {
    const amiss = boats.flatMap((boat) =>
      Object.values(cell.inputs).flatMap((spec) =>
        spec.from?.includes('{')
          ? filledOn(cell, spec.from, boat)
              // An answer with a link of its own, or with none, doesn't go by this one.
              .filter((name) => !ownLinks(spec).some((answer) => name.split('.').includes(answer)))
              // A part that this boat hasn't at all, as a stem between two transoms, leaves the preset.
              .filter((name) => !boat.graph.has(name) && hasPart(boat, name))
              .map((name) => `${boat.id}: ${name}`)
          : [],
      ),
    );
    expect(amiss).toStrictEqual([]);
  });

  /** Joined as long timbers are, but no parts that a hull draws: nothing lights up. */
  const undrawn = new Set(['panel', 'spar']);
  test('calls what fills a field so that it can be said to come from it', () => {
    const links = Object.values(cell.inputs).flatMap(
      ({ from }) => /^\{self\}\.(\w+)$/.exec(from ?? '')?.[1] ?? [],
    );
    expect(links.filter((key) => /^from /i.test(cell.steps[key]?.meaning ?? ''))).toStrictEqual([]);
  });

  test('lights up parts that boats have', () => {
    const parts = new Set([...everywhere].map((name) => name.split('.')[0]!));
    const lit = boats.flatMap((boat) =>
      cell.about.flatMap((light) =>
        filledOn(cell, light, boat).flatMap((part) =>
          aboutOf({ ...cell, about: [light] }, (key) =>
            light === `{${key}}` ? part : (cell.inputs[key]?.preset ?? ''),
          ),
        ),
      ),
    );
    expect(lit.length).toBeGreaterThan(0);
    expect(lit.filter((part) => !parts.has(part) && !undrawn.has(part))).toStrictEqual([]);
  });

  test('says what it asks, from where a tape is laid, by what source and with what caution', () => {
    expect(cell.question).toMatch(/^[A-Z].*\?$/s);
    expect(cell.title).toMatch(/^[A-Z].*[^.]$/);
    const silent = [
      ...cell.answers.map(({ label, from }) => [label, from]),
      ...Object.values(cell.inputs).map(({ label }) => [label]),
      ...Object.values(cell.steps).map(({ meaning, source }) => [meaning, source]),
      ...cell.warnings.map(({ says, limit }) => [...partsOf(says).map(({ text }) => text), limit]),
      ...cell.sources.map(({ text }) => [text]),
    ].filter((texts) => texts.some((text) => text.trim() === ''));
    expect(silent).toStrictEqual([]);
    expect(cell.sources.length).toBeGreaterThan(0);
    expect(cell.cautions.length).toBeGreaterThan(0);
    const unended = [
      ...cell.cautions,
      ...[cell.inWords, ...cell.warnings.map(({ says }) => says)].flatMap(endsOf),
    ].filter((text) => !/[.!?]$/.test(text));
    expect(unended).toStrictEqual([]);
    const tolerances = cell.answers.filter(({ of, tolerance }) => {
      const kind = (cell.inputs[of] ?? cell.steps[of])!.kind;
      const reading =
        tolerance === undefined ? undefined : read(tolerance, { kind, shown: plainShown, field: of });
      return reading !== undefined && isIssue(reading);
    });
    expect(tolerances).toStrictEqual([]);
  });

  test('answers on every starter, without an issue', () => {
    const silent = boats.flatMap(({ id, graph }) =>
      keys.flatMap((key) => {
        const value = graph.value(`${cell.id}.${key}`);
        return isIssue(value) ? [`${id}: ${cell.id}.${key}: ${value.issue}`] : [];
      }),
    );
    expect(silent).toStrictEqual([]);
  });

  test('has pictures on every starter, without collisions at phone and desk width', () => {
    expect(cell.draw ?? cell.chart).toBeDefined();
    const amiss = boats.flatMap(({ id, graph }) => {
      const values = Object.fromEntries(keys.map((key) => [key, graph.value(`${cell.id}.${key}`)])) as Values;
      const hull = graph.hull();
      return WIDTHS.flatMap((width) =>
        picturesAmiss(cell, values, isIssue(hull) ? null : hull, width).map((fault) => `${id}: ${fault}`),
      );
    });
    expect(amiss).toStrictEqual([]);
  });

  test('says each thing once: the words under its picture are none of its sentence', () => {
    const said = boats.flatMap(({ id, graph }) => {
      const words = graph.workOut((by) => answerInWords(plainInstance(cell), by, say));
      const values = Object.fromEntries(keys.map((key) => [key, graph.value(`${cell.id}.${key}`)])) as Values;
      const hull = graph.hull();
      const on = onHandAlone(cell, values, isIssue(hull) ? null : hull, sayInPicture);
      return underPictures(cell, values, on).map((under) => ({
        id,
        under,
        words: isIssue(words) ? '' : words,
      }));
    });
    expect(
      said.flatMap(({ id, under, words }) => runsInBoth(under, words).map((run) => `${id}: ${run}`)),
    ).toStrictEqual([]);
    // They are sentences: the title of the drawing, and how it is read.
    expect(said.map(({ under }) => under).filter((under) => !isInSentences(under))).toStrictEqual([]);
  });

  test('makes no nonsense of any accepted entry, in numbers, words or pictures', () => {
    const { graph, write, valuesNow } = alone(cell);
    const hull = graph.hull();
    let drawn = 0;
    fc.assert(
      fc.property(someEntries(cell), (entries) => {
        for (const key of Object.keys(cell.inputs)) write(`${cell.id}.${key}`, entries[key] ?? null);
        const all = valuesNow();
        const nonsense = Object.entries(all).filter(([, value]) =>
          isIssue(value)
            ? !/^[^{}]{8,}$/.test(value.issue) || /NaN|Infinity|undefined/.test(value.issue)
            : typeof value === 'number' && !Number.isFinite(value),
        );
        expect(nonsense).toStrictEqual([]);
        const refused = Object.keys(entries).filter((key) => isIssue(all[key]));
        expect(refused).toStrictEqual([]);
        const told = warningsOf(plainInstance(cell), graph.workOut, say).map(({ says }) => says);
        expect(told.filter((says) => NONSENSE.test(says))).toStrictEqual([]);
        if (Object.values(all).some(isIssue)) return;
        // Words for every case, in whole sentences; clauses of their own conditions come together, each where the one
        // before leaves off.
        const words = graph.workOut((by) => answerInWords(plainInstance(cell), by, say));
        expect(words).toMatch(/^[A-Z0-9].*(?:[a-z0-9°²³%)]|[mk]?[LNW])[.!?]$/);
        expect(words).not.toMatch(/  | [,;:.]|[.!?] [a-z]/);
        const width = WIDTHS[drawn % WIDTHS.length]!; // one of them
        expect(picturesAmiss(cell, all as Values, isIssue(hull) ? null : hull, width)).toStrictEqual([]);
        drawn += 1;
      }),
      { seed: 23, numRuns: RUNS },
    );
    // A good part must get as far as a picture, or little has been tried.
    expect(drawn).toBeGreaterThan(RUNS / 5);
  });

  test('uses every number it asks for', () => {
    // What a fact asks for shows when it is found: with the entries tried above, and on a boat with panels between.
    expect(tryCell(cell, {}, withTwoChines).all).toBeDefined();
    const { table, steps, warnings, answers } = cell;
    const usedNow = () =>
      new Set([
        ...Object.values(steps).flatMap((spec) => asksFor(cell, spec)),
        ...warnings.flatMap(({ when, says }) => [
          ...compiled(cell, when).names,
          ...partsOf(says).flatMap(({ text }) => placeholders(text)),
        ]),
        ...answers.map(({ of }) => of),
        ...(table?.columns.map(({ of }) => of) ?? []),
      ]);
    // What only the picture shows is used too: it is read there.
    const seen = new Set<string>();
    const values = alone(cell).valuesNow() as Values;
    const watching = new Proxy(values, {
      get: (target, key) => {
        seen.add(String(key));
        return target[String(key)];
      },
    });
    const on = onHandAlone(cell, values, null, sayInPicture);
    cell.draw?.(watching, on);
    cell.chart?.(watching, on);
    const unused = () => {
      const used = usedNow();
      return numbers.map(([key]) => key).filter((key) => !used.has(key) && !seen.has(key));
    };
    // Some facts go on to ask for more where a part is filled in: with some of each.
    const counts = numbers.filter(([, { kind }]) => kind === 'count').map(([key]) => key);
    for (const some of ['1', '3', '6']) {
      if (unused().length === 0) break;
      expect(tryCell(cell, Object.fromEntries(counts.map((key) => [key, some]))).all).toBeDefined();
    }
    expect(unused()).toStrictEqual([]);
  });

  test('can give each of its warnings', () => {
    const { graph, write } = alone(cell);
    const given = new Set<string>();
    // What no entry of the cell's own brings about: a fault of the boat. First, since the samples end when all are given.
    const leaning = createGraph({
      catalogue: () => catalogueOf(withLeaningFrame, [plainInstance(cell)]),
      entries: () => ({}),
      shown: plainShown,
    });
    for (const { name } of warningsOf(plainInstance(cell), leaning.workOut, say)) given.add(name);
    for (const values of fc.sample(acceptedValues(cell), { seed: 29, numRuns: 600 })) {
      if (given.size === cell.warnings.length) break;
      for (const [key, text] of Object.entries(asEntries(cell, values))) write(`${cell.id}.${key}`, text);
      for (const { name } of warningsOf(plainInstance(cell), graph.workOut, say)) given.add(name);
    }
    // Nor do those choose among the boat's own edges and stations.
    const samples = fc.sample(acceptedEntries(cell), { seed: 31, numRuns: 4 });
    for (const [key, spec] of Object.entries(cell.inputs)) {
      const name = `${cell.id}.${key}`;
      const quantity = graph.quantity(name);
      if (!isChoice(spec) || typeof spec.options !== 'string' || !quantity || !('options' in quantity))
        continue;
      for (const { id } of quantity.options ?? [])
        for (const entries of samples) {
          for (const [other, text] of Object.entries(entries)) write(`${cell.id}.${other}`, text);
          write(name, id);
          for (const one of warningsOf(plainInstance(cell), graph.workOut, say)) given.add(one.name);
        }
    }
    expect(
      cell.warnings.map(({ when }, i) => [`${cell.id}.${i + 1}`, when]).filter(([name]) => !given.has(name!)),
    ).toStrictEqual([]);
  });
});

/** What is wrong with the cell's drawing and chart at these values in this width, as sentences. */
function picturesAmiss(
  cell: Cell,
  values: Values,
  hull: Parameters<typeof onHandAlone>[2],
  width: number,
): string[] {
  const on = onHandAlone(cell, values, hull, sayInPicture);
  const faults: string[] = [];
  const drawing = cell.draw?.(values, on);
  if (drawing) {
    const clashes = collisions(setOut(drawing, { width }));
    if (clashes.length > 0) faults.push(`at ${width} px: ${JSON.stringify(clashes).slice(0, 200)}`);
    if (/NaN|Infinity|undefined/.test(JSON.stringify(drawing)))
      faults.push('the drawing holds no number where one should be');
    if (NONSENSE.test(drawing.says)) faults.push(`the drawing says “${drawing.says}”`);
    if (drawing.says.trim() === '' || drawing.title.trim() === '')
      faults.push('the drawing does not say what it shows');
  }
  const chart = cell.chart?.(values, on);
  const points = [
    ...(chart?.lines.flatMap((line) => line.points) ?? []),
    ...(chart?.points ?? []).map(({ x, y }) => [x, y] as const),
  ];
  if (!points.flat().every(Number.isFinite)) faults.push('a point of the chart has no place');
  if (chart && (chart.says.trim() === '' || NONSENSE.test(chart.says)))
    faults.push('the chart does not say what it shows');
  return faults;
}

/** As they are set out under its drawing and its graph. */
function underPictures(cell: Cell, values: Values, on: OnHand): string[] {
  const drawing = cell.draw?.(values, on);
  const chart = cell.chart?.(values, on);
  const caption = drawing
    ? setOut(drawing, { width: 700 }).marks.flatMap((mark) =>
        mark.kind === 'text' && mark.className === 'caption-text' ? [mark.lines.join(' ')] : [],
      )
    : [];
  return [...caption, ...(chart ? [chart.says] : [])];
}

/** So many words in a row say the same thing again. */
const A_RUN = 5;

function runsInBoth(one: string, other: string): string[] {
  const [first, second] = [one, other].map(
    (text) => text.toLowerCase().match(/[^\s.,;:()]+(?:[.,]\d+)?/g) ?? [],
  );
  const runs = (words: readonly string[]) =>
    words.slice(0, Math.max(0, words.length - A_RUN + 1)).map((_, i) => words.slice(i, i + A_RUN).join(' '));
  const there = new Set(runs(second!));
  return runs(first!).filter((run) => there.has(run));
}

const isInSentences = (text: string): boolean =>
  /^[\p{Lu}\d−].*[.]$/su.test(text) && !/[.!?] \p{Ll}/u.test(text);

/** The number that a limit is; none where there is no limit. */
const limitOf = (kind: KindId, text: string | undefined, none: number): number => {
  if (text === undefined) return none;
  const reading = read(text, { kind, shown: plainShown, field: 'limit' });
  const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  if (isIssue(value)) throw new Error(value.issue);
  return value;
};

test('takes whatever the number that it is linked to may be: its limits are no narrower', () => {
  const narrow = boats.flatMap(({ lists: of, graph }) =>
    cells.flatMap((cell) =>
      Object.entries(cell.inputs).flatMap(([key, spec]) => {
        if (isChoice(spec)) return [];
        const links = [spec.from, ...Object.values(spec.fromBy?.links ?? {})].filter(
          (link): link is string => link !== undefined && link !== '' && !link.includes('{self}'),
        );
        return links
          .flatMap((link) => filledOn(cell, link, { id: '', lists: of, graph }))
          .flatMap((name) => {
            const other = graph.quantity(name);
            // What follows from others has no limits of its own.
            if (!other || !('preset' in other)) return [];
            const [min, max] = [
              limitOf(spec.kind, spec.min, -Infinity),
              limitOf(spec.kind, spec.max, Infinity),
            ];
            const least = limitOf(other.kind, other.min, -Infinity);
            const most = limitOf(other.kind, other.max, Infinity);
            return min <= least && max >= most
              ? []
              : [
                  `${cell.id}.${key} takes ${spec.min ?? ''} to ${spec.max ?? ''}; ${name} may be ${other.min ?? ''} to ${other.max ?? ''}`,
                ];
          });
      }),
    ),
  );
  expect([...new Set(narrow)]).toStrictEqual([]);
});

test('a size of custom is round in inches as well, about as large, and within the limits', () => {
  const amiss = cells.flatMap((cell) =>
    Object.entries(cell.inputs).flatMap(([key, spec]) => {
      if (isChoice(spec) || spec.presetInch === undefined) return [];
      const [metric, inch] = [spec.preset, spec.presetInch].map((text) => limitOf(spec.kind, text, 0)) as [
        number,
        number,
      ];
      const isIn =
        inch >= limitOf(spec.kind, spec.min, -Infinity) && inch <= limitOf(spec.kind, spec.max, Infinity);
      return isIn && Math.abs(inch / metric - 1) <= 0.35
        ? []
        : [`${cell.id}.${key}: ${spec.preset}, ${spec.presetInch}`];
    }),
  );
  expect(amiss).toStrictEqual([]);
});

test('a length that nothing fills is round in the units of who reads it', () => {
  const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '' };
  const ragged = cells.flatMap((cell) =>
    Object.entries(cell.inputs).flatMap(([key, spec]) => {
      if (isChoice(spec) || spec.kind !== 'length' || spec.from !== undefined) return [];
      const preset = spec.presetInch ?? inchTwin(spec.preset) ?? spec.preset;
      const { text, remainder } = write(limitOf('length', preset, 0), 'length', feet, { within: 0.0004 });
      return remainder === '' ? [] : [`${cell.id}.${key}: ${preset} is ${text}, ${remainder}`];
    }),
  );
  expect(ragged).toStrictEqual([]);
  // What a sum leaves in its last bits is no text of ours.
  expect(JSON.stringify(cells.map(({ inputs }) => inputs)).match(/\d\.\d{9,}[^"]*/g)).toBeNull();
});

test('links are filled in by the cell’s own choices', () => {
  expect(fillIn('{frame}.{chine}.above.flare', (key) => `${key}1`)).toBe('frame1.chine1.above.flare');
});

test('no edge or station can take the name of a cell, whose numbers it would hide', () => {
  for (const { id } of registry) {
    expect(isTaken(id, 'edge')).toBe(true);
    expect(isTaken(id, 'station')).toBe(true);
  }
});
