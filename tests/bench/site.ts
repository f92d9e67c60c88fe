/** The site as it ships, built once for the whole bench and taken away at its end. */
import { rmSync } from 'node:fs';
import { inRoot } from '../tools/root.mjs';
import { buildSite } from '../tools/site.mjs';

let folder: string | undefined;

/** The folder of the built site. */
export function builtSite(): string {
  if (folder === undefined) {
    const made = inRoot(`node_modules/.cache/bench-${process.pid}`);
    buildSite(made);
    process.on('exit', () => rmSync(made, { recursive: true, force: true }));
    folder = made;
  }
  return folder;
}
