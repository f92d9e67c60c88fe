/** A formula of the builder's own: its results line by line, what is amiss at its place, the working, and the lines themselves to change. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { wordsOf } from '../../measure';
import { type FormulaBlock, type LineRead } from '../../notebook/formulas/formula-quantities';
import { linesOf, MINE } from '../../notebook/formulas/place-formulas';
import { formulasIn } from '../../notebook/formulas/formulas-in';
import { useBench } from '../bench';
import { html, use } from '../html';
import { openText } from '../library';
import { cover } from '../on-wall/cover';
import { capital } from '../words';
import { FormulaEditor } from './formula-editor';
import { FormulaLineView } from './formula-line';
import { FormulaWorking } from './formula-working';
import './formula.css';
import { formulasOn } from './on-bench';

/** @param again how often it is shown above already */
export function FormulaView({ name, again = 0, line = 0 }: { name: string; again?: number; line?: number }) {
  const bench = useBench();
  const text = useRef<HTMLTextAreaElement | null>(null);
  // What is looked at on the first drawing may have to be fetched by then.
  const [isHere, setHere] = useState(false);
  useEffect(() => {
    formulasOn(bench);
    setHere(true);
  }, [bench]);
  const place = openText()?.formulas?.find((one) => one.name === name);
  const remark = isHere && place ? formulasOn(bench).value.remarks.get(place) : undefined;
  const block = isHere ? formulasIn(bench.book.catalogue.value).get(name) : undefined;
  const given = place?.text ?? '';
  const written = bench.book.state.value.entries[linesOf(name)];
  const [isOpen, setOpen] = useState(name === MINE && written === undefined);
  if (remark !== undefined) return html`<p class="notice">Line ${line}: ${remark}</p>`;
  // As a cell's: whether a heading of the second level stands above it.
  const Head = name === MINE || (openText()?.headings.length ?? 0) > 0 ? 'h3' : 'h2';
  const goTo = (one: LineRead) => {
    setOpen(true);
    // The text may have to be drawn first.
    requestAnimationFrame(() => select(text.current, one));
  };
  const title = name === MINE ? 'Sums of your own' : capital(wordsOf(name));
  return html`<section class="cell formula" id=${again === 0 ? `cell-${name}` : undefined} aria-label=${`Formula: ${title}`}>
    <header>
      <p class="cell-title">Formula</p>
      <${Head} class="question" tabindex="-1">${title}<//>
    </header>
    ${use(Results, { block, isOpen, onGo: goTo })}
    ${
      isOpen
        ? use(FormulaEditor, { name, text, lines: written ?? given, given, onDone: () => setOpen(false) })
        : html`<p class="keys"><button type="button" onClick=${() => setOpen(true)}>Change the lines</button></p>`
    }
    ${block && block.lines.some(({ own }) => own) ? cover(bench, name, 'working', 'the working', () => use(FormulaWorking, { block })) : null}
  </section>`;
}

interface ResultsProps {
  readonly block: FormulaBlock | undefined;
  /** Whether its lines are being written. */
  readonly isOpen: boolean;
  readonly onGo: (line: LineRead) => void;
}

/** Names that are not there, for which those that are near are looked for while the lines are written. */
const MOST_LOOKED_FOR = 3;

function Results({ block, isOpen, onGo }: ResultsProps) {
  const bench = useBench();
  if (!block || block.lines.length === 0) return null;
  const list = bench.wall.value ? 'div' : 'dl';
  const missing = block.lines.filter((line) => line.missing !== undefined).slice(0, MOST_LOOKED_FOR);
  const isNear = (line: LineRead) => isOpen && missing.includes(line);
  return html`<${list} class="answers formula-lines">
    ${block.lines.map((line) =>
      line.full === ''
        ? use(FormulaLineView, { key: `line ${line.at}`, line, near: false, onGo })
        : cover(
            bench,
            block.name,
            line.name,
            'the answer',
            () => use(FormulaLineView, { key: line.name, line, near: isNear(line), onGo }),
            line.label,
          ),
    )}
  <//>`;
}

/** Takes the reader to what is amiss in a line, with that selected. */
function select(area: HTMLTextAreaElement | null, { at, from, spot }: LineRead): void {
  if (!area) return;
  const before = area.value.split('\n').slice(0, at);
  const start = before.reduce((sum, line) => sum + line.length + 1, 0);
  area.focus();
  area.setSelectionRange(start + (spot?.from ?? from), start + (spot?.to ?? from));
}
