/** A purchase in words: `2 tins of 4 L, 1 of 1 L and 1 of 500 mL`. */
import type { Words } from '../../form/define';

/** Steps that hold how many of each size, and inputs that hold the sizes. */
export interface Bought {
  readonly one: string;
  readonly many: string;
  /** From the largest: `['large', 'largeTin']`. */
  readonly sizes: readonly (readonly [count: string, holds: string])[];
}

/** Said only where there is something to buy. */
export function packsInWords({ one, many, sizes }: Bought): readonly Words[] {
  const some = (counts: readonly string[]) =>
    counts.length > 0 ? counts.map((count) => `${count} > 0`).join(' or ') : '1 < 0';
  const none = (counts: readonly string[]) =>
    counts.length > 0 ? counts.map((count) => `${count} == 0`).join(' and ') : '1 > 0';
  return sizes.map(([count, holds], at): Words => {
    const before = sizes.slice(0, at).map(([name]) => name);
    const after = sizes.slice(at + 1).map(([name]) => name);
    const said: Words[] = [
      { when: none(before), says: `{${count}} {${count}?${one}:${many}} of {${holds}}` },
      {
        when: some(before),
        says: [{ when: none(after), says: 'and', otherwise: ',' }, `{${count}} of {${holds}}`],
      },
    ];
    return { when: `${count} > 0`, says: said };
  });
}
