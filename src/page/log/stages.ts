/** The stages of the build and the cells that stand in each, as the notebooks have them. */
import { wordsOf } from '../../measure';
import type { Bench } from '../bench';
import { notebooks } from '../library';
import { capital } from '../words';

export interface StageOfLog {
  readonly title: string;
  readonly cells: readonly { readonly name: string; readonly title: string }[];
}

/** For what belongs to no cell, and for cells that stand in none of the notebooks. */
export const NO_STAGE = 'The build as a whole';

/** In the order of a build; tracked. */
export function stagesOfLog(bench: Bench): readonly StageOfLog[] {
  const seen = new Set<string>();
  return notebooks.value
    .filter(({ stage, boat }) => stage !== null && boat !== 'none')
    .map(({ title, cells }) => ({
      title,
      cells: Object.keys(cells).flatMap((instance) => {
        if (seen.has(instance)) return [];
        seen.add(instance);
        return [{ name: instance, title: cellTitle(instance, bench) }];
      }),
    }));
}

/** A cell under a name of its own says which it is: `Scarf joint, keelson scarf`. */
export function cellTitle(name: string, bench: Bench): string {
  const instance = bench.instances.value.get(name);
  if (!instance) return capital(wordsOf(name));
  return name === instance.cell.id ? instance.cell.title : `${instance.cell.title}, ${wordsOf(name)}`;
}

/** Title of the stage that a cell stands in, by itself or by its kind; null where in none. */
export function stageOf(cell: string, stages: readonly StageOfLog[], bench: Bench): string | null {
  const kind = bench.instances.value.get(cell)?.cell.id ?? cell;
  const holds = (name: string) => stages.find(({ cells }) => cells.some((one) => one.name === name));
  return (holds(cell) ?? holds(kind))?.title ?? null;
}
