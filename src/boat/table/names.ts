/**
 * How the builder's own names of edges and stations become the first words of quantity names.
 */
import { nameOf } from '../../measure';

/** The tables of the trade: the first words of what stands in them. */
export const tradeTables = [
  'timber',
  'plywood',
  'adhesive',
  'coating',
  'paints',
  'fillers',
  'hardener',
] as const;

/** Words that name parts, panels, tables, calculators and what the shop has, so that no edge or station may take them. */
const taken = new Set<string>([
  'hull',
  'floatPlane',
  'shop',
  // The builder's own formulas.
  'mine',
  ...tradeTables,
  'lumber',
  'pieces',
  'bending',
  'keelson',
  'chineLog',
  'sheerClamp',
  'rubRail',
  'frame',
  'gusset',
  'thwart',
  'bottom',
  'side',
  'bilge',
  // Columns and keys that stand beside the names in files and lists.
  'name',
  'label',
]);

/**
 * The word by which an edge or a station is known in quantities: `frame 3` gives `frame3`.
 *
 * @param kind put before a name that could not stand in a formula by itself: `3` gives `station3`
 * @returns letters and digits, first a small letter; empty when the text holds neither
 */
export function quantityName(text: string, kind: 'station' | 'edge' = 'station'): string {
  const plain = nameOf(text);
  if (plain === '') return '';
  // One or two letters read as a unit or a constant in a formula.
  if (!/^[a-z]/.test(plain) || plain.length < 3) return kind + plain.charAt(0).toUpperCase() + plain.slice(1);
  return plain;
}

/**
 * Keeps names for quantities that do not come from the boat: the registry of the cells asks for those of all cells.
 * An edge or a station called alike would hide their numbers.
 */
export function keepNames(names: readonly string[]): void {
  for (const name of names) taken.add(name);
}

/** Parts at the ends: a station bears their name, an edge may not. */
const ends = new Set(['stem', 'sternpost', 'transom', 'bowTransom']);

/** Whether a name belongs to something else, or to the language the program is written in. */
export function isTaken(name: string, kind: 'edge' | 'station'): boolean {
  return (
    taken.has(name) ||
    (kind === 'edge' && ends.has(name)) ||
    /^bilge\d+$/.test(name) ||
    name in Object.prototype
  );
}

/** Panels from the keel outward, for a number of edges: the first is the bottom, the last the side. */
export function panelNames(edges: number): readonly string[] {
  const panels = edges - 1;
  if (panels < 1) return [];
  if (panels === 1) return ['side'];
  const bilges = Array.from({ length: panels - 2 }, (_, i) => (panels === 3 ? 'bilge' : `bilge${i + 1}`));
  return ['bottom', ...bilges, 'side'];
}
