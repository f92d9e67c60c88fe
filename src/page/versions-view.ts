/** Two versions: keep this and try another; hold one, swap them, keep one. */
import type { Version } from '../notebook';
import { useBench, versionWords } from './bench';
import { html } from './html';

export function VersionsView() {
  const { book } = useBench();
  const { second, inHand } = book.state.value;
  if (second === null) {
    return html`<section class="versions plain">
      <button type="button" onClick=${() => book.tryAnother()}>Keep this and try another</button>
    </section>`;
  }
  const changed = Object.keys(second).length;
  const holds = (version: Version) => html`<label>
    <input type="radio" name="in-hand" checked=${inHand === version} onChange=${() => book.hold(version)} />
    ${versionWords[version]}
  </label>`;
  return html`<section class="versions plain" aria-label="Two versions">
    <fieldset>
      <legend>Edits go into</legend>
      ${holds('first')} ${holds('second')}
    </fieldset>
    <p>
      ${versionWords.second} is drawn dashed and differs in ${changed === 1 ? 'one entry' : `${changed} entries`}.
    </p>
    <div class="keys">
      <button type="button" onClick=${() => book.keepOnly('second')}>Take the one tried</button>
      <button type="button" onClick=${() => book.keepOnly('first')}>Drop it</button>
      <button type="button" onClick=${() => book.swap()}>Swap the two</button>
    </div>
  </section>`;
}
