/** A cell's inputs: what is typed often stands in sight; what a builder seldom touches is one step away. */
import { type Instance, isChoice } from '../../cells';
import type { Graph } from '../../notebook';
import { askedOf } from '../asked';
import { useBench } from '../bench';
import { html, use } from '../html';
import { InputRow } from '../input/input-row';

export function CellInputs({ instance }: { instance: Instance }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const all = askedOf(instance, bench);
  const rows = (inputs: typeof all) => html`<div class="inputs">
    ${inputs.map(([key, spec]) =>
      use(InputRow, {
        key,
        label: spec.label,
        slider: !isChoice(spec) && spec.slider === true,
        ...fieldOf(instance, key, graph),
      }),
    )}
  </div>`;
  const seldom = all.filter(([, spec]) => spec.seldom);
  return html`<div>
    ${rows(all.filter(([, spec]) => !spec.seldom))}
    ${
      seldom.length > 0
        ? html`<details class="more-inputs">
            <summary>${seldom.length === 1 ? 'One more input' : `${seldom.length} more inputs`}</summary>
            ${rows(seldom)}
          </details>`
        : null
    }
  </div>`;
}

/** Its own field, or that of the boat's number which leads in its place, as long as nothing is written here. */
function fieldOf({ cell, name, presets }: Instance, key: string, graph: Graph) {
  const own = { name: `${name}.${key}` };
  const entry = graph.entry(own.name);
  if (!cell.inputs[key]?.ofBoat || !entry) return own;
  const isOwn = key in presets || entry.written || entry.built !== undefined;
  // Where nothing is written the entry is the link, a choice of the cell's filled in.
  return isOwn || !graph.has(entry.text)
    ? own
    : { name: entry.text, usual: 'the boat’s own: other cells follow it' };
}
