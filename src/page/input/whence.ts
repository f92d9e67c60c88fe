/** Where a field's number comes from: a short mark beside it, and the words that it stands for. */
import { columns, type Given, tradeTables } from '../../boat';
import type { Graph } from '../../notebook';
import { formulasIn } from '../../notebook/formulas/formulas-in';
import { type Bench, sayOf } from '../bench';
import { inShortWithin } from '../in-short';
import { beginning } from './beginning';
import { inBrief } from './brief';
import { giverOf } from './owner';

/** Words, or a quantity that can be gone to under the words that name it. */
export type Piece = string | { readonly to: string; readonly words: string };

export interface Whence {
  /** Empty where it goes without saying. */
  readonly mark: string;
  readonly pieces: readonly Piece[];
  /** What is known of a usual value. */
  readonly note?: string;
  /** What takes back what is written; undefined where nothing is. */
  readonly back?: string;
}

/** In a line, a long note by its beginning. */
export function inWords({ pieces, note = '' }: Whence): string {
  const words = pieces.map((piece) => (typeof piece === 'string' ? piece : piece.words)).join('');
  return [words, beginning(note)].filter((one) => one !== '').join(' · ');
}

/**
 * @param name what the field writes
 * @param place the input that it stands for, in a cell that shows a number of the boat's or the shop's
 */
export function whence(bench: Bench, name: string, place: string): Whence {
  const graph = bench.book.inHand.value;
  const entry = graph.entry(name);
  if (!entry) return { mark: '', pieces: [] };
  const [cell = ''] = place.split('.');
  const piece = (to: string): Piece => ({ to, words: inShortWithin(bench, to, cell) });
  const named = entry.names.flatMap((to, index) => (index > 0 ? [' and ', piece(to)] : [piece(to)]));
  const from = (before: string): readonly Piece[] => (named.length > 0 ? [before, ...named] : []);
  const built = entry.built === undefined ? null : howBuilt(bench, graph, name);
  const isBuilt = (pieces: readonly Piece[]) => (built === null ? pieces : [...pieces, `, ${built.words}`]);

  if (place !== name) {
    const isShop = name.startsWith('shop.');
    // What it is of the shop's, the field's own label says.
    const whose: readonly Piece[] = isShop
      ? [{ to: name, words: 'the shop’s' }]
      : ['the boat’s ', piece(name)];
    const how = built?.mark ?? (entry.written ? 'typed' : '');
    return {
      mark: [isShop ? 'shop' : 'boat', how].filter((word) => word !== '').join(' · '),
      pieces: isBuilt([...whose, ...(entry.written ? [', written'] : []), ...from(', from ')]),
      ...(entry.written && { back: 'Clear' }),
    };
  }
  const giver = giverOf(graph, name);
  if (entry.written && giver !== undefined) {
    const value = sayOf(graph, giver, graph.value(giver), bench.shown.value);
    return {
      mark: built?.mark ?? 'only here',
      pieces: isBuilt(['only here', ...from(', from '), ' · ', piece(giver), ` is ${value}`]),
      back: 'Back to it',
    };
  }
  if (entry.written)
    return {
      mark: built?.mark ?? 'typed',
      pieces: isBuilt(['written here', ...from(', from ')]),
      back: bench.instances.value.has(cell) ? 'Back to the usual' : 'Clear',
    };
  if (entry.names[0] !== undefined)
    return { mark: built?.mark ?? giverMark(bench, entry.names[0], cell), pieces: isBuilt(from('from ')) };
  const { kind, source: note = '' } = graph.quantity(name) as Given; // it has an entry
  if (built === null && isOffset(name)) return { mark: 'plan', pieces: ['by the plan'] };
  // Of an answer to a choice it goes without saying.
  const usual = kind === 'choice' ? '' : 'usual';
  if (built !== null) return { mark: built.mark, pieces: [built.words], note };
  return { mark: usual, pieces: usual ? [`${usual} value`] : [], note };
}

/** A number of the boat's table of offsets: no other entry's name has three words. */
function isOffset(name: string): boolean {
  const [, , column = ''] = name.split('.');
  return (columns as readonly string[]).includes(column);
}

/** Whose the number is that fills a field: another cell's by its title. */
function giverMark({ instances, book }: Bench, giver: string, cell: string): string {
  const [part = ''] = giver.split('.');
  if (part === 'shop') return 'shop';
  if ((tradeTables as readonly string[]).includes(part)) return 'table';
  const instance = instances.value.get(part);
  if (instance === undefined) return formulasIn(book.catalogue.value).has(part) ? 'formula' : 'boat';
  return part === cell ? 'this cell' : inBrief(instance.cell.title);
}

function howBuilt(bench: Bench, graph: Graph, name: string): { mark: string; words: string } {
  const value = sayOf(graph, name, graph.value(name), bench.shown.value);
  const isMeasured = Object.hasOwn(bench.book.asBuilt.value.measured, name);
  if (!isMeasured) return { mark: 'cut', words: `cut to ${value}` };
  const isChoice = graph.quantity(name)?.kind === 'choice';
  return isChoice
    ? { mark: 'used another', words: `used in fact: ${value}` }
    : { mark: 'measured', words: `measured: ${value}` };
}
