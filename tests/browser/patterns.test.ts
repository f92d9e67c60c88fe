/** Patterns at full size, as a builder saves them: sheets of the paper chosen, and files for a cutting table. */
import { readFile } from 'node:fs/promises';
import Parser from 'dxf-parser';
import type { Download } from 'playwright';
import { expect, test } from 'vitest';
import { readPdf } from '../drawing/read-pdf';
import { cell, openNotebook, unfold } from './steps';

const text = async (download: Download) => readFile(await download.path(), 'utf8');

test('a frame is saved as sheets of either paper, PDF and SVG alike, and whole as SVG and DXF', async () => {
  const page = await openNotebook('frame-pattern');
  await unfold(cell(page, 'framePattern'), 'the frame at full size');
  const row = cell(page, 'framePattern').locator('.patterns');
  const saved: Download[] = [];
  page.on('download', (download) => saved.push(download));
  const save = async (label: string) => {
    saved.length = 0;
    await row.getByRole('button', { name: label }).click();
    await expect.poll(() => row.getByRole('status').innerText()).toMatch(/^Saved as/);
    await expect.poll(() => saved.length).toBeGreaterThan(0);
    return [...saved];
  };
  for (const [paper, width, height] of [
    ['A4', 210, 297],
    ['Letter', 215.9, 279.4],
  ] as const) {
    await row.getByLabel('on').selectOption(paper);
    const [pdf] = await save('PDF sheets');
    expect(pdf!.suggestedFilename()).toMatch(new RegExp(`^frame-3.*\\.${paper.toLowerCase()}\\.pdf$`));
    const { pages } = await readPdf(new Uint8Array(await readFile(await pdf!.path())));
    for (const sheet of pages) {
      const [short, long] = [sheet.width, sheet.height].toSorted((a, b) => a - b);
      expect(short).toBeCloseTo(width, 1);
      expect(long).toBeCloseTo(height, 1);
    }
    const [sheet] = await save('SVG sheets');
    await expect.poll(() => saved.length).toBe(pages.length);
    const size = /<svg[^>]* width="([\d.]+)mm" height="([\d.]+)mm"/.exec(await text(sheet!));
    expect([size?.[1], size?.[2]].map(Number).toSorted((a, b) => a - b)).toStrictEqual([width, height]);
  }
  const [dxf] = await save('DXF, whole');
  const read = new Parser().parseSync(await text(dxf!));
  expect(read?.entities.length).toBeGreaterThan(5);
  const [whole] = await save('SVG, whole');
  expect(await text(whole!)).toContain('data-part="frame3"');
});
