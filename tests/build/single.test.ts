/** The site as one file: what it holds, and what its policy lets run. A journey opens it from a disk. */
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { singleFile } from '../../src/build';

const page = `<!doctype html>
<html lang="en">
  <head>
    <meta http-equiv="Content-Security-Policy" content="script-src &#39;self&#39;">
    <link rel="icon" type="image/svg+xml" href="./icon.svg" />
    <link rel="apple-touch-icon" href="./icon-192.png" />
    <link rel="manifest" href="./battenbook.webmanifest" />
    <script type="module" crossorigin src="./assets/page.js"></script>
    <link rel="stylesheet" crossorigin href="./assets/page.css">
  </head>
  <body></body>
</html>
`;
const parts = {
  'page.js': `const __vite__mapDeps=(i)=>i;
import('./late.js');const r=new Worker(new URL(new URL(\`search.worker-1.js\`,import.meta.url).href,\`\`+import.meta.url),{type:\`module\`});`,
  'late.js': "export const tag='</script><!--<script>';document.title=tag;",
  'page.css': 'p{font-family:x}@font-face{font-family:x;src:url(./x.woff2)}',
  'late.css': 'q{color:red}',
  'x.woff2': 'font',
  'search.worker-1.js': 'import(`./solver.js`)',
  'solver.js': 'export const at=new URL(`solver-1.wasm`,import.meta.url).href;postMessage(at)',
  'solver-1.wasm': 'program',
};

function siteWith(more: Readonly<Record<string, string>> = {}): string {
  const site = mkdtempSync(join(tmpdir(), 'site-'));
  onTestFinished(() => rmSync(site, { recursive: true }));
  mkdirSync(join(site, 'assets'));
  writeFileSync(join(site, 'index.html'), page);
  writeFileSync(join(site, 'icon.svg'), '<svg/>');
  for (const [name, text] of Object.entries({ ...parts, ...more }))
    if (text !== '') writeFileSync(join(site, 'assets', name), text);
  return site;
}

test('all of it lies in the page, and only that runs', async () => {
  const file = await singleFile(siteWith());
  // As a browser reads it: a script goes as far as the first end of one.
  const scripts = [...file.matchAll(/<script type="module">([^]*?)<\/script>/g)].map(([, text = '']) => text);
  const styles = [...file.matchAll(/<style>([^]*?)<\/style>/g)].map(([, text = '']) => text);
  const worker = /<script type="text\/plain" id="search-worker">([^]*?)<\/script>/.exec(file)?.[1] ?? '';
  const sha = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`;
  const policy = /Content-Security-Policy" content="([^"]*)"/.exec(file)?.[1]?.replaceAll('&#39;', "'") ?? '';
  expect(scripts).toHaveLength(1);
  expect(styles).toHaveLength(1);
  expect(policy).toContain(`script-src '${sha(scripts[0]!)}' 'wasm-unsafe-eval';`);
  expect(policy).toContain(`style-src '${sha(styles[0]!)}';`);
  // Of all rules none lets anything come from an address.
  expect(policy).not.toMatch(/'self'|'unsafe-(?:inline|eval)'|https?:|\*/);
  expect(policy).toMatch(/default-src 'none'/);
  // Nothing is asked for by an address that is not its own content.
  expect([...file.matchAll(/(?:src|href)="(?!data:)[^"]*"/g)]).toStrictEqual([]);
  expect(styles[0]).toContain(`url(data:font/woff2;base64,${Buffer.from('font').toString('base64')})`);
  expect(styles[0]).toContain('q{color:red}');
  expect(worker).toContain(`data:application/wasm;base64,${Buffer.from('program').toString('base64')}`);
  expect(worker).not.toMatch(/import\b/);
  // What would end a script, or open another, stands in it in no form that a browser would take for that.
  expect(scripts[0]).toMatch(/script>\\x3C!--\\x3Cscript>/);
  expect(`${scripts[0]}${worker}`).not.toMatch(/<(?:!--|\/?script)/i);
  expect(scripts[0]).not.toMatch(/\bimport\s*\(/);
});

test.each([
  ['no worker', { 'search.worker-1.js': '' }, /no worker for searches/],
  ['two programs', { 'solver-2.wasm': 'another' }, /2 programs for the solver/],
  ['a worker that nothing starts', { 'page.js': 'document.title="x"' }, /started in 0 places/],
  [
    'a font of an unknown kind',
    { 'late.css': 'p{src:url(./x.bdf)}', 'x.bdf': '1' },
    /no kind of file is known/,
  ],
])('a site with %s is refused', async (_, more, says) => {
  await expect(singleFile(siteWith(more))).rejects.toThrow(says);
});
