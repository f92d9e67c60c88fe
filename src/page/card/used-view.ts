/** The inputs a card was reckoned from, and the sources: in rows, run on in lines, or counted. */
import type { VNode } from 'preact';
import { html } from '../html';
import type { CardInput, CardSource, Weight } from './card';
import type { InputsAs, Rung } from './ladder';
import type { Said } from './versions';

/** @param told how many inputs are told, if the rung counts some: those that matter most */
export const usedView = (
  inputs: readonly CardInput[],
  sources: readonly CardSource[],
  rung: Rung,
  told: number,
): readonly VNode[] => [
  inputsView(inputs, rung.inputs, told),
  html`<p class="card-sources"><b>Sources: </b>${rung.sources === 'named' ? namedSources(sources) : countedSources(sources)}.</p>`,
];

/** By how much they matter. */
const WEIGHTS: readonly Weight[] = ['wrong', 'stands out', 'deciding', 'grouped'];
/** Down to which weight inputs are told at least, and stand in rows. */
const TOLD: Readonly<Record<InputsAs, Weight>> = {
  rows: 'grouped',
  'foremost in rows': 'grouped',
  told: 'grouped',
  named: 'grouped',
  foremost: 'deciding',
  'standing out': 'stands out',
  counted: 'wrong',
};
const IN_ROWS: Partial<Record<InputsAs, Weight>> = { rows: 'grouped', 'foremost in rows': 'deciding' };

const downTo = (inputs: readonly CardInput[], weight: Weight | undefined): readonly CardInput[] =>
  weight ? inputs.filter((one) => WEIGHTS.indexOf(one.weight) <= WEIGHTS.indexOf(weight)) : [];

/** How many inputs are told by name at least. */
export const leastTold = (inputs: readonly CardInput[], as: InputsAs): number =>
  downTo(inputs, TOLD[as]).length;

function inputsView(inputs: readonly CardInput[], as: InputsAs, most: number): VNode {
  const rows = downTo(inputs, IN_ROWS[as]);
  const byWeight = WEIGHTS.flatMap((weight) => inputs.filter((one) => one.weight === weight));
  const named = byWeight.slice(0, Math.max(most, leastTold(inputs, as)));
  const told = inputs.filter((one) => named.includes(one) && !rows.includes(one));
  const counted = inputs.filter((one) => !named.includes(one));
  const withFrom = as === 'foremost in rows' || as === 'told';
  return html`<div class="card-inputs">
    ${byGroup(rows).map(({ name, inputs: some }) => [
      name === '' ? null : html`<p><i>${name}</i></p>`,
      html`<ul>${some.map(rowView)}</ul>`,
    ])}
    ${ORIGINS.map((origin) => {
      const of = told.filter((input) => input.origin === origin);
      return of.length > 0 ? runningView(RUNNING[origin], of, withFrom) : null;
    })}
    ${counted.length > 0 ? html`<p>${countedInputs(counted)}</p>` : null}
  </div>`;
}

/** In their order, which is that of the groups. */
const byGroup = (inputs: readonly CardInput[]) =>
  [...new Set(inputs.map(({ group }) => group))].map((name) => ({
    name,
    inputs: inputs.filter(({ group }) => group === name),
  }));

/** `As in the notebook: The wood (4), The glue (3), 2 more; 3 of them not as usual.` */
function countedInputs(counted: readonly CardInput[]): string {
  const of = byGroup(counted).toSorted((a, b) => Number(a.name === '') - Number(b.name === ''));
  const many = of.map(({ name, inputs: { length } }) =>
    name === '' ? `${length} more` : `${name} (${length})`,
  );
  const out = counted.filter(({ weight }) => weight === 'stands out').length;
  return `As in the notebook: ${many.join(', ')}${out > 0 ? `; ${out} of them not as usual` : ''}.`;
}

const rowView = ({ label, values, from }: CardInput): VNode =>
  html`<li>${label}: <b>${valuesOf(values)}</b> (${from})</li>`;

const runningView = (head: string, inputs: readonly CardInput[], withFrom: boolean): VNode =>
  html`<p>
    <i>${head}: </i>${inputs.map(({ label, values, from, origin }, index) => [
      index > 0 ? '; ' : '',
      `${label} `,
      html`<b>${valuesOf(values)}</b>`,
      origin === 'built' || (withFrom && origin === 'linked') ? ` (${from})` : '',
    ])}.
  </p>`;

const ORIGINS = ['built', 'written', 'linked', 'usual'] as const;
const RUNNING = {
  built: 'As built',
  written: 'Written here',
  linked: 'From the boat and other cells',
  usual: 'At usual values',
};

const valuesOf = (values: readonly Said[]): string =>
  values.map(({ word, text }) => (word ? `${word.toLowerCase()} ${text}` : text)).join(', ');

const namedSources = (sources: readonly CardSource[]): string =>
  [...new Set(sources.map(({ inShort }) => inShort))].join('; ');

/** `geometry; common practice; 4 published and 2 from memory, named in the notebook` */
function countedSources(sources: readonly CardSource[]): string {
  const plain = sources.filter(({ known }) => known === 'geometry' || known === 'common practice');
  const named = (['published', 'from memory'] as const)
    .map((known) => ({ known, count: sources.filter((one) => one.known === known).length }))
    .filter(({ count }) => count > 0)
    .map(({ known, count }) => `${count} ${known}`);
  const rest = named.length > 0 ? [`${named.join(' and ')}, named in the notebook`] : [];
  return [...new Set(plain.map(({ inShort }) => inShort)), ...rest].join('; ');
}
