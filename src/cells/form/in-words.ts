/** Several sentences, each with cases of its own, as the cases of the whole. */
import type { WordsWhen } from './define';

/**
 * Every combination of the cases, in order, so that of each sentence the first case that holds is said. The last case
 * of a sentence stands without a condition, or its conditions leave nothing out.
 */
export function together(...sentences: readonly (string | readonly WordsWhen[])[]): readonly WordsWhen[] {
  return sentences.map(bracketed).reduce((before, cases) =>
    before.flatMap((one) =>
      cases.map((next): WordsWhen => {
        const when = [one.when, next.when].filter((condition) => condition !== undefined).join(' and ');
        return { says: `${one.says} ${next.says}`, ...(when !== '' && { when }) };
      }),
    ),
  );
}

function bracketed(cases: string | readonly WordsWhen[]): readonly WordsWhen[] {
  if (typeof cases === 'string') return [{ says: cases }];
  return cases.map(({ says, when }) => ({ says, ...(when !== undefined && { when: `(${when})` }) }));
}
