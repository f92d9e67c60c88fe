/**
 * Every warning is made to speak and to fall silent by an input of its cell. At that edge, to a millionth of the input,
 * the condition typed in `warning-edges.ts` turns too: a limit moved by a hair in the cell is noticed.
 */
import * as fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { buildHull, demoBoat, lists, offsetsOf } from '../../src/boat';
import { type Cell, compiled, isChoice, plainInstance, type Values } from '../../src/cells';
import { runStep } from '../../src/cells/form/steps';
import { cells } from '../../src/cells/all';
import { isIssue } from '../../src/measure';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { bench } from '../notebook/small-graph';
import { leaningBy } from './odd-boats';
import { acceptedValues } from './proofs';
import { entriesAsValues } from './settings';
import { byLean, edges, ways } from './warning-edges';
import { allOf } from '../notebook/all-of';
import { scopeAlone } from './alone';

const hull = buildHull(offsetsOf(demoBoat));
type Inputs = Readonly<Record<string, number | string>>;

/** The cell's inputs as they stand on the demo boat. */
function standing(cell: Cell): Inputs {
  const { given, derived, hull: of } = allOf(catalogueOf(demoBoat, [plainInstance(cell)]));
  const { graph } = bench(given, derived, of);
  return Object.fromEntries(
    Object.keys(cell.inputs).map((key) => [key, graph.value(`${cell.id}.${key}`) as number | string]),
  );
}

const isTrue = (cell: Cell, condition: string, values: Values): boolean => {
  const asked = compiled(cell, condition);
  const verdict = asked.evaluate(Object.fromEntries(asked.names.map((name) => [name, values[name]!])));
  return !isIssue(verdict) && verdict !== 0;
};

/** Whether all is known that the condition turns on. */
const canTell = (cell: Cell, condition: string, values: Values): boolean =>
  compiled(cell, condition).names.every((name) => values[name] !== undefined);

/** The parts of a condition that have an edge of their own; of choices alone all of it is one. */
function partsOf(condition: string): string[] {
  const parts = condition.split(/ and | or /).map(bare);
  const measured = parts.filter((part) => !/[=!]= *["\d]/.test(part));
  // Which way a thing is off has no edge of its own where it has first to be off by more than is accepted.
  const sized = measured.filter((part) => !/[<>]=? 0( \S+)?$/.test(part));
  return sized.length > 0 ? sized : measured.length > 0 ? measured : [condition];
}

/** Without the brackets that the split left open, and without a "not". */
function bare(part: string): string {
  let text = part.replace(/^not /, '');
  const count = (sign: string) => text.split(sign).length - 1;
  while (count('(') > count(')')) text = text.replace('(', '');
  while (count(')') > count('(')) text = text.replace(/\)([^)]*)$/, '$1');
  return text.trim();
}

/** Two settings, alike but for one input, of which one is said and one is not. */
interface Edge {
  readonly silent: Values;
  readonly said: Values;
}

/** Halves the way between two values of one input until they lie side by side. */
function closeIn(cell: Cell, when: string, key: string, [a, b]: readonly [Values, Values]): Edge | null {
  let [one, other] = [a, b];
  const first = isTrue(cell, when, one);
  for (let i = 0; i < 60; i += 1) {
    const [x, y] = [one[key] as number, other[key] as number];
    const spec = cell.inputs[key]!; // a key of the inputs
    const whole = spec.kind === 'count';
    const middle = whole ? Math.round((x + y) / 2) : (x + y) / 2;
    if (middle === x || middle === y || Math.abs(x - y) < 1e-7 * Math.max(Math.abs(x), Math.abs(y), 1e-9))
      break;
    const half = run(cell, { ...inputsOf(cell, one), [key]: middle });
    if (!canTell(cell, when, half)) return null;
    if (isTrue(cell, when, half) === first) one = half;
    else other = half;
  }
  return first ? { said: one, silent: other } : { said: other, silent: one };
}

const inputsOf = (cell: Cell, values: Values): Inputs =>
  Object.fromEntries(Object.keys(cell.inputs).map((key) => [key, values[key]!])); // every input has a value

class Missing extends Error {}

/**
 * The inputs, and each step as it is asked for: a condition turns on a few of them, and hundreds are run. A warning may
 * speak where another step has no value, as on the page.
 */
