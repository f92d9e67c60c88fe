/** Writes values in the units which the builder has chosen: for reading, for speaking, and exactly for keeping. */
import { add, divide, type Exact, exactDouble, nearestDouble, negate } from './exact';
import { readable, shortestDecimal } from './figures';
import { isIssue } from './issue';
import { type Kind, type KindId, kindOf } from './kinds';
import { read } from './read';
import { ladderOf, type Shown } from './shown';
import { shelfOf } from './sold';
import { inEighths, type Marked, onTape, pastInches, pastMillimetres } from './tape';
import { knownUnit, type Unit, withUnit } from './units';

export interface Written {
  /** `14 5/8 in`, `5' 3 1/2"`, `371 mm`. */
  readonly text: string;
  /** What the mark leaves out: `0.01 in strong`; empty if nothing that shows. */
  readonly remainder: string;
  /** In words, for the ear: `14 and 5/8 inches`. */
  readonly spoken: string;
}

export interface WriteOptions {
  /** A unit of the place's own, instead of the chosen one. */
  readonly unit?: string;
  /** Put + before what is above zero, as for a difference. */
  readonly sign?: boolean;
  /** Cut millimetres to whole ones, as for a mark, with the rest as remainder. */
  readonly tape?: boolean;
  /** Lengths as feet, inches and eighths, as in a table of offsets. */
  readonly eighths?: boolean;
}

/** Writes an SI value with as many figures as a builder reads. What is not finite is written `no value`. */
export function write(value: number, kind: KindId, shown: Shown, options: WriteOptions = {}): Written {
  if (!Number.isFinite(value)) return { text: 'no value', remainder: '', spoken: 'no value' };
  const sold = options.unit === undefined && !options.sign && shelfOf(kind)?.called(value, shown);
  if (sold) return { ...sold, remainder: pastSold(value, sold.size, shown) };
  const written = writeUnsigned(value, kindOf(kind), shown, options);
  const plus = options.sign === true && /[1-9]/.test(written.text) && !written.text.startsWith('-');
  const text = plus ? `+${written.text}` : written.text.replace(/^-/, '−');
  return { ...written, text, spoken: plus ? `plus ${written.spoken}` : written.spoken };
}

/** A difference of two values of a kind, with its sign: `+3 mm`, `−1/8 in`, `+4 °C`. */
export function writeDifference(value: number, kind: KindId, shown: Shown): string {
  // A difference of temperatures has no zero, one of slopes is no slope.
  const differs: Partial<Record<KindId, KindId>> = { temperature: 'warmth', slope: 'ratio' };
  return write(value, differs[kind] ?? kind, shown, { sign: true }).text;
}

function writeUnsigned(value: number, kind: Kind, shown: Shown, options: WriteOptions): Written {
  if ((kind.id === 'length' || shelfOf(kind.id)) && options.unit === undefined) {
    if (options.eighths === true) return marked(value, inEighths(value));
    if (shown.length === 'feet') return marked(value, onFinestTape(value, shown.fraction));
    if (shown.length === 'mm' && options.tape === true) return wholeMillimetres(value);
  }
  if (kind.dimension[5] !== 0) return writeMoney(value, kind, shown, options);
  const unit = unitFor(value, kind, shown, options.unit);
  const number = readable(inUnit(value, unit, kind), unit?.symbol ?? '');
  // Next to nothing is none of the field's own unit, not of a smaller one.
  if (number === '0' && options.unit === undefined)
    return inUnits('0', unitOrNone(ladderOf(kind, shown).entry));
  if (kind.id === 'slope') return { text: `1 in ${number}`, remainder: '', spoken: `1 in ${number}` };
  return inUnits(number, unit);
}

/** What is less than half a mark, but can be planed or felt, is told in 64ths and not as nothing. */
function onFinestTape(value: number, parts: number): Marked {
  const onMark = onTape(value, parts);
  return onMark.mark === 0 ? onTape(value, 64) : onMark;
}

function inUnits(number: string, unit: Unit | undefined): Written {
  return { text: withUnit(number, unit), remainder: '', spoken: speak(number, unit) };
}

/** What was asked, where the size sold is another: `exactly 0.092 in`. */
function pastSold(value: number, size: number, shown: Shown): string {
  const [unit, decimals] = shown.length === 'mm' ? (['mm', 2] as const) : (['in', 3] as const);
  const [exactly, bought] = [value, size].map((metres) =>
    inUnit(metres, knownUnit(unit), kindOf('length')).toFixed(decimals),
  );
  return exactly === bought ? '' : `exactly ${exactly} ${unit}`;
}

