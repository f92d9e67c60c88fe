/**
 * The quantities and the graph of a boat as she stands. Which quantities she has turns on what she ends in, and
 * that on her own numbers: where those say otherwise than the plan, the catalogue is made anew for what they say.
 */
import { computed, type ReadonlySignal } from '@preact/signals-core';
import { type Ends, endsOf, plannedEnds, type Table } from '../boat';
import { isIssue } from '../measure';
import type { Catalogue } from './book';
import { createGraph, type Graph, type GraphParts } from './graph';

export interface Standing {
  readonly catalogue: Catalogue;
  readonly graph: Graph;
}

/**
 * @param table the plan's, tracked
 * @param catalogueOf lists the quantities of a boat with these ends, tracked
 * @param rest what else the graph is made of
 */
export function standing(
  table: () => Table,
  catalogueOf: (table: Table, ends: Ends) => Catalogue,
  rest: Omit<GraphParts, keyof Catalogue>,
): ReadonlySignal<Standing> {
  const withEnds = (ends: Ends): Standing => {
    const catalogue = catalogueOf(table(), ends);
    return { catalogue, graph: createGraph({ ...catalogue, ...rest }) };
  };
  const byPlan = computed(() => withEnds(plannedEnds(table())));
  const ends = computed(() => {
    const hull = byPlan.value.graph.hull();
    return isIssue(hull) ? plannedEnds(table()) : endsOf(hull);
  });
  return computed(() => (ends.value === plannedEnds(table()) ? byPlan.value : withEnds(ends.value)));
}
