/** The key that lays one cell at the bench; what it needs is fetched when it is pressed. */
import { useRef, useState } from 'preact/hooks';
import type { Instance } from '../../cells';
import { wordsOf } from '../../measure';
import { html, use } from '../html';
import { later } from '../later';

const AtBench = later(async () => (await import('./at-bench')).AtBench, 'at-bench-to-come');

export function BenchKey({ instance }: { instance: Instance }) {
  const [open, setOpen] = useState(false);
  const key = useRef<HTMLButtonElement>(null);
  const close = () => {
    setOpen(false);
    key.current?.focus();
  };
  return html`<button ref=${key} type="button" class="quiet" aria-label=${`At the bench: ${wordsOf(instance.name)}`} onClick=${() => setOpen(true)}>At the bench</button>
    ${open ? use(AtBench, { instance, onClose: close }) : null}`;
}
