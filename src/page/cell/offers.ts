/** Changes that the cell proposes, each to be looked at as a second version, with what it would do. */
import { useRef } from 'preact/hooks';
import { attempt } from '../../boat';
import type { Effect, Instance, Offer } from '../../cells';
import { isIssue, putBefore, write, writeDifference } from '../../measure';
import { type Bench, useBench, versionWords } from '../bench';
import { atHand } from '../on-hand';
import { html, use } from '../html';
import { useLive } from '../picture/live';
import { capital } from '../words';
import { isTried, TryKey } from './try-key';

export function Offers({ instance }: { instance: Instance }) {
  const host = useRef<HTMLDivElement>(null);
  const bench = useBench();
  const made = useLive(host, bench, () => offersOf(instance, bench), { atOnce: true });
  return html`<div class="offers" ref=${host}>${made}</div>`;
}

function offersOf(instance: Instance, bench: Bench) {
  const { cell } = instance;
  // They are made from the version kept, or each look at one would offer the next.
  const graph = bench.book.first.value;
  const at = atHand(instance, graph, bench);
  if (isIssue(at)) return null;
  const { values, on } = at;
  const offers = attempt(() => cell.offers?.(values, on) ?? []);
  if (isIssue(offers)) return null;
  return html`<div>
    ${offers.map(({ label, changes, effects = [], turns }) => {
      const full = ofThis(instance, changes);
      if (turns !== undefined) return use(TurnKey, { words: turns, what: label, changes: full });
      return html`<div class="try-this">
        <p>${capital(label)}</p>
        ${effects.length > 0 ? use(Effects, { label, effects, changes: full }) : null}
        ${use(TryKey, { changes: full, what: label })}
      </div>`;
    })}
  </div>`;
}

/** Turns the cell to something else, at once. */
function TurnKey({ words, what, changes }: { words: string; what: string; changes: Offer['changes'] }) {
  const { book } = useBench();
  const turn = () => {
    book.write(changes);
    book.settle();
  };
  return html`<p class="turn-to">${putBefore(what)} <button type="button" aria-label=${`${words}: ${what}`} onClick=${turn}>${words}</button></p>`;
}

interface EffectsProps {
  readonly label: string;
  readonly effects: readonly Effect[];
  readonly changes: Offer['changes'];
}

function Effects({ label, effects, changes }: EffectsProps) {
  const bench = useBench();
  const shown = bench.shown.value;
  const tried = isTried(bench, changes);
  return html`<div class="table-wrap" tabindex="0" role="region" aria-label=${`What it does: ${label}`}>
    <table class="effects">
      <thead>
        <tr>
          <th scope="col"><span class="unseen">What it does</span></th>
          <th scope="col">${tried ? versionWords.first.toLowerCase() : 'now'}</th>
          <th scope="col">${tried ? versionWords.second.toLowerCase() : 'then'}</th>
          <th scope="col"><span class="unseen">difference</span></th>
        </tr>
      </thead>
      <tbody>
        ${effects.map(
          ({ label: of, kind, before, after }) => html`<tr>
            <th scope="row">${of}</th>
            <td>${write(before, kind, shown).text}</td>
            <td>${write(after, kind, shown).text}</td>
            <td>${writeDifference(after - before, kind, shown)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

/** The cell's own inputs under the name it stands by here. */
function ofThis({ name }: Instance, changes: Offer['changes']): Offer['changes'] {
  return Object.fromEntries(
    Object.entries(changes).map(([of, entry]) => [of.replace('{self}', name), entry]),
  );
}
