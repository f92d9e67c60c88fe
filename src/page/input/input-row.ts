/** One input: its line, and under it what is wrong, what was measured or cut, the other version's value, and what its key opens. */
import { useId, useState } from 'preact/hooks';
import type { Given, Value } from '../../boat';
import { cutBy } from '../../cells';
import { isIssue, write } from '../../measure';
import type { Graph } from '../../notebook';
import { type Bench, sayOf, useBench, versionWords } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { capital } from '../words';
import { ChoiceField } from './choice-field';
import { EntryField } from './entry-field';
import { fieldValue, restText } from './entry-text';
import { describedBy, FieldLine } from './field-line';
import { ownerOf } from './owner';
import { focusField, onRowKey, TO_ROW_KEYS } from './row-keys';
import { inWords, whence } from './whence';

const AsBuiltRow = later(async () => (await import('./as-built-row')).AsBuiltRow, 'as-built');
const CutMark = later(async () => (await import('../as-built/cut-mark')).CutMark, 'cut-mark');
const MoreAbout = later(async () => (await import('./more-about')).MoreAbout, 'more-about');

/** The first word of the shop's quantities. */
const SHOP = 'shop';

export interface InputRowProps {
  /** Name of the given quantity that the field writes. */
  readonly name: string;
  /** The cell's input that it stands for, where that is another. */
  readonly place?: string;
  readonly label: string;
  /** Offers a slider between the quantity's limits. */
  readonly slider?: boolean;
  /** What to measure where, for this work. */
  readonly hint?: string;
}

export function InputRow({ name, place = name, label, slider = false, hint }: InputRowProps) {
  const bench = useBench();
  const id = useId();
  const [measuring, setMeasuring] = useState(false);
  /** Whether what the key opens is open, and whether the keyboard led there. */
  const [more, setMore] = useState<'closed' | 'open' | 'entered'>('closed');
  const graph = bench.book.inHand.value;
  const quantity = graph.quantity(name) as Given | undefined;
  const entry = graph.entry(name);
  if (!quantity || !entry) return null;
  const value = fieldValue(graph, name);
  const own = isIssue(value) && value.waitsFor === undefined ? value.issue : null;
  // What is wrong elsewhere is named there with its own field: no need to name it twice.
  const waits = isIssue(value) && own === null ? value.issue : null;
  const says = own ?? waits;
  const isBuilt = entry.built !== undefined;
  const isOpen = more !== 'closed';
  const close = () => setMore('closed');
  const state = `${own ? ' wrong' : ''}${entry.written && (quantity.preset || quantity.presetFrom) ? ' written' : ''}${isBuilt ? ' built' : ''}${isOpen ? ' opened' : ''}`;
  const isMeasured = isBuilt && Object.hasOwn(bench.book.asBuilt.value.measured, name);
  const measure =
    isMeasured || measuring || !isMeasurable(quantity, bench, graph) ? undefined : () => setMeasuring(true);
  const part = isLookedAt(quantity, bench) && typeof value === 'string' ? value : null;
  const isCut = part !== null && Object.hasOwn(bench.book.asBuilt.value.cut, part);
  const from = whence(bench, name, place);
  const words = inWords(from);
  const isChoice = quantity.kind === 'choice';
  const tells = !isChoice || words !== '' || hint !== undefined || measure !== undefined;
  const hasMore = tells || part !== null;
  const field = {
    id,
    quantity,
    says,
    describedBy: describedBy(id, says, words),
    shortcut: hasMore ? TO_ROW_KEYS : undefined,
  };
  const opening = { isOpen, enter: hasMore ? () => setMore('entered') : undefined, close };
  return html`<div class=${`input${state}`} data-quantity=${place} onKeyDown=${(event: KeyboardEvent) => onRowKey(event, opening)}>
    ${use(FieldLine, {
      id,
      label,
      field: isChoice ? use(ChoiceField, field) : use(EntryField, field),
      ...(isChoice && { letters: sayOf(graph, name, value, bench.shown.value).length }),
      mark: from.mark,
      words,
      ...(hasMore && { open: isOpen, turn: () => setMore(isOpen ? 'closed' : 'open') }),
    })}
    ${says === null ? null : html`<p class="says" id=${`${id}-says`} role="status">${capital(says)}.</p>`}
    ${use(Means, { quantity })}
    ${
      isOpen && tells
        ? use(MoreAbout, {
            name,
            place,
            from,
            slider,
            ...(hint !== undefined && { hint }),
            ...(measure && { measure }),
            enter: more === 'entered',
            close,
          })
        : null
    }
    ${
      part !== null && (isCut || isOpen)
        ? // Unmarked, its key goes away with the mark.
          html`<div onClick=${isOpen ? undefined : focusField}>${use(CutMark, { part, brief: true })}</div>`
        : null
    }
    ${measuring || isBuilt ? use(AsBuiltRow, { quantity, open: measuring, setOpen: setMeasuring }) : null}
    ${use(OtherValue, { name })}
  </div>`;
}

