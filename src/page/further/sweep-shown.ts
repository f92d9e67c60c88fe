/** A sweep that a notebook places. */
import { useId } from 'preact/hooks';
import type { SweepAsk } from '../../boat';
import { useBench } from '../bench';
import { html, use } from '../html';
import { isAllThere } from '../library';
import { SweepPicture } from './sweep-picture';

export function SweepShown({ ask, line }: { ask: SweepAsk; line: number }) {
  const id = useId();
  const bench = useBench();
  const graph = bench.book.first.value;
  const unknown = [ask.result, ask.against, ask.lines].filter((name) => name !== '' && !graph.has(name));
  if (unknown.length > 0)
    return isAllThere()
      ? html`<p class="notice">Line ${line}: there is no number ${unknown.map((name) => `"${name}"`).join(', ')}.</p>`
      : html`<div class="sweep-to-come" aria-busy="true"></div>`;
  if (bench.asked.value?.hides(ask.result))
    return html`<p class="sweep-shown">${bench.asked.value.blank(ask.result)}</p>`;
  const picture = () =>
    html`<div class="sweep-shown">${use(SweepPicture, { ask, says: `${id}-says` })}</div>`;
  const wall = bench.wall.value;
  if (!wall) return picture();
  const instance = ask.result.split('.', 1)[0]!; // split gives at least one
  return use(wall.Plate, { instance, part: `sweep ${line}`, what: 'the graph', inside: picture });
}
