// Draws public/icon-*.png from public/icon.svg, for phones that take no SVG: node tests/tools/icons.mjs

import './ready.mjs';
import { readFileSync } from 'node:fs';
import { inRoot } from './root.mjs';

const { chromium } = await import('playwright');
const { launchOptions } = await import('./chromium.mjs');

const browser = await chromium.launch(launchOptions());
for (const size of [192, 512]) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<style>body { margin: 0 }</style>${readFileSync(inRoot('public/icon.svg'), 'utf8')}`,
  );
  await page.screenshot({ path: inRoot(`public/icon-${size}.png`) });
}
await browser.close();
