/** Builds the site once for all journeys of a run, as it ships and with small notebooks, and takes both away after them. */
import { rmSync } from 'node:fs';
import type { TestProject } from 'vitest/node';
import { inRoot } from '../tools/root.mjs';
import { buildSite } from '../tools/site.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** The folder of the built site. */
    site: string;
    /** The folder of a site that holds, in place of the notebooks, the small ones made for journeys. */
    smallSite: string;
  }
}

export default async function setup(project: TestProject): Promise<() => void> {
  // A folder a run, so that two runs at once don't build over each other.
  const site = inRoot(`node_modules/.cache/site-${process.pid}`);
  const smallSite = `${site}-small`;
  await Promise.all([buildSite(site), buildSite(smallSite, 'tests/browser/notebooks')]);
  project.provide('site', site);
  project.provide('smallSite', smallSite);
  return () => {
    for (const folder of [site, smallSite]) rmSync(folder, { recursive: true, force: true });
  };
}
