/** Files lie and are called so that they are found by name: tests beside what they test, drawings by their suffix. */
import { readdirSync } from 'node:fs';
import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { type SourceFile, sources } from './sources';
import { inRoot } from './tools/root.mjs';

/** Where a test named after a file of its room should lie; null where it does, or is named after none. */
function astray(test: string, files: readonly string[]): string | null {
  const name = posix.basename(test, '.test.ts');
  const [room] = test.split('/');
  const twins = files.filter((file) => file.startsWith(`${room}/`) && posix.basename(file, '.ts') === name);
  const isAtHome = twins.some((file) => posix.dirname(file) === posix.dirname(test));
  return twins.length === 0 || isAtHome ? null : `${test} is of ${twins.join(' or ')}`;
}

test('a test lies where the file lies that it is named after', () => {
  const files = sources().map(({ file }) => file);
  const tests = readdirSync(inRoot('tests'), { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.test.ts'));
  expect(
    tests
      .filter((one) => one.includes('/'))
      .map((one) => astray(one, files))
      .filter((one) => one !== null),
  ).toStrictEqual([]);
  expect(astray('boat/edge.test.ts', ['boat/hull/edge.ts'])).not.toBeNull();
  expect(astray('boat/hull/edge.test.ts', ['boat/hull/edge.ts', 'kernel/edge.ts'])).toBeNull();
});

/** A file of the cells that makes shapes and is neither a cell nor called a drawing. */
const drawsUnderAnotherName = ({ file, text }: SourceFile): boolean =>
  file.startsWith('cells/') &&
  !file.endsWith('-drawing.ts') &&
  !text.includes('defineCell(') &&
  /^import (?!type\b)[^;]*?from '[./]+\/drawing(\/[\w-]+)*';/m.test(text);

test('what cells draw lies in files called *-drawing.ts, or in the cell itself', () => {
  expect(
    sources()
      .filter(drawsUnderAnotherName)
      .map(({ file }) => file),
  ).toStrictEqual([]);
  const text = "import {\n  line,\n} from '../../drawing';";
  expect(drawsUnderAnotherName({ file: 'cells/frames/notch-view.ts', text })).toBe(true);
  expect(drawsUnderAnotherName({ file: 'cells/frames/notch-drawing.ts', text })).toBe(false);
});
