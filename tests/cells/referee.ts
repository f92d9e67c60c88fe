/**
 * The referee of dimensions: a formula worked out once more by the full mathjs, on its own units.
 *
 * It shares the reading of the text with the product (literals are read by measure, and the parser is
 * mathjs's in both), but knows nothing of our dimensions: each value is a number times the SI unit of its
 * kind as mathjs understands that unit, and what can't be joined is refused by mathjs. Both answers of a
 * conditional and both halves of "and" are worked out, so that none hides behind the other.
 */
import { all, create, type FactoryFunctionMap, type MathNode, type Unit } from 'mathjs';
import type { Cell } from '../../src/cells';
import { type Dimension, type Formula, formula, isIssue, kindOf, type KindId } from '../../src/measure';

type Amount = number | Unit;
type Value = Amount | boolean | string;

// By itself mathjs takes what is within 1e-15 of another for equal to it, and a trickle in m3/s for nothing.
const math = create(all as FactoryFunctionMap, { relTol: 1e-12, absTol: 0 });
math.createUnit('money');

/** What is read from a text, read once: mathjs takes far longer to read a formula or a unit than to work it out. */
function readOnce<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, { readonly value: T }>();
  return (text) => {
    const found = known.get(text) ?? { value: read(text) };
    known.set(text, found);
    return found.value;
  };
}

/** A unit as our kinds write it, `kg/m3` or `N·m2`; a plain 1 for plain numbers. */
const unitAsKept = readOnce((si): Amount => {
  const written = si.replaceAll('·', ' ').replaceAll(/([a-z])(\d)/gi, '$1^$2');
  return math.evaluate(/^\d/.test(written) ? written : `1 ${written}`) as Amount;
});
const program = readOnce((text) => math.compile(text));

const product = (number: number, unit: Amount) => math.multiply(number, unit as Unit) as Amount;
const isUnit = (value: Value): value is Unit => math.typeOf(value) === 'Unit';

/** An SI number of a kind as an amount. */
export function amountOf(value: number, kind: KindId): Amount {
  return product(value, unitAsKept(kindOf(kind).si));
}

/** The SI number of an amount of this kind, or a refusal if it is of another dimension. */
function siOf(amount: Value, kind: KindId): number {
  const unit = unitAsKept(kindOf(kind).si);
  if (typeof amount === 'boolean' || typeof amount === 'string')
    throw new Error(`${String(amount)} is no amount`);
  const bare: Amount = math.divide(amount as Unit, unit as Unit);
  if (typeof bare === 'number') return bare;
  throw new Error(`${String(amount)} is not in ${kindOf(kind).si}`);
}

/** Gives a bare 0 the unit of what it stands beside: the one number that is the same in every unit. */
function alike(...values: Value[]): Value[] {
  const unit = values.find(isUnit);
  return unit ? values.map((value) => (value === 0 ? product(0, unit) : value)) : values;
}

type Join = (a: Value, b: Value) => Value;
const originals = Object.fromEntries(
  ['add', 'subtract', 'smaller', 'larger', 'smallerEq', 'largerEq', 'equal', 'unequal'].map((name) => [
    name,
    math[name as 'add'] as unknown as Join,
  ]),
);
const words = (a: Value, b: Value) => typeof a === 'string' && typeof b === 'string';
math.import(
  Object.fromEntries(
    Object.entries(originals).map(([name, run]): [string, Join] => [
      name,
      (a, b) => {
        if (words(a, b)) return name === 'equal' ? a === b : a !== b;
        const [first, second] = alike(a, b);
        return run(first!, second!); // as many as went in
      },
    ]),
  ),
  { override: true },
);

function plain(value: Value): number {
  if (typeof value !== 'number') throw new Error(`${String(value)} is no plain number`);
  return value;
}
const turn = (radians: number) => amountOf(radians, 'angle');
const least = (values: Value[]) => alike(...values).reduce((a, b) => (originals['smaller']!(a, b) ? a : b));
const most = (values: Value[]) => alike(...values).reduce((a, b) => (originals['larger']!(a, b) ? a : b));
const toStep =
  (round: (x: number) => number) =>
  (x: Value, step: Value = 1) => {
    const steps = plain(math.divide(x as Unit, step as Unit));
    return product(round(steps), step as Amount);
  };
const hair = (x: number) => 1e-9 * Math.max(1, Math.abs(x));

