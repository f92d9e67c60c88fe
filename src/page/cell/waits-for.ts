/** What a value without a number waits for, with the way to it. */
import type { Issue } from '../../measure';
import { useBench } from '../bench';
import { html } from '../html';
import { waitsFor } from '../words';

export function WaitsFor({ why }: { why: Issue }) {
  const bench = useBench();
  const { waitsFor: name } = why;
  const words = waitsFor(bench, why);
  if (name === undefined) return html`<span>waits for ${words}</span>`;
  return html`<span>waits for <button type="button" class="jump" onClick=${() => bench.goTo(name)}>${words}</button></span>`;
}
