/** The rules of access, as axe knows them. */
import { readFileSync } from 'node:fs';
import type { AxeResults, ContextSpec, RunOptions } from 'axe-core';
import type { Page } from 'playwright';
import { inRoot } from '../tools/root.mjs';

const source = readFileSync(inRoot('node_modules/axe-core/axe.min.js'), 'utf8');

/** The rules whose verdict turns on the colours of the page. */
const OF_COLOUR = ['color-contrast', 'link-in-text-block'];

export interface Looked {
  /** In place of the whole page. */
  readonly within?: string;
  /** What has been looked at elsewhere as it stands here. */
  readonly without?: readonly string[];
  /** Of a page that has been looked at in other colours. */
  readonly coloursOnly?: boolean;
}

/** What axe finds wrong with a page as it stands, or with one place of it, as rule, place and reason. */
export async function violations(
  page: Page,
  { within = 'html', without = [], coloursOnly = false }: Looked = {},
): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(source);
  return page.evaluate(
    async ([place, left, rules]) => {
      interface Axe {
        configure: (spec: { noHtml: boolean }) => void;
        run: (context: ContextSpec, options: RunOptions) => Promise<AxeResults>;
      }
      const { axe } = globalThis as unknown as { axe: Axe };
      // The markup of every element that passes is not read by anyone, and takes a quarter of the time.
      axe.configure({ noHtml: true });
      const { violations: found } = await axe.run(
        { include: [place], exclude: left.filter((one) => document.querySelector(one)) },
        { resultTypes: ['violations'], ...(rules && { runOnly: rules }) },
      );
      return found.flatMap(({ id, nodes }) =>
        nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary}`),
      );
    },
    [within, without, coloursOnly ? OF_COLOUR : null] as const,
  );
}

/** How the cells of a notebook are asked for, by their names. */
export const cellsIn = (page: Page): Promise<string[]> =>
  page
    .locator('.cell[data-cell]')
    .evaluateAll((all) => all.map((one) => `.cell[data-cell="${one.getAttribute('data-cell')}"]`));
