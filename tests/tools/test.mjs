// `npm test`: types, lint, format and all three kinds of test, each run even if one before it
// fails, so that one run tells all. Ends on a plain line with the sum of the tests; a check
// that fails counts there as one failure.

import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
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
const green = run('vitest', ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${tally}`]);

/** @type {{ numPassedTests: number, numFailedTests: number, numPendingTests: number }} */
const tests = existsSync(tally)
  ? JSON.parse(readFileSync(tally, 'utf8'))
  : { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0 };
// Vitest can also fail outside any test: a file that does not load, a promise nobody awaited.
const outside = !green && tests.numFailedTests === 0 ? 1 : 0;
const failed = tests.numFailedTests + outside + failing.length;

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
