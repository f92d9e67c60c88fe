/** What is one step away: a native disclosure that makes its inside only when it is opened. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { html } from './html';

export interface DisclosureProps {
  readonly summary: string;
  readonly className: string;
  /** Beginning of the names of the quantities inside, by which a jump to one of them opens it. */
  readonly holds?: string;
  readonly inside: (close: () => void) => ComponentChildren;
}

export function Disclosure({ summary, className, holds, inside }: DisclosureProps) {
  const [open, setOpen] = useState(false);
  const toggle = (event: Event) => setOpen((event.currentTarget as HTMLDetailsElement).open);
  return html`<details class=${className} data-holds=${holds} open=${open} onToggle=${toggle}>
    <summary>${summary}</summary>
    ${open ? inside(() => setOpen(false)) : null}
  </details>`;
}
