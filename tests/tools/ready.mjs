// Makes a fresh clone ready: installs what the lock file lists when that has not been
// done, or the lock file has changed since. Plain Node, for it runs before anything
// is installed. Speaks on stderr only, so that a command's own output stays clean.

import { spawnSync } from 'node:child_process';
import { existsSync, lstatSync, statSync } from 'node:fs';
import { inRoot } from './root.mjs';

const lock = inRoot('package-lock.json');
const installed = inRoot('node_modules/.package-lock.json');

// Installing through a link would empty a folder that other work stands on.
const folder = inRoot('node_modules');
if (existsSync(folder) && lstatSync(folder).isSymbolicLink()) {
  process.stderr.write(
    'node_modules is a link to another folder; remove the link, and the packages are installed here.\n',
  );
  process.exit(1);
}

if (!existsSync(installed) || statSync(installed).mtimeMs < statSync(lock).mtimeMs) {
  process.stderr.write('Installing packages (once) ...\n');
  const npm = spawnSync('npm', ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: inRoot(''),
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (npm.status !== 0) process.exit(npm.status ?? 1);
}
