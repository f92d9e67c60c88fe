/** What is one step away: a native disclosure that makes its inside only when it is opened. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { html } from './html';
import { printing } from './printing';

export interface DisclosureProps {
  readonly summary: ComponentChildren;
  readonly className: string;
  readonly id?: string;
  /** Beginning of the names of the quantities inside, by which a jump to one of them opens it. */
  readonly holds?: string;
  /** Goes on paper whether it is open or not. */
  readonly prints?: boolean;
  readonly inside: (close: () => void) => ComponentChildren;
}

export function Disclosure({ summary, className, id, holds, prints = false, inside }: DisclosureProps) {
  const [open, setOpen] = useState(false);
  const shows = open || (prints && printing.value);
  const toggle = (event: Event) => {
    // What opened for paper alone is closed again after it.
    if (!printing.peek()) setOpen((event.currentTarget as HTMLDetailsElement).open);
  };
  return html`<details class=${className} id=${id} data-holds=${holds} open=${shows} onToggle=${toggle}>
    <summary>${summary}</summary>
    ${shows ? inside(() => setOpen(false)) : null}
  </details>`;
}
