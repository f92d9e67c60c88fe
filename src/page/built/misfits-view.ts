/** Alongside the notebook: what no longer fits the parts that are cut. */
import { wordsOf } from '../../measure';
import { useBench } from '../bench';
import { html, use } from '../html';
import { capital } from '../words';
import { MisfitList } from './misfit-list';

export function MisfitsView() {
  const { book, misfits } = useBench();
  const cut = Object.keys(book.asBuilt.value.cut);
  if (cut.length === 0) return null;
  const found = misfits.value;
  const parts = cut.filter((part) => found.some((misfit) => misfit.part === part));
  return html`<section class="misfits plain" aria-label="What is cut">
    <h2>${parts.length > 0 ? 'No longer fits what is cut' : 'All that is cut still fits'}</h2>
    ${parts.map((part) => {
      const own = found.filter((misfit) => misfit.part === part);
      return html`<div key=${part}>
        <h3>${capital(wordsOf(part))} is cut</h3>
        ${use(MisfitList, { misfits: own })}
      </div>`;
    })}
    ${parts.length > 0 ? null : html`<p>${capital(cut.map((part) => wordsOf(part)).join(', '))}.</p>`}
    <p class="unseen" role="status">${parts.map((part) => capital(wordsOf(part))).join(', ')}${parts.length > 0 ? ' no longer fits.' : ''}</p>
  </section>`;
}
