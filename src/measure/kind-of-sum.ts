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

/** The kinds whose difference is none of them: two temperatures are so many degrees apart, from any zero. */
const apart: Partial<Record<KindId, KindId>> = { temperature: 'warmth' };

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

  /** 'bare' for what goes with any kind: a number without a unit. */
  function of(part: Tree): KindId | 'bare' | undefined {
    if (part.type === 'ParenthesisNode') return of(part.content);
    if (part.type === 'ConditionalNode') return alike([part.trueExpr, part.falseExpr]);
    if (part.type === 'FunctionNode')
      return ['abs', 'min', 'max', 'round', 'ceil', 'floor'].includes(part.fn.name)
        ? alike(part.args)
        : undefined;
    if (part.type === 'SymbolNode') {
      const meaning = meanings.get(part.name);
      if (meaning?.is === 'name') return kindNamed(meaning.name);
      if (meaning?.is === 'constant') return meaning.name === 'K' ? 'warmth' : undefined;
      if (meaning?.is !== 'literal') return undefined;
      if (meaning.dimension[3] === 1) return meaning.made === 'zeroed' ? 'temperature' : 'warmth';
      return sameDimension(meaning.dimension, plain) ? 'bare' : undefined;
    }
    const kind = alike(part.args);
    if (part.fn === 'subtract' && kind !== undefined && kind !== 'bare') return apart[kind] ?? kind;
    if (/^(add|subtract|unary)/.test(part.fn)) return kind;
    const [first, second] = part.args.map(of);
    if (part.fn === 'multiply') return first === 'bare' ? second : second === 'bare' ? first : undefined;
    return part.fn === 'divide' && second === 'bare' ? first : undefined;
  }

  function alike(parts: readonly Tree[]): KindId | 'bare' | undefined {
    const all = new Set(parts.map(of));
    if (all.size > 1) all.delete('bare');
    // A temperature and degrees more are a temperature.
    if (all.has('temperature') && all.has('warmth')) all.delete('warmth');
    const [one] = all;
    return all.size === 1 ? one : undefined;
  }
}
