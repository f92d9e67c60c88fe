/** Writes values in the units which the builder has chosen: for reading, for speaking, and exactly for keeping. */
import { sameDimension } from './dimension';
import { add, divide, type Exact, exactDecimal, exactDouble, multiply, nearestDouble, negate } from './exact';
import { type Bound, readable, ROUND, shortestDecimal, wholeMarks } from './figures';
import { isIssue } from './issue';
import { type Kind, type KindId, kindOf } from './kinds';
import { read } from './read';
import { ladderOf, type Shown } from './shown';
import { INCH } from './si';
import { shelfOf } from './sold';
import { inEighths, type Marked, marksWithin, onTape, pastInches, pastMillimetres } from './tape';
import { knownUnit, type Unit, withUnit } from './units';

/** The finest marks of an inch, on a steel rule. */
const FINEST = 64;
/** A mark that is farther off than this share of the number is too coarse for it. */
const NEAR = 1 / 8;
/** The share of a tolerance that nobody is told of. */
const FORGIVEN = 1 / 4;

export interface Written {
  /** `14 5/8 in`, `5' 3 1/2"`, `371 mm`. */
  readonly text: string;
  /** What stands beside it: what the mark leaves out, `0.01 in strong`; what a force weighs like, `as 58 kg`. */
  readonly remainder: string;
  /** Both, for a sentence or a picture: `14 5/8 in strong`, `565 N (as 58 kg)`. */
  readonly told: string;
  /** The value that `text` stands for. */
  readonly written: number;
  /** In words, for the ear: `14 and 5/8 inches`. */
  readonly spoken: string;
}

/** How a quantity is written wherever it stands. */
export interface Manner {
  /** Of a limit: at most is rounded down, at least is rounded up. */
  readonly bound?: Bound | undefined;
  /** How far off is still good work, SI: it is written as finely as that. */
  readonly within?: number | undefined;
  /** A unit of its own, instead of the chosen one. */
  readonly unit?: string;
}

export interface WriteOptions extends Manner {
  /** So many steps more finely than a builder reads: for a number that must differ from its limit. */
  readonly finer?: number;
  /** Put + before what is above zero, as for a difference. */
  readonly sign?: boolean;
  /** Cut millimetres to whole ones, as for a mark, with the rest as remainder. */
  readonly tape?: boolean;
  /** Lengths as feet, inches and eighths, as in a table of offsets. */
  readonly eighths?: boolean;
}

/** Writes an SI value with as many figures as a builder reads. What is not finite is written `no value`. */
export function write(value: number, kind: KindId, shown: Shown, options: WriteOptions = {}): Written {
  if (!Number.isFinite(value))
    return { text: 'no value', remainder: '', told: 'no value', spoken: 'no value', written: Number.NaN };
  // A limit is no size that is bought.
  const isSize = options.unit === undefined && !options.sign && options.bound === undefined;
  const sold = isSize && shelfOf(kind)?.called(value, shown);
  if (sold) {
    const remainder = pastSold(value, sold.size, kind, shown);
    return { ...sold, remainder, told: sold.text + besides(remainder), written: value };
  }
  const bare = writeUnsigned(value, kindOf(kind), shown, options);
  const plus = options.sign === true && /[1-9]/.test(bare.text) && !bare.text.startsWith('-');
  const text = plus ? `+${bare.text}` : bare.text.replace(/^-/, '−');
  const told = options.bound || options.eighths ? text : text + besides(bare.remainder);
  return { ...bare, text, told, spoken: plus ? `plus ${bare.spoken}` : bare.spoken };
}

/** As it stands in a picture, where there is no room for what a force weighs like. */
export function writeInPicture(value: number, kind: KindId, shown: Shown, options?: WriteOptions): string {
  const { text, told } = write(value, kind, shown, options);
  return kind === 'force' ? text : told;
}

/** A remainder as it follows its number in a sentence: how much it is stands at the answer's head. */
function besides(remainder: string): string {
  if (remainder === '') return '';
  return / (strong|scant)$/.exec(remainder)?.[0] ?? ` (${remainder})`;
}

