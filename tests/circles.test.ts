/** Nowhere in src do files import each other in a circle, nor do folders; imports of types alone count. */
import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { importsOf, type SourceFile, sources } from './sources';

/** Every circle among things that import each other, each as the names on it in order of the alphabet. */
function circles(imports: ReadonlyMap<string, ReadonlySet<string>>): string[][] {
  const reach = (from: string): Set<string> => {
    const seen = new Set<string>();
    const ahead = [from];
    for (let one = ahead.pop(); one !== undefined; one = ahead.pop())
      for (const next of imports.get(one) ?? [])
        if (!seen.has(next)) {
          seen.add(next);
          ahead.push(next);
        }
    return seen;
  };
  const reached = new Map([...imports.keys()].map((one) => [one, reach(one)]));
  const rings = [...imports.keys()]
    .filter((one) => reached.get(one)!.has(one))
    .map((one) => [...reached.get(one)!].filter((other) => reached.get(other)?.has(one)).sort());
  return [...new Map(rings.map((ring) => [ring.join(' '), ring])).values()];
}

/** Who imports whom, by files or by the folders they lie in; a file that lies in a room of src itself stands for itself. */
function importing(of: readonly SourceFile[], by: (file: string) => string) {
  const files = new Set(of.map(({ file }) => file));
  const imports = new Map<string, Set<string>>();
  for (const { file, text } of of)
    for (const wanted of importsOf(text).filter((one) => one.startsWith('.'))) {
      const path = posix.join(posix.dirname(file), wanted);
      const target = [`${path}.ts`, `${path}/index.ts`, path].find((one) => files.has(one));
      const [from, to] = [by(file), target === undefined ? null : by(target)];
      if (to !== null && to !== from) imports.set(from, (imports.get(from) ?? new Set()).add(to));
    }
  return imports;
}

const folderOf = (file: string) => (file.split('/').length > 2 ? posix.dirname(file) : file);

test('no files import each other in a circle, and no folders', () => {
  expect(circles(importing(sources(), (file) => file))).toStrictEqual([]);
  expect(circles(importing(sources(), folderOf))).toStrictEqual([]);
});

test('a planted circle is found, of files and of folders', () => {
  const planted = [
    { file: 'boat/hull/hull.ts', text: "import type { Edge } from './edge';" },
    {
      file: 'boat/hull/edge.ts',
      text: "import { near } from '../table/near';\nimport { hull } from './hull';",
    },
    { file: 'boat/table/near.ts', text: "export { far } from './far';" },
    { file: 'boat/table/far.ts', text: "const ends = () => import('../hull/ends');" },
    { file: 'boat/hull/ends.ts', text: '' },
    { file: 'boat/index.ts', text: "export * from './hull/hull';" },
  ];
  expect(circles(importing(planted, (file) => file))).toStrictEqual([
    ['boat/hull/edge.ts', 'boat/hull/hull.ts'],
  ]);
  expect(circles(importing(planted, folderOf))).toStrictEqual([['boat/hull', 'boat/table']]);
});
