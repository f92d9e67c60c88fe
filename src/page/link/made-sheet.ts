/** A link to what lies on the bench: made, shown with its length, copied or sent, and what is not in it. */
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { EASY, type MadeLink, makeLink } from '../../notebook/link/make';
import { type Bench, useBench } from '../bench';
import { html } from '../html';
import { notebooks } from '../library';
import { linkOpen } from '../link-open';
import { opensAt } from './brought';
import { notInIt } from './not-in-it';
import { linkOnBench } from './on-bench';

export function MadeSheet() {
  const bench = useBench();
  const id = useId();
  const field = useRef<HTMLTextAreaElement>(null);
  const [told, tell] = useState('');
  const link = linkOnBench(bench);
  const made = useMade(bench);
  const close = () => {
    linkOpen.value = null;
    document.getElementById('notebook-title')?.focus();
  };
  const copy = async () => {
    field.current?.select();
    tell(await copied(address));
  };
  const address = made ? `${location.href.replace(/[?#].*$/s, '')}#link=${made.letters}` : '';
  const send = () =>
    navigator.share({ title: link.boat.name, url: address }).catch(() => tell('It was not sent.'));
  const away = Object.values(bench.ownNotebooks.value ?? {}).filter((own) => own.away).length;
  const { second, asBuilt } = link.boat;
  const isBuilt = [asBuilt?.measured, asBuilt?.cut].some((all) => Object.keys(all ?? {}).length > 0);
  const brings = link.isBoatless
    ? 'Whoever opens it finds what is typed here now'
    : `Whoever opens it finds ${link.boat.name} as she stands now${second ? ', in both versions' : ''}${isBuilt ? ', with what is measured and cut' : ''}`;
  return html`<section class="boat-sheet own-boats link-sheet" aria-labelledby="link-title">
    <button type="button" class="close-sheet" aria-label="Close the link" onClick=${close}>Close</button>
    <h2 id="link-title" tabindex="-1">A link to ${bench.name.value}</h2>
    <p>${brings}. ${opensAt(link, bench)} All of it is in the link itself: nothing is sent anywhere until you send it.</p>
    ${
      made === null
        ? html`<p class="notice">There is more in this boat than a link holds. Save her to a file.</p>`
        : html`<label for=${id}>The link, ${address.length} letters long</label>
            <textarea id=${id} ref=${field} readonly rows="4" value=${address} aria-busy=${address === ''} onFocus=${() => field.current?.select()}></textarea>
            ${address.length > EASY && html`<p class="notice">Some ways of sending cut a link of this length short. A boat file is surer.</p>`}
            ${location.protocol === 'file:' && html`<p class="notice">This page was opened from a disk, so the link works only where the same file lies in the same place. A boat file goes anywhere.</p>`}
            <p class="keys">
              <button type="button" onClick=${copy}>Copy the link</button>
              ${'share' in navigator && html`<button type="button" onClick=${send}>Send the link …</button>`}
            </p>`
    }
    <p role="status">${told}</p>
    <h3>Not in it</h3>
    <ul>${notInIt(link, made?.left ?? [], away, notebooks.value).map((says) => html`<li>${says}</li>`)}</ul>
  </section>`;
}

/** The link to what lies on the bench now; undefined until it is made. */
function useMade(bench: Bench): MadeLink | null | undefined {
  const [made, setMade] = useState<MadeLink | null>();
  const text = JSON.stringify([linkOnBench(bench), bench.name.value]);
  useEffect(() => {
    let isWanted = true;
    void makeLink(linkOnBench(bench)).then((now) => isWanted && setMade(now));
    return () => {
      isWanted = false;
    };
  }, [text]);
  return made;
}

async function copied(address: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(address);
    return 'The link is copied.';
  } catch {
    return 'This browser does not let the page copy. The link is marked in its field: copy it from there.';
  }
}
