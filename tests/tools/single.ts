/** `npm run build:single`: the whole notebook as one file, `dist/battenbook.html`, that opens from a disk. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { singleFile } from '../../src/build';
import { inRoot } from './root.mjs';
import { builtSite } from './site.mjs';

const page = await singleFile(await builtSite());
mkdirSync(inRoot('dist'), { recursive: true });
writeFileSync(inRoot('dist/battenbook.html'), page);
console.log(`dist/battenbook.html, ${(page.length / 1e6).toFixed(1)} MB`);
