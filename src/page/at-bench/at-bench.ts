/**
 * One cell at the bench: it fills the screen, its figures can be read at arm's length and its keys pressed with
 * gloves on. The answers, and below them the numbers that they follow from, one of them, or the marks one by one.
 */
import './at-bench.css';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { grouped, type Instance } from '../../cells';
import { askedOf } from '../asked';
import { type Bench, BenchContext, useBench } from '../bench';
import { cardTable } from '../card/card-table';
import { html, use } from '../html';
import { fieldOf } from '../input/owner';
import { unitChoices, unitWords } from '../units';
import type { BenchField } from './bench-field';
import { Marks } from './marks';
import { NumberInHand } from './number-in-hand';
import { NumbersList } from './numbers-list';
import { Reading } from './reading';
import { useStayAwake } from './stay-awake';

/** What lies below the answers. */
type At = { readonly kind: 'numbers' | 'marks' } | { readonly kind: 'number'; readonly place: string };

export interface AtBenchProps {
  readonly instance: Instance;
  readonly onClose: () => void;
}

export function AtBench({ instance, onClose }: AtBenchProps) {
  const bench = useBench();
  const dialog = useRef<HTMLDialogElement>(null);
  const [at, setAt] = useState<At>({ kind: 'numbers' });
  /** The mark read last, for whoever comes back to the list. */
  const [mark, setMark] = useState<number | null>(null);
  const awake = useStayAwake();
  useLayoutEffect(() => dialog.current?.showModal(), []);
  // The page behind stays where it is.
  useEffect(() => {
    document.documentElement.classList.add('bench-open');
    return () => document.documentElement.classList.remove('bench-open');
  }, []);
  const fields = fieldsOf(instance, bench);
  const table = cardTable(instance, bench);
  const toNumbers = () => setAt({ kind: 'numbers' });
  // Escape goes one step back, and from the first step closes.
  const cancel = (event: Event) => {
    if (event.target !== dialog.current || at.kind === 'numbers') return;
    event.preventDefault();
    toNumbers();
  };
  const place = at.kind === 'number' ? fields.findIndex((field) => field.place === at.place) : -1;
  const turnTo = (index: number) => {
    const field = fields[index];
    if (field) setAt({ kind: 'number', place: field.place });
    else toNumbers();
  };
  const field = fields[place];
  // What an answer waits for is taken in hand here; for what stands elsewhere the page comes back.
  const goTo = (name: string) => {
    const index = fields.findIndex((one) => one.name === name || one.place === name);
    if (index !== -1) turnTo(index);
    else {
      dialog.current?.close();
      bench.goTo(name);
    }
  };
  const inHand = at.kind === 'marks' && table ? 'marks' : field ? 'number' : 'numbers';
  return html`<dialog ref=${dialog} class="at-bench plain" data-at=${inHand} aria-label=${`At the bench: ${instance.cell.title}`} onCancel=${cancel} onClose=${onClose}>
    <header>
      <p class="bench-title">${instance.cell.title}</p>
      <button type="button" onClick=${() => turnUnits(bench)}>${bench.shown.value.length === 'mm' ? 'Inches' : 'mm'}</button>
      ${
        inHand === 'numbers'
          ? html`<button type="button" onClick=${() => dialog.current?.close()}>Close</button>`
          : html`<button type="button" onClick=${toNumbers}>Done</button>`
      }
    </header>
    ${inHand === 'marks' ? null : use(BenchContext.Provider, { value: { ...bench, goTo } }, use(Reading, { instance }))}
    ${inHand === 'numbers' ? use(NumbersList, { fields, onPick: turnTo, marks: table?.rows.length ?? 0, toMarks: () => setAt({ kind: 'marks' }) }) : null}
    ${field ? use(NumberInHand, { key: field.place, field, onBack: () => turnTo(place - 1), onNext: () => turnTo(place + 1) }) : null}
    ${inHand === 'marks' && table ? use(Marks, { table, mark, onMark: setMark }) : null}
    ${
      awake === 'refused' && inHand === 'numbers'
        ? html`<p class="bench-awake" role="status">This browser won’t keep the screen awake. Set the device to stay lit for longer.</p>`
        : null
    }
  </dialog>`;
}

function fieldsOf(instance: Instance, bench: Bench): readonly BenchField[] {
  const graph = bench.book.inHand.value;
  const asked = askedOf(instance, bench).map(
    ([key, { label }]) => [key, { label, ...fieldOf(bench, graph, `${instance.name}.${key}`) }] as const,
  );
  const { deciding, groups } = grouped(instance.cell, asked);
  return [
    ...deciding.map((field) => ({ ...field, group: '' })),
    ...groups.flatMap(({ name: group, fields }) => fields.map((field) => ({ ...field, group }))),
  ];
}

/** The inches in use before, for the way back from millimetres. */
let inches = 'ft-in 1/16, lb';

function turnUnits({ shown }: Bench): void {
  const now = shown.peek();
  if (now.length === 'mm') shown.value = { ...now, ...unitChoices[inches] };
  else {
    inches = unitWords(now);
    shown.value = { ...now, ...unitChoices['mm, kg'] };
  }
}