function marked(value: number, { text, spoken, mark }: Marked): Written {
  return { text, spoken, remainder: pastInches(value - mark) };
}

function wholeMillimetres(value: number): Written {
  const whole = Math.round(value * 1000) + 0;
  const millimetre = knownUnit('mm');
  return {
    text: withUnit(String(whole), millimetre),
    remainder: pastMillimetres(value - whole / 1000),
    spoken: speak(String(whole), millimetre),
  };
}

const currencies: Readonly<Record<Shown['money'], string>> = {
  '': '',
  $: ' dollars',
  '€': ' euros',
  '£': ' pounds',
};

function writeMoney(value: number, kind: Kind, shown: Shown, options: WriteOptions): Written {
  const each = unitFor(value, kind, shown, options.unit);
  const amount = inUnit(value, each, kind).toFixed(2);
  const size = amount.replace('-', '');
  const minus = size !== amount && /[1-9]/.test(size);
  return {
    text: `${minus ? '-' : ''}${shown.money}${size}${each?.symbol ?? ''}`,
    remainder: '',
    spoken: `${minus ? 'minus ' : ''}${size}${currencies[shown.money]}${each ? ` ${each.says[0]}` : ''}`,
  };
}

/** The unit in which a value is best read: the largest of which there is enough. */
function unitFor(value: number, kind: Kind, shown: Shown, own: string | undefined): Unit | undefined {
  if (own !== undefined) return unitOrNone(own);
  // Half a part in ten thousand: what would be written as 1000 mL is written as 1 L.
  const enough = ladderOf(kind, shown).rungs.filter(
    ([symbol, least]) => Math.abs(inUnit(value, unitOrNone(symbol), kind)) >= least * (1 - 5e-5),
  );
  return unitOrNone(enough.at(-1)?.[0] ?? '');
}

/** The unit of a symbol; undefined for the empty symbol of plain numbers. */
function unitOrNone(symbol: string): Unit | undefined {
  return symbol === '' ? undefined : knownUnit(symbol);
}

function inUnit(value: number, unit: Unit | undefined, kind: Kind): number {
  return unit ? nearestDouble(exactIn(value, unit, kind)) : value;
}

function exactIn(value: number, unit: Unit | undefined, kind: Kind): Exact {
  const amount = exactDouble(value);
  if (!unit) return amount;
  return divide(unit.zero && kind.id !== 'warmth' ? add(amount, negate(unit.zero)) : amount, unit.factor);
}

function speak(number: string, unit: Unit | undefined): string {
  const said = number.replace(/^-/, 'minus ');
  return unit ? `${said} ${unit.says[number === '1' ? 0 : 1]}` : said;
}

/**
 * The text of an entry that reads back as exactly `value`, in the unit of the field. Feet and inches, or eighths, where
 * the value lies on a 64th (16th); decimals elsewhere. Throws a RangeError for what is not finite.
 */
export function writeExact(
  value: number,
  kind: KindId,
  shown: Shown,
  options: Pick<WriteOptions, 'unit' | 'eighths'> = {},
): string {
  const { unit: own, eighths = false } = options;
  const isRight = (text: string) => {
    const reading = read(text, { kind, shown, field: 'value', ...(own !== undefined && { unit: own }) });
    return !isIssue(reading) && reading.evaluate(() => Number.NaN) === value;
  };
  if (
    (kind === 'length' || shelfOf(kind)) &&
    own === undefined &&
    (eighths || shown.length === 'feet') &&
    Math.abs(value) < 1e6
  ) {
    const onMark = [...(eighths ? [inEighths(value)] : []), onTape(value, 64)].find(({ text }) =>
      isRight(text),
    );
    if (onMark) return onMark.text;
  }
  const definition = kindOf(kind);
  const symbol = own ?? (eighths ? 'in' : ladderOf(definition, shown).entry);
  const unit = unitOrNone(symbol);
  const number = shortestDecimal(exactIn(value, unit, definition), (text) => isRight(withSymbol(text)));
  function withSymbol(text: string): string {
    return kind === 'slope' ? `1 in ${text}` : withUnit(text, unit);
  }
  return withSymbol(number);
}
