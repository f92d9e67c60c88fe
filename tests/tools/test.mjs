// `npm test`: types, lint, format and all three kinds of test, each run even if one before it
// fails, so that one run tells all. `npm test -- quick` leaves out what needs a browser. Ends with
// the ten slowest files and a plain line with the sum of the tests; a check that fails counts there
// as one failure.

import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { relative } from 'node:path';
import { inRoot } from './root.mjs';

const tally = inRoot('node_modules/.cache/tests.json');
rmSync(tally, { force: true });

/** @type {[string, string[]][]} */
const checks = [
  ['tsc', ['--noEmit']],
  ['oxlint', ['--type-aware', '--deny-warnings']],
  ['oxfmt', ['--check']],
];
const failing = checks.filter(([tool, args]) => !run(tool, args)).map(([tool]) => tool);
const kinds = process.argv.includes('quick') ? ['--project', 'unit'] : [];
const green = run('vitest', [
  'run',
  ...kinds,
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${tally}`,
]);

/**
 * @type {{
 *   numPassedTests: number, numFailedTests: number, numPendingTests: number,
 *   testResults: { name: string, startTime: number, endTime: number }[],
 * }}
 */
const tests = existsSync(tally)
  ? JSON.parse(readFileSync(tally, 'utf8'))
  : { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, testResults: [] };
// Vitest can also fail outside any test: a file that does not load, a promise nobody awaited.
const outside = !green && tests.numFailedTests === 0 ? 1 : 0;
const failed = tests.numFailedTests + outside + failing.length;

const slowest = tests.testResults
  .map(({ name, startTime, endTime }) => ({
    file: relative(inRoot(''), name),
    seconds: (endTime - startTime) / 1000,
  }))
  .sort((a, b) => b.seconds - a.seconds)
  .slice(0, 10);
console.log('The slowest files, in seconds:');
for (const { file, seconds } of slowest) console.log(`${seconds.toFixed(1).padStart(7)}  ${file}`);
if (failing.length > 0) console.log(`Failing checks: ${failing.join(', ')}`);
const skipped = tests.numPendingTests > 0 ? `, ${tests.numPendingTests} skipped` : '';
console.log(`${tests.numPassedTests} passed, ${failed} failed${skipped}`);
process.exit(failed === 0 ? 0 : 1);

/**
 * @param {string} tool of node_modules/.bin
 * @param {string[]} args
 */
function run(tool, args) {
  const { status } = spawnSync(inRoot(`node_modules/.bin/${tool}`), args, {
    cwd: inRoot(''),
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  return status === 0;
}
