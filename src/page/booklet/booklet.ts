/**
 * A notebook as a booklet: its title, contents with the pages on which things stand, its text and cells, then the shop
 * cards and patterns that were chosen. Every page is set out here, as high as its paper, so that the contents are true
 * in any browser: where a thing stands is not left to whoever prints.
 */
import { render } from 'preact';
import type { Instance } from '../../cells';
import type { PaperName } from '../../drawing/export/full-size';
import { isIssue } from '../../measure';
import type { NotebookPage } from '../../notebook';
import { type Bench, versionWords } from '../bench';
import { cardOf } from '../card/card';
import { cardPictures } from '../card/card-picture';
import { fitCard } from '../card/fit-card';
import { clearPlace, printInStead } from '../card/in-stead';
import { leavesOf } from '../card/leaf';
import { html } from '../html';
import { fetchTheRest } from '../library';
import { patternsOf } from '../picture/patterns';
import { unitWords } from '../units';
import './booklet.css';
import { packed } from './pack';
import { type BookletPiece, piecesOf } from './pieces';
import { parted } from './split';

export interface BookletAsked {
  readonly paper: PaperName;
  /** Names of the cells whose shop card, and whose patterns, stand at the end. */
  readonly cards: readonly string[];
  readonly patterns: readonly string[];
}

interface Leaf {
  /** What stands on it, or the whole sheet as it is. */
  readonly inside: readonly HTMLElement[];
  readonly className: string;
  readonly entries: readonly NonNullable<BookletPiece['entry']>[];
}

const CUTS = [
  "400 11pt 'Source Sans 3'",
  "600 11pt 'Source Sans 3'",
  "400 11pt 'Source Serif 4'",
  "600 18pt 'Source Serif 4'",
];

/** Resolves once the print dialog has been asked for. */
export async function printBooklet(page: NotebookPage, bench: Bench, asked: BookletAsked): Promise<void> {
  await fetchTheRest().catch(() => undefined);
  const place = clearPlace(`card booklet ${asked.paper.toLowerCase()}`);
  await Promise.allSettled(CUTS.map((cut) => document.fonts.load(cut)));
  const column = add(place, 'booklet-column');
  const text = await leavesOfText(page, bench, column);
  const cards = await each(asked.cards, bench, (instance) => cardLeaves(instance, bench));
  const patterns = await each(asked.patterns, bench, (instance) =>
    patternLeaves(instance, bench, asked.paper),
  );
  const after = [...text, ...headedBy('Shop cards', cards), ...headedBy('Patterns at full size', patterns)];
  const front = frontOf(page, bench, after, column);
  column.remove();
  const leaves = [...front, ...after];
  leaves.forEach(({ inside, className }, at) => {
    const sheet = add(place, `booklet-sheet ${className}`);
    sheet.append(...inside);
    const foot = add(sheet, 'booklet-foot');
    foot.textContent = `${page.title} · ${at + 1}`;
  });
  printInStead(place, 'booklet', `${page.title} - ${bench.name.peek()}`);
}

/** The text's pages, in a column laid out as wide as the paper's. */
async function leavesOfText(page: NotebookPage, bench: Bench, column: HTMLElement): Promise<Leaf[]> {
  const place = add(column, '');
  const pieces = await piecesOf(page, bench, place);
  place.remove();
  return leavesIn(column, pieces);
}

function leavesIn(column: HTMLElement, pieces: readonly BookletPiece[]): Leaf[] {
  const room = Number.parseFloat(getComputedStyle(column).maxHeight);
  column.replaceChildren(...pieces.map(({ element }) => element));
  let headed = 0;
  const parts = pieces.flatMap((piece) => {
    // What a heading stands over has the rest of the page.
    const all = parted(piece.element, room - headed);
    headed = piece.heads ? headed + piece.element.getBoundingClientRect().height : 0;
    return all.map((element, n): BookletPiece => (n === 0 ? piece : { ...piece, element, entry: null }));
  });
  const weighed = parts.map(({ element, heads }) => ({
    height: element.getBoundingClientRect().height,
    heads,
  }));
  return packed(weighed, room).map((on) => {
    const inside = add(column, 'booklet-column');
    inside.append(...on.map((at) => parts[at]!.element)); // places in the list
    return {
      inside: [inside],
      className: '',
      entries: on.flatMap((at) => parts[at]!.entry ?? []),
    };
  });
}

