/** A notebook of the builder's own while it is written in: its title, then its pieces with their keys, or its text. */
import type { TargetedEvent } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import { titled } from '../../notebook/writing/head';
import { useBench } from '../bench';
import { html, use } from '../html';
import { type ProseProps, written } from '../prose';
import { BesideText } from './beside-text';
import { ByPiece } from './by-piece';
import { useHeld } from './held';
import { inHand } from './in-hand';
import { textOf, writeText } from './write';
import './writing.css';

export function Writing({ page }: ProseProps) {
  const [said, tell] = useState('');
  useEffect(
    () => () => {
      inHand.value = null;
    },
    [],
  );
  return html`<div class="writing">
    ${written.value?.beside ? use(BesideText, { page }) : [use(TitleField, { page }), use(ByPiece, { page, tell })]}
    <p class="unseen" role="status">${said}</p>
  </div>`;
}

function TitleField({ page }: ProseProps) {
  const bench = useBench();
  const label = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [why, setWhy] = useState('');
  const held = useHeld((typed, run) => {
    const text = textOf(bench, page.id);
    if (text !== undefined) setWhy(writeText(bench, page.id, titled(text, typed), run) ?? '');
  });
  const type = ({ currentTarget }: TargetedEvent<HTMLInputElement>) => {
    setDraft(currentTarget.value);
    held.type(currentTarget.value);
  };
  const leave = () => {
    held.flush();
    bench.book.settle();
    setDraft(null);
  };
  return html`<p class="title-field">
    <label for=${label}>Title</label>
    <input id=${label} type="text" autocomplete="off" maxlength="120" value=${draft ?? page.title} onInput=${type} onBlur=${leave} />
    <span class="says" role="status">${why}</span>
  </p>`;
}
