/** Alongside the notebook: what no longer fits the parts that are cut, in the version kept and the one tried. */
import type { Misfit } from '../../notebook/graph/misfits';
import { type Bench, useBench, versionWords } from '../bench';
import { html, use } from '../html';
import { capital } from '../words';
import { MisfitList } from './misfit-list';
import { partWords } from './part-words';
import { tell } from './words';

export function MisfitsView() {
  const bench = useBench();
  const cut = Object.keys(bench.book.asBuilt.value.cut);
  if (cut.length === 0) return null;
  const versions = versionsIn(bench);
  const parts = cut.filter((part) => versions.some(({ found }) => ofPart(found, part).length > 0));
  return html`<section class="misfits plain" aria-label="What is cut">
    <h2>${parts.length > 0 ? 'No longer fits what is cut' : 'All that is cut still fits'}</h2>
    ${parts.map(
      (part) => html`<div key=${part}>
        <h3>${capital(partWords(part).the)} ${partWords(part).areMany ? 'are' : 'is'} cut</h3>
        ${inEach(versions, part, bench)}
      </div>`,
    )}
    ${parts.length > 0 ? null : html`<p>${capital(allOf(cut))}.</p>`}
    <p class="unseen" role="status">${parts.length > 0 ? `${capital(allOf(parts))} no longer ${areMany(parts) ? 'fit' : 'fits'}.` : ''}</p>
  </section>`;
}

const allOf = (parts: readonly string[]): string => parts.map((part) => partWords(part).the).join(', ');

const areMany = (parts: readonly string[]): boolean => parts.length > 1 || partWords(parts[0]!).areMany;

interface InVersion {
  readonly word: string;
  readonly found: readonly Misfit[];
}

/** The version kept first, as everywhere. */
function versionsIn({ book, other, misfits, otherMisfits }: Bench): readonly InVersion[] {
  const inHand = { word: versionWords[book.state.value.inHand], found: misfits.value };
  if (!other.value) return [inHand];
  const beside = { word: versionWords[other.value.version], found: otherMisfits.value };
  return other.value.version === 'first' ? [beside, inHand] : [inHand, beside];
}

const ofPart = (found: readonly Misfit[], part: string) => found.filter((misfit) => misfit.part === part);

function inEach(versions: readonly InVersion[], part: string, bench: Bench) {
  const each = versions.map(({ word, found }) => ({ word, own: ofPart(found, part) }));
  const [head, ...rest] = each;
  const says = (own: readonly Misfit[]) =>
    own.map((misfit) => `${misfit.name} ${tell(misfit, bench)}`).join('\n');
  // What both versions say is said once.
  if (head && rest.every(({ own }) => says(own) === says(head.own)))
    return use(MisfitList, { misfits: head.own });
  return each.map(
    ({ word, own }) => html`<div key=${word}>
      <h4>${word}</h4>
      ${own.length > 0 ? use(MisfitList, { misfits: own }) : html`<p>All still fits.</p>`}
    </div>`,
  );
}
