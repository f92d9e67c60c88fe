import { useRef } from 'preact/hooks';
import type { Inline } from '../../notebook';
import { BenchContext, useBench } from '../bench';
import { html, use } from '../html';
import { useSeen } from '../seen';
import { inlines } from './inlines';
import type { Show, Showing } from './show';

export const paragraph: Show<'paragraph'> = ({ inside }, showing) =>
  inside.some(({ type }) => type === 'value' || type === 'when')
    ? use(WithNumbers, { inside, showing })
    : html`<p>${inlines(inside, showing)}</p>`;

function WithNumbers({ inside, showing }: { inside: readonly Inline[]; showing: Showing }) {
  const host = useRef<HTMLElement>(null);
  const bench = useSeen(host, useBench());
  return use(BenchContext.Provider, { value: bench }, html`<p ref=${host}>${inlines(inside, showing)}</p>`);
}
