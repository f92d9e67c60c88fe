/** What a value without a number waits for, with the way to it; where the fault is its own, what it is. */
import type { Issue } from '../../measure';
import { useBench } from '../bench';
import { html } from '../html';
import { capital, waitsFor } from '../words';

export function WaitsFor({ why }: { why: Issue }) {
  const bench = useBench();
  const { waitsFor: name } = why;
  if (name === undefined) return html`<span>${capital(why.issue)}.</span>`;
  const words = waitsFor(bench, why);
  return html`<span>waits for <button type="button" class="jump" onClick=${() => bench.goTo(name)}>${words}</button></span>`;
}
