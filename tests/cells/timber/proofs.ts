/** What every timber cell has to show: no nonsense for any accepted entry, and a drawing that agrees with its figures. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cell, InputSpec } from '../../../src/cells';
import { isChoice } from '../../../src/cells';
import { collisions, type Drawing, setOut } from '../../../src/drawing';
import { isIssue, plainShown, read, writeExact } from '../../../src/measure';
import { tryCell } from '../try-cell';

/** Entries that the cell accepts, for all its inputs; choices from a list of the boat stay at their preset. */
export function acceptedEntries(cell: Cell): fc.Arbitrary<Readonly<Record<string, string>>> {
  const fields: Record<string, fc.Arbitrary<string>> = {};
  for (const [key, spec] of Object.entries(cell.inputs)) {
    if (!isChoice(spec)) fields[key] = numberEntry(spec);
    else if (typeof spec.options !== 'string')
      fields[key] = fc.constantFrom(...spec.options.map(({ id }) => id));
  }
  return fc.record(fields);
}

function numberEntry(spec: InputSpec): fc.Arbitrary<string> {
  const at = (text: string): number => {
    const reading = read(text, { kind: spec.kind, shown: plainShown, field: spec.label });
    if (isIssue(reading)) throw new Error(`${spec.label}: ${reading.issue}`);
    const value = reading.evaluate(() => Number.NaN);
    if (isIssue(value)) throw new Error(`${spec.label}: ${value.issue}`);
    return value;
  };
  const min = at(spec.min ?? '0');
  const max = spec.max === undefined ? min * 1e4 : at(spec.max);
  const whole = spec.kind === 'count' || spec.kind === 'number';
  const value = whole
    ? fc.integer({ min, max })
    : fc.oneof(fc.double({ min, max, noNaN: true }), fc.constantFrom(min, max));
  return value.map((number) => writeExact(number, spec.kind, plainShown));
}

const nonsense = /NaN|Infinity|undefined|[{}]/;

/** Every value is a finite number, a choice, or an issue in words; pictures are made without a throw. */
export function testSense(cell: Cell): void {
  test('makes sense for whatever is accepted', () => {
    let drawn = 0;
    fc.assert(
      fc.property(acceptedEntries(cell), (entries) => {
        const tried = tryCell(cell, entries);
        const numbers = Object.values(tried.all).filter((value) => typeof value === 'number');
        const charted = tried.chart?.lines.flatMap(({ points }) => points.flat()) ?? [];
        expect([...numbers, ...charted].filter((number) => !Number.isFinite(number))).toEqual([]);
        const sentences = [
          ...Object.values(tried.issues),
          ...tried.warnings.map(({ says }) => says),
          tried.drawing?.says ?? '',
          tried.chart?.says ?? '',
        ];
        expect(sentences.filter((sentence) => nonsense.test(sentence))).toEqual([]);
        if (tried.drawing) drawn += 1;
      }),
      { seed: 20, numRuns: 150 },
    );
    // Most entries must get as far as a drawing, or little has been tried.
    expect(drawn).toBeGreaterThan(50);
  });
}

/** No text lies on another, at phone and at desk width. */
export function testDrawings(
  cell: Cell,
  cases: Readonly<Record<string, Readonly<Record<string, string>>>>,
): void {
  test.each(Object.entries(cases))('is drawn without texts on each other: %s', (_, entries) => {
    const { drawing } = tryCell(cell, entries);
    expect(drawing).toBeDefined();
    const sheets = drawing ? [340, 700].map((width) => setOut(drawing, { width })) : [];
    expect(sheets.flatMap((sheet) => collisions(sheet))).toEqual([]);
  });
}

/** The distance that a dimension with this text spans on the drawing, mm; one of several by `which`. */
export function measured(drawing: Drawing | undefined, text: string, which = 0): number {
  const found = drawing?.shapes.filter((shape) => shape.shape === 'dim' && shape.text === text)[which];
  if (found?.shape !== 'dim') throw new Error(`no dimension reads ${text}`);
  const dx = Math.abs(found.to[0] - found.from[0]);
  const dy = Math.abs(found.to[1] - found.from[1]);
  if (found.run === 'horizontal') return dx;
  return found.run === 'vertical' ? dy : Math.hypot(dx, dy);
}
