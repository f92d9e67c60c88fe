/** A cell's inputs: the deciding ones in view, the others in groups that open. */
import { grouped, type Instance, isChoice } from '../../cells';
import { isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import { askedOf } from '../asked';
import { useBench } from '../bench';
import { html, use } from '../html';
import { InputRow, type InputRowProps } from '../input/input-row';
import { fieldOf } from '../input/owner';

interface Field extends InputRowProps {
  /** Of the cell's input: the row stays the same, whichever quantity leads in it. */
  readonly key: string;
}

export function CellInputs({ instance }: { instance: Instance }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const asked = askedOf(instance, bench).map(
    ([key, spec]) =>
      [
        key,
        {
          key,
          label: spec.label,
          slider: !isChoice(spec) && spec.slider === true,
          ...fieldOf(bench, graph, `${instance.name}.${key}`),
          ...(spec.hint !== undefined && { hint: spec.hint }),
        },
      ] as const,
  );
  const { deciding, groups } = grouped<Field>(instance.cell, asked);
  return html`<div>
    ${use(Fields, { fields: deciding })}
    <div class="field-groups">
      ${groups.map(
        ({ name, fields }) => html`<details class="field-group" key=${name}>
          <summary>${name}<span class="stands">${standing(fields, graph)}</span></summary>
          ${use(Fields, { fields })}
        </details>`,
      )}
    </div>
  </div>`;
}

function Fields({ fields }: { fields: readonly Field[] }) {
  return html`<div class="inputs">${fields.map((field) => use(InputRow, field))}</div>`;
}

/** What is not as usual in a group that is closed: `2 written`, `1 to mend`. */
function standing(fields: readonly Field[], graph: Graph): string {
  const count = (is: (name: string) => boolean) => fields.filter(({ name }) => is(name)).length;
  const wrong = count((name) => {
    const value = graph.value(name);
    return isIssue(value) && value.waitsFor === undefined;
  });
  const written = count((name) => {
    const entry = graph.entry(name);
    return entry !== undefined && (entry.written || entry.built !== undefined);
  });
  return [written > 0 ? `${written} written` : '', wrong > 0 ? `${wrong} to mend` : '']
    .filter((words) => words !== '')
    .join(', ');
}
