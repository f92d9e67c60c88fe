/** The site as it ships, built once for the whole bench and taken away at its end. */
import { rmSync } from 'node:fs';
import { inRoot } from '../tools/root.mjs';
import { buildSite } from '../tools/site.mjs';

let folder: Promise<string> | undefined;

/** The folder of the built site. */
export function builtSite(): Promise<string> {
  const made = inRoot(`node_modules/.cache/bench-${process.pid}`);
  folder ??= buildSite(made).then(() => {
    process.on('exit', () => rmSync(made, { recursive: true, force: true }));
    return made;
  });
  return folder;
}
