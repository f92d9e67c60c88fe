/**
 * What matters: the numbers that an answer hangs on, in the order in which their doubt moves it, what to know better
 * first, and how far out the answer may be. It is weighed while it is open, again at rest after each edit.
 */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Instance } from '../../cells';
import { type Issue, isIssue, type KindId, upToComma, write } from '../../measure';
import { doubtName } from '../../notebook/doubts/doubt-of';
import { type Group, groupsOf, othersOf } from '../../notebook/doubts/groups';
import { weigh, type Weighing } from '../../notebook/doubts/weigh';
import { writtenIn } from '../../notebook';
import { type Bench, useBench } from '../bench';
import { Disclosure } from '../disclosure';
import { useSlices } from '../use-slices';
import { html, use } from '../html';
import { capital } from '../words';
import { DoubtRow } from './doubt-row';
import { rangeAsked } from './range-asked';
import { advice, sayMove } from './words';
import './matters.css';

/** So many stand in view, as long as they move anything. */
const IN_VIEW = 7;

export function Matters({ instance }: { instance: Instance }) {
  const bench = useBench();
  const answers = answersIn(instance, bench);
  const [of, setOf] = useState(answers[0]?.of ?? '');
  const [isBeside, setBeside] = useState(false);
  /** What stood in view, in its order, when a field was entered: nothing moves under the hand that types. */
  const held = useRef<readonly string[] | null>(null);
  const [, drawAnew] = useState(0);
  const answer = answers.find((one) => one.of === of) ?? answers[0];
  const name = answer ? `${instance.name}.${answer.of}` : '';
  const { found, done } = useWeighing(bench, name);
  const graph = bench.book.inHand.value;
  const kind = graph.quantity(name)?.kind ?? 'number';
  const shown = bench.shown.value;
  const range = found && !isIssue(found) ? sayRange(found, kind, bench) : null;
  useEffect(() => {
    if (!isBeside || range === null) return undefined;
    rangeAsked.value = new Map(rangeAsked.peek()).set(name, range);
    return () => {
      const others = new Map(rangeAsked.peek());
      others.delete(name);
      rangeAsked.value = others;
    };
  }, [isBeside, range, name]);
  if (!answer) return html`<p>No answer of this cell is a number now.</p>`;
  return html`<div class="matters">
    <p class="matters-of">
      ${
        answers.length > 1
          ? html`<label>
            Answer
            <select value=${answer.of} onChange=${(event: Event) => setOf((event.currentTarget as HTMLSelectElement).value)}>
              ${answers.map((one) => html`<option value=${one.of}>${one.label}</option>`)}
            </select>
          </label>`
          : null
      }
      <label class="beside">
        <input type="checkbox" checked=${isBeside} onChange=${() => setBeside(!isBeside)} />
        The range beside the answer
      </label>
    </p>
    <p class="matters-now" role="status" aria-live="polite">${done === null ? '' : `Weighing each number: ${Math.round(done * 100)} %`}</p>
    ${found === null ? null : isIssue(found) ? html`<p class="says">${capital(found.issue)}.</p>` : listOf(found)}
  </div>`;

  function listOf(weighing: Weighing) {
    const groups = groupsOf(weighing);
    const [head] = groups;
    if (!head) return html`<p>It hangs on no number that is written.</p>`;
    const most = Math.max(
      ...weighing.rows.flatMap(({ swing }) => (swing ? [Math.abs(swing.less), Math.abs(swing.more)] : [])),
      head.moves,
    );
    const row = (group: Group) =>
      use(DoubtRow, {
        key: keyOf(group),
        group,
        most,
        kind,
        name: doubtName(group.rows[0]!.number.quantity.name),
      });
    const telling = groups.filter((group, at) => at < IN_VIEW && group.moves > 0).map(keyOf);
    const amiss = groups.filter(({ rows }) => isIssue(rows[0]!.doubt.by)).map(keyOf); // a group has a number
    const inView = held.current ?? [...new Set([...telling, ...amiss])];
    const byKey = new Map(groups.map((group) => [keyOf(group), group]));
    const moving = inView.flatMap((key) => byKey.get(key) ?? []);
    const rest = groups.filter((group) => !moving.includes(group));
    const hold = () => (held.current ??= inView);
    const letGo = () => {
      held.current = null;
      drawAnew((turn) => turn + 1);
    };
    const others = othersOf(groups);
    return html`<p class="advice">
        ${
          head.moves > 0
            ? advice(
                head,
                upToComma(graph.quantity(name)?.meaning ?? answer!.label),
                sayMove(head.moves, kind, shown),
                others > 0 ? sayMove(others, kind, shown) : null,
              )
            : amiss.length > 0
              ? 'A doubt below can’t be read.'
              : 'None of these numbers is in doubt. Give one of them a doubt below.'
        }
      </p>
      <p class="range">${capital(range!)}: between these lie nineteen of twenty, if each number is out by no more than it may be. ${howFound(weighing)}</p>
      <ol class="swings" onFocusIn=${hold} onFocusOut=${letGo}>${moving.map(row)}</ol>
      ${
        rest.length > 0
          ? use(Disclosure, {
              summary: `${rest.length} more ${rest.length === 1 ? 'number' : 'numbers'}`,
              className: 'fold rest',
              inside: () => html`<ol class="swings">${rest.map(row)}</ol>`,
            })
          : null
      }
      <p class="note">
        A doubt is what to give or take: of twenty readings nineteen lie within it. Choices are taken as they stand.
        Write 0 where a number is sure.
      </p>`;
  }
}

const keyOf = (group: Group): string => (group.isOffsets ? 'offsets' : group.rows[0]!.number.quantity.name); // a group has a number

function answersIn({ cell, name }: Instance, { book }: Bench) {
  const graph = book.inHand.value;
  return cell.answers.filter(({ of }) => typeof graph.value(`${name}.${of}`) === 'number');
}

function sayRange({ range: [least, most] }: Weighing, kind: KindId, { shown }: Bench): string {
  const say = (value: number) => write(value, kind, shown.value).text;
  return `from ${say(least)} to ${say(most)}`;
}

function howFound({ isStraight, tried, silent, added }: Weighing): string {
  if (isStraight) return 'The answer goes straight with them, so their squares are added up.';
  if (added > 0)
    return `The answer bends: what each number does to it was put together ${added} times over, and ${tried} trials of all at once came to the same.`;
  const none = silent > 0 ? `, of which ${silent} gave no answer` : '';
  return `The answer bends, so all numbers were tried at once, ${tried} times over${none}.`;
}

/** Weighs anew when what is written, the units or the cell's own answer become others; the last list stands meanwhile. */
function useWeighing({ book, shown, rested }: Bench, name: string) {
  const graph = book.inHand.value;
  const units = shown.value;
  const state = book.state.value;
  const { entries, second, inHand } = state;
  const written = (of: string) => writtenIn(state, inHand, doubtName(of));
  const { made, done } = useSlices<Weighing | Issue | null>(
    () => (name === '' ? nothing() : weigh(graph, name, written, units)),
    [graph, name, units, rested.value, entries, second, inHand],
  );
  return { found: made, done };
}

// oxlint-disable-next-line require-yield -- there is nothing to weigh
function* nothing(): Generator<number, null> {
  return null;
}
