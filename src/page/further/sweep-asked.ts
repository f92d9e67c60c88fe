/** One of a cell's numbers drawn against what it hangs on: what is asked is chosen here and kept with the boat. */
import { useId } from 'preact/hooks';
import type { SweepAsk } from '../../boat';
import type { Instance } from '../../cells';
import { isIssue, read } from '../../measure';
import { moversOf } from '../../notebook/sweep/movers';
import { sweepFrom } from '../../notebook/sweep/sweep';
import { sweepIn, writeSweep } from '../../notebook/sweep/write-sweep';
import { type Bench, sayWith, useBench } from '../bench';
import { html, use } from '../html';
import { groupsOn, pickOf, textOf } from './asked-of';
import { resultsOf } from './named';
import { SweepPicture } from './sweep-picture';

export function SweepAsked({ instance }: { instance: Instance }) {
  const id = useId();
  const bench = useBench();
  const { book, shown } = bench;
  const ask = sweepIn(book.state.value, instance.name);
  if (!ask) return null;
  const graph = book.first.value;
  const all = moversOf(graph, ask.result);
  const groups = groupsOn(instance, all, bench);
  const sweep = sweepFrom(ask, graph, shown.value);
  const plain = sweepFrom({ ...ask, from: '', to: '', at: '' }, graph, shown.value);
  const say = sayWith(bench);
  const change = (part: Partial<SweepAsk>, run?: string) => draw(bench, instance, { ...ask, ...part }, run);
  const type = (key: 'at' | 'from' | 'to') => ({
    id: `${id}-${key}`,
    value: ask[key],
    says: `${id}-says`,
    isAmiss: isIssue(sweep) && !isIssue(plain) && ask[key] !== '',
    type: (text: string) => change({ [key]: text }, `sweep ${instance.name}.${key}`),
    leave: () => {
      const of = all.find(({ name }) => name === ask.against);
      // A bare number keeps the unit in which it was meant.
      const reading =
        of && key !== 'at' ? read(ask[key], { kind: of.given.kind, shown: shown.peek(), field: key }) : null;
      if (reading && !isIssue(reading)) change({ [key]: reading.text }, `sweep ${instance.name}.${key}`);
      book.settle();
    },
  });
  const ends = isIssue(plain) ? null : plain;
  const told = (value: number) => (ends ? say(value, ends.against.given.kind) : '');
  return html`<div class="further-part">
    <div class="further-fields">
      ${pickOf({
        id: `${id}-result`,
        label: 'Draw',
        groups: resultsOf(instance, graph),
        value: ask.result,
        pick: (result) => change(startOf(bench, instance, result, ask)),
      })}
      ${pickOf({
        id: `${id}-against`,
        label: 'against',
        groups,
        value: ask.against,
        pick: (against) =>
          change({ against, from: '', to: '', ...(against === ask.lines && { lines: '', at: '' }) }),
      })}
      ${textOf({ ...type('from'), label: 'from', placeholder: ends ? told(ends.span.low) : '' })}
      ${textOf({ ...type('to'), label: 'to', placeholder: ends ? told(ends.span.high) : '' })}
      ${pickOf({
        id: `${id}-lines`,
        label: 'A line for each',
        groups: groups.map(({ label, of }) => ({ label, of: of.filter(({ name }) => name !== ask.against) })),
        value: ask.lines,
        none: 'one line only',
        pick: (lines) => change({ lines, at: '' }),
      })}
      ${
        ask.lines === ''
          ? null
          : textOf({
              ...type('at'),
              label: 'at',
              placeholder: ends?.family
                ? ends.family.values.map((value) => say(value, ends.family!.of.given.kind)).join(' or ')
                : '',
            })
      }
    </div>
    ${use(SweepPicture, { ask, says: `${id}-says` })}
    <div class="further-keys">
      <button type="button" onClick=${() => draw(bench, instance, null)}>Put the graph away</button>
    </div>
  </div>`;
}

/** Keeps what is drawn, as a step that can be undone. */
export function draw({ book }: Bench, { name }: Instance, ask: SweepAsk | null, run?: string): void {
  if (run === undefined) book.settle();
  book.open(writeSweep(book.state.peek(), name, ask), run);
}

/** Another result keeps what it is drawn against where it hangs on that too. */
function startOf(
  { book }: Bench,
  instance: Instance,
  result: string,
  { against, lines }: SweepAsk,
): Partial<SweepAsk> {
  const all = moversOf(book.first.value, result).map(({ name }) => name);
  if (all.includes(against)) return all.includes(lines) ? { result } : { result, lines: '', at: '' };
  const own = all.find((name) => name.startsWith(`${instance.name}.`)) ?? all[0] ?? '';
  return { result, against: own, from: '', to: '', lines: '', at: '' };
}
