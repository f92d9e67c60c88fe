/** The line that heads a printed notebook: which boat, which version, in which units, on which day. */
import type { NotebookHead } from '../../notebook';
import { useBench, versionWords } from '../bench';
import { html } from '../html';
import { unitWords } from '../units';

export function PrintHead({ head }: { head: NotebookHead }) {
  const { book, boatless, name, shown } = useBench();
  const versions = book.second.value
    ? `, ${versionWords.first.toLowerCase()} and ${versionWords.second.toLowerCase()}`
    : '';
  const day = new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  return html`<p class="print-head">${boatless.value ? '' : `${name.value}${versions} · `}${head.title} · ${unitWords(shown.value)} · ${day}</p>`;
}
