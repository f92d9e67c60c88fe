/** Text that is said only where a comparison holds, and other words in its stead. */
import { Fragment, type VNode } from 'preact';
import { useRef } from 'preact/hooks';
import { isIssue } from '../../measure';
import type { Condition } from '../../notebook';
import { holds } from '../../notebook/text/holds';
import { BenchContext, useBench } from '../bench';
import { html, use } from '../html';
import { isAllThere } from '../library';
import { useSeen } from '../seen';

type Text = () => readonly (VNode | string)[];

export interface WhenProps {
  readonly condition: Condition;
  readonly line: number;
  readonly text: Text;
  readonly otherwise?: Text;
}

/** What is true of the version kept. */
export function When({ condition, line, text, otherwise }: WhenProps) {
  const bench = useBench();
  const by = bench.wall.value ?? bench.asked.value;
  // What is said of a covered answer would give it away.
  if (by && condition.some(({ of }) => by.hides(of))) return null;
  const so = holds(condition, bench.book.first.value);
  // What is not there yet may still come.
  if (isIssue(so)) return isAllThere() ? html`<span class="notice">Line ${line}: ${so.issue}.</span>` : null;
  return html`<${Fragment}>${so ? text() : otherwise?.()}<//>`;
}

/** Standing by itself it may lie far from the window, and has a place there while nothing is said too. */
export function WhenAlone(props: WhenProps) {
  const place = useRef<HTMLElement>(null);
  const bench = useSeen(place, useBench());
  return use(
    BenchContext.Provider,
    { value: bench },
    html`<${Fragment}><span ref=${place} />${use(When, props)}<//>`,
  );
}
