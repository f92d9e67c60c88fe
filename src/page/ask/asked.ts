/** What the questions of the open notebook cover, until a guess is written and the answer shown: the page sees a bench without it. */
import { computed } from '@preact/signals';
import { Fragment } from 'preact';
import type { Graph } from '../../notebook';
import { formulasIn } from '../../notebook/formulas/formulas-in';
import { waitsFor } from '../../notebook/lesson/blanks';
import { saidIn } from '../../notebook/lesson/write-lesson';
import type { Bench } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { openText } from '../library';
import type { PlateProps } from '../plate';
import { askPlace, asksOf } from '../asks';
import { coveringIn } from './covering-in';

const ClassFoot = later(async () => (await import('./class-foot')).ClassFoot, 'class-to-come');

/** The bench as the page sees it. */
function veiledBench(bench: Bench, veiled: (graph: Graph) => Graph): Bench {
  const { first, second, inHand } = bench.book;
  return {
    ...bench,
    book: {
      ...bench.book,
      first: computed(() => veiled(first.value)),
      second: computed(() => second.value && veiled(second.value)),
      inHand: computed(() => veiled(inHand.value)),
    },
    other: computed(
      () => bench.other.value && { ...bench.other.value, graph: veiled(bench.other.value.graph) },
    ),
  };
}

export function coverAsked(bench: Bench): void {
  const { book, instances } = bench;
  /** Numbers that a question waits for, each with the question's name; on the wall the plates cover what is asked. */
  const waiting = computed((): ReadonlyMap<string, string> => {
    const page = bench.wall.value ? undefined : openText();
    const [state, graph] = [book.state.value, book.first.value];
    return new Map(
      asksOf(page).flatMap((ask) =>
        waitsFor(ask, saidIn(state, page?.id ?? '', ask.name), graph).map((of): [string, string] => [
          of,
          ask.name,
        ]),
      ),
    );
  });
  const { askOf: askIn, veiled } = coveringIn(instances, () => waiting.value);
  const askOf = (name: string) => askIn(name, book.first.value);
  /** Of a cell one of whose numbers is covered, all is. */
  const askOver = (instance: string): string | undefined => {
    if (waiting.value.size === 0) return undefined;
    const cell = instances.value.get(instance)?.cell;
    const lines = formulasIn(book.catalogue.value).get(instance)?.lines ?? [];
    const names = cell
      ? Object.keys(cell.steps).map((key) => `${instance}.${key}`)
      : lines.map(({ full }) => full);
    for (const name of names) {
      const ask = name === '' ? undefined : askOf(name);
      if (ask !== undefined) return ask;
    }
    return undefined;
  };
  const leadTo = (ask: string | undefined) => () => {
    const place = document.getElementById(askPlace(ask ?? ''));
    place?.scrollIntoView({ block: 'center' });
    place?.querySelector<HTMLElement>('input, textarea, select, button')?.focus({ preventScroll: true });
  };

  /** One for each answer; what else of the cell would tell it is left out. */
  function Plate({ instance, label, inside }: PlateProps) {
    const ask = askOver(instance);
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
    waits: (name) => waiting.value.get(name),
    hides: (name) => askOf(name) !== undefined,
    over: (instance) => askOver(instance) !== undefined,
    bench: veiledBench(bench, veiled),
    bare: bench,
    Foot: (props) =>
      asksOf(props.page).length > 0 ? use(ClassFoot, { ...props, key: props.page.id }) : null,
  };
}
