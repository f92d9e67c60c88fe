import { availableParallelism } from 'node:os';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { notebooks } from './src/build/index.ts';
import { launchOptions } from './tests/tools/chromium.mjs';

/** What goes through all cells, boats or published instances with many entries: not in a quick run. */
const SWEEPS = [
  'cells/{every-cell,clear-drawings,warning-edges,limits-in-words,raw-names,dimensions}',
  'cells/form/asked',
  'cells/shape/detection',
  'checks/{checks,check-book}',
  'kernel/afloat/sections',
  'notebook/{notebooks,markdown}',
  'notebook/graph/{catalogue,misfits}',
  'search/nest/known-optima',
].map((name) => `tests/${name}.test.ts`);

/**
 * Three kinds of test: `unit` in plain Node, `dom` inside a page of real Chromium, `browser`
 * for journeys that drive the built site from outside. They run one kind after the other, so
 * that journeys have the machine to themselves.
 */
export default defineConfig({
  test: {
    projects: [
      {
        plugins: [notebooks()],
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/dom/**', ...(process.env['QUICK'] ? SWEEPS : [])],
          env: { TZ: 'UTC' },
          sequence: { groupOrder: 0 },
          // Pure enough to share their modules: to read them anew for each file took as long as half the tests. Two at
          // the least, where vitest by itself would leave one of two cores idle.
          isolate: false,
          setupFiles: 'tests/shelves.ts',
          maxWorkers: Math.max(2, availableParallelism() - 1),
          // Properties tried on many boats take their time on a slow machine; nothing here is a test of speed.
          testTimeout: 30_000,
        },
      },
      {
        plugins: [notebooks()],
        // Listed here, since a dependency found late reloads the page in mid-test.
        optimizeDeps: {
          include: [
            '@observablehq/plot',
            '@preact/signals',
            '@preact/signals-core',
            'axe-core',
            'fast-check',
            'htm',
            'marked',
            'mathjs/number',
            'preact',
            'preact/hooks',
            'valibot',
          ],
        },
        test: {
          name: 'dom',
          include: ['tests/dom/**/*.test.ts'],
          // One page for all of them: each puts what it tests into a place of its own.
          isolate: false,
          sequence: { groupOrder: 1 },
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({
              launchOptions: launchOptions(),
              contextOptions: { locale: 'en-US', timezoneId: 'UTC' },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: 'tests/browser/setup.ts',
          // The files of a worker share their modules, and so one browser and its pages: see the harness.
          isolate: false,
          sequence: { groupOrder: 2 },
          // For a slow machine; nothing here is a test of speed.
          testTimeout: 120_000,
          hookTimeout: 120_000,
          expect: { poll: { timeout: 30_000 } },
          // One more than two cores: each waits for its page now and then, and all of them for frames.
          maxWorkers: 3,
        },
      },
    ],
  },
});
