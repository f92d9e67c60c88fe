/** The command as it is typed: `npm run --silent reckon -- …`, in a process of its own. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoBoat, writeBoatFile } from '../../src/boat';
import { inRoot } from '../tools/root.mjs';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'reckon-'));
  const boat = { name: 'Shed boat', table: demoBoat, entries: { 'keelson.thickness': '20 mm' } };
  writeFileSync(join(folder, 'shed boat.json'), writeBoatFile(boat));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs the command as a builder would from a folder of their own. */
function reckon(...args: string[]) {
  const { stdout, stderr, status } = spawnSync(
    'npm',
    ['--prefix', inRoot(''), 'run', '--silent', 'reckon', '--', ...args],
    {
      cwd: folder,
      encoding: 'utf8',
      shell: process.platform === 'win32',
      // npm names the folder it was started from in INIT_CWD; a test run under npm has one already.
      env: { ...process.env, INIT_CWD: folder },
    },
  );
  return { out: stdout, err: stderr, code: status };
}

// A process of its own bundles the program first, which takes seconds: what needs none is in `reckon.test.ts`.
describe('npm run reckon', { timeout: 60_000 }, () => {
  test('finds a boat file from the folder it is called in, and prints JSON and nothing else', () => {
    expect(reckon('shed boat.json', 'scarf.taper', '--set', 'scarf.slope=10')).toStrictEqual({
      out: '{\n  "scarf.taper": {\n    "value": 0.2,\n    "unit": "m"\n  }\n}\n',
      err: '',
      code: 0,
    });
  });

  test('refuses with a sentence, exit code 2 and nothing printed', () => {
    expect(reckon('.', 'scarf.taper')).toStrictEqual({
      out: '',
      err: 'the boat file "." can\'t be read: it is not a file\n',
      code: 2,
    });
  });
});
