/**
 * The leading answers of a cell at the window's upper edge, while one types in a field of it and they have gone out of
 * sight: over a long list of fields, or with a phone's keyboard up. They take no room, so that nothing moves when they
 * come, and they never lie over the field in hand.
 */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { answersOf, type Instance } from '../../cells';
import { isIssue, write } from '../../measure';
import type { Value } from '../../boat';
import { optionsFor, sayValue, useBench } from '../bench';
import { html, use } from '../html';
import { redraw } from '../picture/redraw';
import { waitsFor } from '../words';

const FIELDS = '.input :is(input, select)';
/** What they may take at the most, and a field's ring with them; CSS px. The stylesheet says the same. */
const MOST = 116;

export function InSight({ instance }: { instance: Instance }) {
  const place = useRef<HTMLDivElement>(null);
  const [shown, setShown] = useState(false);
  useLayoutEffect(() => {
    const at = place.current;
    const cell = at?.closest<HTMLElement>('.cell');
    return at && cell ? watch(cell, (typed) => setShown(isCalledFor(at, cell, typed))) : undefined;
  }, []);
  return html`<div class="in-sight" aria-hidden="true" ref=${place}>${shown ? use(Leading, { instance }) : null}</div>`;
}

function Leading({ instance }: { instance: Instance }) {
  const { book } = useBench();
  const [first, second] = [book.first.value, book.second.value];
  return html`<dl>
    ${answersOf(instance, (by) => first.workOut(by)).map(({ of, label }) => {
      const name = `${instance.name}.${of}`;
      return html`<div key=${of}>
        <dd>
          ${use(Figure, { name, value: first.value(name) })}
          ${second === null ? null : html`<i>${use(Figure, { name, value: second.value(name) })}</i>`}
        </dd>
        <dt>${label}</dt>
      </div>`;
    })}
  </dl>`;
}

function Figure({ name, value }: { name: string; value: Value }) {
  const bench = useBench();
  const graph = bench.book.first.value;
  const { kind = 'number' } = graph.quantity(name) ?? {};
  if (isIssue(value)) return html`<span>waits for ${waitsFor(bench, value)}</span>`;
  if (typeof value === 'string')
    return html`<b>${sayValue(value, kind, bench.shown.value, optionsFor(graph, name))}</b>`;
  return html`<b>${write(value, kind, bench.shown.value, graph.mannerOf(name)).text}</b>`;
}

/** Has a cell looked at whenever what is seen of it may have changed, while a field of it has the focus. */
function watch(cell: HTMLElement, look: (typed: boolean) => void): () => void {
  const again = () => look(false);
  // After the field has been held in its place, which would undo the room that it makes.
  const typed = () => redraw(() => look(true));
  const screen = globalThis.visualViewport;
  let isWatching = false;
  const turn = (on: boolean) => {
    if (on === isWatching) return;
    isWatching = on;
    const act = on ? 'addEventListener' : 'removeEventListener';
    globalThis[act]('scroll', again);
    screen?.[act]('scroll', again);
    screen?.[act]('resize', again);
    cell[act]('input', typed);
  };
  const enter = ({ target }: FocusEvent) => {
    turn((target as Element).matches(FIELDS));
    again();
  };
  const leave = () => {
    turn(false);
    again();
  };
  cell.addEventListener('focusin', enter);
  cell.addEventListener('focusout', leave);
  return () => {
    turn(false);
    cell.removeEventListener('focusin', enter);
    cell.removeEventListener('focusout', leave);
  };
}

/** @param typed whether something is being typed: then the field makes room for them */
function isCalledFor(place: HTMLElement, cell: HTMLElement, typed: boolean): boolean {
  const field = document.activeElement;
  const figure = cell.querySelector('.answer .figure');
  if (!field?.matches(FIELDS) || !cell.contains(field) || !figure) return false;
  const { offsetTop = 0, height = innerHeight } = visualViewport ?? {};
  const { top, bottom } = figure.getBoundingClientRect();
  // A phone's keyboard moves what is seen within the window.
  place.style.top = `${offsetTop}px`;
  if (top >= offsetTop && bottom <= offsetTop + height) return false;
  const room = field.getBoundingClientRect().top - offsetTop;
  if (room >= MOST) return true;
  // A little more than that: a window scrolls by whole pixels.
  if (typed) scrollBy({ top: room - MOST - 4, behavior: 'instant' });
  return typed;
}
