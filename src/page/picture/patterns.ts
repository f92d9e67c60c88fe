/** The patterns of a cell at full size, made when they are asked for. */
import { attempt } from '../../boat';
import type { Instance } from '../../cells';
import type { Drawing } from '../../drawing';
import { type Issue, isIssue, issue } from '../../measure';
import type { Bench } from '../bench';
import { atHand } from '../on-hand';

/** Of the version in hand. */
export function patternsOf(instance: Instance, bench: Bench): readonly Drawing[] | Issue {
  const graph = bench.book.inHand.value;
  const at = atHand(instance, graph, bench);
  if (isIssue(at)) return at;
  const { values, on } = at;
  const made = attempt(() => instance.cell.patterns?.draw(values, on) ?? []);
  return isIssue(made) || made.length > 0 ? made : issue('there is no hull to take it from');
}
