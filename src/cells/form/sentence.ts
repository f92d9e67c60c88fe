/** A sentence of a cell with its numbers put in, in whatever units are chosen when it is read. */
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
import type { Cell, Values } from './define';
import { type Instance, isChoice } from './instance';
import { mannerOf } from './manner';
import { compiled, evaluateFormula, valueOf } from './steps';

/** Writes a value in the units chosen. */
export type Say = (value: number, kind: KindId, options?: WriteOptions) => Written;

/** A sentence that holds its numbers and is told in whatever units are chosen when it is read. */
export type Tell = (say: Say) => string;

/** What a comparison comes to; one that has no answer does not hold. */
export const isTrue = (verdict: number | Issue): boolean => !isIssue(verdict) && verdict !== 0;

/** `{share}`, or `{boards?board:boards}`: a word for one and a word for more. */
const PLACE = /\{(\w+)(?:\?([^:{}]*):([^{}]*))?\}/g;
/** The same with the article before it and the word behind, which follow the number. */
const ARTICLED = /(\b[Aa]n? )?\{(\w+)(?:\?([^:{}]*):([^{}]*))?\}( (?!an? )[a-z]+)?/g;

/** The keys that a sentence puts in. */
export function keysIn(template: string): string[] {
  return [...template.matchAll(PLACE)].map(([, key = '']) => key);
}

/**
 * A sentence of the cell with its values, to be put in as they are written.
 * @param because the comparisons that make it hold; the numbers are written so finely that they say so
 */
export function sentence(instance: Instance, text: string, because: readonly string[], read: Read): Tell {
  const { cell } = instance;
  const conditions = because.map((when) => compiled(cell, when));
  const names = new Set([...keysIn(text), ...conditions.flatMap((condition) => [...condition.names])]);
  const values = Object.fromEntries([...names].map((key) => [key, valueOf(instance, key, read)]));
  const keys = keysIn(text).filter((key) => typeof values[key] === 'number');
  return (say) => {
    const written = (finer: number): Numbers =>
      Object.fromEntries(
        keys.map((key) => [
          key,
          say(values[key] as number, kindOfKey(cell, key), {
            ...(mannerOf(cell, key) ?? read.mannerOf?.(`${instance.name}.${key}`)),
            finer,
          }), // the keys are those of numbers
        ]),
      );
    const numbers = fineEnough(conditions, values, written);
    const told = text.replace(
      ARTICLED,
      (_, article: string | undefined, key: string, one?: string, many?: string, noun?: string) => {
        const value = values[key]!; // of the same keys
        const isOne = numbers[key]?.text === '1';
        if (one !== undefined) return ((isOne ? one : many) ?? '') + (noun ?? '');
        const word = typeof value === 'string' ? optionLabel(instance, key, value) : numbers[key]!.told;
        const after =
          noun !== undefined && isOne && isWhole(cell, key) ? ` ${oneOf(noun.trim())}` : (noun ?? '');
        return (article ? articleOf(article, word) : '') + word + after;
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
function fineEnough(
  conditions: readonly Formula[],
  values: Values,
  written: (finer: number) => Numbers,
): Numbers {
  for (let finer = 0; finer <= FINEST; finer += 1) {
    const numbers = written(finer);
    const lookUp = (key: string) => numbers[key]?.written ?? values[key]!; // conditions name what was read
    if (conditions.every((condition) => isTrue(evaluateFormula(condition, lookUp)))) return numbers;
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

/**
 * Options of a boat's lists are named by what they are; their ids read well enough in a sentence: frame 3, the stem.
 * What a step tells in several words is said as it is.
 */
function optionLabel(instance: Instance, key: string, id: string): string {
  const spec = instance.cell.inputs[key];
  const options = spec && isChoice(spec) && typeof spec.options !== 'string' ? spec.options : [];
  const words = id.includes(' ') ? id : id.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();
  return (
    options.find((option) => option.id === id)?.label ??
    (/^(stem|sternpost|(bow )?transom)$/.test(words) ? `the ${words}` : words)
  );
}
