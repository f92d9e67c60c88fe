/**
 * Every step and warning of every cell measures what its kind says, twice over: by our own walk of the
 * formula's tree, and by mathjs on real units (referee.ts), which has to come to the same number too.
 */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import { type Cell, compiled, isFormula, partsOf, plainInstance, step, type Values } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { cellOf } from './cell-of';
import { formula, isIssue, type KindId, kindOf, kinds, plain, sameDimension } from '../../src/measure';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { bench } from '../notebook/small-graph';
import { acceptedEntries } from './proofs';
import { amountOf, referee } from './referee';
import { allOf } from '../notebook/all-of';

/** A formula of a cell, and what it should measure. */
interface Line {
  readonly key: string;
  readonly text: string;
  readonly kind: KindId | 'truth';
}

function linesOf({ steps, warnings, inWords }: Cell): readonly Line[] {
  const words = [inWords, ...warnings.map(({ says }) => says)].flatMap((one) => partsOf(one));
  const cases = [...new Set(words.flatMap(({ where }) => where.map(({ when }) => when)))];
  return [
    ...Object.entries(steps).flatMap(([key, spec]) =>
      isFormula(spec) ? { key, text: spec.formula, kind: spec.kind } : [],
    ),
    ...[...warnings.map(({ when }) => when), ...cases].map((text) => ({
      key: 'a warning',
      text,
      kind: 'truth' as const,
    })),
  ];
}

/** What our own inference holds against a line. */
function ourFault({ inputs, steps, functions }: Cell, { text, kind }: Line): string | null {
  const parsed = formula(text, functions);
  if (isIssue(parsed)) return parsed.issue;
  if ((parsed.asks === 'truth') !== (kind === 'truth')) return `it gives a ${parsed.asks}`;
  const measured = parsed.dimension((name) => {
    const spec = inputs[name] ?? steps[name];
    return spec && (spec.kind === 'choice' ? 'choice' : kindOf(spec.kind).dimension);
  });
  if (isIssue(measured)) return measured.issue;
  return sameDimension(measured, kind === 'truth' ? plain : kindOf(kind).dimension)
    ? null
    : 'it measures something else';
}

/** What the referee holds against a line at these values; nothing where they give it no value. */
function refereesFault(cell: Cell, line: Line, values: Values): string | null {
  const value = compiled(cell, line.text).evaluate(values);
  if (isIssue(value)) return null;
  const found = refereed(cell, line, values);
  if (typeof found === 'string') return found;
  // Both work in doubles; mathjs goes by way of its units, which costs some last bits.
  return Math.abs(found - value) <= 1e-9 * Math.max(Math.abs(value), 1e-9)
    ? null
    : `${found} is not ${value}`;
}

/** The referee's number, or its refusal. */
function refereed(cell: Cell, { text, kind }: Line, values: Values): number | string {
  try {
    return referee(cell, text, kind, values);
  } catch (refusal) {
    return refusal instanceof Error ? refusal.message : String(refusal);
  }
}

/** The cell's values on the ferry dory, and at entries drawn from between the limits of its inputs; those it has. */
function settingsOf(cell: Cell): readonly Values[] {
  const { given, derived, hull } = allOf(catalogueOf(demoBoat, [plainInstance(cell)]));
  const { graph, write } = bench(given, derived, hull);
  const keys = [...Object.keys(cell.inputs), ...Object.keys(cell.steps)];
  const valuesNow = (): Values =>
    Object.fromEntries(
      keys.flatMap((key) => {
        const value = graph.value(`${cell.id}.${key}`);
        return isIssue(value) ? [] : [[key, value]];
      }),
    );
  const atRest = valuesNow();
  const drawn = fc.sample(acceptedEntries(cell), { seed: 31, numRuns: 25 }).map((entries) => {
    for (const [key, text] of Object.entries(entries)) write(`${cell.id}.${key}`, text);
    return valuesNow();
  });
  return [atRest, ...drawn];
}

const faultsOf = (cell: Cell, lines: readonly Line[], find: (line: Line) => string | null) =>
  lines.flatMap((line) => {
    const fault = find(line);
    return fault === null ? [] : [`${cell.id}, ${line.key}: ${line.text}: ${fault}`];
  });

