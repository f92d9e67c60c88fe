/** A cell's drawing and chart from a graph, made anew only when what they show has changed. */
import { attempt, type Hull } from '../../boat';
import type { Chart, Instance, Values } from '../../cells';
import type { Drawing } from '../../drawing';
import { isIssue, type Shown } from '../../measure';
import type { Graph } from '../../notebook';
import type { Bench } from '../bench';
import { atHand, type Supposition } from '../on-hand';
import { sameData } from './same-data';

export interface CellPictures {
  readonly drawing?: Drawing;
  readonly chart?: Chart;
}
export type Which = keyof CellPictures;

/** What pictures were made from. */
export interface Made {
  readonly values: Values;
  readonly hull: Hull | null;
  readonly shown: Shown;
  readonly asked: readonly Supposition[];
  readonly drawn: CellPictures;
}

/**
 * @param which those that are asked for: one that nobody looks at is not made
 * @param last what was made of the same before, handed back where it still holds
 * @returns null while a value is missing, or while the hull has no shape to draw
 */
export function picturesOf(
  which: readonly Which[],
  instance: Instance,
  graph: Graph,
  bench: Bench,
  last: Made | null,
): Made | null {
  const { cell } = instance;
  const at = atHand(instance, graph, bench);
  if (isIssue(at)) return null;
  const { values, hull, on, asked } = at;
  const shown = bench.shown.value;
  const isAnsweredAlike = ({ changes, answer }: Supposition) => sameData(on.with(changes), answer);
  if (last && last.hull === hull && last.shown === shown && sameData(last.values, values)) {
    if (last.asked.every(isAnsweredAlike)) return last;
  }
  const drawing = attempt(() => (which.includes('drawing') ? cell.draw?.(values, on) : undefined));
  const chart = attempt(() => (which.includes('chart') ? cell.chart?.(values, on) : undefined));
  if (isIssue(drawing) || isIssue(chart)) return null;
  return {
    values,
    hull,
    shown,
    asked,
    drawn: { ...(drawing ? { drawing } : {}), ...(chart ? { chart } : {}) },
  };
}
