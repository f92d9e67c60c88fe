/** A blank table to type a plan into: name, how many stations and edges, unit, face. */
import './new-table.css';
import type { TargetedEvent } from 'preact';
import { useId, useState } from 'preact/hooks';
import { attempt, type Face, type TableUnit, tableUnits } from '../../boat';
import { blankTable } from '../../boat/blank-table';
import { isIssue } from '../../measure';
import { useBench } from '../bench';
import { html } from '../html';
import { capital } from '../words';

const unitWords: Readonly<Record<TableUnit, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  in: 'inches',
  ft: 'feet',
};

/** @param begun called when the new table is on the bench */
export function NewTable({ begun }: { begun?: () => void }) {
  const bench = useBench();
  const id = useId();
  const [says, setSays] = useState('');
  const begin = (event: TargetedEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const text = (key: string) => {
      const entry = form.get(key);
      return typeof entry === 'string' ? entry : '';
    };
    const count = (key: string) => (text(key).trim() === '' ? Number.NaN : Number(text(key)));
    const made = attempt(() =>
      blankTable({
        name: text('name'),
        stations: count('stations'),
        edges: count('edges'),
        unit: text('unit') as TableUnit,
        offsetsTo: text('face') as Face,
      }),
    );
    setSays(isIssue(made) ? `${capital(made.issue)}.` : '');
    if (isIssue(made)) return;
    bench.openBoat(made);
    begun?.();
  };
  const field = (key: string, label: string, value: string, digits = false) => html`<p>
    <label for=${`${id}-${key}`}>${label}</label>
    <input id=${`${id}-${key}`} name=${key} type="text" autocomplete="off" inputmode=${digits ? 'numeric' : 'text'} defaultValue=${value} />
  </p>`;
  return html`<form class="new-table" onSubmit=${begin} novalidate>
    ${field('name', 'Name of the boat', 'New boat')}
    ${field('stations', 'Stations, both ends counted', '7', true)}
    ${field('edges', 'Edges: keel, chines, sheer', '3', true)}
    <p>
      <label for=${`${id}-unit`}>Unit of the plan</label>
      <select id=${`${id}-unit`} name="unit">
        ${(Object.keys(tableUnits) as TableUnit[]).map((unit) => html`<option value=${unit}>${unitWords[unit]}</option>`)}
      </select>
    </p>
    <p>
      <label for=${`${id}-face`}>Numbers are to the</label>
      <select id=${`${id}-face`} name="face">
        <option value="outside of skin">outside of skin</option>
        <option value="inside of skin">inside of skin</option>
      </select>
    </p>
    <p class="says" role="alert">${says}</p>
    <p class="new-table-key"><button type="submit">Begin the table</button></p>
  </form>`;
}