/** A difference of two values of a kind, with its sign: `+3 mm`, `−1/8 in`, `+4 °C`. */
export function writeDifference(value: number, kind: KindId, shown: Shown): string {
  // A difference of temperatures has no zero, one of slopes is no slope.
  const differs: Partial<Record<KindId, KindId>> = { temperature: 'warmth', slope: 'ratio' };
  return write(value, differs[kind] ?? kind, shown, { sign: true }).text;
}

const isLength = (kind: KindId) => sameDimension(kindOf(kind).dimension, kindOf('length').dimension);

/** Read off a tape, or a length sold that is none of the sizes kept. */
const isTaped = (kind: KindId) => kind === 'length' || (shelfOf(kind) !== undefined && isLength(kind));

type Bare = Omit<Written, 'told'>;

function writeUnsigned(value: number, kind: Kind, shown: Shown, options: WriteOptions): Bare {
  if (isTaped(kind.id) && options.unit === undefined) {
    if (options.eighths === true) return marked(value, inEighths(value));
    if (shown.length === 'feet') return inFeet(value, kind, shown, options);
    if (shown.length === 'mm' && options.tape === true) return wholeMillimetres(value);
  }
  if (kind.dimension[5] !== 0) return writeMoney(value, kind, shown, options);
  const unit = unitFor(value, kind, shown, options.unit);
  const written = inDecimals(value, unit, kind, options);
  // Next to nothing is none of the field's own unit, not of a smaller one.
  if (written.text.startsWith('0') && written.written === 0 && options.unit === undefined)
    return { ...inUnits('0', unitOrNone(ladderOf(kind, shown).entry)), written: 0 };
  return kind.id === 'force' && shown.mass === 'kg' && options.unit === undefined && unit
    ? { ...written, remainder: weighsLike(value, options) }
    : written;
}

/** On the builder's tape; more finely on a steel rule, and beyond its marks in decimals. */
function inFeet(value: number, kind: Kind, shown: Shown, options: WriteOptions): Bare {
  const { bound, finer = 0, within } = options;
  const asked =
    within === undefined
      ? shown.fraction
      : within * ROUND >= INCH
        ? 1
        : Math.max(shown.fraction, marksWithin(within));
  const parts = asked * 2 ** finer;
  if (parts > FINEST)
    return inDecimals(value, knownUnit('in'), kind, {
      bound,
      finer: Math.ceil(Math.log2(parts / FINEST)) - 1,
    });
  const onMark = onTape(value, parts, bound);
  // What is less than half a mark, but can be planed or felt, is told in 64ths and not as nothing.
  if (onMark.mark === 0) return marked(value, onTape(value, FINEST, bound), within);
  return marked(value, within === undefined ? near(value, parts, bound) : onMark, within);
}

/** The nearest mark, on a finer scale where it would be a good part of the number itself away: 3/16 in is no scant 1/4. */
function near(value: number, parts: number, bound: Bound | undefined): Marked {
  const onMark = onTape(value, parts, bound);
  const isNear = Math.abs(value - onMark.mark) <= NEAR * Math.abs(value);
  return isNear || parts >= FINEST ? onMark : near(value, 2 * parts, bound);
}

/** A number of the unit, as it stands in its own sentence: a slope is 1 in so many. */
function inDecimals(value: number, unit: Unit | undefined, kind: Kind, options: WriteOptions): Bare {
  const { bound, finer, within } = options;
  const inIts = inUnit(value, unit, kind);
  const number =
    kind.id === 'count' && Number.isInteger(inIts)
      ? String(inIts + 0)
      : readable(inIts, unit?.symbol ?? '', {
          bound,
          finer,
          within: within === undefined || !unit ? within : within / nearestDouble(unit.factor),
        });
  const written = nearestDouble(ofUnit(exactDecimal(number), unit, kind));
  if (kind.id === 'slope') {
    const text = `1 in ${number}`;
    return { text, remainder: '', spoken: text, written };
  }
  return { ...inUnits(number, unit), written };
}

