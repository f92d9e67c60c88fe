/** A cell's inputs: what is typed often stands in sight; what a builder seldom touches is one step away. */
import { type Instance, isChoice } from '../../cells';
import { html, use } from '../html';
import { InputRow } from '../input/input-row';

export function CellInputs({ instance }: { instance: Instance }) {
  const all = Object.entries(instance.cell.inputs);
  const rows = (inputs: typeof all) => html`<div class="inputs">
    ${inputs.map(([key, spec]) =>
      use(InputRow, {
        key,
        name: `${instance.name}.${key}`,
        label: spec.label,
        slider: !isChoice(spec) && spec.slider === true,
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
