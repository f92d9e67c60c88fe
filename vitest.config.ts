import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { launchOptions } from './tests/tools/chromium.mjs';

// Three kinds of test: `unit` in plain Node, `dom` inside a real browser page,
// `browser` for journeys that drive the built site from outside.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/dom/**'],
          env: { TZ: 'UTC' },
        },
      },
      {
        optimizeDeps: {
          // Listed, or a dependency found late reloads the page in mid-test.
          include: [
            'preact',
            'preact/hooks',
            '@preact/signals',
            '@preact/signals-core',
            'htm',
            'mathjs',
            'valibot',
            'marked',
            '@observablehq/plot',
            'fast-check',
            'axe-core',
          ],
        },
        test: {
          name: 'dom',
          include: ['tests/dom/**/*.test.ts'],
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
          testTimeout: 60_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
