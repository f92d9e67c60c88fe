/** What every timber cell has to show: no nonsense for any accepted entry, and a drawing that agrees with its figures. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { lists, starters } from '../../src/boat';
import type { Cell, InputSpec } from '../../src/cells';
import { isChoice } from '../../src/cells';
import { collisions, type Drawing, setOut } from '../../src/drawing';
import { isFootNote } from '../../src/drawing/shapes';
import { isIssue, plainShown, read, writeExact } from '../../src/measure';
import { tryCell } from './try-cell';

/** Values that the cell accepts for all its inputs, in SI; choices from a list of the boat stay at their preset. */
export function acceptedValues(cell: Cell): fc.Arbitrary<Readonly<Record<string, number | string>>> {
  const fields: Record<string, fc.Arbitrary<number | string>> = {};
  for (const [key, spec] of Object.entries(cell.inputs)) {
    if (!isChoice(spec)) fields[key] = numberOf(spec);
    else if (typeof spec.options !== 'string')
      fields[key] = fc.constantFrom(...spec.options.map(({ id }) => id));
  }
  return fc.record(fields);
}

/** The same as a builder types them. */
export function acceptedEntries(cell: Cell): fc.Arbitrary<Readonly<Record<string, string>>> {
  return acceptedValues(cell).map((values) => asEntries(cell, values));
}

/**
 * The same for all inputs, or for a few of them while the others stay as they are, since numbers that have to agree
 * with one another seldom do where each is taken at random.
 */
export function someEntries(cell: Cell): fc.Arbitrary<Readonly<Record<string, string>>> {
  const all = acceptedEntries(cell);
  const few = fc.tuple(all, fc.array(fc.nat(), { minLength: 1, maxLength: 2 })).map(([entries, chosen]) => {
    const keys = Object.keys(entries);
    return Object.fromEntries(
      chosen
        .flatMap((at) => keys.slice(at % keys.length, (at % keys.length) + 1))
        .map((key) => [key, entries[key]!]), // of its own
    );
  });
  return fc.oneof(all, few);
}

/** Values of the cell's inputs as texts that say exactly them. */
export const asEntries = (
  cell: Cell,
  values: Readonly<Record<string, number | string>>,
): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(values).map(([key, value]): [string, string] => [
      key,
      typeof value === 'string' ? value : writeExact(value, cell.inputs[key]!.kind, plainShown), // keys of the inputs
    ]),
  );

function numberOf(spec: InputSpec): fc.Arbitrary<number> {
  const at = (text: string): number => {
    const reading = read(text, { kind: spec.kind, shown: plainShown, field: spec.label });
    if (isIssue(reading)) throw new Error(`${spec.label}: ${reading.issue}`);
    const value = reading.evaluate(() => Number.NaN);
    if (isIssue(value)) throw new Error(`${spec.label}: ${value.issue}`);
    return value;
  };
  const min = at(spec.min ?? '0');
  const max = spec.max === undefined ? min * 1e4 : at(spec.max);
  return spec.kind === 'count' || spec.kind === 'number'
    ? fc.integer({ min, max })
    : fc.oneof(fc.double({ min, max, noNaN: true }), fc.constantFrom(min, max));
}

/** All values, and a drawing, on every starter boat along each of its long edges. */
export function testBoats(cell: Cell): void {
  const edges = starters.flatMap(({ id, table }) =>
    lists(table).longEdges.map(({ id: along }) => ({ boat: id, along, table })),
  );
  test.each(edges)('has an answer on $boat along the $along', ({ along, table }) => {
    const tried = tryCell(cell, { along }, table);
    expect(tried.issues).toEqual({});
    expect(tried.drawing).toBeDefined();
  });
}

/** No text lies on another, at phone and at desk width; gives the drawing back. */
export function provesItsDrawing(drawing: Drawing | undefined): Drawing {
  if (!drawing) throw new Error('nothing was drawn');
  const sheets = [340, 700].map((width) => setOut(drawing, { width }));
  expect(sheets.flatMap((sheet) => collisions(sheet))).toEqual([]);
  return drawing;
}

/** What is written under a drawing on how it is read. */
export const noted = ({ shapes }: Drawing): string =>
  shapes.flatMap((shape) => (isFootNote(shape) ? [shape.text] : [])).join(' ');

/** The same for several sets of entries, a test each. */
export function testDrawings(
  cell: Cell,
  cases: Readonly<Record<string, Readonly<Record<string, string>>>>,
): void {
  test.each(Object.entries(cases))('is drawn without texts on each other: %s', (_, entries) => {
    expect(provesItsDrawing(tryCell(cell, entries).drawing).shapes.length).toBeGreaterThan(3);
  });
}

/** The distances that the dimensions with this text span on the drawing, mm. */
export function spans(drawing: Drawing | undefined, text: string): number[] {
  const found = (drawing?.shapes ?? []).filter((shape) => shape.shape === 'dim' && shape.text === text);
  if (found.length === 0) throw new Error(`no dimension reads ${text}`);
  return found.flatMap((shape) => {
    if (shape.shape !== 'dim') return [];
    const dx = Math.abs(shape.to[0] - shape.from[0]);
    const dy = Math.abs(shape.to[1] - shape.from[1]);
    if (shape.run === 'horizontal') return [dx];
    return [shape.run === 'vertical' ? dy : Math.hypot(dx, dy)];
  });
}

/** The distance that a dimension with this text spans; one of several by `which`. */
export function measured(drawing: Drawing | undefined, text: string, which = 0): number {
  const span = spans(drawing, text)[which];
  if (span === undefined) throw new Error(`fewer dimensions read ${text}`);
  return span;
}
