/** Builds the site for all journeys of a run, as it ships and with small notebooks. */
import type { TestProject } from 'vitest/node';
import { builtSite } from '../tools/site.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** The folder of the built site. */
    site: string;
    /** The folder of a site that holds, in place of the notebooks, the small ones made for journeys. */
    smallSite: string;
  }
}

export default async function setup(project: TestProject): Promise<void> {
  const [site, smallSite] = await Promise.all([builtSite(), builtSite('tests/browser/notebooks')]);
  project.provide('site', site);
  project.provide('smallSite', smallSite);
}
