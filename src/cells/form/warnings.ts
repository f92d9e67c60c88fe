/** Which of a cell's warnings apply, with the numbers put in. */
import type { Read } from '../../boat';
import {
  type Formula,
  type Issue,
  isIssue,
  type KindId,
  putBefore,
  type WriteOptions,
  type Written,
} from '../../measure';
import type { Cell, Values, Warning, WordsWhen } from './define';
import { type Instance, isChoice } from './instance';
import { mannerOf } from './manner';
import { compiled, evaluateFormula, valueOf } from './steps';

export interface Applies {
  /** Stays the same while the numbers in the sentence change: `bend.1`. */
  readonly name: string;
  readonly warning: Warning;
  readonly says: string;
  /** The same sentence in other units, with the numbers as they were. */
  readonly tell: Tell;
}

/** Writes a value in the units chosen. */
export type Say = (value: number, kind: KindId, options?: WriteOptions) => Written;

/** A sentence that holds its numbers and is told in whatever units are chosen when it is read. */
export type Tell = (say: Say) => string;

/** Works something out from the graph; a missing value makes an issue of it. */
export type Work = <T>(by: (read: Read) => T) => T | Issue;

/**
 * @param say writes a value in the chosen units
 * @returns the warnings that apply; one whose values are still missing does not, and silences no other
 */
export function warningsOf(instance: Instance, work: Work, say: Say): Applies[] {
  const { cell, name } = instance;
  return cell.warnings.flatMap((warning, index) => {
    const tell = work((read) => {
      const verdict = evaluateFormula(compiled(cell, warning.when), (key) => valueOf(instance, key, read));
      return isIssue(verdict) || verdict === 0 ? null : inWords(instance, warning, read);
    });
    return isIssue(tell) || tell === null
      ? []
      : [{ name: `${name}.${index + 1}`, warning, says: tell(say), tell }];
  });
}

/**
 * The cell's answers without those that have no sense here. Of what can't be told yet only the answers of one
 * condition are said to wait: the others may be what stands in their place.
 */
export function answersOf(instance: Instance, work: Work): Cell['answers'] {
  const { cell } = instance;
  const holds = ({ when = '1' }: Cell['answers'][number]) =>
    work((read) => evaluateFormula(compiled(cell, when), (key) => valueOf(instance, key, read)));
  const untold = cell.answers.find((answer) => isIssue(holds(answer)))?.when;
  return cell.answers.filter((answer) => {
    const verdict = holds(answer);
    return isIssue(verdict) ? answer.when === untold : verdict !== 0;
  });
}

/** The result in one sentence. */
export function answerInWords(instance: Instance, read: Read, say: Say): string {
  const { cell } = instance;
  if (typeof cell.inWords === 'string') return inWords(instance, { says: cell.inWords }, read)(say);
  const holds = cell.inWords.find(({ when }) => {
    const verdict =
      when === undefined ? 1 : evaluateFormula(compiled(cell, when), (key) => valueOf(instance, key, read));
    return !isIssue(verdict) && verdict !== 0;
  });
  return holds ? inWords(instance, holds, read)(say) : '';
}

/** `{share}`, or `{boards?board:boards}`: a word for one and a word for more. */
const PLACE = /\{(\w+)(?:\?([^:{}]*):([^{}]*))?\}/g;
/** The same with the article before it and the word behind, which follow the number. */
const ARTICLED = /(\b[Aa]n? )?\{(\w+)(?:\?([^:{}]*):([^{}]*))?\}( (?!an? )[a-z]+)?/g;

/** The keys that a sentence puts in. */
export function keysIn(template: string): string[] {
  return [...template.matchAll(PLACE)].map(([, key = '']) => key);
}

/** A sentence of the cell with its values, to be put in as they are written. */
function inWords(instance: Instance, { says, when }: WordsWhen, read: Read): Tell {
  const { cell } = instance;
  const condition = when === undefined ? null : compiled(cell, when);
  const names = new Set([...keysIn(says), ...(condition?.names ?? [])]);
  const values = Object.fromEntries([...names].map((key) => [key, valueOf(instance, key, read)]));
  const keys = keysIn(says).filter((key) => typeof values[key] === 'number');
  return (say) => {
    const written = (finer: number): Numbers =>
      Object.fromEntries(
        keys.map((key) => [
          key,
          say(values[key] as number, kindOfKey(cell, key), { ...mannerOf(cell, key), finer }), // the keys are those of numbers
        ]),
      );
    const numbers = condition ? fineEnough(condition, values, written) : written(0);
    const told = says.replace(
      ARTICLED,
      (_, article: string | undefined, key: string, one?: string, many?: string, noun?: string) => {
        const value = values[key]!; // of the same keys
        const isOne = numbers[key]?.text === '1';
        if (one !== undefined) return ((isOne ? one : many) ?? '') + (noun ?? '');
        const text = typeof value === 'string' ? optionLabel(instance, key, value) : numbers[key]!.told;
        const after =
          noun !== undefined && isOne && isWhole(cell, key) ? ` ${oneOf(noun.trim())}` : (noun ?? '');
        return (article ? articleOf(article, text) : '') + text + after;
      },
    );
    return putBefore(told);
  };
}

type Numbers = Readonly<Record<string, Written>>;

/** How much more finely than usual a number beside its limit is written, at most. */
const FINEST = 4;

/**
 * The numbers of a sentence, written so finely that what they say is what makes the sentence true: `50.04 %, over the
 * 50 % allowed`. Where no fineness tells it, as usual.
 */
function fineEnough(condition: Formula, values: Values, written: (finer: number) => Numbers): Numbers {
  for (let finer = 0; finer <= FINEST; finer += 1) {
    const numbers = written(finer);
    const verdict = evaluateFormula(condition, (key) => numbers[key]?.written ?? values[key]!); // it names what was read
    if (!isIssue(verdict) && verdict !== 0) return numbers;
  }
  return written(0);
}

/** A count, or a number of whole things. */
const isWhole = (cell: Cell, key: string): boolean => ['count', 'number'].includes(kindOfKey(cell, key));

/** One of what a noun says many of: `boards`, `boxes`, `plies`, `people`; other words stand. */
export function oneOf(noun: string): string {
  if (noun === 'people') return 'person';
  if (/^(is|was|has|as|this|less|across)$/.test(noun)) return noun;
  return noun
    .replace(/ies$/, 'y')
    .replace(/(x|ch|sh|ss|o)es$/, '$1')
    .replace(/([^s])s$/, '$1');
}

/** `a ` or `an ` as what follows is spoken: an 8, an 18 mm, an 11/16 in, an ash plank. */
function articleOf(article: string, text: string): string {
  return `${article.charAt(0)}${/^(8|1[18](?!\d)|[aeiou])/i.test(text) ? 'n' : ''} `;
}

export function kindOfKey(cell: Cell, key: string): KindId {
  const spec = cell.inputs[key] ?? cell.steps[key];
  if (!spec) throw new Error(`${cell.id} has no input or step "${key}"`);
  return spec.kind;
}

/** Options of a boat's lists are named by what they are; their ids read well enough in a sentence: frame 3, the stem. */
function optionLabel(instance: Instance, key: string, id: string): string {
  const spec = instance.cell.inputs[key];
  const options = spec && isChoice(spec) && typeof spec.options !== 'string' ? spec.options : [];
  const words = id.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();
  return (
    options.find((option) => option.id === id)?.label ??
    (/^(stem|sternpost|(bow )?transom)$/.test(words) ? `the ${words}` : words)
  );
}
