/** What the questions of the open notebook cover: the cell or the number that is asked for, until a guess is written and the answer shown. */
import { computed } from '@preact/signals';
import { Fragment } from 'preact';
import { waitsFor } from '../../notebook/lesson/blanks';
import { saidIn } from '../../notebook/lesson/write-lesson';
import type { Bench } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { openText } from '../library';
import type { PlateProps } from '../plate';
import { askPlace, asksOf } from './asks';

const ClassFoot = later(async () => (await import('./class-foot')).ClassFoot, 'class-to-come');

export function coverAsked(bench: Bench): void {
  const { book, instances } = bench;
  /** Numbers that a question waits for, each with the question's name. */
  const waiting = computed(() => {
    const page = openText();
    const state = book.state.value;
    return new Map(
      asksOf(page).flatMap((ask) =>
        waitsFor(ask, saidIn(state, page?.id ?? '', ask.name)).map((of): [string, string] => [of, ask.name]),
      ),
    );
  });
  /** The same by the cells that work the numbers out; what is typed into a cell is no secret. */
  const cells = computed(
    () =>
      new Map(
        [...waiting.value].flatMap(([of, ask]): [string, string][] => {
          const [instance = '', key = ''] = of.split('.');
          const cell = instances.value.get(instance)?.cell;
          return cell && !Object.hasOwn(cell.inputs, key) ? [[instance, ask]] : [];
        }),
      ),
  );
  const askOf = (name: string): string | undefined => {
    const [instance = '', key = ''] = name.split('.');
    const cell = instances.value.get(instance)?.cell;
    if (!cell) return waiting.value.get(name);
    return Object.hasOwn(cell.inputs, key) ? undefined : cells.value.get(instance);
  };
  const leadTo = (ask: string | undefined) => () => {
    const place = document.getElementById(askPlace(ask ?? ''));
    place?.scrollIntoView({ block: 'center' });
    place?.querySelector<HTMLElement>('input, textarea, select, button')?.focus({ preventScroll: true });
  };

  /** One for each answer; what else of the cell would tell it is left out. */
  function Plate({ instance, label, inside }: PlateProps) {
    const ask = cells.value.get(instance);
    if (ask === undefined) return html`<${Fragment}>${inside()}<//>`;
    if (label === undefined) return null;
    return html`<div class="plate covered">
      <button type="button" class="plate-key" onClick=${leadTo(ask)}><b>${label}</b> <span>Write your guess first</span></button>
    </div>`;
  }

  bench.asked.value = {
    Plate,
    blank: (of) =>
      html`<button type="button" class="live blank" onClick=${leadTo(askOf(of))}>your guess first</button>`,
    hides: (name) => askOf(name) !== undefined,
    over: (instance) => cells.value.has(instance),
    Foot: (props) =>
      asksOf(props.page).length > 0 ? use(ClassFoot, { ...props, key: props.page.id }) : null,
  };
}
