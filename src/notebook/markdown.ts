/**
 * From a notebook's Markdown to its tree of plain JSON: the one reader, for those that come along when the page is
 * built, and for the builder's own where the page runs.
 *
 * marked's lexer finds the blocks and spans; its tokens are turned into our own, each kind of block by its own file,
 * and nothing is ever written as HTML. A file from a stranger is text like any other: sizes and depths are bounded,
 * and what can't be read becomes a fault in its place.
 */
import { Lexer, type MarkedToken, type Token } from 'marked';
import type { Noted, BlockReading } from './text/block-kind';
import { kinds } from './blocks/kinds';
import { LONGEST_PARAGRAPH } from './blocks/paragraph';
import { LONGEST_NOTEBOOK } from '../boat/file/own-notebooks';
import { type Head, LAST, LONGEST_TITLE, readFrontMatter } from './text/front-matter';
import { linesIn, readInlines } from './text/inline';
import { type Block, type TextFault, type NotebookPage, wordsOf } from './text/page-text';
import { notePieces, type TextPiece, spanOf } from './text/pieces';
import { curled } from './text/quotes';
import { idOf } from './text/slug';

export { headOf, packHead } from './text/head';
export { piecesOf } from './text/pieces';

/** Beyond these bounds the lexer may take more time than a reader has. */
const MOST_LINES = 10_000;
const LONGEST_LINE = 4_000;
const DEEPEST = 8;
const TOO_DEEP = new RegExp(`^\\s*((>|[-*+]\\s|\\d+[.)]\\s)\\s*){${DEEPEST + 1}}`);

/**
 * Reads a notebook. Never throws: what is wrong stands in the page as faults, with lines counted from 1.
 *
 * @param fileName its last part, without the ending, becomes the page's id
 */
export function parseNotebook(text: string, fileName: string): NotebookPage {
  const id = idOf(fileName);
  const source = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const found = nothingFound();
  if (source.length > LONGEST_NOTEBOOK) {
    const says = `This notebook is too long; ${LONGEST_NOTEBOOK} characters is the most.`;
    return page(id, noHead, [{ first: 1, last: 1, blocks: [faultIn(found, 1, says, '')] }], found);
  }
  const head = readFrontMatter(source);
  found.faults.push(...head.faults);
  const pieces = readAll(head.rest, head.lines + 1, found);
  return page(id, head, pieces, found, head.faults);
}

const noHead: Pick<Head, 'written'> = {
  written: { title: null, summary: '', stage: null, order: LAST, boat: null },
};

function nothingFound(): Noted {
  return {
    faults: [],
    headings: [],
    headingIds: new Set(),
    places: new Map(),
    shown: new Map(),
    formulas: new Map(),
    shownFormulas: new Map(),
    asks: new Set(),
    hasSeed: false,
    cells: 0,
    numbers: 0,
  };
}

function page(
  id: string,
  { written }: Pick<Head, 'written'>,
  pieces: readonly TextPiece[],
  found: Noted,
  above: readonly Block[] = [],
): NotebookPage {
  const blocks = [...above, ...pieces.flatMap((piece) => piece.blocks)];
  const heading = blocks.find((block) => block.type === 'heading');
  const words = heading ? wordsOf(heading.inside).trim().slice(0, LONGEST_TITLE) : '';
  const title = written.title === null ? words || id.replaceAll('-', ' ') : curled(written.title);
  return notePieces(
    {
      id,
      ...written,
      title,
      summary: curled(written.summary),
      blocks,
      places: [...found.places.values()],
      ...(found.formulas.size > 0 && { formulas: [...found.formulas.values()] }),
      headings: found.headings,
      faults: found.faults.toSorted((a, b) => a.line - b.line),
    },
    pieces,
  );
}

