/** Builds the site once for all journeys of a run, and takes it away after them. */
import { rmSync } from 'node:fs';
import type { TestProject } from 'vitest/node';
import { inRoot } from '../tools/root.mjs';
import { buildSite } from '../tools/site.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** The folder of the built site. */
    site: string;
  }
}

export default function setup(project: TestProject): () => void {
  // A folder a run, so that two runs at once don't build over each other.
  const site = inRoot(`node_modules/.cache/site-${process.pid}`);
  buildSite(site);
  project.provide('site', site);
  return () => rmSync(site, { recursive: true, force: true });
}