/** Title and contents; how many pages they take does not hang on the numbers in them. */
function frontOf(page: NotebookPage, bench: Bench, after: readonly Leaf[], column: HTMLElement): Leaf[] {
  const { book, boatless, name, shown } = bench;
  const versions = book.second.peek()
    ? `, ${versionWords.first.toLowerCase()} and ${versionWords.second.toLowerCase()}`
    : '';
  const day = new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  const title = add(column, 'booklet-front');
  render(
    html`<h1>${page.title}</h1>
      ${page.summary ? html`<p><i>${page.summary}</i></p>` : null}
      <p>${boatless.peek() ? '' : `${name.peek()}${versions} · `}${unitWords(shown.peek())} · ${day}</p>
      <h2>Contents</h2>`,
    title,
  );
  const lines = after.flatMap(({ entries }, at) => entries.map((entry) => ({ entry, at })));
  const elements = lines.map(({ entry: { says, deep } }) => {
    const line = add(column, deep ? 'booklet-line deep' : 'booklet-line');
    add(line, 'says').textContent = says;
    add(line, 'number').textContent = '000';
    return line;
  });
  const piece = (element: HTMLElement, heads: boolean): BookletPiece => ({ element, heads, entry: null });
  const leaves = leavesIn(column, [piece(title, true), ...elements.map((line) => piece(line, false))]);
  lines.forEach(({ at }, n) => {
    elements[n]!.lastElementChild!.textContent = String(leaves.length + at + 1); // made above, with a number last
  });
  return leaves;
}

const each = async (
  names: readonly string[],
  bench: Bench,
  leavesFor: (instance: Instance) => Promise<Leaf[]>,
): Promise<Leaf[]> => {
  const found = names.flatMap((name) => bench.instances.peek().get(name) ?? []);
  const all: Leaf[] = [];
  // One after the other: all are laid out in one place.
  // oxlint-disable-next-line no-await-in-loop
  for (const instance of found) all.push(...(await leavesFor(instance)));
  return all;
};

/** The first of them stands in the contents under a heading for them all. */
function headedBy(says: string, [first, ...others]: readonly Leaf[]): Leaf[] {
  return first ? [{ ...first, entries: [{ says, deep: false }, ...first.entries] }, ...others] : [];
}

async function cardLeaves(instance: Instance, bench: Bench): Promise<Leaf[]> {
  const pictures = await cardPictures(instance, bench);
  const all = cardOf(instance, bench);
  const leaves = leavesOf(instance, bench, all.table);
  const place = document.createElement('div');
  place.className = 'card';
  document.body.append(place);
  fitCard(leaves.length > 0 ? { ...all, table: null } : all, pictures, '', place, leaves);
  const pages = [...place.querySelectorAll<HTMLElement>('.card-page')].map(
    (one) => one.cloneNode(true) as HTMLElement,
  );
  render(null, place);
  place.remove();
  return pages.map((one, n) => ({
    inside: [one],
    className: 'of-card',
    entries: n === 0 ? [{ says: all.title, deep: true }] : [],
  }));
}

async function patternLeaves(instance: Instance, bench: Bench, paper: PaperName): Promise<Leaf[]> {
  const drawings = patternsOf(instance, bench);
  if (isIssue(drawings)) return [];
  const { fullSizeFiles } = await import('../../drawing/export/full-size');
  const { svg } = fullSizeFiles(drawings, { paper, title: instance.cell.title });
  const images = await Promise.all(svg.map(asImage));
  return images.map((image, n) => ({
    inside: [image],
    className: 'of-pattern',
    // By the words that stand on it.
    entries: n === 0 ? [{ says: drawings[0]!.title, deep: true }] : [], // there is one, or it is said why not
  }));
}

/** A sheet of a pattern at its own size: one that lies across its paper is turned to stand on it. */
async function asImage(svg: string): Promise<HTMLElement> {
  const [, width = '', height = ''] = /<svg[^>]* width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
  if (width === '') throw new Error('a sheet of a pattern says no size');
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  image.style.width = `${width}mm`;
  image.style.height = `${height}mm`;
  if (Number(width) > Number(height)) image.className = 'across';
  await image.decode();
  return image;
}

function add(to: HTMLElement, className: string): HTMLElement {
  const element = document.createElement('div');
  element.className = className;
  to.append(element);
  return element;
}
