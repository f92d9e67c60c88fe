/**
 * The first pass over a sum: it parts the text into quantities, names, functions and signs, and refuses what does
 * not belong or stands in the wrong place. Only what passes here reaches the parser, with a symbol for each quantity.
 */
import { type Issue, isIssue, issue } from './issue';
import { literalAt, valueOf } from './literal';
import { nearestNames } from './names';
import { skip } from './numeral';
import { faultOfOrder, type Meaning, type PlacedToken, type Token } from './tokens';
import { unitAt, unitSpellings } from './units';
import { constants, functions } from './vocabulary';

export interface Scanned {
  /** The sum over symbols, for the parser. */
  readonly sum: string;
  readonly meanings: ReadonlyMap<string, Meaning>;
  /** Functions called, each once, that are not of the vocabulary. */
  readonly called: readonly string[];
  readonly tokens: readonly PlacedToken[];
}

export interface ScanRules {
  /** The field holds a length: `5-3-4` is feet, inches and eighths. */
  readonly length: boolean;
  /** Undotted words that are no names may be units: `kg` for 1 kg. */
  readonly unitWords: boolean;
  /** True for an undotted word that is a name. Dotted words always are. */
  readonly isName: (word: string) => boolean;
  /** True for a function besides those of the vocabulary. */
  readonly isFunction: (word: string) => boolean;
  /** What to say of an unknown word. */
  readonly unknown: (word: string) => string;
  /** What a name stands for, in words. */
  readonly meaningOf?: (name: string) => string | undefined;
  /** Makes the issue of a sentence that lacks its subject: `divides by zero`. */
  readonly fault: (predicate: string) => Issue;
}

export function scan(text: string, rules: ScanRules): Scanned | Issue {
  const tokens = tokensOf(text, rules);
  if (isIssue(tokens)) return tokens;
  const fault = faultOfOrder(tokens);
  if (fault) return fault;

  const meanings = new Map<string, Meaning>();
  const symbols = new Map<string, string>();
  const parts = tokens.map((token) => {
    if (token.is !== 'value') return token.text;
    // One symbol for the same text, so that a name is asked for once.
    const symbol = symbols.get(token.text) ?? `_${meanings.size}`;
    symbols.set(token.text, symbol);
    meanings.set(symbol, token.meaning);
    return symbol;
  });
  const called = tokens
    .filter(({ is, text }) => is === 'call' && !functions.has(text))
    .map(({ text }) => text);
  return { sum: parts.join(' '), meanings, called: [...new Set(called)], tokens };
}

function tokensOf(text: string, rules: ScanRules): PlacedToken[] | Issue {
  const tokens: PlacedToken[] = [];
  /** Brackets that are open; true for those of a function. */
  const brackets: boolean[] = [];
  for (let at = skip(text, 0); at < text.length; at = skip(text, at)) {
    const last = tokens.at(-1);
    const found =
      numberAt(text, at, tokens, brackets.at(-1) === true, rules) ??
      wordAt(text, at, last, rules) ??
      signAt(text, at, last);
    if (isIssue(found)) return { ...found, at };
    const { token, end } = found;
    if (token.is === '(') brackets.push(last?.is === 'call');
    if (token.is === ')') brackets.pop();
    // The minus of -5 °C has gone into the value.
    if (token.is === 'value' && token.text.startsWith('-')) tokens.pop();
    tokens.push({ ...token, at, end });
    at = end;
  }
  return tokens;
}

type Found = { readonly token: Token; readonly end: number } | Issue;

function numberAt(
  text: string,
  at: number,
  tokens: readonly Token[],
  commaParts: boolean,
  rules: ScanRules,
): Found | undefined {
  const last = tokens.at(-1);
  const after = last?.is === 'operator' ? last.text : '';
  const literal = literalAt(text, at, { length: rules.length, after, commaParts });
  if (!literal || isIssue(literal)) return literal;
  const { end, unit, dimension, fraction } = literal;
  const written = text.slice(at, end);
  if (fraction && unit && /[/^]/.test(after))
    return issue(`put brackets round "${written}" after the "${after}"`);
  const negative = unit?.zero !== undefined && after === '-' && opensBefore(tokens);
  const value = valueOf(literal, negative);
  if (!Number.isFinite(value)) return issue(`"${written}" is too large a number`);
  const shown = negative ? `-${written}` : written;
  const made = unit?.zero ? 'zeroed' : unit ? 'united' : 'bare';
  return {
    token: { is: 'value', text: shown, meaning: { is: 'literal', text: shown, value, dimension, made } },
    end,
  };
}

