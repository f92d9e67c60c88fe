/** Names for cells that nothing else goes by. */
import { isTaken } from '../../boat/table/names';
import { nameBeside } from '../../notebook/writing/cell-text';
import type { Bench } from '../bench';
import { notebooks } from '../library';

/** The name with a number behind it that nothing goes by, nor stands in the text. */
export const freeName = (name: string, text: string, bench: Bench): string =>
  nameBeside(name, (one) => isFree(one, text, bench));

function isFree(name: string, text: string, { book, instances }: Bench): boolean {
  return (
    !isTaken(name, 'edge') &&
    !instances.peek().has(name) &&
    book.inHand.peek().namesOf(name).length === 0 &&
    !notebooks.peek().some(({ cells }) => Object.hasOwn(cells, name)) &&
    !new RegExp(String.raw`\b${name}\b`).test(text)
  );
}
