/**
 * The shelf: heads of all notebooks at once, a notebook's text and the cells it uses when it is
 * opened, and the cells of the others once the page is at rest.
 */
import { batch, signal } from '@preact/signals';
import { type Cell, type Instance, registry } from '../cells';
import { instancesOf, type NotebookHead, type NotebookPage } from '../notebook';
import { way } from './address';

const headModules = import.meta.glob<NotebookHead>('#notebooks/*.md', {
  eager: true,
  import: 'default',
  query: '?head',
});
const textModules = import.meta.glob<NotebookPage>('#notebooks/*.md', { import: 'default' });

export const shelf: readonly NotebookHead[] = Object.values(headModules).sort(
  (a, b) => a.order - b.order || (a.title < b.title ? -1 : 1),
);

/** The notebook that the address asks for, else the first; tracked. */
export const openHead = (): NotebookHead | undefined =>
  shelf.find((head) => head.id === way.value.notebook) ?? shelf[0];

const fetched = signal<ReadonlyMap<string, Cell>>(new Map());
const texts = signal<ReadonlyMap<string, NotebookPage>>(new Map());

/** The text of the notebook that is open, once it is there; tracked. */
export const openText = (): NotebookPage | undefined => texts.value.get(openHead()?.id ?? '');

/**
 * Every cell fetched so far that reads a boat, under its own name and under the names that fetched notebooks give
 * it; or those of one notebook without a boat; tracked.
 */
export function instancesOn(boatless: string | null): ReadonlyMap<string, Instance> {
  const cells = fetched.value;
  const own = boatless === null ? [...cells.values()] : [];
  const placed = new Map<string, Instance>(
    own.map((cell) => [cell.id, { cell, name: cell.id, presets: {} }]),
  );
  const pages = [...texts.value.values()].filter(({ id, boat }) =>
    boatless === null ? boat !== 'none' : id === boatless,
  );
  for (const { cell: id, instance: name, presets } of pages.flatMap(instancesOf)) {
    const cell = cells.get(id);
    if (cell && !placed.has(name)) placed.set(name, { cell, name, presets });
  }
  return placed;
}

/** Ids that no cell has; a notebook that names one is told so at the place. */
export const isCellKnown = (id: string): boolean => registry.some((shelved) => shelved.id === id);

/** The notebook in which an instance stands; a plain cell may stand in several: the first. */
export function notebookWith(instance: string): NotebookHead | undefined {
  return shelf.find((head) => head.places.some((placed) => placed.instance === instance));
}

/** Fetches a notebook with the first cell in it; the others follow together. */
export async function openNotebook(head: NotebookHead): Promise<void> {
  const [first, ...rest] = head.places.map((placed) => placed.cell);
  await fetchAll([head.id], first === undefined ? [] : [first]);
  void fetchAll([], rest);
}

/** Fetches all other notebooks and cells, so that every link has its other end. */
export function fetchTheRest(): Promise<void> {
  return fetchAll(
    shelf.map(({ id }) => id),
    registry.map(({ id }) => id),
  );
}

/** Fetches what is not there yet, and puts it up all at once: each new cell means a new list of quantities. */
async function fetchAll(notebooks: readonly string[], ids: readonly string[]): Promise<void> {
  const [pages, cells] = await Promise.all([
    Promise.all(notebooks.filter((id) => !texts.peek().has(id)).map(fetchText)),
    Promise.all(
      registry
        .filter(({ id }) => ids.includes(id) && !fetched.peek().has(id))
        .map((shelved) => shelved.load()),
    ),
  ]);
  batch(() => {
    if (pages.length > 0)
      texts.value = new Map([
        ...texts.peek(),
        ...pages.flatMap((page) => (page ? [[page.id, page] as const] : [])),
      ]);
    if (cells.length === 0) return;
    const all = new Map([...fetched.peek(), ...cells.map((cell) => [cell.id, cell] as const)]);
    // In the registry's order, whatever came first over the wire.
    fetched.value = new Map(registry.flatMap(({ id }) => (all.has(id) ? [[id, all.get(id)!] as const] : [])));
  });
}

async function fetchText(id: string): Promise<NotebookPage | undefined> {
  const load = Object.entries(textModules).find(([path]) => path.endsWith(`/${id}.md`))?.[1];
  return load?.();
}
