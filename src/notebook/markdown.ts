/**
 * From a notebook's Markdown to its tree of plain JSON.
 *
 * marked's lexer finds the blocks and spans; its tokens are turned into our own, and nothing is ever
 * written as HTML. A file from a stranger is text like any other: sizes and depths are bounded, and
 * what can't be read becomes a fault in its place.
 */
import { Lexer, type MarkedToken, type Token } from 'marked';
import { readCondition } from './condition';
import { type Fence, faultOf, openFault, readFence } from './fence';
import { LAST, readFrontMatter } from './front-matter';
import { linesIn, readInlines } from './inline';
import { type Block, type CellPlace, type Fault, type Inline, type NotebookPage, wordsOf } from './page-text';

export { headOf } from './head';
export { faultsOf } from './page-text';

/** A long notebook is 30 000 characters; beyond these bounds the lexer may take more time than a reader has. */
const LONGEST_FILE = 300_000;
const LONGEST_LINE = 4_000;
const DEEPEST = 8;
const TOO_DEEP = new RegExp(`^\\s*((>|[-*+]\\s|\\d+[.)]\\s)\\s*){${DEEPEST + 1}}`);

/**
 * Reads a notebook. Never throws: what is wrong stands in the page as faults, with lines counted from 1.
 *
 * @param fileName its last part, without the ending, becomes the page's id
 */
export function parseNotebook(text: string, fileName: string): NotebookPage {
  const id = slug(fileName.replace(/^.*[\\/]/, '').replace(/\.(md|markdown|txt)$/i, '')) || 'notebook';
  const source = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const tooMuch = boundsFault(source);
  if (tooMuch) return { id, title: id, summary: '', stage: null, order: LAST, boat: null, blocks: [tooMuch] };

  const head = readFrontMatter(source);
  const read = blockReader();
  let blocks: Block[];
  try {
    blocks = read(new Lexer({ gfm: true }).lex(head.rest), head.lines + 1);
  } catch {
    // The lexer goes down into nested marks by calling itself; only a file made to harm goes so deep.
    blocks = [fault(head.lines + 1, 'This file has marks within marks too deep to be read.', '')];
  }
  const firstHeading = blocks.find((block) => block.type === 'heading');
  const headingWords = firstHeading ? wordsOf(firstHeading.inside).trim() : '';
  const title = head.says.title ?? (headingWords || id.replaceAll('-', ' '));
  return { id, ...head.says, title, blocks: [...head.faults, ...oneMeaningEach(blocks)] };
}

function boundsFault(source: string): Fault | undefined {
  if (source.length > LONGEST_FILE) {
    return fault(1, `This file is too long for a notebook; ${LONGEST_FILE} characters is the most.`, '');
  }
  const lines = source.split('\n');
  const long = lines.findIndex((line) => line.length > LONGEST_LINE);
  if (long >= 0) return fault(long + 1, `This line is too long; ${LONGEST_LINE} characters is the most.`, '');
  const deep = lines.findIndex((line) => TOO_DEEP.test(line));
  if (deep >= 0) return fault(deep + 1, 'This line is too deep within lists or quotes to be read.', '');
  return undefined;
}