/** True if the last token, a sign, belongs to what follows and does not join it to something before. */
function opensBefore(tokens: readonly Token[]): boolean {
  const before = tokens.at(-2);
  return before === undefined || !(before.is === 'value' || before.is === ')');
}

const word = /[A-Za-z][A-Za-z0-9_]*(?:\.[A-Za-z0-9_]+)*/y;

function wordAt(text: string, at: number, last: Token | undefined, rules: ScanRules): Found | undefined {
  word.lastIndex = at;
  const name = word.exec(text)?.[0];
  // Units of signs alone, as in `2 / °`, stand for one of them too.
  if (name === undefined) return choiceAt(text, at, last);
  const end = at + name.length;
  if (name === 'and' || name === 'or' || name === 'not')
    return { token: { is: 'operator', text: name }, end };
  if (text[skip(text, end)] === '(' && !name.includes('.')) {
    return functions.has(name) || rules.isFunction(name)
      ? { token: { is: 'call', text: name }, end }
      : issue(`there is no function "${name}"${offer(nearestNames(name, functions.keys()))}`);
  }
  const value = (meaning: Meaning, to = end): Found => ({
    token: { is: 'value', text: text.slice(at, to), meaning },
    end: to,
  });
  if (name.includes('.') || rules.isName(name)) return value({ is: 'name', name });
  if (constants.has(name)) return value({ is: 'constant', name });
  const united = rules.unitWords ? unitAt(text, at) : undefined;
  if (united && united.end >= end && !united.unit.zero) {
    const written = text.slice(at, united.end);
    const one = valueOf(
      {
        end: united.end,
        amount: united.unit.factor,
        unit: united.unit,
        dimension: united.unit.dimension,
        fraction: false,
      },
      false,
    );
    return value(
      { is: 'literal', text: written, value: one, dimension: united.unit.dimension, made: 'united' },
      united.end,
    );
  }
  return issue(unknownWord(name, last, rules));
}

const quoted = /"([A-Za-z][A-Za-z0-9]*)"/y;

/** A choice, named in quotation marks: `"whiteOak"`. */
function choiceAt(text: string, at: number, last: Token | undefined): Found | undefined {
  quoted.lastIndex = at;
  const id = last?.is === 'value' ? undefined : quoted.exec(text)?.[1];
  return id === undefined
    ? undefined
    : { token: { is: 'value', text: `"${id}"`, meaning: { is: 'choice', id } }, end: at + id.length + 2 };
}

const operator = /<=|>=|==|!=|[-+*/^<>?:]/y;

function signAt(text: string, at: number, last: Token | undefined): Found {
  const mark = text.charAt(at);
  if (mark === '(' || mark === ')' || mark === ',') return { token: { is: mark, text: mark }, end: at + 1 };
  operator.lastIndex = at;
  const found = operator.exec(text)?.[0];
  if (found !== undefined) return { token: { is: 'operator', text: found }, end: at + found.length };
  if (mark === '=') return issue('one "=" has no meaning here; write "==" to compare');
  const odd = String.fromCodePoint(text.codePointAt(at) ?? 0);
  return issue(`"${odd}" has no meaning ${last ? `after "${last.text}"` : 'at the start'}`);
}

function unknownWord(name: string, last: Token | undefined, rules: ScanRules): string {
  // After a bare number the word was meant for a unit.
  if (last?.is === 'value' && last.meaning.is === 'literal' && last.meaning.made === 'bare') {
    return `there is no unit "${name}"${offer(nearestNames(name, unitSpellings))}`;
  }
  return rules.unknown(name);
}

function offer(near: readonly string[]): string {
  return near.length > 0 ? `; nearest: ${near.join(', ')}` : '';
}
