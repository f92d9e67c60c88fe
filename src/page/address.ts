/** The address's hash says which notebook is open and where in it: `#/the-build/what-goes-wrong`. */
import { signal } from '@preact/signals';

export interface PageAddress {
  readonly notebook: string | null;
  readonly place: string | null;
}

export const way = signal<PageAddress>(readWay());

/** @param arrive called for an address that is a link with a boat in it: it leads nowhere until that is taken */
export function followHash(arrive: (letters: string) => void): void {
  const follow = () => {
    const letters = lettersOfLink();
    if (letters === undefined) way.value = readWay();
    else arrive(letters);
  };
  addEventListener('hashchange', follow);
  follow();
}

/** What stands in the address of a link, `#link=…`; undefined in any other. What a letter's writer put behind it is left out. */
export const lettersOfLink = (): string | undefined => /^#link=([\w-]*)/.exec(location.hash)?.[1];

export function wayTo(notebook: string, place?: string): string {
  return `#/${encodeURIComponent(notebook)}${place ? `/${place}` : ''}`;
}

function readWay(): PageAddress {
  const [, notebook = '', place = ''] = /^#\/([^/]*)(?:\/(.+))?$/.exec(location.hash) ?? [];
  return { notebook: decoded(notebook) || null, place: decoded(place) || null };
}

/**
 * The cell that a place lies in, if these are the names of the cells that stand there: `scarf` itself, one of its
 * quantities (`scarf.taper`), or a mark within it (`cell-scarf`, `question-scarf`).
 */
export function cellAt(place: string | null, names: readonly string[]): string | undefined {
  const [word] = place?.replace(/^(?:cell|question)-/, '').split('.') ?? [];
  return names.find((name) => name === word);
}

/** An address may have been cut short or typed; what can't be decoded leads to the top of the notebook. */
function decoded(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}