/** @param from the line of the notebook on which the text begins */
function readAll(text: string, from: number, found: Noted): TextPiece[] {
  const { whole, left } = withoutHarm(text, from, found);
  let tokens: readonly Token[];
  try {
    tokens = lexed(whole);
  } catch {
    // The lexer goes down into nested marks by calling itself; only a file made to harm goes so deep.
    const says = 'This notebook has marks within marks too deep to be read.';
    const last = from + linesIn(text);
    return [{ first: from, last, blocks: [faultIn(found, from, says, '')] }];
  }
  const lines = [...Array<string>(from - 1).fill(''), ...text.split('\n')];
  let line = from;
  const pieces = tokens.map((token): TextPiece => {
    const read = readBlocks([token], { line, depth: 0, turns: false, found });
    const span = spanOf(lines, line, token.raw);
    line += linesIn(token.raw);
    // What was left out is told below the block in which it stood.
    const told = left.findIndex((fault) => fault.line >= line);
    return { ...span, blocks: [...read, ...left.splice(0, told < 0 ? left.length : told)] };
  });
  const below = left.map((fault, at): TextPiece => {
    const last = (left[at + 1]?.line ?? lines.length + 1) - 1;
    return { first: fault.line, last, blocks: [fault] };
  });
  return [...pieces, ...below];
}

/** The text with each line left blank that the lexer is to be spared, and what is said of these. */
function withoutHarm(text: string, from: number, found: Noted): { whole: string; left: TextFault[] } {
  const left: TextFault[] = [];
  const lines = text.split('\n');
  const tooMany = lines[MOST_LINES];
  const spared = lines.slice(0, MOST_LINES).map((line, at) => {
    const says =
      line.length > LONGEST_LINE
        ? `This line is too long; ${LONGEST_LINE} characters is the most.`
        : TOO_DEEP.test(line)
          ? 'This line is too deep within lists or quotes to be read.'
          : null;
    if (says === null) return line;
    left.push(faultIn(found, from + at, says, line.length > BRIEF ? `${line.slice(0, BRIEF)} …` : line));
    return '';
  });
  if (tooMany !== undefined) {
    const says = `A notebook is read to ${MOST_LINES} lines at most. This one and those below are left out.`;
    left.push(faultIn(found, from + MOST_LINES, says, tooMany.slice(0, BRIEF)));
  }
  return { whole: spared.join('\n'), left };
}
/** Letters of a line that are shown where it is left out. */
const BRIEF = 80;

/** As the lexer's own `lex`, but that no paragraph is gone through whose marks might keep it for minutes. */
function lexed(text: string): readonly Token[] {
  const lexer = new Lexer({ gfm: true });
  lexer.blockTokens(text, lexer.tokens);
  for (const { src, tokens } of lexer.inlineQueue) {
    if (src.length <= LONGEST_PARAGRAPH) lexer.inlineTokens(src, tokens);
    else tokens.push({ type: 'text', raw: src, text: src, escaped: true });
  }
  lexer.inlineQueue = [];
  return lexer.tokens;
}

/** @param at where the block stands in which the others are */
function readingAt(at: Pick<BlockReading, 'line' | 'depth' | 'turns' | 'found'>): BlockReading {
  const { found } = at;
  return {
    ...at,
    blocks: (tokens, line = at.line) => readBlocks(tokens, { ...at, line, depth: at.depth + 1 }),
    turning: (markdown, line) =>
      readBlocks(lexed(markdown), { ...at, line, depth: at.depth + 1, turns: true }),
    inlines: (tokens, line = at.line) => readInlines(tokens, line, found),
    fault: (says, text, line = at.line) => faultIn(found, line, says, text),
  };
}

function readBlocks(
  tokens: readonly Token[],
  first: Pick<BlockReading, 'line' | 'depth' | 'turns' | 'found'>,
): Block[] {
  let { line } = first;
  return tokens.flatMap((token) => {
    const reading = readingAt({ ...first, line });
    line += linesIn(token.raw);
    const known = token as MarkedToken;
    return kinds.find((kind) => kind.finds(known))?.read(known, reading) ?? [];
  });
}

function faultIn(found: Noted, line: number, says: string, text: string): TextFault {
  const fault: TextFault = { type: 'fault', line, says, text };
  found.faults.push(fault);
  return fault;
}
