// Builds the site as it ships and serves it, for tests and for looking at it.

import { spawnSync } from 'node:child_process';
import { inRoot } from './root.mjs';

/**
 * Builds into `dir`. In a process of its own, since a test run sets NODE_ENV=test, under
 * which the build would leave out what only the shipped page has.
 * @param {string} dir
 */
export function buildSite(dir) {
  const vite = inRoot('node_modules/vite/bin/vite.js');
  const run = spawnSync(process.execPath, [vite, 'build', '--outDir', dir, '--logLevel', 'warn'], {
    cwd: inRoot(''),
    env: { ...process.env, NODE_ENV: 'production' },
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(`the site could not be built:\n${run.stdout}${run.stderr}`);
}

/**
 * Serves a built site on a port of this machine.
 * @param {string} dir
 * @param {number} [port] this one, or the next that is free; left out, any free one
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export async function serveSite(dir, port = 0) {
  const { preview } = await import('vite');
  const server = await preview({
    root: inRoot(''),
    configFile: false,
    logLevel: 'error',
    build: { outDir: dir },
    preview: { host: '127.0.0.1', port, strictPort: false },
  });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('the preview server gave no address');
  return { url, close: () => server.close() };
}
