/** The notebooks on the shelf and every cell that stands in one of them. */
import { cellOf, type Instance } from '../cells';
import { instancesOf, type NotebookPage, plainInstances } from '../notebook';

const modules = import.meta.glob<NotebookPage>('../../notebooks/*.md', { eager: true, import: 'default' });

export const notebooks: readonly NotebookPage[] = Object.values(modules).sort((a, b) => a.order - b.order || (a.title < b.title ? -1 : 1));

/** Cells under their own names and under the names notebooks give them; a cell that doesn't exist is left out and said at its place. */
export function instancesIn(pages: readonly NotebookPage[]): ReadonlyMap<string, Instance> {
  const placed = new Map(plainInstances.map((instance) => [instance.name, instance]));
  for (const { cell: id, instance: name, presets } of pages.flatMap(instancesOf)) {
    const cell = cellOf(id);
    if (cell && !placed.has(name)) placed.set(name, { cell, name, presets });
  }
  return placed;
}