function run(cell: Cell, inputs: Inputs, on = hull): Values {
  const values: Record<string, number | string | undefined> = { ...inputs };
  const valueOf = (key: string): number | string | undefined => {
    const spec = cell.steps[key];
    if (!(key in values) && spec) values[key] = workedOut(spec);
    return values[key];
  };
  const scope = scopeAlone((key) => {
    const value = valueOf(key);
    if (value === undefined) throw new Missing(key);
    return value;
  }, on);
  const workedOut = (spec: Cell['steps'][string]) => {
    try {
      const value = runStep(cell, spec, scope);
      return isIssue(value) ? undefined : value;
    } catch (fault) {
      if (!(fault instanceof Missing)) throw fault;
      return undefined;
    }
  };
  return new Proxy(values as Values, { get: (_, key) => valueOf(String(key)) });
}

/** Edges of a warning on the way from setting to setting, one input at a time. */
function* edgesOf(
  cell: Cell,
  when: string,
  settings: readonly Inputs[],
  runOf: (inputs: Inputs) => Values,
): Generator<Edge> {
  for (let at = 1; at < settings.length; at += 1) {
    let here = runOf(settings[at - 1]!); // in range by the loop
    if (!canTell(cell, when, here)) continue;
    for (const key of Object.keys(cell.inputs)) {
      const next = runOf({ ...inputsOf(cell, here), [key]: settings[at]![key]! });
      if (!canTell(cell, when, next)) continue;
      if (isTrue(cell, when, next) !== isTrue(cell, when, here)) {
        const spec = cell.inputs[key]!; // a key of the inputs
        const said = isTrue(cell, when, next) ? next : here;
        const edge = isChoice(spec)
          ? { said, silent: said === next ? here : next }
          : closeIn(cell, when, key, [here, next]);
        if (edge) yield edge;
      }
      here = next;
    }
  }
}

/** The edge of a warning that the boat's own table turns. */
function* edgesOfLean(cell: Cell, when: string, inputs: Inputs): Generator<Edge> {
  if (!byLean.cells.some((id) => id === cell.id)) return;
  const [silent, said] = [byLean.silent, byLean.said].map((lean) => {
    const table = leaningBy(lean, demoBoat);
    const frame = lists(table).frames[2]!.id; // the third
    return run(cell, 'frame' in inputs ? { ...inputs, frame } : inputs, buildHull(offsetsOf(table)));
  });
  if (isTrue(cell, when, said!) && !isTrue(cell, when, silent!)) yield { silent: silent!, said: said! }; // two are run
}

test('every cell has a condition typed for each of its warnings', () => {
  expect(Object.fromEntries(Object.entries(edges).map(([id, typed]) => [id, typed.length]))).toStrictEqual(
    Object.fromEntries(cells.map(({ id, warnings }) => [id, warnings.length])),
  );
});

describe.each(cells.filter(({ id }) => id in edges).map((cell) => [cell.id, cell] as const))(
  '%s',
  (id, cell) => {
    const plain = standing(cell);
    const written = (entries: Readonly<Record<string, string>>): Inputs => ({
      ...plain,
      ...entriesAsValues(cell, entries),
    });
    const settings = [
      plain,
      ...(ways[id] ?? []).map(written),
      ...fc
        .sample(acceptedValues(cell), { seed: 41, numRuns: 50 })
        .flatMap((values): Inputs[] => [{ ...plain, ...values }, plain]),
    ];
    // All warnings go the same way but where one can't be told.
    const been = new Map<string, Values>();
    afterAll(() => been.clear());
    const runOnce = (inputs: Inputs): Values => {
      const key = JSON.stringify(inputs);
      const values = been.get(key) ?? run(cell, inputs);
      been.set(key, values);
      return values;
    };
    test.each(cell.warnings.map(({ when }, i) => [i + 1, when, edges[id]?.[i] ?? ''] as const))(
      'warning %i turns where its source says',
      (_, when, typed) => {
        const unseen = new Set(partsOf(typed));
        const amiss: string[] = [];
        const tried = [...edgesOfLean(cell, when, plain)];
        for (const { silent, said } of tried.length > 0 ? tried : edgesOf(cell, when, settings, runOnce)) {
          if (!isTrue(cell, typed, said) || isTrue(cell, typed, silent))
            amiss.push(JSON.stringify({ silent, said }));
          for (const part of unseen)
            if (isTrue(cell, part, said) !== isTrue(cell, part, silent)) unseen.delete(part);
          if (unseen.size === 0 || amiss.length > 0) break;
        }
        expect(amiss).toStrictEqual([]);
        expect([...unseen]).toStrictEqual([]);
      },
    );
  },
);
