/** A result that is wanted, and the number by which it is to be brought. */
import type { Aim } from '../../kernel';
import type { KindId } from '../../measure';
import type { Mover } from './movers';

export interface Backwards {
  readonly result: string;
  readonly kind: KindId;
  readonly by: Mover;
  readonly wanted: Aim;
  readonly value: number;
}
