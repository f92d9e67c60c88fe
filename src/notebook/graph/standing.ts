/**
 * The quantities and the graph of a boat as she stands. Which quantities she has turns on what she ends in, and
 * that on her own numbers: where those say otherwise than the plan, there is another graph for what they say. Cells
 * that come or go leave a graph as it is but for their own.
 */
import { computed, type ReadonlySignal } from '@preact/signals-core';
import type { Ends, Table } from '../../boat';
import { isIssue } from '../../measure';
import { createGraph, type Graph, type GraphParts } from './graph';
import type { Catalogue } from './on-hand';

export interface Standing {
  /** Tracked. */
  readonly catalogue: () => Catalogue;
  readonly graph: Graph;
}

/**
 * @param table the plan's, tracked
 * @param catalogueOf the quantities of a boat with these ends, or with the plan's, tracked
 * @param rest what else her graph is made of
 * @returns how she stands in a version, given what that lays over the first one's design
 */
export function standing(
  table: () => Table,
  catalogueOf: (table: Table, ends?: Ends) => Catalogue,
  rest: Omit<GraphParts, 'catalogue'>,
): (version?: (design: Graph) => Graph) => ReadonlySignal<Standing> {
  // The design is one for all versions with the same ends, so that they can share what it comes to.
  const designs = computed(() => {
    const of = table();
    const withEnds = (ends?: Ends): Standing => {
      const catalogue = computed(() => catalogueOf(of, ends));
      return {
        catalogue: () => catalogue.value,
        graph: createGraph({ catalogue: () => catalogue.value, ...rest }),
      };
    };
    const byPlan = withEnds();
    const others = new Map<Ends, Standing>();
    const otherwise = (ends: Ends): Standing => {
      const design = others.get(ends) ?? withEnds(ends);
      others.set(ends, design);
      return design;
    };
    return { byPlan, otherwise };
  });
  return (version = (design) => design) => {
    const laidOver = ({ catalogue, graph }: Standing): Standing => ({ catalogue, graph: version(graph) });
    const byPlan = computed(() => laidOver(designs.value.byPlan));
    /** Her ends as she stands, where they are others than the plan's. */
    const ends = computed(() => {
      const { catalogue, graph } = byPlan.value;
      const { ends: planned } = catalogue();
      const hull = planned ? graph.hull() : null;
      const drawn = hull && !isIssue(hull) ? planned?.of(hull) : undefined;
      return drawn === planned?.taken ? undefined : drawn;
    });
    return computed(() => (ends.value ? laidOver(designs.value.otherwise(ends.value)) : byPlan.value));
  };
}
