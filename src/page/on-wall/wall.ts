/** Puts the page on the wall: its size, the plates over the answers, and the keys at the foot. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Bench } from '../bench';
import { formulasIn } from '../../notebook/formulas/formulas-in';
import { askPlace, asksOf } from '../asks';
import { html } from '../html';
import { openText } from '../library';
import type { PlateProps, Wall } from '../plate';
import { type CoveredCell, covering, WORKING } from './covered';
import { keepOnWall } from './kept';
import './on-wall.css';

/** A window this wide is what the sizes in the style sheet are made for, px. */
const WIDE = 1920;

/** A formula, as a cell whose lines are its answers; undefined for what is none. */
function linesOf(name: string, { book }: Bench): CoveredCell | undefined {
  const block = formulasIn(book.catalogue.value).get(name);
  return block && { inputs: {}, answers: block.lines.map((line) => ({ of: line.name })) };
}

/** @param byHand whether somebody pressed the key for it, who is then led to the keys at the foot */
export function putOnWall(bench: Bench, byHand = false): void {
  const coveredAs = (name: string) => bench.instances.value.get(name)?.cell ?? linesOf(name, bench);
  const covered = covering(coveredAs);
  const root = document.documentElement;
  const fit = () => root.style.setProperty('--wall-zoom', String(Math.max(1, (2.8 * innerWidth) / WIDE)));
  /** A number of the boat's that a question asks for lies under the plate of its answer. */
  const askFor = (name: string): string | undefined =>
    coveredAs(name.split('.', 1)[0]!) // split gives at least one
      ? undefined
      : asksOf(openText()).find(({ answer }) => answer.is === 'quantity' && answer.of === name)?.name;
  const partOf = (name: string): [string, string] => {
    const ask = askFor(name);
    if (ask !== undefined) return [askPlace(ask), 'answer'];
    const [instance = '', key = ''] = name.split('.');
    const isAnswer = coveredAs(instance)?.answers.some(({ of }) => of === key);
    return [instance, isAnswer ? key : WORKING];
  };

  function Plate({ instance, part, what, label, inside }: PlateProps) {
    const isShown = covered.isShown(instance, part);
    const of = label ? html`<b>${label}</b> ` : null;
    return html`<div class=${isShown ? 'plate' : 'plate covered'}>
      <button type="button" class="plate-key" aria-expanded=${isShown} onClick=${() => covered.turn(instance, part)}>
        ${isShown ? html`Cover<span class="unseen"> ${label ?? what}</span>` : html`${of}<span>Show ${what}</span>`}
      </button>
      ${isShown ? (label ? html`<dl class="answers">${inside()}</dl>` : inside()) : null}
    </div>`;
  }

  // The same key as the number's own, so that it keeps the focus when it is turned over.
  const blank: Wall['blank'] = (of) =>
    html`<button type="button" class="live blank" onClick=${() => covered.turn(...partOf(of))}>Show the answer</button>`;

  function Bar() {
    // The list of notebooks would fill the wall.
    const first = useRef<HTMLButtonElement>(null);
    useLayoutEffect(() => {
      if (byHand) first.current?.focus();
      const contents = document.querySelector<HTMLDetailsElement>('.contents > details');
      if (contents) contents.open = false;
    }, []);
    return html`<aside class="wall-bar plain" aria-label="On the wall">
      <button type="button" ref=${first} onClick=${() => covered.showAll(true)}>Show all answers</button>
      <button type="button" onClick=${() => covered.showAll(false)}>Cover all answers</button>
      <button type="button" onClick=${leave}>Leave the wall</button>
    </aside>`;
  }

  function leave(): void {
    removeEventListener('resize', fit);
    delete root.dataset['wall'];
    root.style.removeProperty('--wall-zoom');
    keepOnWall(bench.shelf, false);
    bench.wall.value = null;
    document.getElementById('notebook')?.focus();
  }

  fit();
  addEventListener('resize', fit);
  root.dataset['wall'] = '';
  const hides = (name: string) =>
    askFor(name) === undefined ? covered.hides(name) : !covered.isShown(...partOf(name));
  bench.wall.value = { Plate, Bar, blank, hides };
}
