/**
 * What is written into a notebook while another sheet lies on the bench goes into the boat at rest. Undo on the page takes
 * it back all the same, in the order in which things were done: before what was done on the bench earlier, after what was
 * done there since.
 */
import { signal } from '@preact/signals';
import type { OwnNotebooks } from '../../boat';
import type { BookState } from '../../notebook';
import type { Bench } from '../bench';
import { amendAtRest } from './amend-at-rest';

interface Step {
  readonly boat: string;
  readonly was: OwnNotebooks;
  readonly is: OwnNotebooks;
  /** What lay on the bench then: as long as it is the same, nothing was done there since. */
  readonly at: BookState;
  readonly run?: string | undefined;
}

/** As many as anybody goes back by; they last as long as the page is open. */
const MOST = 100;

const done = signal<readonly Step[]>([]);
const undone = signal<readonly Step[]>([]);

/** @param run joins changes into one step */
export function noteStep(bench: Bench, was: OwnNotebooks, is: OwnNotebooks, run?: string): void {
  if (JSON.stringify(was) === JSON.stringify(is)) return;
  const at = bench.book.state.peek();
  const boat = bench.ownBoat.peek();
  const last = done.peek().at(-1);
  const goesOn = run !== undefined && last?.run === run && last.at === at && last.is === was;
  const before = goesOn ? done.peek().slice(0, -1) : done.peek();
  done.value = [...before, { boat, was: goesOn ? last.was : was, is, at, run }].slice(-MOST);
  undone.value = [];
  bench.book.elsewhere.value ??= goingBy(bench);
}

function goingBy(bench: Bench) {
  const { book, ownBoat, resting, sheet } = bench;
  /** The step that is next, if nothing was done here or there since. Tracked. */
  const next = (from: typeof done, stands: (step: Step) => OwnNotebooks): Step | null => {
    const step = from.value.at(-1);
    const fits =
      step !== undefined &&
      sheet.value.key !== step.boat &&
      step.at === book.state.value &&
      step.boat === ownBoat.value &&
      resting.value?.boat === step.boat &&
      resting.value.notebooks === stands(step);
    return fits ? step : null;
  };
  const back = () => next(done, ({ is }) => is);
  const forth = () => next(undone, ({ was }) => was);
  const go = (step: Step | null, from: typeof done, to: typeof done, side: 'is' | 'was'): boolean => {
    if (!step) return false;
    const notebooks = amendAtRest(bench, (state) => ({ ...state, notebooks: step[side] }));
    // What is read back is the same by its letters alone.
    const rest = from.peek().slice(0, -1);
    const then = rest.at(-1);
    from.value = then
      ? [...rest.slice(0, -1), { ...then, [side === 'was' ? 'is' : 'was']: notebooks }]
      : rest;
    to.value = [...to.peek(), { ...step, [side]: notebooks, run: undefined }];
    return true;
  };
  return {
    canUndo: () => back() !== null,
    canRedo: () => forth() !== null,
    undo: () => go(back(), done, undone, 'was'),
    redo: () => go(forth(), undone, done, 'is'),
  };
}
