/** Changes that the cell proposes, each to be looked at as a second version, with what it would do. */
import { useRef } from 'preact/hooks';
import { attempt } from '../../boat';
import type { Effect, Instance, Offer } from '../../cells';
import { isIssue, write, writeDifference } from '../../measure';
import { type Bench, useBench, versionWords } from '../bench';
import { atHand } from '../on-hand';
import { html, use } from '../html';
import { useLive } from '../picture/live';
import { capital } from '../words';
import { isTried, TryKey } from '../try-key';

/** The place of a cell's changes, which a key beside its warning opens. */
export const offersPlace = (cell: string): string => `changes-${cell}`;

export function Offers({ instance }: { instance: Instance }) {
  const host = useRef<HTMLDivElement>(null);
  const bench = useBench();
  const made = useLive(host, bench, () => html`<div>${blocks(instance, bench)}</div>`, { atOnce: true });
  return html`<div class="offers" ref=${host}>${made}</div>`;
}

function blocks(instance: Instance, bench: Bench) {
  const offers = offersOf(instance, bench).filter(({ turns }) => turns === undefined);
  if (offers.length === 0) return html`<p>With these numbers it has no change to propose.</p>`;
  return offers.map(
    ({ label, changes, effects = [] }) => html`<div class="try-this">
      <p>${capital(label)}</p>
      ${effects.length > 0 ? use(Effects, { label, effects, changes }) : null}
      ${use(TryKey, { changes, what: label })}
    </div>`,
  );
}

/** What the cell proposes, with the changes under the name it stands by here; nothing while a value is missing. */
export function offersOf(instance: Instance, bench: Bench): readonly Offer[] {
  // They are made from the version kept, or each look at one would offer the next.
  const at = atHand(instance, bench.book.first.value, bench);
  if (isIssue(at)) return [];
  const offers = attempt(() => instance.cell.offers?.(at.values, at.on) ?? []);
  if (isIssue(offers)) return [];
  return offers.map((offer) => ({ ...offer, changes: ofThis(instance, offer.changes) }));
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
  return html`<div class="table-wrap" tabindex="0" role="group" aria-label=${`What it does: ${label}`}>
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
