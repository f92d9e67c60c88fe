/** Other parts that are cut from the sheets: gussets of one's own, seats, floors. */
import { input, type InputSpec } from '../form/define';

/** A length of the cut, in steps of 10 mm. */
export const length = (
  label: string,
  more: Omit<InputSpec, 'kind' | 'label' | 'step'> & { readonly step?: string },
) => input('length', label, { step: '10 mm', ...more });

/** Other parts are listed by their sizes; each line is asked when the one above it is filled in. */
export const partKeys = ['partA', 'partB', 'partC', 'partD'] as const;

const byKey = <P extends readonly [key: string, spec: unknown]>(pairs: readonly P[]) =>
  Object.fromEntries(pairs) as { readonly [Pair in P as Pair[0]]: Pair[1] }; // the keys are those of the pairs

const parts = partKeys.flatMap((key, at) => {
  const filled = (lines: number) =>
    partKeys
      .slice(0, lines)
      .map((line) => `${line}Pieces > 0`)
      .join(' and ');
  const side = (what: string, preset: string, presetInch: string) =>
    length(`Part ${at + 1}: ${what}`, {
      when: filled(at + 1),
      preset,
      presetInch,
      min: '10 mm',
      max: '6 m',
    });
  return [
    [
      `${key}Pieces`,
      input('count', `Part ${at + 1}: how many`, {
        ...(at > 0 && { when: filled(at) }),
        preset: '0',
        min: '0',
        max: '20',
        step: '1',
      }),
    ],
    [`${key}Length`, side('length', '900 mm', '36 in')],
    [`${key}Width`, side('width', '250 mm', '10 in')],
  ] as const;
});

export const partInputs = byKey(parts);
