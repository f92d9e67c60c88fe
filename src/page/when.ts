/** Text that is said only where a comparison holds, and other words in its stead. */
import { Fragment, type VNode } from 'preact';
import { isIssue } from '../measure';
import type { Condition } from '../notebook';
import { holds } from '../notebook/holds';
import { useBench } from './bench';
import { html } from './html';

type Says = () => readonly (VNode | string)[];

export interface WhenProps {
  readonly condition: Condition;
  readonly says: Says;
  readonly otherwise?: Says;
}

/** What is true of the version kept. */
export function When({ condition, says, otherwise }: WhenProps) {
  const so = holds(condition, useBench().book.first.value);
  if (isIssue(so)) return html`<span class="notice">${so.issue}</span>`;
  return html`<${Fragment}>${so ? says() : otherwise?.()}<//>`;
}