/** What an entry comes to, where it is written otherwise: `= 19.1 mm` under `3/4 in`. */
function Means({ quantity }: { quantity: Given }) {
  const { book, shown } = useBench();
  const graph = book.inHand.value;
  const value = fieldValue(graph, quantity.name);
  if (typeof value !== 'number') return null;
  const said = write(value, quantity.kind, shown.value, graph.mannerOf(quantity.name)).text;
  if (unspaced(said) === unspaced(restText(graph, quantity, shown.value))) return null;
  return html`<p class="means">= ${said}</p>`;
}

const unspaced = (text: string) => text.replaceAll(/\s+/g, '');

/**
 * What calipers can read, and what may be bought otherwise than planned. Cells under a name of their own speak of no
 * boat, what a cell looks at is nothing to be measured, and what departs from the boat is measured at the boat's. The
 * shop has no design that a measure could stand in place of.
 */
function isMeasurable({ name, kind }: Given, bench: Bench, graph: Graph): boolean {
  const [part = ''] = name.split('.');
  const instance = bench.instances.peek().get(part);
  if (!instance) return part !== SHOP;
  return kind !== 'choice' && instance.name === instance.cell.id && ownerOf(bench, graph, name) === undefined;
}

/** Whether it chooses the part that a cell is about, which may be marked as cut beside it. */
function isLookedAt({ name, kind }: Given, { instances }: Bench): boolean {
  const [cell = '', key = ''] = name.split('.');
  const instance = instances.peek().get(cell);
  return kind === 'choice' && instance?.cell.id === cell && cutBy(instance.cell) === key;
}

/** The other version's value, where there are two and they differ. */
function OtherValue({ name }: { name: string }) {
  const { book, other, shown } = useBench();
  if (!other.value) return null;
  const { graph, version } = other.value;
  const value = graph.value(name);
  const quantity = graph.quantity(name);
  if (!quantity) return null;
  if (same(value, book.inHand.value.value(name))) return use(OtherDesign, { name });
  const text = sayOf(graph, name, value, shown.value);
  return html`<p class=${`other ${version}`}>${versionWords[version]}: ${text}</p>`;
}

/** The other version's design, where it is another and what is measured or cut stands in place of both. */
function OtherDesign({ name }: { name: string }) {
  const { book, other, shown } = useBench();
  if (!other.value || book.inHand.value.entry(name)?.built === undefined) return null;
  const { graph, version } = other.value;
  const designed = graph.designed(name);
  if (same(designed, book.inHand.value.designed(name))) return null;
  const text = sayOf(graph, name, designed, shown.value);
  return html`<p class=${`other ${version}`}>${versionWords[version]} is designed ${text}; what is measured or cut holds in both.</p>`;
}

/** Issues of two graphs are never one object; what they say is. */
function same(a: Value, b: Value): boolean {
  return a === b || (isIssue(a) && isIssue(b) && a.issue === b.issue);
}
