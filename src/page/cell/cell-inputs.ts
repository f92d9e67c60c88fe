/** A cell's inputs: the deciding ones in view, the others in groups that open. */
import { useEffect, useRef } from 'preact/hooks';
import { grouped, type Instance, isChoice } from '../../cells';
import { askedOf } from '../asked';
import { useBench } from '../bench';
import { html, use } from '../html';
import { type Field, FieldGroup, Fields } from '../input/field-group';
import { fieldOf } from '../input/owner';

export function CellInputs({ instance }: { instance: Instance }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const seen = useRef(false);
  useEffect(() => {
    seen.current = true;
  }, []);
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
  const { deciding, groups } = grouped<Field>(instance.cell, asked, bench.boatless.value);
  const { folded } = instance.cell;
  const keys = folded ? [{ name: folded, fields: groups.flatMap(({ fields }) => fields), groups }] : groups;
  return html`<div class="entries">
    <div class="deciding">${use(Fields, { fields: deciding })}</div>
    <div class="field-groups">
      ${keys.map((one) => use(FieldGroup, { key: one.name, ...one, isNew: seen.current }))}
    </div>
  </div>`;
}
