/** The page: masthead, contents, the open notebook, and the hull alongside. */
import { type Bench, BenchContext } from './bench';
import { Alongside } from './layout/alongside';
import { Column, fetching } from './layout/column';
import { Contents } from './layout/contents';
import { Masthead } from './layout/masthead';
import { html, use } from './html';
import { openHead } from './library';

export function App({ bench }: { bench: Bench }) {
  const open = openHead();
  // The address's hash names notebooks, so the link must not change it.
  const skip = (event: Event) => {
    event.preventDefault();
    void import('./go-to').then(({ showPlace }) => showPlace('notebook-title'));
  };
  return use(
    BenchContext.Provider,
    // What a question asks for has no value in the page.
    { value: bench.asked.value?.bench ?? bench },
    html`<a class="skip" href="#notebook-title" onClick=${skip}>To the notebook</a>`,
    use(Masthead, {}),
    html`<div class="layout">${use(Contents, { open })} ${open ? use(Column, { head: open }) : html`<main class="column" id="notebook">${fetching()}</main>`} ${use(Alongside, {})}</div>`,
  );
}
