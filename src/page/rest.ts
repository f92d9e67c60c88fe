/**
 * What the page does when it is at rest after an edit, or after anything else that moves numbers: it tells what moved
 * and what no longer fits; then what is far from the window catches up. All of it in idle moments and bit by bit, so
 * that whoever types on is never held up.
 */
import { effect } from '@preact/signals';
import { tellMisfits } from './as-built/watch';
import type { Bench } from './bench';
import { atRest } from './picture/at-rest';
import { toldRipple } from './ripple/lines';
import { rippleOf } from './ripple/watch';
import { turns } from './seen';

/** After the last edit, ms: until what moved is told, and from there until what is far follows. */
const TOLD = 60;
const FAR = 140;

/**
 * How far the page has followed the last edit stands at its root, for whoever looks on from without:
 * `<html data-followed="told">` once what moved is told, `"all"` once nothing is behind.
 */
export function watchRest(bench: Bench): void {
  const { book, shown, findings, rested } = bench;
  const { dataset } = document.documentElement;
  const tellRipple = rippleOf(bench, (ripple) => {
    bench.ripple.value = ripple && toldRipple(ripple, bench);
  });
  let timer = 0;
  let latest: Generator<void> | null = null;

  function* tell() {
    yield* tellRipple();
    yield;
    tellMisfits(bench);
    dataset['followed'] = 'told';
  }
  /** Goes on with what is told from one idle moment to the next, unless there has been another edit. */
  const goOn = (telling: Generator<void>) =>
    atRest(() => {
      if (telling === latest && !telling.next().done) goOn(telling);
    });
  const endWith = (telling: Generator<void>) =>
    atRest((left) => {
      if (telling !== latest) return;
      if (left > 0) endWith(telling);
      else dataset['followed'] = 'all';
    });

  effect(() => {
    void [book.state.value, book.inHand.value, book.catalogue.value, shown.value, findings.count.value];
    delete dataset['followed'];
    latest = null;
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      const telling = (latest = tell());
      goOn(telling);
      timer = window.setTimeout(() => {
        rested.value += 1;
        for (const turn of turns) atRest(() => (turn.value += 1));
        endWith(telling);
      }, FAR);
    }, TOLD);
  });
}
