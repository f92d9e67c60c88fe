/** The boat's own sheet: its lines, the offsets of one station at a time, flare, and the scantlings. */
import { useRef, useState } from 'preact/hooks';
import { type Hull, lists } from '../boat';
import { linesPlan } from '../drawing';
import { isIssue, wordsOf } from '../measure';
import { useBench } from './bench';
import { Figure } from './figure';
import { FlareRow } from './flare-row';
import { hullLines } from './hull-lines';
import { html, use } from './html';
import { InputRow } from './input-row';

export function BoatSheet() {
  const { book } = useBench();
  const table = book.state.value.table;
  return html`<section class="boat-sheet" aria-labelledby="boat-sheet-title">
    <h2 id="boat-sheet-title" tabindex="-1">${table.name}</h2>
    <p>${capital(table.note)}. The table of offsets is given to the ${table.offsetsTo}.</p>
    ${use(Lines, {})} ${use(StationSheet, {})} ${use(Scantlings, {})}
  </section>`;
}

function Lines() {
  const { book, shown } = useBench();
  const last = useRef<Hull | null>(null);
  const hull = book.inHand.value.hull();
  if (!isIssue(hull)) last.current = hull;
  const drawn = last.current;
  if (!drawn) return html`<p class="says">${isIssue(hull) ? hull.issue : ''}</p>`;
  const other = book.state.value.inHand === 'second' ? book.first.value.hull() : book.second.value?.hull();
  const plan = (of: Hull) =>
    linesPlan(hullLines(of), {
      title: 'Lines',
      says: `${book.state.value.table.name} in profile, half-breadth plan and body plan.`,
      amidships: of.widest.x,
      form: 'wide',
    });
  void shown.value;
  return html`<div>
    ${isIssue(hull) ? html`<p class="says">${capital(hull.issue)}.</p>` : null}
    ${use(Figure, {
      drawing: plan(drawn),
      second: other && !isIssue(other) && other !== drawn ? plan(other) : undefined,
      stale: isIssue(hull),
      maxHeight: 520,
    })}
  </div>`;
}

/** One station's offsets, as entries, and the flare of its panels. */
function StationSheet() {
  const bench = useBench();
  const { book } = bench;
  const table = book.state.value.table;
  const { stations, edges, panels } = lists(table);
  const [picked, setPicked] = useState<string | null>(null);
  const station = stations.find((one) => one.id === picked) ?? stations[Math.floor(stations.length / 2)];
  if (!station) return null;
  return html`<section>
    <h3>Offsets of one station</h3>
    <label class="pick">
      <span>Station</span>
      <select value=${station.id} onChange=${(event: Event) => setPicked((event.currentTarget as HTMLSelectElement).value)}>
        ${stations.map((one) => html`<option value=${one.id} selected=${one.id === station.id}>${one.label}</option>`)}
      </select>
    </label>
    <div class="inputs wide">
      ${panels.map((panel, index) => {
        const inner = edges[index];
        const outer = edges[index + 1];
        // The bottom's slope is its deadrise; flare is spoken of from the chine up.
        return index === 0 || !inner || !outer
          ? null
          : use(FlareRow, {
              key: panel.id,
              station: station.id,
              panel: panel.id,
              inner: inner.id,
              outer: outer.id,
              label: `Flare of the ${panel.label.toLowerCase()}`,
            });
      })}
      ${edges.flatMap((edge) =>
        (['halfBreadth', 'height', 'x'] as const)
          .filter((column) => !(column === 'halfBreadth' && edge === edges[0]))
          .map((column) =>
            use(InputRow, {
              key: `${station.id}.${edge.id}.${column}`,
              name: `${station.id}.${edge.id}.${column}`,
              label: `${edge.label}: ${column === 'x' ? 'distance forward' : wordsOf(column)}`,
            }),
          ),
      )}
    </div>
  </section>`;
}

/** All other given quantities of the boat, by part. */
function Scantlings() {
  const { book, instances } = useBench();
  const stationNames = new Set(lists(book.state.value.table).stations.map((station) => station.id));
  const groups = new Map<string, string[]>();
  for (const { name } of book.catalogue.value.given) {
    const [part, ...rest] = name.split('.');
    if (part === undefined || rest.length !== 1 || stationNames.has(part) || instances.value.has(part))
      continue;
    groups.set(part, [...(groups.get(part) ?? []), name]);
  }
  return html`<section>
    <h3>Scantlings</h3>
    <p>Sizes and materials of the parts. Where the plan says otherwise, write the plan's size here once; every cell follows.</p>
    ${[...groups].map(
      ([part, names]) => html`<details id=${`part-${part}`} data-part=${part}>
        <summary>${capital(wordsOf(part))}</summary>
        <div class="inputs wide">
          ${names.map((name) => use(InputRow, { key: name, name, label: capital(wordsOf(name.split('.')[1] ?? name)) }))}
        </div>
      </details>`,
    )}
  </section>`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
