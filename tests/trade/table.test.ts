import { describe, expect, test } from 'vitest';
import { kindOf } from '../../src/measure';
import { plywood } from '../../src/trade/plywood';
import { citation, look, rowOf, type TradeTable } from '../../src/trade/table';
import { timber } from '../../src/trade/timber';

test('what a table does not have is null, never guessed', () => {
  expect(look(timber, 'balsa', 'density')).toBeNull();
  expect(look(timber, 'redOak', 'modulusGreen')).toBeNull();
  expect(look(timber, 'toString', 'density')).toBeNull();
  expect(rowOf(timber, 'teak')!.label).toBe('Teak');
  expect(look(plywood, 'birch', 'faceModulus')).toBeNull();
});

test('a citation says how a number is known unless it was read', () => {
  expect(citation({ source: 'Table 5', known: 'published' })).toBe('Table 5');
  expect(citation({ source: 'Table 5', known: 'from memory' })).toBe('from memory: Table 5');
  expect(citation({ source: '', known: 'common practice' })).toBe('common practice, no source');
});

describe.each([
  ['timber', timber as TradeTable<string>],
  ['plywood', plywood as TradeTable<string>],
])('%s', (_, table) => {
  test('ids are camelCase and stand once', () => {
    const ids = table.rows.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z][A-Za-z0-9]+$/);
  });

  test('every number is positive, with a source and a kind', () => {
    for (const row of table.rows) {
      for (const [key, cited] of Object.entries(row.cells)) {
        expect(cited!.value, `${row.id}.${key}`).toBeGreaterThan(0);
        expect(Number.isFinite(cited!.value)).toBe(true);
        expect(citation(cited!)).not.toBe('');
        expect(kindOf(table.columns[key]!.kind).id).toBe(table.columns[key]!.kind);
      }
    }
  });
});
