/** Names of quantities: the nearest ones to a name that is not there, and their way to and from plain words. */

/**
 * The known names nearest to `name`, nearest first, at most `most` of them; none if nothing is near.
 * Near means few letters changed, or the right word with the rest left out (`thickness` finds `bottom.thickness`).
 */
export function nearestNames(name: string, known: Iterable<string>, most = 3): string[] {
  const all = [...known];
  const wanted = name.toLowerCase();
  // A letter or two are alike to nothing but themselves.
  const allowed = Math.min(4, Math.floor(wanted.length / 3));
  const found: { name: string; misses: number }[] = [];
  for (const candidate of all) {
    const misses = missesBetween(wanted, candidate.toLowerCase(), allowed);
    // A part of a name counts half an edit more than the whole.
    if (misses <= allowed + 0.5) found.push({ name: candidate, misses });
  }
  // The right first word means the right part: its other names come before strangers' alike ones.
  const own = wanted.includes('.') ? ofSamePart(wanted, all, most) : [];
  if (
    own.length > 0 &&
    !found.some(({ name: near, misses }) => misses <= 1 || firstWord(near) === firstWord(name))
  )
    return own;
  found.sort((a, b) => a.misses - b.misses || a.name.length - b.name.length || (a.name < b.name ? -1 : 1));
  // Beside one that is all but right, strangers are no help.
  const least = found[0]?.misses ?? 0;
  return found
    .filter(({ misses }) => misses <= least + 1)
    .slice(0, most)
    .map((candidate) => candidate.name);
}

/**
 * The sentence for a name that no quantity has: the nearest of `known`, each with what it is, or else `instead`.
 * @param meaningOf what a known name stands for, in words
 */
export function unknownName(
  name: string,
  known: Iterable<string>,
  meaningOf: (name: string) => string | undefined = () => undefined,
  instead = '',
): string {
  const near = nearestNames(name, known).map((other) => {
    const meaning = meaningOf(other);
    return meaning === undefined ? other : `${other} (${meaning})`;
  });
  return `there is no quantity "${name}"${near.length > 0 ? `; nearest: ${near.join(', ')}` : instead}`;
}

/**
 * The sentence for a choice where a number is due, or the other way about.
 * @param meaning what it is, in words; without it it goes by its name, in quotes
 */
export const wrongSort = (name: string, is: 'choice' | 'number', meaning = `"${name}"`): string =>
  `${meaning} is ${is === 'choice' ? 'a choice, not a number' : 'a number, not a choice'}`;

/** Names under the same first word: those whose last word holds the wanted one, then those most alike. */
function ofSamePart(wanted: string, known: readonly string[], most: number): string[] {
  const last = (name: string) => name.slice(name.lastIndexOf('.') + 1).toLowerCase();
  const misses = (candidate: string) =>
    last(candidate).includes(last(wanted)) ? 0 : editDistance(last(wanted), last(candidate), 99);
  return known
    .filter((candidate) => firstWord(candidate).toLowerCase() === firstWord(wanted))
    .map((candidate) => ({ candidate, misses: misses(candidate) }))
    .sort((a, b) => a.misses - b.misses || a.candidate.length - b.candidate.length)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

const firstWord = (name: string) => name.split('.', 1)[0] ?? name;

/** Edits from `wanted` to the candidate, or to one of its dotted parts or endings at half an edit more. */
function missesBetween(wanted: string, candidate: string, allowed: number): number {
  let least = editDistance(wanted, candidate, allowed);
  const parts = candidate.split('.');
  if (parts.length > 1) {
    // A row's name stands between and tells nothing alone: `three` is no way to ask for `laminate.three.ply`.
    const ends = [parts[0]!, parts.at(-1)!]; // more than one, so both are there
    const pieces = new Set([...ends, parts.slice(1).join('.'), parts.slice(0, -1).join('.')]);
    for (const piece of pieces) least = Math.min(least, editDistance(wanted, piece, allowed) + 0.5);
  }
  return least;
}

/** Levenshtein's distance: letters put in, left out or changed. Infinity as soon as it must pass `limit`. */
function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return Infinity;
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const changed = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1); // in range by the loops
      row.push(Math.min(changed, above[j]! + 1, row[j - 1]! + 1));
    }
    if (Math.min(...row) > limit) return Infinity;
    above = row;
  }
  return above[b.length]!;
}

/** `boardThickness` as `board thickness`; `frame3` as `frame 3`; `side.thickness` as `side thickness`. */
export function wordsOf(name: string): string {
  return name
    .replace(/([a-z])(?=\d)|([a-z0-9])(?=[A-Z])/g, '$1$2 ')
    .replaceAll('.', ' ')
    .replace(/ [A-Z](?=[a-z]|$| )/g, (capital) => capital.toLowerCase());
}

/** Words as one camelCase name: `frame 3` as `frame3`, `Stern transom` as `sternTransom`. Empty if no letter or digit is left. */
export function nameOf(words: string): string {
  const parts =
    words
      .normalize('NFKD')
      .replaceAll(/\p{M}/gu, '')
      .match(/[A-Za-z0-9]+/g) ?? [];
  return parts
    .map((part, i) => (i === 0 ? part.charAt(0).toLowerCase() : part.charAt(0).toUpperCase()) + part.slice(1))
    .join('');
}

/** What a thing is, without what is said of it further; never so short that it leads on to what is left out. */
export const upToComma = (text: string): string =>
  (/^.+?(?<!(?:^| )(?:and|or|of|the))(?=\s*[,;:(]|$)/.exec(text)?.[0] ?? text).trim();
