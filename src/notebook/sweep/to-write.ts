/** What is found backwards as a builder writes it: to the figures of its field, or a size that is sold; and how near that comes. */
import type { Course, Where } from '../../kernel';
import {
  isIssue,
  type KindId,
  type Manner,
  read,
  type Shown,
  shownUnit,
  write,
  writeExact,
  type WriteOptions,
} from '../../measure';
import { shelfOf } from '../../measure/sold';
import type { Backwards } from './wanted';

export interface NumberToWrite {
  /** SI: what the text reads back as. */
  readonly value: number;
  /** The entry. */
  readonly text: string;
  /** What the result comes to with it, SI, where that is not as it is wanted; else null. */
  readonly comesTo: number | null;
}

export interface Manners {
  readonly shown: Shown;
  /** Of the number to be changed, and of the result. */
  readonly by?: Manner | undefined;
  readonly result?: Manner | undefined;
}

/** Marks of a rule are halved so many times for a number to come as near as is wanted: a tape's 16ths to 64ths. */
const HALVINGS = 2;
/** What is found this near to what is written now, as a share, is that. */
const SAME = 1e-7;
/** Limits are kept to this share of what they are. */
const HAIR = 1e-9;

/**
 * Of each stretch the number nearest to what is written now, once.
 *
 * @param at what the result comes to where the number is so much
 */
export function numbersToWrite(
  { met }: Pick<Where, 'met'>,
  asked: Backwards,
  at: Course,
  manners: Manners,
): readonly NumberToWrite[] {
  const { by, kind, wanted, value } = asked;
  const told = (y: number) => write(y, kind, manners.shown, manners.result).text;
  const isAsWanted = (y: number): boolean => {
    if (wanted === 'exactly') return told(y) === told(value);
    const slack = HAIR * Math.abs(value);
    return wanted === 'at most' ? y <= value + slack : y >= value - slack;
  };
  const all = met.flatMap(({ from, to }): NumberToWrite[] => {
    const near = Math.min(to, Math.max(from, by.value));
    // What is written now need not be written anew, to whatever figures it is.
    if (Math.abs(near - by.value) <= SAME * Math.abs(by.value))
      return [{ value: by.value, text: writeExact(by.value, by.given.kind, manners.shown), comesTo: null }];
    const side = from === to ? undefined : near === from ? 'least' : 'most';
    const tried = asWritten(near, by.given.kind, manners, side).flatMap((one) => {
      const y = one.value < by.least || one.value > by.most ? null : at(one.value);
      return y === null ? [] : [{ ...one, y, comesTo: isAsWanted(y) ? null : y }];
    });
    const nearest = tried.toSorted((a, b) => Math.abs(a.y - value) - Math.abs(b.y - value));
    const best = tried.find(({ comesTo }) => comesTo === null) ?? nearest[0];
    return best ? [{ value: best.value, text: best.text, comesTo: best.comesTo }] : [];
  });
  return all.filter(({ text }, i) => all.findIndex((one) => one.text === text) === i);
}

/** The ways to write a number, the coarsest first; none where it is too little to be told. */
function asWritten(
  value: number,
  kind: KindId,
  { shown, by = {} }: Manners,
  side: Manner['bound'],
): readonly Pick<NumberToWrite, 'value' | 'text'>[] {
  const sold = shelfOf(kind)?.sizes?.(shown) ?? [];
  const beside = [
    sold.findLast((size) => size <= value * (1 + HAIR)),
    sold.find((size) => size >= value * (1 - HAIR)),
  ].filter((size) => size !== undefined);
  const sizes = [...new Set(side === 'most' ? beside : beside.toReversed())];
  if (sizes.length > 0)
    return sizes.map((size) => {
      const called = readsAs(write(size, kind, shown).text, kind, shown, size);
      return { value: size, text: called ?? writeExact(size, kind, shown) };
    });
  const own = by.unit ?? shownUnit(kind, shown);
  const isTaped = shown.length === 'feet' && by.unit === undefined && own === 'in' && !shelfOf(kind);
  const ways: readonly WriteOptions[] = isTaped
    ? Array.from({ length: HALVINGS + 1 }, (_, finer) => ({ ...by, finer }))
    : // As it is told, which may be in hours; then in the field's own unit, which may be minutes.
      [...(shelfOf(kind) ? [] : [by]), own === '' ? by : { ...by, unit: own }];
  return ways.flatMap((way) => {
    const { text, written } = write(value, kind, shown, { ...way, ...(side && { bound: side }) });
    // Too little to be told in that unit.
    if (written === 0 && value !== 0) return [];
    const inUnit = way.unit === undefined ? {} : { unit: way.unit };
    return [
      {
        value: written,
        text: readsAs(text, kind, shown, written) ?? writeExact(written, kind, shown, inUnit),
      },
    ];
  });
}

/** A text as it stands in a sentence, if it can be typed: with its signs of a keyboard, and coming to the same. */
function readsAs(text: string, kind: KindId, shown: Shown, value: number): string | null {
  const typed = text.replace('−', '-');
  const reading = read(typed, { kind, shown, field: kind });
  const back = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  return !isIssue(back) && Math.abs(back - value) <= HAIR * Math.abs(value) ? typed : null;
}
