// `npm test`: types, lint, format and all three kinds of test, each run even if one before it
// fails, so that one run tells all. `npm test -- quick` leaves out what needs a browser and what
// goes through all cells with many entries, which is most of the time (vitest.config.ts). Ends with
// the ten slowest files and a plain line with the sum of the tests; a check that fails counts there
// as one failure.

import { execFile, spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { relative } from 'node:path';
import { inRoot } from './root.mjs';

const tally = inRoot('node_modules/.cache/tests.json');
rmSync(tally, { force: true });
const atRoot = { cwd: inRoot(''), shell: process.platform === 'win32', maxBuffer: 2 ** 26 };
/** @param {string} tool */
const program = (tool) => inRoot(`node_modules/.bin/${tool}`);

/** @type {[string, string[]][]} */
const checks = [
  ['tsc', ['--noEmit']],
  ['oxlint', ['--type-aware', '--deny-warnings']],
  ['oxfmt', ['--check']],
];
// Side by side, each told whole when it has ended.
const held = await Promise.all(checks.map(([tool, args]) => check(tool, args)));
const failing = checks.filter((_, i) => !held[i]).map(([tool]) => tool);
const isQuick = process.argv.includes('quick');
if (isQuick) process.env['QUICK'] = 'yes';
const kinds = isQuick ? ['--project', 'unit'] : [];
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
  return spawnSync(program(tool), args, { ...atRoot, stdio: 'inherit' }).status === 0;
}

/**
 * The same, with what it says kept together.
 * @param {string} tool of node_modules/.bin
 * @param {string[]} args
 * @returns {Promise<boolean>}
 */
function check(tool, args) {
  return new Promise((resolve) => {
    execFile(program(tool), args, atRoot, (fault, said, complaint) => {
      process.stdout.write(said);
      process.stderr.write(complaint);
      if (typeof fault?.code === 'string') console.error(fault.message);
      resolve(fault === null);
    });
  });
}
