/**
 * The lines of a formula block, taken apart: `perFoot = hull.structureMass / hull.length | mass of a foot of keel | in lb/ft`.
 * A name and a sum; after a bar, in either order, what it is in words, and the unit to tell it in.
 */
import { unitSpellings } from '../../measure/units';
import { constants, functions } from '../../measure/vocabulary';
import { wordsOf } from '../../measure';

/** Bounds on what is read of a block; what is longer is kept, and told. */
export const LONGEST_BLOCK = 4000;
export const MOST_LINES = 40;
const LONGEST_LABEL = 80;
const LONGEST_NAME = 30;

/** What is amiss, from one character of the line to another. */
export interface Amiss {
  readonly says: string;
  readonly from: number;
  readonly to: number;
}

export interface FormulaLine {
  /** Which line of the text it is, from 0. */
  readonly at: number;
  readonly text: string;
  /** Empty where there is none that could be used. */
  readonly name: string;
  readonly sum: string;
  /** Where in the line the sum begins. */
  readonly from: number;
  /** What it is; in the words of its name, where nothing is said. */
  readonly label: string;
  /** The unit to tell it in, as it is written, and where; empty where none is asked for. */
  readonly unit: { readonly text: string; readonly from: number };
  /** What is amiss with its form. */
  readonly spot?: Amiss;
}

const spellings = new Set(unitSpellings);

const EXAMPLE = 'perFoot = hull.structureMass / hull.length';

/** The lines with anything in them; none of a text that is too long to be read. */
export function formulaLines(text: string): readonly FormulaLine[] {
  if (text.length > LONGEST_BLOCK) {
    const says = `these lines are too long together; ${LONGEST_BLOCK} characters is the most, and here are ${text.length}`;
    return [faulty(0, '', { says, from: 0, to: 0 })];
  }
  const taken = new Set<string>();
  const written = text.split('\n').flatMap((line, at) => (line.trim() === '' ? [] : [{ line, at }]));
  return written.slice(0, MOST_LINES + 1).map(({ line, at }, count) => {
    if (count === MOST_LINES)
      return faulty(at, line, {
        says: `${MOST_LINES} lines is the most; this one and those below are left out`,
        from: 0,
        to: line.length,
      });
    const read = readLine(line, at, taken);
    taken.add(read.name);
    return read;
  });
}

function faulty(at: number, text: string, spot: Amiss): FormulaLine {
  return { at, text, name: '', sum: '', from: 0, label: '', unit: { text: '', from: 0 }, spot };
}

function readLine(text: string, at: number, taken: ReadonlySet<string>): FormulaLine {
  const [head, before = '', name = ''] = /^(\s*)([^=]*?)\s*=(?!=)/.exec(text) ?? [];
  if (head === undefined)
    return faulty(at, text, {
      says: `a line is a name, "=" and a sum, as in "${EXAMPLE}"`,
      from: 0,
      to: text.length,
    });
  const amiss = faultOfName(name, taken);
  if (amiss !== undefined)
    return faulty(at, text, {
      says: amiss,
      from: before.length,
      to: Math.max(before.length + name.length, 1),
    });
  const [sum = '', ...rest] = text.slice(head.length).split('|');
  let from = head.length + sum.length;
  let label = '';
  let unit = { text: '', from: 0 };
  let spot: Amiss | undefined;
  for (const part of rest) {
    from += 1;
    const said = part.trim();
    const start = from + part.length - part.trimStart().length;
    const to = start + said.length;
    const asked = /^in\s+/.exec(said)?.[0];
    from += part.length;
    if (asked !== undefined && unit.text === '')
      unit = { text: said.slice(asked.length), from: start + asked.length };
    else if (label === '' && asked === undefined) label = said;
    else
      spot ??= {
        says: 'after the sum stands once what it is, and once the unit, as in "in lb/ft"',
        from: start,
        to,
      };
    if (said.length > LONGEST_LABEL)
      spot ??= { says: `what it is is too long; ${LONGEST_LABEL} characters is the most`, from: start, to };
  }
  const line = { at, text, name, sum, from: head.length, label: label || wordsOf(name), unit };
  return spot ? { ...line, spot } : line;
}

/** What keeps a word from being the name of a line. */
function faultOfName(name: string, taken: ReadonlySet<string>): string | undefined {
  if (!/^[a-z][A-Za-z0-9]*$/.test(name))
    return `a name is one word, a small letter first, then letters and figures, as in "${EXAMPLE}"`;
  if (name.length > LONGEST_NAME) return `this name is too long; ${LONGEST_NAME} letters is the most`;
  if (taken.has(name)) return `"${name}" is already the name of a line above`;
  if (spellings.has(name)) return `"${name}" is a unit; give the line a name of its own`;
  if (
    constants.has(name) ||
    functions.has(name) ||
    /^(and|or|not|lines)$/.test(name) ||
    name in Object.prototype
  )
    return `"${name}" has another meaning in sums; give the line a name of its own`;
  return undefined;
}
