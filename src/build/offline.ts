/**
 * Writes `sw.js`, the service worker that lets the built page work without a network. It keeps
 * every file of the build in a cache named after their content, and a new build waits until
 * the page says `skip-waiting`, so that nobody's work is reloaded from under them. Files that
 * outweigh all the others (a solver, the hull in the round) are kept last, when the page is at rest.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** Larger files wait until the page is at rest, bytes. */
const HEAVY = 400_000;

export function offline(): Plugin {
  let publicDir = '';
  return {
    name: 'offline',
    apply: (config, { command }) => command === 'build' && !config.build?.ssr,
    configResolved(config) {
      publicDir = config.publicDir;
    },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const hash = createHash('sha256');
        const files = ['./'];
        const heavy: string[] = [];
        const keep = (name: string, content: string | Uint8Array) => {
          hash.update(name).update(content);
          // The page itself is kept under the address that people open.
          if (name !== 'index.html') (content.length > HEAVY ? heavy : files).push(name);
        };
        const parts = Object.values(bundle).toSorted((a, b) => (a.fileName < b.fileName ? -1 : 1));
        for (const part of parts) {
          if (part.fileName.startsWith('.vite/')) continue;
          keep(part.fileName, part.type === 'chunk' ? part.code : part.source);
        }
        for (const name of readdirSync(publicDir).toSorted()) keep(name, readFileSync(join(publicDir, name)));
        const version = hash.digest('hex').slice(0, 12);
        this.emitFile({ type: 'asset', fileName: 'sw.js', source: serviceWorker(version, files, heavy) });
      },
    },
  };
}

/** The worker's text. Servers that send `Vary` would hide kept scripts, hence `ignoreVary`. */
function serviceWorker(version: string, files: readonly string[], heavy: readonly string[]): string {
  return `const name = 'battenbook-${version}';
const files = ${JSON.stringify(files)};
const heavy = ${JSON.stringify(heavy)};

addEventListener('install', (event) => {
  const fresh = files.map((file) => new Request(file, { cache: 'reload' }));
  event.waitUntil(caches.open(name).then((cache) => cache.addAll(fresh)));
});

addEventListener('activate', (event) => {
  const isOld = (key) => key.startsWith('battenbook-') && key !== name;
  event.waitUntil(
    caches
      .keys()
      .then((keys) => Promise.all(keys.filter(isOld).map((key) => caches.delete(key))))
      .then(() => clients.claim()),
  );
});

addEventListener('message', (event) => {
  if (event.data === 'skip-waiting') skipWaiting();
  if (event.data === 'keep-the-rest') event.waitUntil(keepTheRest());
});

async function keepTheRest() {
  const cache = await caches.open(name);
  // What does not arrive now is asked for again at the next visit.
  for (const file of heavy) if (!(await cache.match(file))) await cache.add(file).catch(() => undefined);
}

addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return;
  const wanted = request.mode === 'navigate' ? './' : request;
  event.respondWith(
    caches
      .open(name)
      .then((cache) => cache.match(wanted, { ignoreSearch: true, ignoreVary: true }))
      .then((kept) => kept ?? fetch(request)),
  );
});
`;
}
