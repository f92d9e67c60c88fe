/** A blank table to type a plan into: name, how many stations and edges, unit, face. */
import './new-table.css';
import type { TargetedEvent } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { Signal } from '@preact/signals';
import { attempt, type Face, type TableUnit } from '../../boat';
import { blankTable } from '../../boat/table/blank-table';
import { type Notation, notations } from '../../boat/table/offset-notation';
import { isIssue, type Shown } from '../../measure';
import { useBench } from '../bench';
import { html } from '../html';
import { capital } from '../words';
import { keepNotation } from './kept-notation';

/** How plans are written: the unit of the table, and the units of the page that go with it. */
const plans: Readonly<Record<Notation, { readonly unit: TableUnit; readonly shown: Shown['length'] }>> = {
  mm: { unit: 'mm', shown: 'mm' },
  cm: { unit: 'cm', shown: 'mm' },
  m: { unit: 'm', shown: 'mm' },
  eighths: { unit: 'in', shown: 'feet' },
  inches: { unit: 'in', shown: 'inches' },
  feet: { unit: 'ft', shown: 'feet' },
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
    const notation = text('unit') as Notation;
    const made = attempt(() =>
      blankTable({
        name: text('name'),
        stations: count('stations'),
        edges: count('edges'),
        unit: plans[notation].unit,
        offsetsTo: text('face') as Face,
      }),
    );
    setSays(isIssue(made) ? `${capital(made.issue)}.` : '');
    if (isIssue(made)) return;
    keepNotation(made.name, notation);
    begun?.();
    void bench.openBoat({ table: made });
    follow(bench.shown, plans[notation].shown);
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
      <select id=${`${id}-unit`} name="unit" aria-describedby=${`${id}-follows`}>
        ${Object.entries(notations).map(([notation, words]) => html`<option value=${notation}>${words}</option>`)}
      </select>
      <small id=${`${id}-follows`}>The whole page then uses this unit.</small>
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

/** Lengths as the plan has them; masses go along where the whole system changes. */
function follow(shown: Signal<Shown>, length: Shown['length']): void {
  const now = shown.peek();
  const wasMetric = now.length === 'mm';
  const isMetric = length === 'mm';
  shown.value = { ...now, length, ...(wasMetric === isMetric ? {} : { mass: isMetric ? 'kg' : 'lb' }) };
}
