/** A cell's drawing and chart from a graph, made anew only when what they show has changed. */
import { attempt, type Hull } from '../../boat';
import type { Chart, Instance, Values } from '../../cells';
import type { Drawing } from '../../drawing';
import { isIssue, type Shown } from '../../measure';
import type { Graph } from '../../notebook';
import type { Bench } from '../bench';
import { atHand, type Supposed } from '../on-hand';
import { sameData } from './same-data';

export interface CellPictures {
  readonly drawing?: Drawing;
  readonly chart?: Chart;
}

/** What a pair of pictures was made from. */
export interface Made {
  readonly values: Values;
  readonly hull: Hull | null;
  readonly shown: Shown;
  readonly asked: readonly Supposed[];
  readonly drawn: CellPictures;
}

/**
 * @param last what was made before, handed back where it still holds
 * @returns null while a value is missing, or while the hull has no shape to draw
 */
export function picturesOf(instance: Instance, graph: Graph, bench: Bench, last: Made | null): Made | null {
  const { cell } = instance;
  const at = atHand(instance, graph, bench);
  if (isIssue(at)) return null;
  const { values, hull, on, asked } = at;
  const shown = bench.shown.value;
  const isAnsweredAlike = ({ changes, answer }: Supposed) => sameData(on.with(changes), answer);
  if (last && last.hull === hull && last.shown === shown && sameData(last.values, values)) {
    if (last.asked.every(isAnsweredAlike)) return last;
  }
  const drawing = attempt(() => cell.draw?.(values, on));
  const chart = attempt(() => cell.chart?.(values, on));
  if (isIssue(drawing) || isIssue(chart)) return null;
  return {
    values,
    hull,
    shown,
    asked,
    drawn: { ...(drawing ? { drawing } : {}), ...(chart ? { chart } : {}) },
  };
}
