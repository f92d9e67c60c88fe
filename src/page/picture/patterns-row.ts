/** Patterns of a cell at full size: sheets to print, and files for drawing programmes and cutting tables. */
import type { TargetedEvent } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { Instance } from '../../cells';
import type { FullSizeFiles, PaperName } from '../../drawing/export/full-size';
import { isIssue } from '../../measure';
import { useBench } from '../bench';
import { html } from '../html';
import { patternsOf } from './patterns';

interface Key {
  readonly label: string;
  readonly says: string;
  readonly files: (files: FullSizeFiles, paper: string) => readonly SavedFile[];
}
interface SavedFile {
  readonly ending: string;
  readonly blob: Blob;
}

const PAPERS: readonly PaperName[] = ['A4', 'Letter'];
const svg = (text: string) => new Blob([text], { type: 'image/svg+xml' });

/** Sheets are cut to the paper, with overlap, crosses and a bar; the whole is one piece. */
const KEYS: readonly Key[] = [
  {
    label: 'PDF sheets',
    says: 'to print at 100 % and join by their crosses',
    files: ({ pdf }, paper) => [
      {
        ending: `${paper}.pdf`,
        blob: new Blob([pdf as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }),
      },
    ],
  },
  {
    label: 'SVG sheets',
    says: 'the same, a file each',
    files: ({ svg: sheets }, paper) =>
      sheets.map((sheet, i) => ({ ending: `${paper}.${i + 1}.svg`, blob: svg(sheet) })),
  },
  { label: 'SVG, whole', says: 'uncut', files: ({ whole }) => [{ ending: 'svg', blob: svg(whole) }] },
  {
    label: 'DXF, whole',
    says: 'uncut, in millimetres',
    files: ({ dxf }) => [{ ending: 'mm.dxf', blob: new Blob([dxf], { type: 'image/vnd.dxf' }) }],
  },
];

export function PatternsRow({ instance }: { instance: Instance }) {
  const bench = useBench();
  const [told, tell] = useState('');
  const [chosen, choose] = useState<PaperName | null>(null);
  const paper = chosen ?? (bench.shown.value.length === 'mm' ? 'A4' : 'Letter');
  const id = useId();
  const save = async (key: Key) => {
    const drawings = patternsOf(instance, bench);
    if (isIssue(drawings)) {
      tell(`No pattern yet: ${drawings.issue}.`);
      return;
    }
    const { fullSizeFiles } = await import('../../drawing/export/full-size');
    const made = fullSizeFiles(drawings, { paper, title: instance.cell.title });
    const title = drawings[0]!.title; // a list of patterns is not empty
    const saved = key
      .files(made, paper.toLowerCase())
      .map(({ ending, blob }) => ({ name: fileName(title, ending), blob }));
    await offerAll(saved);
    const [first, last] = [saved[0]!, saved.at(-1)!]; // each key makes a file
    tell(
      saved.length === 1
        ? `Saved as ${first.name}.`
        : `Saved as ${first.name} to ${last.name}, ${saved.length} files.`,
    );
  };
  const are = instance.cell.patterns?.are;
  return html`<div class="patterns" role="group" aria-label=${are}>
    <p>${are}</p>
    <label for=${id}>on</label>
    <select id=${id} value=${paper} onChange=${(event: TargetedEvent<HTMLSelectElement>) => choose(PAPERS.find((one) => one === event.currentTarget.value) ?? null)}>
      ${PAPERS.map((one) => html`<option value=${one}>${one}</option>`)}
    </select>
    ${KEYS.map((key) => html`<button type="button" title=${key.says} onClick=${() => void save(key)}>${key.label}</button>`)}
    <p role="status">${told}</p>
  </div>`;
}

/** Named after the first pattern, up to its colon: `frame-3.a4.pdf`. */
function fileName(title: string, ending: string): string {
  const words = (title.split(':')[0] ?? title).toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ['pattern'];
  return `${words.join('-')}.${ending}`;
}

/** One after the other: a browser takes several at once for one. */
async function offerAll(files: readonly { readonly name: string; readonly blob: Blob }[]): Promise<void> {
  for (const [i, { name, blob }] of files.entries()) {
    if (i > 0) await new Promise((resolve) => setTimeout(resolve, PAUSE));
    offer(blob, name);
  }
}
const PAUSE = 150; // ms

function offer(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
