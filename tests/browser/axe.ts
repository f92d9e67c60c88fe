/** The rules of access, as axe knows them. */
import { readFileSync } from 'node:fs';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright';
import { inRoot } from '../tools/root.mjs';

const source = readFileSync(inRoot('node_modules/axe-core/axe.min.js'), 'utf8');

/** What axe finds wrong with a page as it stands, or with one place of it, as rule, place and reason. */
export async function violations(page: Page, within = 'html'): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(source);
  return page.evaluate(async (place) => {
    interface Axe {
      configure: (spec: { noHtml: boolean }) => void;
      run: (place: string, options: RunOptions) => Promise<AxeResults>;
    }
    const { axe } = globalThis as unknown as { axe: Axe };
    // The markup of every element that passes is not read by anyone, and takes a quarter of the time.
    axe.configure({ noHtml: true });
    const { violations: found } = await axe.run(place, { resultTypes: ['violations'] });
    return found.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary}`),
    );
  }, within);
}
