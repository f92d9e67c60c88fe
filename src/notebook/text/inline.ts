/** Stretches of text within a block: from marked's tokens to our own tree. */
import type { MarkedToken, Token } from 'marked';
import type { Noted } from './block-kind';
import { readCondition } from './condition';
import type { Inline } from './page-text';
import { curled } from './quotes';

const NAME = /^[a-z][A-Za-z0-9]*(\.[a-z][A-Za-z0-9]*)+$/;
const DEEPEST = 12;
/** Numbers and comparisons that follow the boat, in one notebook; the longest that comes along has a tenth. */
const MOST_NUMBERS = 1000;

/**
 * @param line the line of the notebook on which the first token stands
 * @param before the letter before it, if there is one
 */
export function readInlines(
  tokens: readonly Token[],
  line: number,
  found: Noted,
  depth = 0,
  before = '',
): Inline[] {
  let at = line;
  let last = before;
  const inlines = tokens.flatMap((token) => {
    const read = readInline(token as MarkedToken, at, found, depth, last);
    at += linesIn(token.raw);
    last = token.raw.slice(-1);
    return read;
  });
  return joined(inlines);
}

/** The same text with neighbouring pieces of plain text made one. */
function joined(inlines: readonly Inline[]): Inline[] {
  const whole: Inline[] = [];
  for (const inline of inlines) {
    const last = whole.at(-1);
    if (inline.type === 'text' && last?.type === 'text')
      whole[whole.length - 1] = text(last.text + inline.text);
    else whole.push(inline);
  }
  return whole;
}

function readInline(token: MarkedToken, line: number, found: Noted, depth: number, before: string): Inline[] {
  if (depth > DEEPEST) return [text(token.raw)];
  const within = (tokens: readonly Token[]) => readInlines(tokens, line, found, depth + 1, before);
  const fault = (says: string): Inline => {
    const one = { type: 'fault', line, says, text: token.raw } as const;
    found.faults.push(one);
    return one;
  };
  // oxlint-disable-next-line typescript/switch-exhaustiveness-check -- the default takes all that is not ours
  switch (token.type) {
    case 'text':
      if (token.tokens) return within(token.tokens);
      return [text(token.escaped ? token.text : withCharacters(curled(token.text, before)))];
    case 'escape':
      return [text(token.text)];
    case 'strong':
      return [{ type: 'strong', inside: within(token.tokens) }];
    case 'em':
      return [{ type: 'emphasis', inside: within(token.tokens) }];
    case 'codespan':
      return readCodeSpan(token.text, line, found, fault);
    case 'br':
      return [{ type: 'break' }];
    case 'checkbox':
      return [{ type: 'box', label: '', ticked: token.checked }];
    case 'link':
      // A web or mail address typed in passing is literal; in a link's brackets it may hold entities.
      if (token.autolink)
        return [isOpenTo(token.href) ? link(token.href, [text(token.text)]) : text(token.raw)];
      return [readLink(withCharacters(token.href), within(token.tokens), fault)];
    case 'image':
      // Pictures can't come with a notebook; what is left is the way to the picture.
      return [readLink(withCharacters(token.href), [text(withCharacters(token.text))], fault)];
    case 'del':
      return [text('~~'), ...within(token.tokens), text('~~')];
    default:
      // Raw HTML, and whatever marked may come to know: as it was typed.
      return [text(token.raw)];
  }
}

type Tell = (says: string) => Inline;

function readCodeSpan(code: string, line: number, found: Noted, fault: Tell): Inline[] {
  if (!/^[?=]/.test(code)) return [{ type: 'code', text: code }];
  found.numbers += 1;
  if (found.numbers > MOST_NUMBERS) {
    const says = `A notebook has ${MOST_NUMBERS} numbers and comparisons in its text at most. From here on they stand as they are typed.`;
    return [...(found.numbers === MOST_NUMBERS + 1 ? [fault(says)] : []), { type: 'code', text: code }];
  }
  if (code.startsWith('?')) return [readWordsWhen(code.slice(1), line, fault)];
  const name = code.slice(1).trim();
  if (NAME.test(name)) return [{ type: 'value', of: name, line }];
  return [
    fault(
      `A live value is "=" and the name of one quantity, as in \`= scarf.taper\`; "${name}" is not a name.`,
    ),
  ];
}

/** `? stem.rake: the stem | the bow`: what must hold, a colon, the words, and after a bar what is said otherwise. */
function readWordsWhen(code: string, line: number, fault: Tell): Inline {
  const [, condition = code, words = '', otherwise = ''] = /^([^:]*):([^|]*)(?:\|(.*))?$/s.exec(code) ?? [];
  const holds = readCondition(condition);
  if (typeof holds === 'string') return fault(holds);
  if (words.trim() === '')
    return fault('After what must hold stands a colon and the words that are said then.');
  const said = (words: string) => (words.trim() === '' ? [] : [text(curled(words.trim()))]);
  return { type: 'when', holds, inside: said(words), otherwise: said(otherwise), line };
}

function readLink(to: string, inside: readonly Inline[], fault: Tell): Inline {
  return isOpenTo(to)
    ? link(to, inside)
    : fault(
        'A link may lead to a web page (http or https), to a file beside this one or to a heading (#...).',
      );
}

function link(to: string, inside: readonly Inline[]): Inline {
  return { type: 'link', to, inside };
}

/**
 * Whether a link may lead there. The browser's own reading of the address decides, since it drops
 * tabs and line ends and takes backslashes for slashes: whatever leaves this site must say http or https.
 */
function isOpenTo(to: string): boolean {
  try {
    const staysHere = ['http://notebook.invalid/', 'https://notebook.invalid/'].every((here) =>
      new URL(to, here).href.startsWith(here),
    );
    return staysHere || /^https?:\/\//i.test(to);
  } catch {
    return false;
  }
}

/** Entities that writers of Markdown use; any other stays as typed. */
const characters: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: '\u00a0',
  ndash: '–',
  mdash: '—',
  hellip: '…',
  deg: '°',
  times: '×',
  divide: '÷',
  minus: '−',
  plusmn: '±',
  frac14: '¼',
  frac12: '½',
  frac34: '¾',
  prime: '′',
  Prime: '″',
};

function withCharacters(typed: string): string {
  return typed.replace(
    /&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|([a-z0-9]{2,8}));/gi,
    (entity, hex, decimal, name) => {
      if (typeof name === 'string')
        return Object.hasOwn(characters, name) ? (characters[name] ?? entity) : entity;
      const code = typeof hex === 'string' ? Number.parseInt(hex, 16) : Number(decimal);
      const isCharacter = code > 0 && code <= 0x10ffff && (code < 0xd800 || code > 0xdfff);
      return isCharacter ? String.fromCodePoint(code) : '\ufffd';
    },
  );
}

export function linesIn(raw: string): number {
  return raw.split('\n').length - 1;
}

function text(words: string): Inline {
  return { type: 'text', text: words };
}
