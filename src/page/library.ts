/**
 * The shelf: heads of all notebooks at once, a notebook's text and the cells it uses when it is
 * opened, and the cells of the others once the page is at rest. Those that come along were read when the page was
 * built; the builder's own are read here, by the same reader, which is fetched when there is one.
 */
import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { OwnNotebooks } from '../boat';
import { type Cell, linkedWords, registry } from '../cells';
import { heads, texts as textsAlong } from '#notebooks/shelf';
import { type NotebookHead, type NotebookPage, unpackHead } from '../notebook';
import type * as Reader from '../notebook/markdown';
import { type Placing, placing } from '../notebook/placing';
import { cellAt, way } from './address';
import { addFormulas } from './formulas-here';

const comeAlong = heads.map(unpackHead);

const fetched = signal<ReadonlyMap<string, Cell>>(new Map());
const texts = signal<ReadonlyMap<string, NotebookPage>>(new Map());

/** The texts of the builder's own notebooks, tracked; null until the boat in hand is known. */
export const ownTexts = signal<() => OwnNotebooks | null>(() => null);
/** The reader once it is there; undefined where it did not arrive. */
const reader = signal<typeof Reader | null | undefined>(null);
const isWanting = computed(() => Object.keys(ownTexts.value() ?? {}).length > 0);
effect(() => {
  if (isWanting.value && !reader.peek())
    import('../notebook/markdown').then(
      (module) => {
        reader.value = module;
      },
      () => {
        reader.value = undefined;
      },
    );
});

/** The builder's own notebooks, those put away or the others, read; null until they are. */
function read(putAway: boolean): ReadonlyMap<string, NotebookPage> | null {
  const kept = ownTexts.value();
  if (!kept || (isWanting.value && reader.value === null)) return null;
  if (!reader.value) return new Map();
  const there = Object.entries(kept).filter(([, { away }]) => away === putAway);
  return new Map(there.map(([id, { text }]) => [id, pageOf(id, text)]));
}
const own = computed(() => read(false));
/** Asked only once the reader is there. */
const headsOf = (pages: ReadonlyMap<string, NotebookPage> | null): readonly NotebookHead[] =>
  [...(pages?.values() ?? [])].map((page) => reader.peek()!.headOf(page));
export const notebooksAway = computed(() => headsOf(read(true)));

/** Read once for each text, so that one edit reads one notebook anew. */
const readOnce = new Map<string, { readonly text: string; readonly page: NotebookPage }>();
function pageOf(id: string, text: string): NotebookPage {
  const known = readOnce.get(id);
  if (known?.text === text) return known.page;
  const page = Object.assign(reader.peek()!.parseNotebook(text, id), { id }); // asked only once the reader is there
  readOnce.set(id, { text, page });
  return page;
}

export const isOwn = (id: string): boolean => own.value?.has(id) ?? false;

/** All notebooks, in the order of the list. One of the builder's own stands in place of what comes along by that name. */
export const notebooks: ReadonlySignal<readonly NotebookHead[]> = computed(() =>
  [...comeAlong.filter(({ id }) => !isOwn(id)), ...headsOf(own.value)].sort(
    (a, b) => a.order - b.order || (a.title < b.title ? -1 : 1),
  ),
);

/**
 * The notebook that the address asks for, tracked; the first where it asks for none. What is not there, or no longer,
 * gives way to one that reads from the same boat; undefined until that can be told.
 */
export function openHead(): NotebookHead | undefined {
  const all = notebooks.value;
  const { notebook } = way.value;
  if (notebook === null) return all[0];
  const asked = all.find(({ id }) => id === notebook);
  return asked ?? (own.value ? (all.find(({ boat }) => boat === null) ?? all[0]) : undefined);
}

/** The text of the notebook that is open, once it is there; tracked. */
export function openText(): NotebookPage | undefined {
  const id = openHead()?.id ?? '';
  return own.value?.get(id) ?? texts.value.get(id);
}

/**
 * Every cell fetched so far that reads a boat, under its own name and under the names that notebooks give
 * it; or those of one notebook without a boat; tracked.
 * @param isPart whether a word is the name of a part of the boat
 */
