/** A notebook with questions, read, on a sheet without a boat, as the page has it. */
import { cells } from '../../../src/cells/all';
import type { Instance } from '../../../src/cells';
import { type Book, createBook } from '../../../src/notebook/book';
import { looseCatalogue } from '../../../src/notebook/graph/loose-catalogue';
import { parseNotebook } from '../../../src/notebook/markdown';
import { freshState, noBoat } from '../../../src/notebook/state/state';
import type { AskPlace, NotebookPage, SeedPlace } from '../../../src/notebook/text/page-text';

export interface AskedOf {
  readonly page: NotebookPage;
  readonly book: Book;
  readonly asks: readonly AskPlace[];
  readonly seed: SeedPlace | undefined;
  readonly placed: readonly Instance[];
}

/** @throws Error where something can't be read */
export function askedOf(text: string, fileName = 'a-page.md'): AskedOf {
  const page = parseNotebook(text, fileName);
  const [fault] = page.faults;
  if (fault) throw new Error(`line ${fault.line}: ${fault.says}`);
  const placed = page.places.map(({ cell: id, instance, presets }): Instance => {
    const cell = cells.find((one) => one.id === id);
    if (!cell) throw new Error(`there is no cell "${id}"`);
    return { cell, name: instance, presets };
  });
  return {
    page,
    placed,
    book: createBook(freshState(noBoat), () => looseCatalogue(placed)),
    asks: page.blocks.filter((block) => block.type === 'ask'),
    seed: page.blocks.find((block) => block.type === 'seed'),
  };
}

export const fence = (info: string, ...lines: readonly string[]): string =>
  ['```' + info, ...lines, '```', ''].join('\n');

/** A scarf of 18 mm at 1 in 8: its taper is eight thicknesses, 144 mm, by the meaning of a slope. */
export const SCARF = fence('cell scarf as askScarf', 'thickness = 18 mm', 'slope = 8');
