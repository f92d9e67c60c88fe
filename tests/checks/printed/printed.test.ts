/** Every number of every table of the trade is read back: typed once more from its source, and compared exactly. */
import { expect, test } from 'vitest';
import { coats } from './coats';
import { motors } from './motors';
import { shop } from './shop';
import { woods } from './woods';

const modules = import.meta.glob<Readonly<Record<string, unknown>>>('../../../src/trade/*.ts', {
  eager: true,
});

/** Numbers in whatever a file exports, by path; rows go by their ids, and a cited number by its own name. */
function numbersIn(value: unknown, path: string): readonly (readonly [path: string, number: number])[] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  const step = (key: string, inner: unknown) => {
    if (key === 'rows' || key === 'cells' || key === 'value') return path;
    const id =
      Array.isArray(value) && typeof inner === 'object' && inner !== null && 'id' in inner
        ? String(inner.id)
        : key;
    return `${path}.${id}`;
  };
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, step(key, inner)));
}

const held = Object.entries(modules).flatMap(([file, exported]) =>
  numbersIn(exported, /(?<name>[\w-]+)\.ts$/.exec(file)!.groups!['name']!).map(
    ([path, number]) => [path.replace(/\.+/g, '.'), number] as const,
  ),
);
const printed: Readonly<Record<string, number>> = { ...woods, ...shop, ...coats, ...motors };

test('all numbers that the trade’s files hold are typed here, and none beside them', () => {
  expect(held.length).toBeGreaterThan(700);
  const paths = held.map(([path]) => path);
  expect(paths.filter((path) => !(path in printed))).toStrictEqual([]);
  expect(Object.keys(printed).filter((path) => !paths.includes(path))).toStrictEqual([]);
});

test('each is what its source prints, but for the rounding of its unit', () => {
  const off = held.filter(([path, number]) => Math.abs(number / printed[path]! - 1) > 1e-12);
  expect(off.map(([path, number]) => [path, number, printed[path]])).toStrictEqual([]);
});

test('a figure moved by one in a thousand is noticed, whichever it is', () => {
  for (const [path, number] of held) {
    expect([path, Math.abs((number * 1.001) / printed[path]! - 1) > 1e-12]).toStrictEqual([path, true]);
    expect(number).not.toBe(0);
  }
});
