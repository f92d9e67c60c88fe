/** Two versions: keep this and try another; hold one, swap them, keep one. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Version } from '../notebook';
import { useBench } from './bench';
import { html } from './html';

/** As the answers to "you are changing". */
const words: Readonly<Record<Version, string>> = { first: 'the version kept', second: 'the version tried' };

export function VersionsView() {
  const { book } = useBench();
  const { second, inHand } = book.state.value;
  const { host, keepFocus } = useKeptFocus(second === null);
  if (second === null) {
    return html`<section class="versions plain" ref=${host}>
      <button type="button" onClick=${() => keepFocus(() => book.tryAnother())}>Keep this and try another</button>
    </section>`;
  }
  const changed = Object.keys(second).length;
  const holds = (version: Version) => html`<label>
    <input type="radio" name="in-hand" checked=${inHand === version} onChange=${() => book.hold(version)} />
    ${words[version]}
  </label>`;
  return html`<section class="versions plain" aria-label="Two versions" ref=${host}>
    <fieldset>
      <legend>You are changing</legend>
      ${holds('first')} ${holds('second')}
    </fieldset>
    <p>
      The version tried is drawn dashed. It differs in ${changed === 1 ? 'one place' : `${changed} places`}.
    </p>
    <div class="keys">
      <button type="button" onClick=${() => keepFocus(() => book.keepOnly('second'))}>Keep the one tried</button>
      <button type="button" onClick=${() => keepFocus(() => book.keepOnly('first'))}>Drop it</button>
      <button type="button" onClick=${() => book.swap()}>Swap the two</button>
    </div>
  </section>`;
}

/** The key pressed goes away with what it did; the focus goes on to what has come in its place. */
function useKeptFocus(isOne: boolean) {
  const host = useRef<HTMLElement>(null);
  const wanted = useRef(false);
  useLayoutEffect(() => {
    if (wanted.current)
      host.current?.querySelector<HTMLElement>('input:checked, button')?.focus({ preventScroll: true });
    wanted.current = false;
  }, [isOne]);
  const keepFocus = (act: () => void) => {
    wanted.current = true;
    act();
  };
  return { host, keepFocus };
}
