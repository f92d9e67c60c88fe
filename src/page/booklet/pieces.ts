/** What a notebook is made of, piece by piece, as it goes into a booklet. */
import { render, type VNode } from 'preact';
import type { Block, NotebookPage } from '../../notebook';
import { type Bench, BenchContext } from '../bench';
import { blockViews } from '../blocks/kinds';
import { cardOf } from '../card/card';
import { cardPictures } from '../card/card-picture';
import { html, use } from '../html';
import { cellPiece } from './cell-piece';
import { still } from './still';

export interface BookletPiece {
  readonly element: HTMLElement;
  readonly heads: boolean;
  /** What the contents call it, and how far it stands in; null where they don't name it. */
  readonly entry: { readonly says: string; readonly deep: boolean } | null;
}

/** How long what comes late is waited for, ms; what has not come by then is left out. */
const PATIENCE = 4000;

/** @param place where each is laid out once, out of sight */
export async function piecesOf(
  page: NotebookPage,
  bench: Bench,
  place: HTMLElement,
): Promise<BookletPiece[]> {
  const pieces: BookletPiece[] = [];
  for (const block of page.blocks) {
    // In their order, each laid out in the same place.
    // oxlint-disable-next-line no-await-in-loop
    const element = await standing(await viewOf(block, page, bench), bench, place);
    if (element)
      pieces.push({ element, heads: block.type === 'heading', entry: entryOf(block, element, bench) });
  }
  return pieces;
}

async function viewOf(block: Block, page: NotebookPage, bench: Bench): Promise<VNode | null> {
  if (block.type !== 'cell') return html`<div class="prose">${blockViews([block], page.id)}</div>`;
  const instance = bench.instances.peek().get(block.instance);
  if (!instance) return null;
  return cellPiece(instance, cardOf(instance, bench), await cardPictures(instance, bench), bench);
}

/** The view as it stands when all of it has come, and nothing of it moves any more; null where nothing is to be seen. */
async function standing(view: VNode | null, bench: Bench, place: HTMLElement): Promise<HTMLElement | null> {
  if (!view) return null;
  render(use(BenchContext.Provider, { value: bench }, view), place);
  const end = performance.now() + PATIENCE;
  do {
    // What comes late comes from one frame to the next.
    // oxlint-disable-next-line no-await-in-loop
    await new Promise((done) => setTimeout(done));
  } while (place.querySelector('[aria-busy="true"]') && performance.now() < end);
  const [first] = place.children;
  const copy = first ? still(first) : null;
  render(null, place);
  return copy && (copy.textContent?.trim() !== '' || copy.querySelector('svg, hr')) ? copy : null;
}

function entryOf(block: Block, element: HTMLElement, bench: Bench): BookletPiece['entry'] {
  const says = element.textContent?.trim() ?? '';
  if (block.type === 'heading') return { says, deep: block.level > 2 };
  if (block.type !== 'cell' || block.again) return null;
  const instance = bench.instances.peek().get(block.instance);
  return instance ? { says: element.querySelector('.booklet-title')?.textContent ?? '', deep: true } : null;
}
