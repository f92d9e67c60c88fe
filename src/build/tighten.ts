/**
 * Presses the page's own file once more: a second minifier, slower and closer than the bundler's, takes 1.4 % off what
 * every reader waits for. The other files are small and fetched late.
 */
import { minify } from 'terser';
import type { Plugin } from 'vite';

/** @param chunk name of the file that is pressed */
export function tighten(chunk: string): Plugin {
  return {
    name: 'tighten',
    apply: 'build',
    generateBundle: {
      order: 'post',
      async handler(_, bundle) {
        for (const file of Object.values(bundle)) {
          if (file.type !== 'chunk' || file.name !== chunk || file.map) continue;
          // The bundler's own line of stylesheets to fetch stays as it is: the one file finds it by its name.
          const own = /^const __vite__mapDeps=.*\n/.exec(file.code)?.[0] ?? '';
          const rest = file.code.slice(own.length);
          // oxlint-disable-next-line no-await-in-loop -- there is one
          const { code } = await minify(rest, { module: true, ecma: 2020, compress: { ecma: 2020 } });
          if (code !== undefined) file.code = own + code;
        }
      },
    },
  };
}