/** Reads blocks, giving each heading of the page an id of its own. */
function blockReader(): (tokens: readonly Token[], line: number) => Block[] {
  const taken = new Set<string>();

  function headingId(inside: readonly Inline[]): string {
    const plain = slug(wordsOf(inside)) || 'part';
    let id = plain;
    for (let n = 2; taken.has(id); n += 1) id = `${plain}-${n}`;
    taken.add(id);
    return id;
  }

  function readBlocks(tokens: readonly Token[], line: number, depth: number): Block[] {
    let at = line;
    return tokens.flatMap((token) => {
      const blocks = readBlock(token as MarkedToken, at, depth);
      at += linesIn(token.raw);
      return blocks;
    });
  }

  /** In a list without gaps the box to tick stands before the item's first line, not in it. */
  function readItem(tokens: readonly Token[], line: number, depth: number): Block[] {
    const [box, ...rest] = tokens as readonly MarkedToken[];
    if (box?.type !== 'checkbox') return readBlocks(tokens, line, depth);
    const [first, ...others] = readBlocks(rest, line, depth);
    const words = first?.type === 'paragraph' ? first.inside : [];
    const ticked: Inline = { type: 'box', says: wordsOf(words).trim(), ticked: box.checked };
    if (first?.type !== 'paragraph')
      return [{ type: 'paragraph', inside: [ticked] }, ...(first ? [first] : []), ...others];
    return [{ ...first, inside: [ticked, ...first.inside] }, ...others];
  }

  /** The text within is Markdown again. */
  function readWhen(fence: Fence, depth: number): Block[] {
    const open = openFault(fence);
    if (open) return [open];
    if (depth === DEEPEST) return [faultOf(fence, 'This is too deep within lists or quotes to be read.')];
    const holds = readCondition(fence.info.slice('when'.length));
    if (typeof holds === 'string') return [faultOf(fence, holds)];
    const blocks = readBlocks(new Lexer({ gfm: true }).lex(fence.text), fence.line + 1, depth + 1);
    const stays = blocks.find(holdsWhatStays);
    if (stays)
      return [faultOf(fence, 'A cell or a heading stays where it is; only text can turn on a comparison.')];
    return [{ type: 'when', holds, blocks, line: fence.line }];
  }

  function readBlock(token: MarkedToken, line: number, depth: number): Block[] {
    if (depth === DEEPEST && (token.type === 'blockquote' || token.type === 'list')) {
      return [fault(line, 'This is too deep within lists or quotes to be read.', token.raw)];
    }
    // oxlint-disable-next-line typescript/switch-exhaustiveness-check -- the default takes all that is not ours
    switch (token.type) {
      case 'space':
      case 'def':
        return [];
      case 'heading': {
        const inside = readInlines(token.tokens, line);
        return [{ type: 'heading', level: token.depth, id: headingId(inside), inside }];
      }
      case 'code': {
        const fence = { info: token.lang ?? '', text: token.text, raw: token.raw, line };
        if (token.codeBlockStyle !== 'indented' && /^when\b/.test(fence.info)) return readWhen(fence, depth);
        const ours = token.codeBlockStyle === 'indented' ? null : readFence(fence);
        return ours === null ? [{ type: 'code', text: token.text }] : Array.isArray(ours) ? ours : [ours];
      }
      case 'hr':
        return [{ type: 'rule' }];
      case 'blockquote':
        return [{ type: 'quote', blocks: readBlocks(token.tokens, line, depth + 1) }];
      case 'list': {
        let at = line;
        const items = token.items.map((item) => {
          const blocks = readItem(item.tokens, at, depth + 1);
          at += linesIn(item.raw);
          return blocks;
        });
        return [{ type: 'list', from: token.ordered ? Number(token.start) : null, items }];
      }
      case 'table': {
        // The lexer gives no lines within a table: a cell's row is its place below the head and the rule.
        const head = token.header.map((cell) => readInlines(cell.tokens, line));
        const rows = token.rows.map((row, at) => row.map((cell) => readInlines(cell.tokens, line + 2 + at)));
        return [{ type: 'table', align: token.align, head, rows }];
      }
      case 'paragraph':
      case 'text':
        return [{ type: 'paragraph', inside: readInlines(token.tokens ?? [token], line) }];
      default:
        // Raw HTML, and whatever marked may come to know: as it was typed.
        return [{ type: 'paragraph', inside: [{ type: 'text', text: token.raw.trimEnd() }] }];
    }
  }

  return (tokens, line) => readBlocks(tokens, line, 0);
}

/** Cells and headings are linked to from elsewhere, so that they can't come and go. */
function holdsWhatStays(block: Block): boolean {
  if (block.type === 'list') return block.items.flat().some(holdsWhatStays);
  if (block.type === 'quote') return block.blocks.some(holdsWhatStays);
  return block.type === 'cell' || block.type === 'heading';
}

/** A name may be shown again, but it stands for one cell, set up once. Later places that differ become faults. */
function oneMeaningEach(blocks: readonly Block[]): Block[] {
  const known = new Map<string, CellPlace>();

  function checked(place: CellPlace): Block {
    const first = known.get(place.instance);
    if (!first) {
      known.set(place.instance, place);
      return place;
    }
    if (first.cell !== place.cell) {
      const says = `"${place.instance}" already stands for the cell "${first.cell}" on line ${first.line}; give this one another name.`;
      return fault(place.line, says, textOf(place));
    }
    if (Object.keys(place.presets).length > 0) {
      const says = `"${place.instance}" is already set up on line ${first.line}; to show it again, leave this block without lines.`;
      return fault(place.line, says, textOf(place));
    }
    return place;
  }

  const walk = (inside: readonly Block[]): Block[] =>
    inside.map((block) => {
      if (block.type === 'cell') return checked(block);
      if (block.type === 'quote') return { ...block, blocks: walk(block.blocks) };
      if (block.type === 'list') return { ...block, items: block.items.map(walk) };
      return block;
    });
  return walk(blocks);
}

function textOf({ cell, instance, presets }: CellPlace): string {
  const lines = Object.entries(presets).map(([key, entry]) => `${key} = ${entry}`);
  return [`cell ${cell}${instance === cell ? '' : ` as ${instance}`}`, ...lines].join('\n');
}

/** Words as a name for an address: `What goes wrong?` -> `what-goes-wrong`. */
function slug(words: string): string {
  return words
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\u0300-\u036f'’]/g, '')
    .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
}

function fault(line: number, says: string, text: string): Fault {
  return { type: 'fault', line, says, text };
}