describe.each(cells.map((cell) => [cell.id, cell] as const))('%s', (_id, cell) => {
  const lines = linesOf(cell);
  const settings = settingsOf(cell);

  test('measures what it says, by our own inference', () => {
    expect(faultsOf(cell, lines, (line) => ourFault(cell, line))).toStrictEqual([]);
  });

  test('measures what it says, and comes to the same number, by mathjs on real units', () => {
    const faults = settings.flatMap((values) =>
      faultsOf(cell, lines, (line) => refereesFault(cell, line, values)),
    );
    expect([...new Set(faults)]).toStrictEqual([]);
  });

  test('with any step times a metre, any warning of a mass and a length, is refused by both', () => {
    const planted = lines.map((line) => ({
      ...line,
      text: line.kind === 'truth' ? `(${line.text}) and 1 kg > 1 m` : `(${line.text}) * 1 m`,
    }));
    const unseen = planted.filter(
      (line) => ourFault(cell, line) === null || typeof refereed(cell, line, settings[0]!) === 'number',
    );
    expect(unseen).toStrictEqual([]);
  });
});

describe('a wrong formula in the scarf', () => {
  const scarf = cellOf('scarf')!;
  const values = settingsOf(scarf)[0]!;
  test.each([
    ['length', 'slope + thickness'],
    ['length', 'slope'],
    ['length', 'thickness^2'],
    ['length', 'sqrt(thickness)'],
    ['length', 'thickness * angle'],
    ['length', 'max(thickness, slope)'],
    ['length', 'hypot(thickness, slope)'],
    ['length', 'thickness + 1'],
    ['length', 'thickness > 0 ? taper : slope'],
    ['length', 'thickness > 1 ? taper : wanted'],
    ['length', 'thickness - 3 kg'],
    ['length', 'ceil(thickness, slope)'],
    ['length', 'thickness > wanted'],
    ['length', 'along'],
    ['count', 'boardsToReach(wanted, boardLength, slope)'],
    ['count', 'boardsToReach(wanted, glueArea, taper)'],
    ['share', 'strengthOfScarf(thickness)'],
    ['angle', 'slope'],
    ['angle', 'atan(thickness)'],
    ['angle', 'atan2(thickness, slope)'],
    ['angle', 'asin(angle)'],
    ['ratio', 'sin(slope)'],
    ['ratio', 'tan(thickness / width)'],
    ['ratio', 'exp(thickness)'],
    ['ratio', 'ln(thickness)'],
    ['ratio', 'angle'],
    ['truth', 'thickness > slope'],
    ['truth', 'thickness > 10'],
    ['truth', 'thickness'],
    ['truth', 'slope > 8 and thickness'],
    ['truth', 'slope < 8 and angle > 10'],
  ] as const)('%s: %s is refused by both', (kind, text) => {
    const line: Line = { key: 'planted', text, kind };
    const wrong: Cell = {
      ...scarf,
      steps: { ...scarf.steps, planted: step(kind === 'truth' ? 'number' : kind, text, 'planted', 'none') },
    };
    expect(ourFault(wrong, line)).not.toBeNull();
    expect(refereed(wrong, line, values)).toBeTypeOf('string');
  });

  test('is seen by the referee when only its number is wrong', () => {
    // Right in dimension, so that only the number can tell: the product's function against another.
    const other: Cell = {
      ...scarf,
      functions: {
        ...scarf.functions,
        strengthOfScarf: { ...scarf.functions!['strengthOfScarf']!, run: () => 0.5 },
      },
    };
    expect(referee(other, 'strengthOfScarf(slope)', 'share', values)).toBe(0.5);
    expect(referee(scarf, 'strengthOfScarf(slope)', 'share', values)).not.toBe(0.5);
  });
});

test('the referee lets a bare 0 stand beside anything, and mathjs knows the unit of every kind', () => {
  const { inputs, steps } = cellOf('scarf')!;
  const values = { thickness: 0.018, slope: 8 };
  expect(referee({ inputs, steps }, 'max(thickness - 1 m, 0)', 'length', values)).toBeCloseTo(0, 12);
  expect(referee({ inputs, steps }, 'thickness > 0 or slope < 0', 'truth', values)).toBe(1);
  expect(referee({ inputs, steps }, 'atan2(3 * thickness, 4 * thickness)', 'angle', values)).toBeCloseTo(
    Math.atan(0.75),
    12,
  );
  expect(
    referee({ inputs, steps }, 'hypot(3 mm, 4 mm) + ceil(thickness, 5 mm)', 'length', values),
  ).toBeCloseTo(0.025, 12);
  const unknown = kinds
    .filter(({ id }) => id !== 'choice')
    .filter(({ id }) => !/^(number|Unit)$/.test(typeof amountOf(1, id) === 'number' ? 'number' : 'Unit'));
  expect(unknown).toStrictEqual([]);
});
