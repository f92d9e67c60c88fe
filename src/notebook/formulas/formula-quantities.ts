/**
 * Formulas as quantities: each line one that follows from others. What a line is told in follows from what it names, and
 * that may itself be a line; so they are read when somebody asks for them, each once.
 */
import { type Derived, type Given, type Owner, ownerOf, type Read } from '../../boat';
import {
  type Issue,
  isIssue,
  issue,
  kindOf,
  type KindId,
  kinds,
  sameDimension,
  sayDimension,
} from '../../measure';
import { isMisread, type Misread, type OwnSum, ownSum } from '../../measure/own-sum';
import { unitOf } from '../../measure/units';
import { type FormulaLine, formulaLines, type Amiss } from './lines';

/** The text of a block under its name. */
export interface FormulaText {
  readonly name: string;
  readonly text: string;
}

export interface LineRead extends FormulaLine {
  /** The full name of its result, `keelDay.perFoot`; empty for a line that has none. */
  readonly full: string;
  /** What it says, where it can be read. */
  readonly own?: OwnSum;
  /** The full name of a quantity in it that is not there. */
  readonly missing?: string;
  /** The full names of the quantities in it, by the words that stand there. */
  readonly named?: ReadonlyMap<string, string>;
}

export interface FormulaBlock {
  readonly name: string;
  readonly lines: readonly LineRead[];
  readonly owner: Owner;
}

type Find = (name: string) => Given | Derived | undefined;

/** Lines in all blocks together. */
export const MOST_IN_ALL = 400;

const yesOrNo = ['yes', 'no'].map((id) => ({ id, label: id }));

/** @param find the quantities that are no formula's */
export function formulaBlocks(texts: readonly FormulaText[], find: Find): readonly FormulaBlock[] {
  let left = MOST_IN_ALL;
  const blocks = texts.map(({ name, text }) => {
    const all = formulaLines(text);
    const lines = all.slice(0, left);
    left -= lines.length;
    return { name, text, lines: all.map((line, at) => (at < lines.length ? line : past(line))) };
  });
  const where = new Map<string, { block: (typeof blocks)[number]; line: FormulaLine }>(
    blocks.flatMap((block) =>
      block.lines.flatMap((line) =>
        line.name === '' ? [] : [[`${block.name}.${line.name}`, { block, line }] as const],
      ),
    ),
  );
  const read = new Map<string, LineMade>();
  const underWay = new Set<string>();

  /** How a name is told; 'late' for a line that says nothing usable or goes round in a circle: the graph tells of these. */
  function kindNamed(full: string): KindId | 'late' | undefined {
    const at = where.get(full);
    if (!at) return find(full)?.kind;
    if (underWay.has(full)) return 'late';
    return made(full, at.line, at.block).kind ?? 'late';
  }

  function made(
    full: string,
    line: FormulaLine,
    block: { name: string; lines: readonly FormulaLine[] },
  ): LineMade {
    const known = read.get(full);
    if (known) return known;
    underWay.add(full);
    const own = new Set(block.lines.map(({ name }) => name).filter((name) => name !== ''));
    const one = lineMade(full, line, { own, of: block.name, kindNamed });
    underWay.delete(full);
    read.set(full, one);
    return one;
  }

  return blocks.map((block): FormulaBlock => {
    const all = block.lines.map((line) =>
      line.name === '' ? null : made(`${block.name}.${line.name}`, line, block),
    );
    const lines = all.map((one, at) => one?.line ?? { ...block.lines[at]!, full: '' }); // one for each
    const state = all.map((one) => [one?.kind, one?.line.spot, one?.quantity.manner?.unit]);
    return kept({
      name: block.name,
      lines,
      quantities: all.flatMap((one) => (one ? [one.quantity] : [])),
      sign: JSON.stringify([block.text, state]),
    });
  });
}

const past = (line: FormulaLine): FormulaLine => ({
  ...line,
  name: '',
  spot: {
    says: `${MOST_IN_ALL} lines in all formulas together is the most; this one is left out`,
    from: 0,
    to: line.text.length,
  },
});

interface LineMade {
  readonly line: LineRead;
  readonly quantity: Derived;
  /** Undefined where what it comes to can't be told. */
  readonly kind?: KindId;
}

interface Round {
  readonly own: ReadonlySet<string>;
  /** Name of the block. */
  readonly of: string;
  readonly kindNamed: (full: string) => KindId | 'late' | undefined;
}

