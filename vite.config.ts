import { defineConfig } from 'vite';
import { notebooks, offline, policy } from './src/build/index.ts';

export default defineConfig({
  // Relative addresses, so that the built page works from any folder of any server.
  base: './',
  plugins: [notebooks(), policy(), offline()],
  build: {
    target: 'es2022',
    // Nothing inlined and no polyfill: the security policy lets no inline script or style run.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    manifest: true,
  },
});
