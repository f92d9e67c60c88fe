/** What can be asked further of a cell: its numbers, and the numbers that each hangs on, under names that are read. */
import type { Instance } from '../../cells';
import { isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import { type Mover, moversOf } from '../../notebook/sweep/movers';
import type { Bench } from '../bench';
import { html } from '../html';
import { inShort } from '../in-short';
import { capital, readable } from '../words';
import { type NamedGroup, resultsOf, toldApart } from './named';

/** The numbers that a result hangs on: the cell's own, then those of the boat, the shop and other cells. */
export function groupsOn(instance: Instance, all: readonly Mover[], bench: Bench): readonly NamedGroup[] {
  const isOwn = ({ name }: Mover) => name.startsWith(`${instance.name}.`);
  return [
    {
      label: 'Of this cell',
      of: toldApart(
        all.filter(isOwn).map(({ name, given }) => ({ name, label: given.label ?? capital(given.meaning) })),
      ),
    },
    {
      label: 'Behind it',
      of: toldApart(
        all.filter((one) => !isOwn(one)).map(({ name }) => ({ name, label: capital(inShort(bench, name)) })),
      ),
    },
  ].filter(({ of }) => of.length > 0);
}

/** The first number of a cell with one that it hangs on, to begin with; null where there is none. */
export function firstAsked(instance: Instance, graph: Graph): { result: string; on: string } | null {
  for (const { name } of resultsOf(instance, graph).flatMap(({ of }) => of)) {
    if (isIssue(graph.value(name))) continue;
    const all = moversOf(graph, name);
    const own = all.find((one) => one.name.startsWith(`${instance.name}.`)) ?? all[0];
    if (own) return { result: name, on: own.name };
  }
  return null;
}

interface PickProps {
  readonly id: string;
  readonly label: string;
  readonly groups: readonly NamedGroup[];
  readonly value: string;
  readonly none?: string;
  readonly pick: (name: string) => void;
}

export function pickOf({ id, label, groups, value, none, pick }: PickProps) {
  const isThere = value === '' || groups.some(({ of }) => of.some(({ name }) => name === value));
  return html`<div class="further-field">
    <label for=${id}>${label}</label>
    <select id=${id} value=${value} onChange=${(event: Event) => pick((event.currentTarget as HTMLSelectElement).value)}>
      ${none === undefined ? null : html`<option value="" selected=${value === ''}>${none}</option>`}
      ${isThere ? null : html`<option value=${value} selected>${readable(value)}</option>`}
      ${groups.map(
        (group) => html`<optgroup label=${group.label}>
          ${group.of.map(({ name, label: says }) => html`<option value=${name} selected=${name === value}>${says}</option>`)}
        </optgroup>`,
      )}
    </select>
  </div>`;
}

interface TextProps {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly placeholder: string;
  readonly isAmiss?: boolean;
  readonly says: string;
  readonly type: (text: string) => void;
  readonly leave?: () => void;
}

/** @param props `says`: id of what tells a fault */
export function textOf({ id, label, value, placeholder, isAmiss = false, says, type, leave }: TextProps) {
  return html`<div class="further-field">
    <label for=${id}>${label}</label>
    <input
      id=${id}
      type="text"
      autocomplete="off"
      spellcheck=${false}
      maxlength="300"
      value=${value}
      placeholder=${placeholder}
      aria-invalid=${isAmiss ? 'true' : undefined}
      aria-describedby=${says}
      onInput=${(event: Event) => type((event.currentTarget as HTMLInputElement).value)}
      onBlur=${leave}
    />
  </div>`;
}
