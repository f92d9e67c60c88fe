/** One station's offsets, as entries, the flare of its panels, and what follows at it. */
import type { TargetedEvent } from 'preact';
import { type Column, columns, lists, offsetName, type Option } from '../../boat';
import { useBench } from '../bench';
import { CutMark } from '../as-built/cut-mark';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';
import { InputRow } from '../input/input-row';
import { capital } from '../words';
import { FlareRow } from './flare-row';
import { Numbers } from './numbers';

export function StationSheet() {
  const { book, station: picked, table } = useBench();
  const { stations, edges, panels } = lists(table.value);
  const station =
    stations.find((one) => one.id === picked.value) ?? stations[Math.floor(stations.length / 2)];
  if (!station) return null;
  const { find, namesOf } = book.catalogue.value;
  const follows = namesOf(station.id).filter((name) => !('preset' in find(name)!)); // one of the catalogue's own
  const pick = (event: TargetedEvent<HTMLSelectElement>) => {
    picked.value = event.currentTarget.value;
  };
  return html`<section>
    <h3>Offsets of one station</h3>
    <label class="pick">
      <span>Station</span>
      <select value=${station.id} onChange=${pick}>
        ${stations.map((one) => html`<option value=${one.id} selected=${one.id === station.id}>${one.label}</option>`)}
      </select>
    </label>
    ${use(CutMark, { key: `${station.id} cut`, part: station.id })}
    <div class="inputs">
      ${panels.map((panel, index) => {
        const inner = edges[index];
        const outer = edges[index + 1];
        // The bottom's slope is its deadrise; flare is spoken of from the chine up.
        if (index === 0 || !inner || !outer) return null;
        const at = { station: station.id, inner: inner.id, outer: outer.id };
        return use(FlareRow, {
          key: `${station.id}.${panel.id}`,
          at,
          panel: panel.id,
          label: `Flare of the ${panel.label.toLowerCase()}`,
        });
      })}
    </div>
    ${edges.map((edge, index) => use(EdgeOffsets, { key: `${station.id}.${edge.id}`, station: station.id, edge, isKeel: index === 0 }))}
    ${use(Disclosure, {
      key: station.id,
      summary: `What follows at ${station.label}`,
      className: 'follows',
      holds: `${station.id}.`,
      inside: () => use(Numbers, { names: follows }),
    })}
  </section>`;
}

interface EdgeOffsetsProps {
  readonly station: string;
  readonly edge: Option;
  readonly isKeel: boolean;
}

const columnLabels: Readonly<Record<Column, string>> = {
  x: 'Forward',
  halfBreadth: 'Half-breadth',
  height: 'Height',
};

function EdgeOffsets({ station, edge, isKeel }: EdgeOffsetsProps) {
  // The keel lies on the centreline and has no breadth to give.
  const given = columns.filter((column) => !(isKeel && column === 'halfBreadth'));
  return html`<fieldset class="edge">
    <legend>${capital(edge.label)}</legend>
    <div class="inputs">
      ${given.map((column) => {
        const name = offsetName(station, edge.id, column);
        return use(InputRow, { key: name, name, label: columnLabels[column] });
      })}
    </div>
  </fieldset>`;
}
