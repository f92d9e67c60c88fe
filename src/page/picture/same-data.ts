/** Whether two pieces of plain data (drawings, charts, values) say the same. */
export function sameData(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [left, right] = [Object.entries(a), b as Record<string, unknown>];
  return left.length === Object.keys(b).length && left.every(([key, value]) => sameData(value, right[key]));
}
