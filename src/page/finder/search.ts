/**
 * The search: which of the things to be found answer to what is typed, the best first. Each word typed may be a whole
 * word, the beginning of one, a word of the trade for it (`trade-words.ts`) or, where there is none such, one letter off.
 */
import { isOneSlipFrom, wordsIn } from './fold';

/** What a hit is, in the order in which equals are listed. */
export const kinds = [
  'question',
  'quick answer',
  'field',
  'answer',
  'notebook',
  'heading',
  'word',
  // What can be placed in a text.
  'text',
  'cell',
  'number',
  'drawing',
] as const;

export interface Findable {
  readonly kind: (typeof kinds)[number];
  readonly title: string;
  /** Said beside the title, and searched like it: the question of a cell. */
  readonly more?: string;
  /** What it belongs to: these words count beside one of its title. */
  readonly also?: string;
  /** Id of the notebook in which it stands; null for the boat's own sheet. */
  readonly notebook: string | null;
  /** Of several that are the same thing in several places, one is shown. */
  readonly same: string;
}

/** One that is listed. */
export interface Listed extends Findable {
  /** Where it stands, in a few words. */
  readonly where: string;
}

interface Where {
  /** Places in the list of things, by the words of their titles and by other words. */
  readonly titled: number[];
  readonly others: number[];
}

export interface Index<T extends Findable> {
  readonly things: readonly T[];
  /** Of each thing the names that its title gives, one after a comma from another. */
  readonly names: readonly (readonly string[])[];
  readonly words: ReadonlyMap<string, Where>;
  readonly tradeWords: ReadonlyMap<string, readonly (readonly string[])[]>;
}

/** How near a thing comes to a word typed, best first. */
const near = { exact: 0, tradeWord: 1, beginning: 2, elsewhere: 3, slip: 6, not: 99 } as const;

/**
 * @param things in the order in which equals are to be listed
 * @param tradeWords for a word that may be typed, what the thing is called here
 */
export function indexOf<T extends Findable>(
  things: readonly T[],
  tradeWords: Readonly<Record<string, readonly string[]>>,
): Index<T> {
  const words = new Map<string, Where>();
  const note = (text: string, at: number, where: keyof Where) => {
    for (const word of new Set(wordsIn(text))) {
      const known = words.get(word) ?? { titled: [], others: [] };
      known[where].push(at);
      words.set(word, known);
    }
  };
  things.forEach(({ title, more = '', also = '' }, at) => {
    note(`${title} ${more}`, at, 'titled');
    note(also, at, 'others');
  });
  return {
    things,
    names: things.map(({ title }) => [title, ...title.split(',')].map((name) => wordsIn(name).join(' '))),
    words,
    tradeWords: new Map(
      Object.entries(tradeWords).map(([word, phrases]) => [wordsIn(word).join(' '), phrases.map(wordsIn)]),
    ),
  };
}

/** What a question is put together with: `how much glue is in the seam` asks for glue and seam. */
const small = new Set(
  'a an and are at do does for how i in is it many much my of on that the this to what where which will with'.split(
    ' ',
  ),
);

/**
 * What answers to the text, each thing once; nothing for less than two letters.
 * @param open id of the notebook that is open, whose things go before their equals
 */
export function find<T extends Findable>(index: Index<T>, text: string, open: string | null): readonly T[] {
  const all = wordsIn(text);
  const telling = all.filter((word) => !small.has(word));
  const asked = telling.length > 0 ? telling : all;
  if (asked.join('').length < 2) return [];
  const { things, names } = index;
  const perWord = asked.map((word) => nearnessTo(index, word));
  const typed = all.join(' ');
  const found = things.flatMap((thing, at) => {
    const each = perWord.map((nearness) => nearness[at] ?? near.not);
    const worst = Math.max(...each);
    // Something of what is typed is in its name.
    if (worst >= near.not || Math.min(...each.map((one) => one % near.slip)) >= near.elsewhere) return [];
    const called = names[at] ?? [];
    const isIt = called.includes(typed);
    const order = [
      isIt && (asked.length > 1 || isWhole(thing.kind)) ? 0 : 1,
      worst,
      // What a word means is told behind the questions that it is asked in.
      kinds.indexOf(thing.kind === 'word' && isIt ? 'quick answer' : thing.kind),
      called.some((name) => name.startsWith(typed)) ? 0 : called[0]?.includes(typed) ? 1 : 2,
      thing.notebook === open ? 0 : 1,
      at,
    ];
    return [{ thing, order }];
  });
  return eachOnce(
    found.sort((a, b) => firstDifference(a.order, b.order)).map(({ thing }) => thing),
    open,
  );
}

/** Many a field or an answer bears one plain word, as `clamps`, that more than itself is called by; and every word does. */
const isWhole = (kind: Findable['kind']) => !['field', 'answer', 'word', 'number', 'drawing'].includes(kind);

/** Of the same thing in several places the one in the open notebook, else the first. */
export function eachOnce<T extends Findable>(found: readonly T[], open: string | null): readonly T[] {
  const best = new Map<string, T>();
  for (const thing of found) {
    const known = best.get(thing.same);
    if (!known || (known.notebook !== open && thing.notebook === open)) best.set(thing.same, thing);
  }
  return [...best.values()];
}

function firstDifference(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return (a[i] ?? 0) - (b[i] ?? 0);
  return 0;
}

/** How near each thing comes to one word typed. */
function nearnessTo({ things, words, tradeWords }: Index<Findable>, typed: string): Uint8Array {
  const nearness = new Uint8Array(things.length).fill(near.not);
  const come = (ats: readonly number[], how: number) => {
    for (const at of ats) nearness[at] = Math.min(nearness[at] ?? near.not, how);
  };
  const take = (fits: (word: string) => number) => {
    let any = false;
    for (const [word, { titled, others }] of words) {
      const how = fits(word);
      if (how >= near.not) continue;
      any = true;
      come(titled, how);
      come(others, how + near.elsewhere);
    }
    for (const [word, phrases] of tradeWords) {
      const how = Math.max(fits(word), near.tradeWord);
      if (how >= near.not) continue;
      any = true;
      for (const phrase of phrases) {
        const places = phrase.map((one) => words.get(one));
        come(inAll(places.map((place) => place?.titled ?? [])), how);
        come(
          inAll(places.map((place) => [...(place?.titled ?? []), ...(place?.others ?? [])])),
          how + near.elsewhere,
        );
      }
    }
    return any;
  };
  const isThere = take((word) =>
    word === typed ? near.exact : word.startsWith(typed) ? near.beginning : near.not,
  );
  // Shorter ones are one letter off from too many.
  if (!isThere && typed.length >= 4) take((word) => (isSlipped(typed, word) ? near.slip : near.not));
  return nearness;
}

/** Of the word, or of as much of it as is typed. */
function isSlipped(typed: string, word: string): boolean {
  return [-1, 0, 1].some((more) => isOneSlipFrom(typed, word.slice(0, typed.length + more)));
}

const inAll = ([first = [], ...rest]: readonly (readonly number[])[]): readonly number[] =>
  first.filter((at) => rest.every((list) => list.includes(at)));
