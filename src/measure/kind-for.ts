/** The kind of what a builder's own sum comes to, where no table names it: told by the first of its dimension, else in units made up for it. */
import { composeDimension, type Dimension, sameDimension } from './dimension';
import { type Kind, type KindId, byId, kinds } from './kinds';
import { unitOf } from './units';

const metric = ['m', 'kg', 's', 'K', 'rad', ''] as const;
const customary = ['ft', 'lb', 's', 'K', 'rad', ''] as const;
const raised = ['', '', '²', '³', '⁴'] as const;

/**
 * The kind by which a quantity of this dimension is told; undefined where no unit can be written for it, as for a
 * length to the power one half.
 */
export function kindFor(dimension: Dimension): KindId | undefined {
  const known = kinds.find((kind) => sameDimension(kind.dimension, dimension));
  if (known) return known.id;
  const si = unitText(dimension, metric);
  const feet = unitText(dimension, customary);
  if (si === undefined || feet === undefined) return undefined;
  const made: Kind = {
    // A kind is found by its id, and its unit is one.
    id: si as KindId,
    noun: composeDimension(dimension),
    dimension,
    si,
    follows: dimension[1] === 0 ? 'length' : 'mass',
    metric: { entry: si, rungs: [[si, 0]] },
    customary: { entry: feet, rungs: [[feet, 0]] },
  };
  byId.set(made.id, made);
  return made.id;
}

/** `kg·m/s²`, `/kg`. Amounts of money have no unit beside their sign, and stand above the stroke once or not at all. */
function unitText(dimension: Dimension, symbols: typeof metric | typeof customary): string | undefined {
  if (dimension.some((power) => !Number.isInteger(power) || Math.abs(power) > 4)) return undefined;
  if (dimension[5] !== 0 && dimension[5] !== 1) return undefined;
  const parts = symbols.map((symbol, at) => ({ symbol, power: dimension[at] ?? 0 }));
  const written = parts.filter(({ symbol, power }) => symbol !== '' && power !== 0);
  const above = written.filter(({ power }) => power > 0);
  const below = written.filter(({ power }) => power < 0);
  const say = ({ symbol, power }: (typeof parts)[number]) => symbol + (raised[Math.abs(power)] ?? '');
  const text = above.map(say).join('·') + below.map((part) => `/${say(part)}`).join('');
  return unitOf(text) ? text : undefined;
}
