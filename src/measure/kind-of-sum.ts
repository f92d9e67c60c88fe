/** How a sum is told: as the quantities are that it is made of, where they are all told alike; else as its dimension is. */
import { type Dimension, plain, sameDimension } from './dimension';
import { kindFor } from './kind-for';
import { type KindId, kindOf } from './kinds';
import type { Tree } from './parser';
import type { Sum } from './sum';

/** Told in a way of its own: a share as 42 %, a thickness of paint in micrometres. */
const kept = new Set<KindId>([
  ...(['ratio', 'share', 'film', 'caliper', 'lumber', 'displacement', 'sectionModulus', 'lineLoad'] as const),
  ...([
    'pressure',
    'moment',
    'wetRate',
    'spreadingRate',
    'windSpeed',
    'minutes',
    'timberPrice',
    'warmth',
  ] as const),
]);

/** Undefined where no unit can be written for what the sum comes to. */
export function kindOfSum(
  { tree, meanings }: Pick<Sum, 'tree' | 'meanings'>,
  dimension: Dimension,
  kindNamed: (name: string) => KindId | undefined,
): KindId | undefined {
  const usual = kindFor(dimension);
  const told = of(tree);
  if (told === undefined || told === 'bare' || !sameDimension(kindOf(told).dimension, dimension))
    return usual === 'temperature' ? 'warmth' : usual;
  const isOneName = tree.type === 'SymbolNode' && told !== 'choice';
  return isOneName || kept.has(told) || told === 'temperature' ? told : usual;

  /** Each part is looked at once: to look twice at each would double the work with every sign. */
  function of(part: Tree): KindId | 'bare' | undefined {
    if (part.type === 'SymbolNode') return ofSymbol(part.name);
    if (part.type === 'ParenthesisNode') return of(part.content);
    if (part.type === 'ConditionalNode') return alike([of(part.trueExpr), of(part.falseExpr)]);
    const parts = part.args.map(of);
    const [first, second] = parts;
    if (part.type === 'FunctionNode') return keeping.has(part.fn.name) ? alike(parts) : undefined;
    if (part.fn === 'multiply') return first === 'bare' ? second : second === 'bare' ? first : undefined;
    if (part.fn === 'divide') return second === 'bare' ? first : undefined;
    if (!/^(add|subtract|unary)/.test(part.fn)) return undefined;
    const kind = alike(parts);
    return part.fn === 'subtract' && kind === 'temperature' && second === 'temperature' ? 'warmth' : kind;
  }

  function ofSymbol(symbol: string): KindId | 'bare' | undefined {
    const meaning = meanings.get(symbol);
    if (meaning?.is === 'name') return kindNamed(meaning.name);
    if (meaning?.is === 'constant') return meaning.name === 'K' ? 'warmth' : undefined;
    if (meaning?.is !== 'literal') return undefined;
    if (meaning.dimension[3] === 1) return meaning.made === 'zeroed' ? 'temperature' : 'warmth';
    return sameDimension(meaning.dimension, plain) ? 'bare' : undefined;
  }
}

/** Functions whose answer is of the kind of what they are given. */
const keeping = new Set(['abs', 'min', 'max', 'round', 'ceil', 'floor']);

/** The one kind of all of them; 'bare' goes with any, being a number without a unit. */
function alike(parts: readonly (KindId | 'bare' | undefined)[]): KindId | 'bare' | undefined {
  const all = new Set(parts);
  if (all.size > 1) all.delete('bare');
  // A temperature and degrees more are a temperature.
  if (all.has('temperature') && all.has('warmth')) all.delete('warmth');
  const [one] = all;
  return all.size === 1 ? one : undefined;
}
