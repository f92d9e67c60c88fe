/** The ripple as it is told: limits passed and numbers moved, in the order they are read. */
import type { Tell } from '../../cells';
import type { Moved, Ripple } from '../../notebook';
import type { AgainstLimit } from './limit';
import type { InOrder, RippleLine } from './order';

/** A warning as it applied at one moment. */
export interface Limit {
  /** The cell that warns, by its name in the notebook. */
  readonly cell: string;
  readonly weight: 'stop' | 'mind';
  /** The warning's sentence, in whatever units are chosen when it is read. */
  readonly tell: Tell;
  readonly against: AgainstLimit | null;
}

export type ToldLine = RippleLine & ({ readonly limit: Limit } | { readonly moved: Moved });

/** What moved after an edit, as it is told. */
export interface ToldRipple extends InOrder<ToldLine> {
  readonly hull: Ripple<unknown>['hull'];
  /** How many numbers moved, and how many limits are newly passed. */
  readonly moved: number;
  readonly passed: number;
}
