import { defineConfig } from 'vite';
import { leaveOut, notebooks, offline, policy, leanParser, tighten } from './src/build/index.ts';

export default defineConfig({
  // Relative addresses, so that the built page works from any folder of any server.
  base: './',
  // NOTEBOOKS names another folder of notebooks than the project's own.
  plugins: [notebooks(process.env['NOTEBOOKS']), leanParser(), tighten('page'), policy(), offline()],
  worker: { format: 'es', plugins: () => [leaveOut('node:module')] },
  build: {
    target: 'es2022',
    // Nothing inlined and no polyfill: the security policy lets no inline script or style run.
    assetsInlineLimit: 0,
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_file, chunks, { hostType }) =>
        // Lists of what each part will ask for in its turn would cost the first load more than they save later.
        hostType === 'js' ? chunks.filter((chunk) => chunk.endsWith('.css')) : chunks,
    },
    manifest: true,
    // The hull in the round is one large library, fetched when it is asked for.
    chunkSizeWarningLimit: 700,
    rolldownOptions: {
      output: {
        // By their hash alone: names would stand in the first page a hundred times over, half a kilobyte. The manifest
        // tells which is which.
        chunkFileNames: 'assets/[hash:7].js',
        // So with stylesheets; fonts keep theirs, which say what a page loads.
        assetFileNames: ({ names }) =>
          names.some((name) => name.endsWith('.css'))
            ? 'assets/[hash:7][extname]'
            : 'assets/[name]-[hash][extname]',
        // All that the page needs at once goes into one file: left to itself, the bundler cuts it
        // anew with every cell that shares a piece of it, and small files compress badly.
        codeSplitting: {
          groups: [
            {
              name: 'page',
              // And the list of long timbers, which is asked for with a boat and without, what a line of text reads, and
              // what every cell cites.
              test: /src\/(page\/main|boat\/joinery\/long-parts|notebook\/text\/page-text|trade\/sources)\.ts$/,
              includeDependenciesRecursively: true,
              priority: 3,
            },
            {
              name: 'declared',
              // What the boat is asked for, in the words of every cell: with the first one, and without a boat.
              test: /src\/(boat\/quantities\/declared|cells\/form\/from-boat)\.ts$/,
              includeDependenciesRecursively: true,
              priority: 2.5,
            },
            {
              name: 'saved',
              test: /src\/notebook\/keeping\/read-saved\.ts$/,
              includeDependenciesRecursively: true,
              priority: 2,
            },
            {
              name: 'boat',
              test: /src\/page\/boat\/boats\.ts$/,
              includeDependenciesRecursively: true,
              priority: 1,
            },
          ],
        },
      },
    },
  },
});
