/** What can be asked further of a cell: its numbers, and the numbers that each hangs on, under names that are read. */
import type { Instance } from '../../cells';
import { isIssue, wordsOf } from '../../measure';
import type { Graph } from '../../notebook';
import { type Mover, moversOf } from '../../notebook/sweep/movers';
import { html } from '../html';
import { capital, readable } from '../words';

export interface NumberNamed {
  readonly name: string;
  readonly label: string;
}
export interface NamedGroup {
  readonly label: string;
  readonly of: readonly NumberNamed[];
}

/** Numbers of a cell: its answers, then what it works out on the way. */
export function resultsOf({ cell, name }: Instance, graph: Graph): readonly NamedGroup[] {
  const isNumber = (key: string) => {
    const quantity = graph.quantity(`${name}.${key}`);
    return quantity !== undefined && quantity.kind !== 'choice' && !('preset' in quantity);
  };
  const answers = cell.answers.filter(({ of }) => isNumber(of));
  const keys = new Set(answers.map(({ of }) => of));
  const steps = Object.keys(cell.steps).filter((key) => !keys.has(key) && isNumber(key));
  return [
    {
      label: 'Answers',
      of: answers.map(({ of, label }) => ({ name: `${name}.${of}`, label: capital(label) })),
    },
    {
      label: 'On the way',
      of: steps.map((key) => ({ name: `${name}.${key}`, label: capital(wordsOf(key)) })),
    },
  ].filter(({ of }) => of.length > 0);
}

/** The numbers that a result hangs on: the cell's own, then those of the boat, the shop and other cells. */
export function groupsOn(instance: Instance, all: readonly Mover[]): readonly NamedGroup[] {
  const isOwn = ({ name }: Mover) => name.startsWith(`${instance.name}.`);
  return [
    {
      label: 'Of this cell',
      of: all
        .filter(isOwn)
        .map(({ name, given }) => ({ name, label: given.label ?? capital(given.meaning) })),
    },
    {
      label: 'Behind it',
      of: all.filter((one) => !isOwn(one)).map(({ name }) => ({ name, label: capital(readable(name)) })),
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
