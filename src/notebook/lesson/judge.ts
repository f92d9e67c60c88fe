/** What a guess is worth, in words: near enough, too high, too low, or no guess at what was asked. */
import {
  type Issue,
  isIssue,
  issue,
  kindOf,
  read,
  type KindId,
  type Shown,
  plainShown,
  writeDifference,
} from '../../measure';
import type { Direction } from '../text/page-text';
import { type Key, unitOf, unitsOf } from './key';

export interface Worth {
  /** `open`: words, which nobody but a reader judges. `unread`: what can't be read as a guess at all. */
  readonly is: 'right' | 'high' | 'low' | 'other' | 'open' | 'unread';
  /** In a sentence. */
  readonly says: string;
}

/** Where a question doesn't say how far off a guess may be. */
export const USUAL_WITHIN = '5 %';

/** A guess as a value of what was asked, or why it is none. */
export function guessed(text: string, kind: KindId, shown: Shown, unit?: string): number | Issue {
  const reading = read(text, { kind, shown, field: 'your guess', ...(unit !== undefined && { unit }) });
  return isIssue(reading) ? reading : reading.evaluate(() => issue('a guess is a number of your own'));
}

/**
 * @param within as the writer of the question typed it; empty for the usual
 * @param shown the learner's units, which a bare number takes
 */
export function judge(text: string, key: Key, within: string, shown: Shown): Worth {
  if (text.trim() === '') return { is: 'unread', says: 'Nothing is written yet.' };
  if (key.is === 'words') return { is: 'open', says: '' };
  if (key.is === 'number') {
    const value = guessed(text, key.kind, unitsOf(key, shown), unitOf(key));
    if (isIssue(value)) return { is: 'unread', says: sentence(value.issue) };
    return againstNumber(value, key.value, toleranceOf(key, within));
  }
  const right = text === (key.is === 'choice' ? key.id : key.so);
  return right ? { is: 'right', says: 'That is so.' } : { is: 'other', says: 'It is not so.' };
}

function againstNumber(value: number, is: number, tolerance: number): Worth {
  // A guess on the edge counts: sums come out a hair apart.
  if (Math.abs(value - is) <= tolerance * (1 + 1e-9) + Number.EPSILON * Math.abs(is))
    return { is: 'right', says: 'Near enough.' };
  return value > is ? { is: 'high', says: 'Too high.' } : { is: 'low', says: 'Too low.' };
}

/** How far off a guess may be, SI. */
export function toleranceOf({ value, kind }: Extract<Key, { is: 'number' }>, within: string): number {
  const text = within === '' ? USUAL_WITHIN : within;
  const share = guessed(text, 'share', plainShown);
  if (text.includes('%') && !isIssue(share)) return Math.abs(value) * share;
  // Of a temperature 3 °C are so many degrees from any zero.
  const apart = guessed(text, kind === 'temperature' ? 'warmth' : kind, plainShown);
  return isIssue(apart) ? Math.abs(value) * 0.05 : Math.abs(apart);
}

/** How far off a guess was, once the answer is uncovered. */
export function gap(text: string, key: Key, within: string, shown: Shown): string {
  const { is } = judge(text, key, within, shown);
  if (key.is !== 'number') {
    return is === 'right' ? 'As you guessed.' : is === 'other' ? 'Your guess was another.' : '';
  }
  const units = unitsOf(key, shown);
  const value = guessed(text, key.kind, units, unitOf(key));
  if (isIssue(value)) return '';
  const apart = value - key.value;
  if (apart === 0) return 'Your guess was it exactly.';
  const far = farOff(Math.abs(apart), key, units);
  const side = apart > 0 ? 'too high' : 'too low';
  return is === 'right' ? `Your guess was ${far} ${side}, near enough.` : `Your guess was ${far} ${side}.`;
}

/** What is asked in metres is so many metres off. */
const METRES: Readonly<Record<string, number>> = { m: 1, cm: 0.01 };

function farOff(apart: number, key: Extract<Key, { is: 'number' }>, units: Shown): string {
  const unit = unitOf(key) ?? '';
  const metres = key.kind === 'length' ? METRES[unit] : undefined;
  return metres === undefined
    ? writeDifference(apart, key.kind, units).replace(/^[+−-]\s*/, '')
    : `${Number((apart / metres).toPrecision(3))}\u00a0${unit}`;
}

/** Whether a kind can be asked in units: of plain numbers there are none. */
export const hasUnit = (kind: KindId): boolean => kindOf(kind).metric.entry !== '';

export const directionWords: Readonly<Record<Direction, string>> = {
  rises: 'It rises',
  falls: 'It falls',
  stays: 'It stays as it is',
};

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
