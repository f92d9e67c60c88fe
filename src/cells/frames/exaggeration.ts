/** Errors of millimetres on a jig of metres are seen only when drawn many times too large: how many, and the words for it. */

const FACTORS = [100, 50, 20, 10, 5, 2, 1] as const;
/** Smaller than a pencil line: true, mm. */
const TRUE = 0.05;

/**
 * The largest factor that keeps every error within what the drawing has room for.
 * @param errors mm, of either sign
 * @param room mm
 */
export function exaggeration(errors: readonly number[], room: number): number {
  const worst = Math.max(0, ...errors.map(Math.abs));
  return worst < TRUE ? 1 : (FACTORS.find((factor) => worst * factor <= room) ?? 1);
}

export function times(factor: number): string {
  return factor === 1 ? 'Errors are drawn to scale.' : `Errors are drawn ${factor} times too large.`;
}
