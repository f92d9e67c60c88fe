/** The hull as it is drawn: the one in hand, or while a number of it can't be read the last good one. */
import { useRef } from 'preact/hooks';
import type { Hull } from '../boat';
import { type Issue, isIssue } from '../measure';
import type { Graph } from '../notebook';
import { useBench } from './bench';

export interface GoodHull {
  readonly hull: Hull | null;
  /** Why it is not the hull in hand, as a sentence without its full stop; null when it is. */
  readonly fault: string | null;
}

export function useGoodHull(graph: Graph): GoodHull {
  const boat = useBench().table.value.name;
  const last = useRef<{ readonly boat: string; readonly hull: Hull } | null>(null);
  const found = graph.hull();
  const fault = faultOf(found);
  if (fault === null) last.current = { boat, hull: found as Hull };
  // The hull of the boat before would pass for this one's.
  return { hull: last.current?.boat === boat ? last.current.hull : null, fault };
}

function faultOf(hull: Hull | Issue): string | null {
  if (isIssue(hull)) return hull.issue;
  return hull.faults[0]?.says ?? null;
}
