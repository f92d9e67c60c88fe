// Builds the site as it ships and serves it, for tests and for looking at it.

import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync } from 'node:fs';
import { promisify } from 'node:util';
import { inRoot } from './root.mjs';

const CACHE = 'node_modules/.cache';
/** All that the built page is made of, but for the notebooks. */
const SOURCES = ['index.html', 'package-lock.json', 'public', 'src', 'tsconfig.json', 'vite.config.ts'];
const A_DAY = 24 * 60 * 60 * 1000;

/**
 * The folder of the built site. It is called by what it is built of, so that it is built once for as long as that
 * stands; one that nobody has asked for in a day is taken away.
 * @param {string} [notebooks] the folder of notebooks in place of the project's own
 * @returns {Promise<string>}
 */
export async function builtSite(notebooks = 'notebooks') {
  const site = inRoot(`${CACHE}/site-${digestOf([...SOURCES, notebooks])}`);
  if (!existsSync(site)) await build(site, notebooks);
  const now = new Date();
  utimesSync(site, now, now);
  for (const name of readdirSync(inRoot(CACHE)).filter((one) => one.startsWith('site-'))) {
    const folder = inRoot(`${CACHE}/${name}`);
    const asked = statSync(folder, { throwIfNoEntry: false })?.mtimeMs ?? Infinity;
    if (asked < now.getTime() - A_DAY) rmSync(folder, { recursive: true, force: true });
  }
  return site;
}

/**
 * In a process of its own, since a test run sets NODE_ENV=test, under which the build would leave out what only the
 * shipped page has. Two at once build both, and the first to end stands.
 * @param {string} site
 * @param {string} notebooks
 */
async function build(site, notebooks) {
  const fresh = `${site}.${process.pid}`;
  const vite = inRoot('node_modules/vite/bin/vite.js');
  const args = [vite, 'build', '--outDir', fresh, '--logLevel', 'error'];
  const run = promisify(execFile)(process.execPath, args, {
    cwd: inRoot(''),
    env: { ...process.env, NODE_ENV: 'production', NOTEBOOKS: notebooks },
  });
  await run.catch((/** @type {{ stdout: string, stderr: string }} */ fault) => {
    throw new Error(`the site could not be built:\n${fault.stdout}${fault.stderr}`);
  });
  try {
    renameSync(fresh, site);
  } catch (fault) {
    rmSync(fresh, { recursive: true });
    if (!existsSync(site)) throw fault;
  }
}

/**
 * @param {readonly string[]} paths files and folders from the root of the project
 * @returns {string}
 */
function digestOf(paths) {
  const hash = createHash('sha256');
  const files = paths.flatMap((path) =>
    statSync(inRoot(path)).isDirectory()
      ? readdirSync(inRoot(path), { recursive: true, encoding: 'utf8' }).map((name) => `${path}/${name}`)
      : [path],
  );
  for (const file of files.sort()) {
    if (statSync(inRoot(file)).isDirectory()) continue;
    hash
      .update(`${file}\0`)
      .update(readFileSync(inRoot(file)))
      .update('\0');
  }
  return hash.digest('hex').slice(0, 16);
}

/**
 * Serves a built site on a port of this machine.
 * @param {string} dir
 * @param {number} [port] this one, or the next that is free; left out, any free one
 * @param {Record<string, string>} [headers] sent with every file
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export async function serveSite(dir, port = 0, headers = {}) {
  const { preview } = await import('vite');
  const server = await preview({
    root: inRoot(''),
    configFile: false,
    logLevel: 'error',
    build: { outDir: dir },
    preview: { host: '127.0.0.1', port, strictPort: false, headers },
  });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('the preview server gave no address');
  return { url, close: () => server.close() };
}