/** The functions that mathjs takes otherwise than formulas do: angles are amounts, never bare numbers. */
const functions: Readonly<Record<string, (...values: Value[]) => Value>> = {
  sin: (x) => Math.sin(siOf(x, 'angle')),
  cos: (x) => Math.cos(siOf(x, 'angle')),
  tan: (x) => Math.tan(siOf(x, 'angle')),
  asin: (x) => turn(Math.asin(plain(x))),
  acos: (x) => turn(Math.acos(plain(x))),
  atan: (x) => turn(Math.atan(plain(x))),
  atan2: (...sides) => turn(Math.atan2(...inOneUnit(sides))),
  hypot: (...sides) =>
    math.sqrt(
      sides
        .map((side) => math.square(side as Unit) as Value)
        .reduce((a, b) => originals['add']!(a, b)) as Unit,
    ) as Value,
  min: (...values) => least(values),
  max: (...values) => most(values),
  round: (x, step) => toStep((n) => Math.sign(n) * Math.floor(Math.abs(n) + 0.5 + hair(n)))(x, step),
  ceil: (x, step) => toStep((n) => Math.ceil(n - hair(n)))(x, step),
  floor: (x, step) => toStep((n) => Math.floor(n + hair(n)))(x, step),
  exp: (x) => Math.exp(plain(x)),
  ln: (x) => Math.log(plain(x)),
  log10: (x) => Math.log10(plain(x)),
  either: (asked, yes, no) => {
    const [first, second] = alike(yes, no);
    if (isUnit(first!) !== isUnit(second!) || typeof first !== typeof second)
      throw new Error(`the answers ${String(yes)} and ${String(no)} are not alike`);
    // Adding tells whether they are of one dimension; toSI, as inOneUnit has it, knows no money.
    if (isUnit(first!)) originals['add']!(first, second!);
    return truth(asked) ? first! : second!;
  },
  both: (...halves) => !halves.map(truth).includes(false),
  one: (...halves) => halves.map(truth).includes(true),
};

/** Two amounts of one dimension as numbers in one unit. */
function inOneUnit(amounts: Value[]): [number, number] {
  const [y, x] = alike(...amounts) as [Value, Value];
  if (!isUnit(y) || !isUnit(x)) return [plain(y), plain(x)];
  // Adding is how mathjs tells whether two units are of one dimension.
  originals['add']!(y, x);
  return [y, x].map((side) => (side.toSI().toJSON() as { value: number }).value) as [number, number];
}

function truth(value: Value): boolean {
  if (typeof value !== 'boolean') throw new Error(`${String(value)} is no yes or no`);
  return value;
}

/** The formula for mathjs, with conditionals and "and" as functions that look at all they are given. */
function textFor(tree: MathNode): string {
  const handler = (node: MathNode): string | undefined => {
    const { condition, trueExpr, falseExpr, op, args } = node as unknown as Record<string, MathNode> & {
      op?: string;
      args?: MathNode[];
    };
    const say = (part: MathNode | undefined) => part?.toString({ handler }) ?? '';
    if (node.type === 'ConditionalNode')
      return `either(${[condition, trueExpr, falseExpr].map(say).join(', ')})`;
    if (op === 'and' || op === 'or') return `${op === 'and' ? 'both' : 'one'}(${args?.map(say).join(', ')})`;
    return undefined;
  };
  return tree.toString({ handler });
}

/**
 * Works a formula of the cell out with units.
 * @param values SI numbers and choices by key
 * @returns the SI number of the kind, or 1 and 0 for a yes or no; throws where mathjs refuses
 */
export function referee(
  cell: Pick<Cell, 'inputs' | 'steps' | 'functions'>,
  text: string,
  gives: KindId | 'truth',
  values: Readonly<Record<string, number | string>>,
): number {
  const parsed = formula(text, cell.functions);
  if (isIssue(parsed)) throw new Error(parsed.issue);
  const scope = new Map<string, unknown>(Object.entries(functions));
  for (const [name, { takes, gives: result, run }] of Object.entries(cell.functions ?? {})) {
    scope.set(name, (...args: Value[]) =>
      amountOf(run(...args.map((arg, i) => siOf(arg, takes[i]!))), result),
    );
  }
  for (const [symbol, meaning] of parsed.sum.meanings) {
    scope.set(symbol, meaningOf(meaning, cell, values));
  }
  const result = program(textFor(parsed.sum.tree as unknown as MathNode)).evaluate(scope) as Value;
  return gives === 'truth' ? Number(truth(result)) : siOf(result, gives);
}

type Meaning = Formula['sum']['meanings'] extends ReadonlyMap<string, infer M> ? M : never;

function meaningOf(
  meaning: Meaning,
  { inputs, steps }: Pick<Cell, 'inputs' | 'steps'>,
  values: Readonly<Record<string, number | string>>,
): Value {
  if (meaning.is === 'choice') return meaning.id;
  if (meaning.is === 'constant') return constants[meaning.name] ?? Number.NaN;
  if (meaning.is === 'literal') return product(meaning.value, unitOfPowers(meaning.dimension));
  const value = values[meaning.name];
  const spec = inputs[meaning.name] ?? steps[meaning.name];
  if (value === undefined || !spec) throw new Error(`there is no ${meaning.name}`);
  return typeof value === 'string' ? value : amountOf(value, spec.kind);
}

const constants: Readonly<Record<string, Amount>> = {
  pi: Math.PI,
  rad: amountOf(1, 'angle'),
  K: amountOf(1, 'temperature'),
  g: math.evaluate('9.80665 m/s^2') as Unit,
};

const amountIn = readOnce((text) => math.evaluate(text) as Amount);

/** The SI unit of a literal, by the powers that measure read from it. */
function unitOfPowers(powers: Dimension): Amount {
  const bases = ['m', 'kg', 's', 'K', 'rad', 'money'];
  return amountIn(powers.map((power, i) => `(1 ${bases[i]})^${power}`).join(' * '));
}
