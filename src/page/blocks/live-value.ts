/** A number in the middle of a sentence, moving with the rest; both versions and the difference where they differ. */
import type { Value } from '../../boat';
import { isIssue, writeDifference } from '../../measure';
import { sayOf, useBench, versionWords } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { isAllThere } from '../library';
import { waitsFor } from '../words';

const UnknownName = later(
  async () => (await import('../notebooks/unknown-name')).UnknownName,
  'name-to-come',
);

export function LiveValue({ of, line }: { of: string; line: number }) {
  const bench = useBench();
  const { book, shown, goTo } = bench;
  const graph = book.first.value;
  const quantity = graph.quantity(of);
  // What is not there yet may still come.
  if (!quantity) return isAllThere() ? use(UnknownName, { name: of, line }) : null;
  const by = bench.wall.value ?? bench.asked.value;
  if (by?.hides(of)) return by.blank(of);
  const { kind, meaning } = quantity;
  const say = (value: Value) =>
    isIssue(value) ? `(waits for ${waitsFor(bench, value)})` : sayOf(graph, of, value, shown.value);
  const first = graph.value(of);
  const second = book.second.value?.value(of);
  const differs = second !== undefined && say(second) !== say(first);
  return html`<button type="button" class="live" title=${meaning} onClick=${() => goTo(of)}>${say(first)}${
    differs
      ? html` <span class="other second">${versionWords.second.toLowerCase()}: ${say(second)}${apart(first, second)}</span>`
      : null
  }</button>`;

  function apart(a: Value, b: Value): string {
    return typeof a === 'number' && typeof b === 'number'
      ? ` (${writeDifference(b - a, kind, shown.value)})`
      : '';
  }
}
