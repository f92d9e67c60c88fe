/** The page: masthead, contents, the open notebook, and the hull alongside. */
import { type Bench, BenchContext } from './bench';
import { Alongside } from './layout/alongside';
import { Column } from './layout/column';
import { Contents } from './layout/contents';
import { Masthead } from './layout/masthead';
import { html, use } from './html';
import { openHead } from './library';

export function App({ bench }: { bench: Bench }) {
  const open = openHead();
  if (!open) return html`<p>There is no notebook on the shelf.</p>`;
  // The address's hash names notebooks, so the link must not change it.
  const skip = (event: Event) => {
    event.preventDefault();
    void import('./layout/go-to').then(({ showPlace }) => showPlace('notebook-title'));
  };
  return use(
    BenchContext.Provider,
    { value: bench },
    html`<a class="skip" href="#notebook-title" onClick=${skip}>To the notebook</a>`,
    use(Masthead, {}),
    html`<div class="layout">${use(Contents, { open })} ${use(Column, { head: open })} ${use(Alongside, {})}</div>`,
  );
}