function lineMade(full: string, line: FormulaLine, { own, of, kindNamed }: Round): LineMade {
  const silent = (
    spot: Amiss | undefined,
    from: Derived['from'],
    more: Partial<LineRead> = {},
  ): LineMade => ({
    line: { ...line, full, ...more, ...(spot && { spot }) },
    quantity: { name: full, kind: 'number', meaning: line.label, from },
  });
  const saying = (spot: Amiss, more?: Partial<LineRead>) => silent(spot, () => issue(spot.says), more);
  const inLine = ({ says, from, to }: Amiss): Amiss => ({ says, from: line.from + from, to: line.from + to });
  if (line.spot) return saying(line.spot);
  const sum = readOnce(line.sum, own);
  if (isMisread(sum)) return saying(inLine(sum));
  const named = new Map(sum.names.map((name) => [name, name.includes('.') ? name : `${of}.${name}`]));
  const parts = { own: sum, named };
  const fullOf = (name: string): string => named.get(name) ?? name;
  const kindsOf = new Map(sum.names.map((name) => [name, kindNamed(fullOf(name))]));
  const look = (read: Read) => (name: string) =>
    kindsOf.get(name) === 'choice' ? read.choice(fullOf(name)) : read.number(fullOf(name));
  if ([...kindsOf.values()].includes('late')) {
    // Whoever asks for a name goes the way that the graph tells of: to what is amiss, or round to where it began.
    return silent(
      undefined,
      (read) => [...sum.names].map(look(read)) && issue('it waits for another line'),
      parts,
    );
  }
  const missing = sum.names.find((name) => kindsOf.get(name) === undefined);
  const kind = sum.measure((name) => kindsOf.get(name) as KindId | undefined); // none is late
  if (typeof kind !== 'string')
    return missing === undefined
      ? saying(inLine(kind), parts)
      : // Which names are near is looked for where it is shown: among thousands that takes long.
        silent(inLine(kind), (read) => noSuch(fullOf(missing), read), { ...parts, missing: fullOf(missing) });
  const unit = unitFor(line, kind);
  if (unit && typeof unit !== 'string') return saying(unit, parts);
  if (kind === 'choice')
    return {
      kind,
      line: { ...line, full, ...parts },
      quantity: {
        name: full,
        kind,
        meaning: line.label,
        options: yesOrNo,
        from: (read) => {
          const answer = sum.reckon(look(read));
          return isIssue(answer) ? answer : answer === 0 ? 'no' : 'yes';
        },
      },
    };
  const told = unit === undefined ? kind : kindIn(unit, kind);
  return {
    kind: told,
    line: { ...line, full, ...parts },
    quantity: {
      name: full,
      kind: told,
      meaning: line.label,
      source: line.sum.trim(),
      ...(unit !== undefined && { manner: { unit } }),
      from: (read) => sum.reckon(look(read)),
    },
  };
}

/** Of a name that is not there; who asks is asked again when it comes. */
function noSuch(name: string, read: Read): number | Issue {
  return read.has(name) ? read.number(name) : issue(`there is no quantity "${name}"`);
}

/** A sum is read once, however often the lines round it are changed. */
function readOnce(sum: string, own: ReadonlySet<string>): OwnSum | Misread {
  const key = `${[...own].join()}|${sum}`;
  const known = sumsRead.get(key) ?? ownSum(sum, own);
  if (sumsRead.size > MOST_KEPT) sumsRead.clear();
  sumsRead.set(key, known);
  return known;
}
const sumsRead = new Map<string, OwnSum | Misread>();
const MOST_KEPT = 5 * MOST_IN_ALL;

/** The symbol of the unit that a line asks for, or why it can't be told in that. */
function unitFor({ unit: { text, from } }: FormulaLine, kind: KindId): string | Amiss | undefined {
  if (text === '') return undefined;
  const unit = unitOf(text);
  const spot = (says: string): Amiss => ({ says, from, to: from + text.length });
  if (!unit) return spot(`there is no unit "${text}"`);
  if (kind === 'choice') return spot('a yes or no has no unit');
  const { dimension } = kindOf(kind);
  return sameDimension(unit.dimension, dimension)
    ? unit.symbol
    : spot(
        `the sum comes to ${sayDimension(dimension)}, and "${text}" is for ${sayDimension(unit.dimension)}`,
      );
}

/** The kind that has the unit among its own, so that a share told in % is one; else the one it is. */
function kindIn(unit: string, kind: KindId): KindId {
  const { dimension } = kindOf(kind);
  if (dimension[3] === 1) return kind;
  const has = ({ metric, customary }: (typeof kinds)[number]) =>
    [metric, customary].some(({ rungs }) => rungs.some(([symbol]) => symbol === unit));
  return kinds.find((one) => sameDimension(one.dimension, dimension) && has(one))?.id ?? kind;
}

/** A block that says the same of the same is the same one, so that what hangs on it stays as it was worked out. */
function kept({
  name,
  lines,
  quantities,
  sign,
}: {
  readonly name: string;
  readonly lines: readonly LineRead[];
  readonly quantities: readonly Derived[];
  readonly sign: string;
}): FormulaBlock {
  const before = blocksKept.get(name);
  if (before?.sign === sign) return before.block;
  const block = { name, lines, owner: ownerOf(quantities) };
  blocksKept.set(name, { sign, block });
  return block;
}
const blocksKept = new Map<string, { readonly sign: string; readonly block: FormulaBlock }>();
