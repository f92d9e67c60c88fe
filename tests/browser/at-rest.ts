/** How much room cells take as they open, and whether what is written in their pictures can be read. */
import type { Page } from 'playwright';
import { questionsOf, turnToQuestion } from './steps';

export interface AtRest {
  readonly notebook: string;
  readonly cell: string;
  /** px, of the whole cell. */
  readonly height: number;
  /** Where the answers and the deciding fields end, px from the top of the cell. */
  readonly answers: number;
  readonly fields: number;
  /** The width of what is drawn in view, px. */
  readonly picture: number;
}

/** Every cell of the notebook that is open. */
export async function cellsAtRest(page: Page, notebook: string): Promise<AtRest[]> {
  const rows = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.cell[data-cell]')].map((cell) => {
      const { top, height } = cell.getBoundingClientRect();
      const endOf = (place: string) =>
        Math.round((cell.querySelector(place)?.getBoundingClientRect().bottom ?? top) - top);
      const picture = cell.querySelector('.cell-body > .pictures svg')?.getBoundingClientRect();
      return {
        cell: cell.dataset['cell'] ?? '',
        height: Math.round(height),
        answers: endOf('.answers'),
        fields: endOf('.deciding'),
        picture: Math.round(picture?.width ?? 0),
      };
    }),
  );
  return rows.map((row) => ({ notebook, ...row }));
}

/** The cell of every quick answer, each of which opens alone. */
export async function questionsAtRest(page: Page): Promise<AtRest[]> {
  await page.evaluate(() => {
    location.hash = '#/quick-answers';
  });
  await page.locator('.by-stage a[data-question]').first().waitFor();
  const rows: AtRest[] = [];
  for (const name of await questionsOf(page)) {
    await turnToQuestion(page, name);
    rows.push(...(await cellsAtRest(page, 'quick-answers')));
  }
  return rows;
}

/** As many of the rows as lie within a bound, of all. */
export const shareWithin = (rows: readonly AtRest[], bound: number): number =>
  rows.filter(({ height }) => height <= bound).length / rows.length;

/** As a table, the highest first, to be read in the output of the tests. */
export function tableOf(rows: readonly AtRest[]): string {
  const line = (...cells: readonly (string | number)[]) =>
    cells.map((text, i) => (i < 2 ? String(text).padEnd(24) : String(text).padStart(9))).join('');
  return [
    line('notebook', 'cell', 'height', 'answers', 'fields', 'picture'),
    ...rows
      .toSorted((a, b) => b.height - a.height)
      .map(({ notebook, cell, height, answers, fields, picture }) =>
        line(notebook, cell, height, answers, fields, picture),
      ),
  ].join('\n');
}

/**
 * Texts in the pictures in view that lie over each other or beyond the edge of their picture, by the boxes that the
 * browser gives them, less the air above and below the letters.
 */
export const unreadable = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    // Of the page's sans: a line's box over the font size, and what of it the letters leave free above and below.
    const [ABOVE, BELOW] = [0.23, 0.05];
    /** What two texts may touch by, px. */
    const TOUCH = 0.6;
    interface Box {
      readonly text: string;
      readonly corners: readonly DOMPoint[];
    }
    const boxOf = (text: SVGTextElement): Box => {
      const { x, y, width, height } = text.getBBox();
      const size = parseFloat(getComputedStyle(text).fontSize);
      const [top, bottom] = [y + ABOVE * size, y + height - BELOW * size];
      const matrix = text.getScreenCTM();
      const corners = [
        [x, top],
        [x + width, top],
        [x + width, bottom],
        [x, bottom],
      ].map(([left, down]) => new DOMPoint(left, down).matrixTransform(matrix ?? undefined));
      return { text: text.textContent, corners };
    };
    /** How far two boxes, turned or not, reach into each other, px; nothing or less where a line parts them. */
    const depth = (a: Box, b: Box): number => {
      let least = Infinity;
      for (const { corners } of [a, b])
        for (const side of [0, 1]) {
          const [from, to] = [corners[side]!, corners[side + 1]!];
          const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
          const along = (point: DOMPoint) => (point.x * (to.x - from.x) + point.y * (to.y - from.y)) / long;
          const spans = [a, b].map((one) => one.corners.map(along));
          const [first, second] = spans.map((all) => [Math.min(...all), Math.max(...all)] as const);
          least = Math.min(least, Math.min(first![1], second![1]) - Math.max(first![0], second![0]));
        }
      return least;
    };
    const found: string[] = [];
    for (const svg of document.querySelectorAll('.cell figure :is(svg.drawing, .chart-place svg)')) {
      if (!svg.checkVisibility()) continue;
      const where = svg.closest<HTMLElement>('.cell')?.dataset['cell'] ?? '';
      const boxes = [...svg.querySelectorAll<SVGTextElement>('text')]
        .filter((text) => text.textContent.trim() !== '')
        .map(boxOf);
      const edge = svg.getBoundingClientRect();
      for (const [i, box] of boxes.entries()) {
        const isCut = box.corners.some(
          ({ x, y }) => x < edge.left - 1 || x > edge.right + 1 || y < edge.top - 1 || y > edge.bottom + 1,
        );
        if (isCut) found.push(`${where}: "${box.text}" is cut`);
        for (const other of boxes.slice(i + 1))
          if (depth(box, other) > TOUCH) found.push(`${where}: "${box.text}" lies over "${other.text}"`);
      }
    }
    return found;
  });
