import type { Mesh } from '../mesh';
import { type Attitude, UPRIGHT } from './attitude';
import { type Balance, balance, type Burden } from './balance';

/**
 * The body held at one heel after the other and free to trim: `lever` of each is the righting lever, + where the water
 * turns it back from a heel to port. Each begins with the trim that the two before it lead to. Ends where no trim is
 * found.
 *
 * @param heels rad, one after the other
 * @param from where the first begins
 */
export function rightingCurve(
  mesh: Mesh,
  burden: Burden,
  heels: readonly number[],
  from: Attitude = UPRIGHT,
): readonly Balance[] {
  const curve: Balance[] = [];
  for (const heel of heels) {
    const at = balance(mesh, burden, { heel }, ledTo(heel, curve.at(-1) ?? from, curve.at(-2)));
    if (!at) break;
    curve.push(at);
  }
  return curve;
}

/** Where to begin: on the line through the last two attitudes, or with the last. */
function ledTo(heel: number, last: Attitude, before?: Attitude): Attitude {
  if (!before || before.heel === last.heel) return last;
  const on = (heel - last.heel) / (last.heel - before.heel);
  // Two steps far apart say little of a third: no farther on than the last one went.
  return { heel, trim: last.trim + Math.min(1, Math.max(-1, on)) * (last.trim - before.trim) };
}
