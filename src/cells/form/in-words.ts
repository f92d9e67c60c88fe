/** What a cell says in words, of its result or as a warning: that which holds, one after another. */
import type { Read } from '../../boat';
import type { Words, WordsWhen } from './define';
import type { Instance } from './instance';
import { isTrue, type Say, sentence, type Tell } from './sentence';
import { compiled, evaluateFormula, valueOf } from './steps';

/** The first of several cases that holds, or else what is said where none does. */
export function firstOf(cases: readonly Omit<WordsWhen, 'otherwise'>[], otherwise: Words = []): Words {
  return cases.reduceRight<Words>((others, one) => ({ ...one, otherwise: others }), otherwise);
}

/** A sentence with clauses of their own condition put in: words`Keep the ${INNER} edge.` */
export function words(texts: TemplateStringsArray, ...clauses: readonly Words[]): Words {
  return texts.flatMap((text, at) => [text.trim(), clauses[at] ?? []]).filter((part) => part !== '');
}

/** A text out of the words of a cell, and where it is said. */
export interface SaidText {
  readonly text: string;
  /** Comparisons that hold there, or do not. */
  readonly where: readonly { readonly when: string; readonly holds: boolean }[];
}

/** Every text of the words, in order, whether it is said or not. */
export function partsOf(words: Words, where: SaidText['where'] = []): readonly SaidText[] {
  if (typeof words === 'string') return [{ text: words, where }];
  if (!('when' in words)) return words.flatMap((one) => partsOf(one, where));
  const { when, says, otherwise = [] } = words;
  return [
    ...partsOf(says, [...where, { when, holds: true }]),
    ...partsOf(otherwise, [...where, { when, holds: false }]),
  ];
}

/**
 * Texts as one: a space between, but before a stop; and a capital where a sentence begins, so that one clause serves
 * in its middle and at its head.
 */
export function oneAfterAnother(texts: readonly string[]): string {
  return texts.reduce((before, text) => {
    const next = before === '' || /[.!?]$/.test(before) ? text.charAt(0).toUpperCase() + text.slice(1) : text;
    return before === '' || /^[,;:.]/.test(next) ? before + next : `${before} ${next}`;
  }, '');
}

/**
 * Of the words that which holds, with its numbers written so finely that they say why it does.
 * @param also another comparison that makes them hold
 */
export function told(instance: Instance, words: Words, read: Read, also: readonly string[] = []): Tell {
  const { cell } = instance;
  const said = partsOf(words).filter(({ where }) =>
    where.every(
      ({ when, holds }) =>
        isTrue(evaluateFormula(compiled(cell, when), (key) => valueOf(instance, key, read))) === holds,
    ),
  );
  const because = said.flatMap(({ where }) => where.flatMap(({ when, holds }) => (holds ? [when] : [])));
  const text = oneAfterAnother(said.map((part) => part.text));
  return sentence(instance, text, [...new Set([...also, ...because])], read);
}

/** The result in words. */
export function answerInWords(instance: Instance, read: Read, say: Say): string {
  return told(instance, instance.cell.inWords, read)(say);
}
