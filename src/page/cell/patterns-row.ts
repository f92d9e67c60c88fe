/** Patterns of a cell at full size: sheets to print, and files for drawing programmes and cutting tables. */
import { useState } from 'preact/hooks';
import { attempt } from '../../boat';
import { type Instance, onHand, valuesOf } from '../../cells';
import type { Drawing } from '../../drawing';
import type { FullSizeFiles, PaperName } from '../../drawing/full-size';
import { type Issue, isIssue, issue } from '../../measure';
import { type Bench, sayWith, useBench } from '../bench';
import { html } from '../html';

interface Key {
  readonly label: string;
  readonly ending: string;
  readonly paper: PaperName;
  readonly file: (files: FullSizeFiles) => Blob;
}

const sheets = (paper: PaperName): Key => ({
  label: `Full size, ${paper}`,
  ending: `${paper.toLowerCase()}.pdf`,
  paper,
  file: ({ pdf }) => new Blob([pdf as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }),
});

const KEYS: readonly Key[] = [
  sheets('A4'),
  sheets('Letter'),
  {
    label: 'SVG',
    ending: 'svg',
    paper: 'A4',
    file: ({ whole }) => new Blob([whole], { type: 'image/svg+xml' }),
  },
  {
    label: 'DXF',
    ending: 'mm.dxf',
    paper: 'A4',
    file: ({ dxf }) => new Blob([dxf], { type: 'image/vnd.dxf' }),
  },
];

export function PatternsRow({ instance }: { instance: Instance }) {
  const bench = useBench();
  const [told, tell] = useState('');
  const save = async (key: Key) => {
    const drawings = patternsOf(instance, bench);
    if (isIssue(drawings)) {
      tell(`No pattern yet: ${drawings.issue}.`);
      return;
    }
    const { fullSizeFiles } = await import('../../drawing/full-size');
    const name = fileName(drawings[0]!.title, key.ending); // a list of patterns is not empty
    offer(key.file(fullSizeFiles(drawings, { paper: key.paper, title: instance.cell.title })), name);
    tell(`Saved as ${name}.`);
  };
  return html`<div class="patterns">
    <p>Pattern at full size</p>
    ${KEYS.map((key) => html`<button type="button" onClick=${() => void save(key)}>${key.label}</button>`)}
    <p role="status">${told}</p>
  </div>`;
}

/** The patterns of the version in hand, made when they are asked for. */
function patternsOf(instance: Instance, bench: Bench): readonly Drawing[] | Issue {
  const graph = bench.book.inHand.value;
  const values = graph.work((read) => valuesOf(instance, read));
  if (isIssue(values)) return values;
  const hull = graph.hull();
  const on = onHand(instance.cell, values, isIssue(hull) ? null : hull, sayWith(bench), bench.findings.found);
  const made = attempt(() => instance.cell.patterns?.(values, on) ?? []);
  return isIssue(made) || made.length > 0 ? made : issue('there is no hull to take it from');
}

/** Named after the first pattern, up to its colon: `frame-3.a4.pdf`. */
function fileName(title: string, ending: string): string {
  const words = (title.split(':')[0] ?? title).toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ['pattern'];
  return `${words.join('-')}.${ending}`;
}

function offer(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
