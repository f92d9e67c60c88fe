/**
 * The shelf: heads of all notebooks at once, a notebook's text and the cells it uses when it is
 * opened, and the cells of the others once the page is at rest.
 */
import { computed, signal } from '@preact/signals';
import { type Cell, type Instance, registry } from '../cells';
import type { NotebookHead, NotebookPage } from '../notebook';
import { way } from './frame/way';

const headModules = import.meta.glob<NotebookHead>('../../notebooks/*.md', {
  eager: true,
  import: 'default',
  query: '?head',
});
const textModules = import.meta.glob<NotebookPage>('../../notebooks/*.md', { import: 'default' });

export const shelf: readonly NotebookHead[] = Object.values(headModules).sort(
  (a, b) => a.order - b.order || (a.title < b.title ? -1 : 1),
);

/** The notebook that the address asks for, else the first; tracked. */
export const openHead = (): NotebookHead | undefined =>
  shelf.find((head) => head.id === way.value.notebook) ?? shelf[0];

const fetched = signal<ReadonlyMap<string, Cell>>(new Map());

/** Every cell fetched so far, under its own name and under the names notebooks give it. */
export const instances = computed<ReadonlyMap<string, Instance>>(() => {
  const cells = fetched.value;
  const placed = new Map([...cells.values()].map((cell) => [cell.id, { cell, name: cell.id, presets: {} }]));
  for (const { cell: id, instance: name, presets } of shelf.flatMap((head) => head.instances)) {
    const cell = cells.get(id);
    if (cell && !placed.has(name)) placed.set(name, { cell, name, presets });
  }
  return placed;
});

/** Ids that no cell has; a notebook that names one is told so at the place. */
export const isCellKnown = (id: string): boolean => registry.some((shelved) => shelved.id === id);

/** The notebook in which an instance stands; a plain cell may stand in several: the first. */
export function notebookWith(instance: string): NotebookHead | undefined {
  return shelf.find((head) => head.instances.some((placed) => placed.instance === instance));
}

/** The text of a notebook, once the first cell in it is there; the others follow together. */
export async function openNotebook(head: NotebookHead): Promise<NotebookPage | undefined> {
  const load = Object.entries(textModules).find(([path]) => path.endsWith(`/${head.id}.md`))?.[1];
  const [first, ...rest] = head.instances.map((placed) => placed.cell);
  const [page] = await Promise.all([load?.(), fetchCells(first === undefined ? [] : [first])]);
  void fetchCells(rest);
  return page;
}

/** Fetches the cells of all other notebooks, so that every link has its other end. */
export function fetchTheRest(): Promise<void> {
  return fetchCells(registry.map((shelved) => shelved.id));
}

async function fetchCells(ids: readonly string[]): Promise<void> {
  const wanted = registry.filter(({ id }) => ids.includes(id) && !fetched.peek().has(id));
  const cells = await Promise.all(wanted.map((shelved) => shelved.load()));
  if (cells.length === 0) return;
  const all = new Map(fetched.peek());
  for (const cell of cells) all.set(cell.id, cell);
  // In the registry's order, whatever came first over the wire.
  fetched.value = new Map(registry.flatMap(({ id }) => (all.has(id) ? [[id, all.get(id)!] as const] : [])));
}
