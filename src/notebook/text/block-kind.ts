/**
 * What the reading of one kind of block is made of. Markdown's own kinds are found by the token that the lexer gives
 * them; ours are fenced, and found by the first word after the fence.
 */
import type { MarkedToken, Token } from 'marked';
import type { Block, CellPlace, FormulaPlace, TextFault, HeadingPlace, Inline } from './page-text';

/** What is found on the way, in the order in which it stands. */
export interface Noted {
  readonly faults: TextFault[];
  readonly headings: HeadingPlace[];
  readonly headingIds: Set<string>;
  /** Cells by the name that each goes by. */
  readonly places: Map<string, CellPlace>;
  /** How often each of them is shown. */
  readonly shown: Map<string, number>;
  /** Formulas by their names, and how often each is shown. */
  readonly formulas: Map<string, FormulaPlace>;
  readonly shownFormulas: Map<string, number>;
  /** Names of the questions, and whether there is a place for numbers of one's own. */
  readonly asks: Set<string>;
  hasSeed: boolean;
  /** How many cells are shown in all, and how many numbers and comparisons stand in the text. */
  cells: number;
  numbers: number;
}

/** A fenced block of ours. */
export interface Fence {
  /** What stands after the word: of `cell scarf as keelScarf` it is `scarf as keelScarf`. */
  readonly info: string;
  readonly text: string;
  /** As typed, with its fences. */
  readonly raw: string;
}

/** Where in the notebook something stands, and what to read its inside with. */
export interface BlockReading {
  readonly found: Noted;
  readonly line: number;
  /** Within how many lists, quotes and texts that turn on a comparison. */
  readonly depth: number;
  /** Whether it stands in a text that turns on a comparison, where nothing may be that is linked to. */
  readonly turns: boolean;
  /** What the lexer found inside, from this line on. */
  readonly blocks: (tokens: readonly Token[], line?: number) => Block[];
  /** A text that is Markdown again, and turns on a comparison. */
  readonly turning: (markdown: string, line: number) => Block[];
  readonly inlines: (tokens: readonly Token[], line?: number) => Inline[];
  /** A fault that stands here, with the text that caused it. */
  readonly fault: (says: string, text: string, line?: number) => TextFault;
}

export interface BlockKind {
  readonly finds: (token: MarkedToken) => boolean;
  readonly read: (token: MarkedToken, reading: BlockReading) => readonly Block[];
}

type TokenOf<T extends MarkedToken['type']> = Extract<MarkedToken, { type: T }>;

/** A kind that Markdown has of its own. */
export function markdownKind<T extends MarkedToken['type']>(
  types: readonly T[],
  read: (token: TokenOf<T>, reading: BlockReading) => readonly Block[],
): BlockKind {
  const isOurs = (token: MarkedToken): token is TokenOf<T> => types.some((type) => type === token.type);
  return { finds: isOurs, read: (token, reading) => (isOurs(token) ? read(token, reading) : []) };
}

/** A kind of ours: a fenced block that begins with this word. One that is never closed is not read. */
export function fencedKind(
  word: string,
  read: (fence: Fence, reading: BlockReading) => readonly Block[],
): BlockKind {
  const isOurs = (token: MarkedToken): token is TokenOf<'code'> =>
    token.type === 'code' && token.codeBlockStyle !== 'indented' && token.lang?.split(/\s+/, 1)[0] === word;
  return {
    finds: isOurs,
    read: (token, reading) => {
      if (!isOurs(token)) return [];
      const { text, raw, lang = '' } = token;
      // A fence that is never closed swallows all below it.
      return /\n {0,3}(`{3,}|~{3,})\s*$/.test(raw)
        ? read({ info: lang.slice(word.length).trim(), text, raw }, reading)
        : [reading.fault('This block is never closed: end it with ``` on a line of its own.', raw)];
    },
  };
}
