/**
 * What becomes of entries when a station or an edge takes another name or goes: its own entries take the new
 * name or go with it, and what names it in other entries is written anew. What goes may still be named
 * elsewhere; such a text is left as it is and told.
 */

/** First words of quantities, as stations and edges have them, that are others now; null where they are gone. */
export type WordChanges = Readonly<Record<string, string | null>>;

/**
 * A quantity's name after the change; null where it went. Stations and edges stand at its head, and before
 * its last word: `frame3.sheer.x`, `sheer.length`, `bevels.frame3.chineBevel`; a last word is never theirs.
 */
export function carriedName(name: string, words: WordChanges): string | null {
  const parts = name.split('.');
  const last = parts.length - 1;
  const isPlace = (at: number) => at < last && (at === 0 || parts.length > 2);
  const carried = parts.map((part, at) => (isPlace(at) && Object.hasOwn(words, part) ? words[part]! : part));
  return carried.includes(null as never) ? null : carried.join('.');
}

const dotted = /[A-Za-z_][A-Za-z0-9_]*(?:\.[A-Za-z0-9_]+)+/g;

/**
 * An entry's text after the change: names in it follow; a name that went stays as it was written.
 * @param chooses whether the text is the answer to a choice between stations or edges
 */
export function carriedText(text: string, words: WordChanges, chooses: boolean): string {
  if (chooses && Object.hasOwn(words, text)) return words[text] ?? text;
  return text.replace(dotted, (name) => carriedName(name, words) ?? name);
}

/** Whether a text names what is gone. */
export function namesGone(text: string, words: WordChanges, chooses: boolean): boolean {
  if (chooses && words[text] === null && Object.hasOwn(words, text)) return true;
  return [...text.matchAll(dotted)].some(([name]) => carriedName(name, words) === null);
}

/** Entries after the change. The text null, "back to the preset", is carried like any other. */
export function carriedEntries<T extends string | null>(
  entries: Readonly<Record<string, T>>,
  words: WordChanges,
  chooses: (name: string) => boolean,
): Record<string, T> {
  return Object.fromEntries(
    Object.entries(entries).flatMap(([name, text]): [string, T][] => {
      const now = carriedName(name, words);
      if (now === null) return [];
      return [[now, (text === null ? null : carriedText(text, words, chooses(name))) as T]];
    }),
  );
}
