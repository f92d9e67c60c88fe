/**
 * Fields that stand behind a key with their name. A group opens by itself when something done in its cell brings a
 * field into it, or makes one in it wrong; the focus stays where it is.
 */
import { useLayoutEffect, useRef } from 'preact/hooks';
import { isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import { useBench } from '../bench';
import { html, use } from '../html';
import { InputRow, type InputRowProps } from './input-row';

export interface Field extends InputRowProps {
  /** Of the cell's input: the row stays the same, whichever quantity leads in it. */
  readonly key: string;
}

export function Fields({ fields }: { fields: readonly Field[] }) {
  return html`<div class="inputs">${fields.map((field) => use(InputRow, field))}</div>`;
}

export interface FieldGroupProps {
  readonly name: string;
  readonly fields: readonly Field[];
  /** Groups that the fields stand in again. */
  readonly groups?: readonly Omit<FieldGroupProps, 'isNew'>[];
  /** Whether the cell's fields have been seen without it. */
  readonly isNew: boolean;
}

export function FieldGroup({ name, fields, groups, isNew }: FieldGroupProps) {
  const graph = useBench().book.inHand.value;
  const group = useRef<HTMLDetailsElement>(null);
  const wrong = fields.filter((field) => isWrong(field, graph));
  const before = useRef<{ asked: readonly string[]; wrong: readonly string[] } | null>(
    isNew ? { asked: [], wrong: [] } : null,
  );
  useLayoutEffect(() => {
    const now = { asked: keys(fields), wrong: keys(wrong) };
    const was = before.current ?? now;
    before.current = now;
    const comes = (key: 'asked' | 'wrong') => now[key].some((one) => !was[key].includes(one));
    if (!comes('asked') && !comes('wrong')) return;
    const cell = group.current?.closest('.cell');
    if (cell?.contains(document.activeElement)) group.current!.open = true; // it is in the cell
  });
  return html`<details class="field-group" ref=${group}>
    <summary>
      ${name} <span class="count">${fields.length}</span>
      <span class="stands">${standing(fields, wrong.length, graph)}</span>
    </summary>
    ${groups ? groups.map((one) => use(FieldGroup, { key: one.name, ...one, isNew })) : use(Fields, { fields })}
  </details>`;
}

const keys = (fields: readonly Field[]) => fields.map(({ key }) => key);

function isWrong({ name }: Field, graph: Graph): boolean {
  const value = graph.value(name);
  return isIssue(value) && value.waitsFor === undefined;
}

/** What is not as usual in a group that is closed: `2 written`, `1 to mend`. */
function standing(fields: readonly Field[], wrong: number, graph: Graph): string {
  const written = fields.filter(({ name }) => {
    const entry = graph.entry(name);
    return entry !== undefined && (entry.written || entry.built !== undefined);
  }).length;
  return [written > 0 ? `${written} written` : '', wrong > 0 ? `${wrong} to mend` : '']
    .filter((words) => words !== '')
    .join(', ');
}