/** What a pull of so many newtons weighs like in the hand: `as 58 kg`. */
function weighsLike(newtons: number, { bound }: Manner): string {
  const kilograms = Math.abs(newtons) / nearestDouble(knownUnit('kgf').factor);
  const [weight, unit] = kilograms < 1 ? [kilograms * 1000, 'g'] : [kilograms, 'kg'];
  const whole = weight >= 10;
  return `as ${readable(whole ? wholeMarks(weight, bound) : wholeMarks(weight * 10, bound) / 10, unit)} ${unit}`;
}

function inUnits(number: string, unit: Unit | undefined): Omit<Bare, 'written'> {
  return { text: withUnit(number, unit), remainder: '', spoken: speak(number, unit) };
}

/** What was asked, where the size sold is another: `exactly 0.092 in`, `for 12.3 fl oz`. */
function pastSold(value: number, size: number, kind: KindId, shown: Shown): string {
  if (!isLength(kind))
    return Math.abs(size - value) <= 1e-6 * size ? '' : `for ${write(value, 'volume', shown).text}`;
  const [unit, decimals] = shown.length === 'mm' ? (['mm', 2] as const) : (['in', 3] as const);
  const [exactly, bought] = [value, size].map((metres) =>
    inUnit(metres, knownUnit(unit), kindOf('length')).toFixed(decimals),
  );
  return exactly === bought ? '' : `exactly ${exactly} ${unit}`;
}

/** What is strong is longer than its mark on either side of nought; what a tolerance forgives is not told. */
function marked(value: number, { text, spoken, mark }: Marked, within = 0): Bare {
  const past = mark < 0 ? mark - value : value - mark;
  const remainder = Math.abs(past) <= FORGIVEN * within ? '' : pastInches(past);
  return { text, spoken, remainder, written: mark };
}

function wholeMillimetres(value: number): Bare {
  const whole = Math.round(value * 1000) + 0;
  return {
    ...inUnits(String(whole), knownUnit('mm')),
    remainder: pastMillimetres(whole < 0 ? whole / 1000 - value : value - whole / 1000),
    written: whole / 1000,
  };
}

const currencies: Readonly<Record<Shown['money'], string>> = {
  '': '',
  $: ' dollars',
  '€': ' euros',
  '£': ' pounds',
};

function writeMoney(value: number, kind: Kind, shown: Shown, options: WriteOptions): Bare {
  const each = unitFor(value, kind, shown, options.unit);
  const places = 2 + (options.finer ?? 0);
  const cents = wholeMarks(inUnit(value, each, kind) * 10 ** places, options.bound) / 10 ** places;
  const amount = cents.toFixed(places);
  const size = amount.replace('-', '');
  const minus = size !== amount && /[1-9]/.test(size);
  return {
    text: `${minus ? '-' : ''}${shown.money}${size}${each?.symbol ?? ''}`,
    remainder: '',
    spoken: `${minus ? 'minus ' : ''}${size}${currencies[shown.money]}${each ? ` ${each.words[0]}` : ''}`,
    written: nearestDouble(ofUnit(exactDecimal(amount), each, kind)),
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

/** The symbol of the unit in which a value is written; empty for plain numbers. */
export function unitWritten(value: number, kind: KindId, shown: Shown): string {
  return unitFor(value, kindOf(kind), shown, undefined)?.symbol ?? '';
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

/** The SI value of so many of the unit. */
function ofUnit(amount: Exact, unit: Unit | undefined, kind: Kind): Exact {
  if (!unit) return amount;
  const value = multiply(amount, unit.factor);
  return unit.zero && kind.id !== 'warmth' ? add(value, unit.zero) : value;
}

function speak(number: string, unit: Unit | undefined): string {
  const said = number.replace(/^-/, 'minus ');
  return unit ? `${said} ${unit.words[number === '1' ? 0 : 1]}` : said;
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
  if (isTaped(kind) && own === undefined && (eighths || shown.length === 'feet') && Math.abs(value) < 1e6) {
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
