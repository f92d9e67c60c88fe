/** A choice between named things. */
import type { TargetedEvent } from 'preact';
import type { Given } from '../../boat';
import { useBench } from '../bench';
import { html } from '../html';
import { fieldValue } from './entry-text';

export interface FieldProps {
  readonly id: string;
  readonly quantity: Given;
  /** What is wrong with the entry, or what it waits for; null when nothing is. */
  readonly says: string | null;
  /** Ids of what is read after its name. */
  readonly describedBy: string | undefined;
  /** What leads from it to the row's keys, where it has any. */
  readonly shortcut: string | undefined;
}

export function ChoiceField({ id, quantity, says, describedBy, shortcut }: FieldProps) {
  const { book } = useBench();
  const value = fieldValue(book.inHand.value, quantity.name);
  const change = (event: TargetedEvent<HTMLSelectElement>) => {
    book.write({ [quantity.name]: event.currentTarget.value });
    book.settle();
  };
  return html`<select
    id=${id}
    value=${typeof value === 'string' ? value : ''}
    aria-keyshortcuts=${shortcut}
    onChange=${change}
    aria-invalid=${says === null ? undefined : 'true'}
    aria-describedby=${describedBy}
  >
    ${typeof value === 'string' ? null : html`<option value="" selected>—</option>`}
    ${(quantity.options ?? []).map(
      (option) => html`<option value=${option.id} selected=${option.id === value}>${option.label}</option>`,
    )}
  </select>`;
}
