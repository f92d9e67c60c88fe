/**
 * The notations of a table of offsets: feet-inches-eighths, decimal inches or feet, metric units. Whatever is
 * chosen, all of them are read; a bare number is taken in the notation in hand. What is kept is the entry as
 * it was typed, so that another notation changes only what is seen.
 */
import {
  type Issue,
  issue,
  type KindId,
  plainShown,
  read,
  type Reading,
  write,
  writeExact,
} from '../../measure';
import { type Table, tableUnits } from './table';

export type Notation = 'mm' | 'cm' | 'm' | 'eighths' | 'inches' | 'feet';

export const notations: Readonly<Record<Notation, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  eighths: 'feet-inches-eighths',
  inches: 'decimal inches',
  feet: 'decimal feet',
};

/** The unit of a bare number, and the decimals that a box shows. */
const bare = {
  mm: { unit: 'mm', decimals: 2 },
  cm: { unit: 'cm', decimals: 3 },
  m: { unit: 'm', decimals: 5 },
  eighths: { unit: 'in', decimals: 3 },
  inches: { unit: 'in', decimals: 3 },
  feet: { unit: 'ft', decimals: 4 },
} as const;

/** The notation a plan is likely written in: eighths where all its inches lie on a sixteenth. */
export function usualNotation({ unit, stations }: Table): Notation {
  if (unit !== 'in' && unit !== 'ft') return unit;
  const sixteenths = unit === 'in' ? 16 : 12 * 16;
  const numbers = stations.flatMap(({ points }) => points.flatMap(({ x, y, z }) => [x, y, z]));
  const onMark = numbers.every((n) => n === null || isNear(n * sixteenths, Math.round(n * sixteenths), 1e-6));
  return onMark ? 'eighths' : unit === 'in' ? 'inches' : 'feet';
}

const isNear = (a: number, b: number, within: number) => Math.abs(a - b) < within;

export interface OffsetReading {
  readonly notation: Notation;
  /** What the box holds, as the subject of a sentence. */
  readonly field: string;
  /** The unit of a bare number where a heading names one. */
  readonly unit?: string;
  readonly kindOf?: (name: string) => KindId | undefined;
  readonly known?: () => Iterable<string>;
}

const spaced = /^\s*(\d+)\s+(\d+)\s+(\d+)\s*([-+−–]?)\s*$/;
const twoFigures = /^\s*\d+\s*[-−–]\s*\d+\s*[-+−–]?\s*$/;

/** Reads what stands in a box. `5 3 4+`, as columns of old tables are written, is 5-3-4+. */
export function readOffset(text: string, options: OffsetReading): Reading {
  const { notation, field, unit = bare[notation].unit, ...names } = options;
  const refused = halfWritten(text, notation);
  if (refused) return refused;
  const [, feet, inches, eighths, more = ''] = spaced.exec(text) ?? [];
  const written =
    feet === undefined ? text : `${feet}-${inches}-${eighths}${more === '+' ? '+' : more && '-'}`;
  return read(written, { kind: 'length', shown: plainShown, field, unit, ...names });
}

/**
 * Two figures where three are due: `2-4` might be feet and inches, or inches and eighths, and would be read as
 * a difference. Null where the text is none of that kind.
 */
export function halfWritten(text: string, notation: Notation): Issue | null {
  if (notation !== 'eighths' || !twoFigures.test(text)) return null;
  return issue(`"${text.trim()}" lacks a figure: write feet, inches and eighths, all three, as in 0-2-4`);
}

export interface OffsetWritten {
  readonly text: string;
  /** Whether the text says the whole of it, to the nanometre; else it is rounded for the eye. */
  readonly whole: boolean;
}

/** A value as a box shows it, without its unit: `5-3-4+`, `63.563`, `1614.5`. */
export function writeOffset(metres: number, notation: Notation): OffsetWritten {
  const { unit, decimals } = bare[notation];
  const factor = tableUnits[unit];
  if (notation === 'eighths') {
    const sixteenths = Math.round((metres / factor) * 16);
    const { text } = write(metres, 'length', plainShown, { eighths: true });
    return { text, whole: isNear((sixteenths / 16) * factor, metres, 1e-9) };
  }
  const shown = Number((metres / factor).toFixed(decimals)) + 0;
  return { text: String(shown).replace('-', '−'), whole: isNear(shown * factor, metres, 1e-9) };
}

/** A value as a text that reads back as exactly itself in this notation. */
export function writeOffsetInFull(metres: number, notation: Notation): string {
  if (notation === 'eighths') return writeExact(metres, 'length', plainShown, { eighths: true });
  const { unit } = bare[notation];
  const text = writeExact(metres, 'length', plainShown, { unit });
  return text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text;
}