export function placedOn(boatless: string | null, isPart: (word: string) => boolean): Placing {
  return placing(
    fetched.value,
    pagesOn(boatless),
    boatless === null ? [...fetched.value.values()] : [],
    isPart,
  );
}

/** The notebooks that read from the builder's boat, or the one that knows none; tracked. */
export const pagesOn = (boatless: string | null): readonly NotebookPage[] =>
  allOnShelf().pages.filter(({ id, boat }) => (boatless === null ? boat !== 'none' : id === boatless));

/** The notebooks in the order of their list and the cells, as far as they have been fetched; tracked. */
export function allOnShelf(): {
  readonly pages: readonly NotebookPage[];
  readonly cells: ReadonlyMap<string, Cell>;
} {
  const pages = notebooks.value.flatMap(({ id }) => own.value?.get(id) ?? texts.value.get(id) ?? []);
  return { pages, cells: fetched.value };
}

/** Whether every cell is there, and so every quantity that a notebook may name; tracked. */
export const isAllThere = (): boolean => fetched.value.size === registry.length && addFormulas.value !== null;

/** The notebook in which an instance stands; a plain cell may stand in several: the open one, else the first. */
export function notebookWith(instance: string): NotebookHead | undefined {
  return [openHead(), ...notebooks.value].find((head) => head && Object.hasOwn(head.cells, instance));
}

/** The cell that stands alone in a list of questions that is open there; undefined for the list itself, and for any other notebook. */
export const questionAt = (
  form: NotebookHead['form'],
  place: string | null,
  instances: readonly string[],
): string | undefined => form && cellAt(place, instances);

/**
 * Fetches a notebook with the first cell in it; the others follow together. Of a list of questions only the one that is
 * open: the rest come when the page is at rest.
 */
export async function openNotebook(head: NotebookHead, place: string | null): Promise<void> {
  const open = questionAt(head.form, place, Object.keys(head.cells));
  const all = Object.entries(head.cells);
  const ids = all.flatMap(([instance, cell]) => (head.form && instance !== open ? [] : [cell]));
  // Without a boat, no number comes from outside the notebook.
  const among = head.boat === 'none' ? ids : everyId;
  await fetchAll([head.id], ids.slice(0, 1), among);
  void fetchAll([], ids.slice(1), among);
}

const everyId = registry.map(({ id }) => id);

/** Fetches all other notebooks and cells, so that every link has its other end. */
export function fetchTheRest(): Promise<void> {
  return fetchAll(
    comeAlong.map(({ id }) => id),
    everyId,
    everyId,
  );
}

/**
 * Fetches what is not there yet, and puts it up all at once: each new cell means a new list of quantities.
 * @param among those cells from which others take their numbers
 */
async function fetchAll(
  ids: readonly string[],
  cellIds: readonly string[],
  among: readonly string[],
): Promise<void> {
  const [pages, cells] = await Promise.all([
    Promise.all(ids.filter((id) => !texts.peek().has(id)).map(fetchText)),
    withGivers(cellIds, among),
  ]);
  batch(() => {
    if (pages.length > 0)
      texts.value = new Map([
        ...texts.peek(),
        ...pages.flatMap((page) => (page ? [[page.id, page] as const] : [])),
      ]);
    if (cells.every(({ id }) => fetched.peek().has(id))) return;
    const all = new Map([...fetched.peek(), ...cells.map((cell) => [cell.id, cell] as const)]);
    // In the registry's order, whatever came first over the wire.
    fetched.value = new Map(registry.flatMap(({ id }) => (all.has(id) ? [[id, all.get(id)!] as const] : [])));
  });
}

/**
 * Cells with all that they take numbers from, near and far: a figure that stood there until those came would be a false
 * one.
 */
async function withGivers(
  ids: readonly string[],
  among: readonly string[],
  before: readonly Cell[] = [],
): Promise<readonly Cell[]> {
  const next = registry.filter(({ id }) => ids.includes(id) && before.every((cell) => cell.id !== id));
  if (next.length === 0) return before;
  const come = await Promise.all(next.map((shelved) => shelved.load()));
  const givers = come.flatMap(linkedWords).filter((id) => among.includes(id));
  return withGivers(givers, among, [...before, ...come]);
}

const fetchText = async (id: string): Promise<NotebookPage | undefined> => textsAlong[id]?.();
