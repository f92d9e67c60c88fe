// Builds the site as it ships and serves it, for tests and for looking at it.

import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { inRoot } from './root.mjs';

/**
 * Builds into `dir`. In a process of its own, since a test run sets NODE_ENV=test, under
 * which the build would leave out what only the shipped page has.
 * @param {string} dir
 * @param {string} [notebooks] the folder of notebooks to build in place of the project's own
 * @returns {Promise<void>}
 */
export async function buildSite(dir, notebooks) {
  const vite = inRoot('node_modules/vite/bin/vite.js');
  const run = promisify(execFile)(process.execPath, [vite, 'build', '--outDir', dir, '--logLevel', 'warn'], {
    cwd: inRoot(''),
    env: { ...process.env, NODE_ENV: 'production', ...(notebooks ? { NOTEBOOKS: notebooks } : {}) },
  });
  await run.catch((/** @type {{ stdout: string, stderr: string }} */ fault) => {
    throw new Error(`the site could not be built:\n${fault.stdout}${fault.stderr}`);
  });
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
