import { describe, expect, test } from 'vitest';
import { formula, isIssue, type MathNode, mathOf, wordsOf } from '../../src/measure';

/** Short marks for MathML, to read in a test: fractions as {a|b}, powers as a^{b}, roots as √{a}. */
function short({ tag, text, children = [] }: MathNode): string {
  const parts = children.map(short);
  if (tag === 'mfrac') return `{${parts.join('|')}}`;
  if (tag === 'msup') return `${parts[0]}^{${parts[1]}}`;
  if (tag === 'msqrt') return `√{${parts.join('')}}`;
  if (tag === 'mspace') return '_';
  if (tag === 'mtable') return parts.join(';');
  return (text ?? parts.join('')).replaceAll('\u00A0', ' ').replaceAll('\u2061', '');
}

const values: Readonly<Record<string, string>> = {
  slope: '8',
  boardThickness: '19 mm',
  rise: '−3 mm',
  length: `5' 3 1/2"`,
  n: '4',
  timber: 'white oak',
  angle: '12°',
};

function print(text: string, numbers = false): string {
  const read = formula(text, { tightestRadius: { takes: ['length'], gives: 'length', run: (x) => x } });
  if (isIssue(read)) throw new Error(read.issue);
  return short(
    mathOf(read, { symbol: wordsOf, ...(numbers && { value: (name: string) => values[name] ?? name }) }),
  );
}

describe('a formula in print', () => {
  const thin = '\u2009';
  const cases: readonly [string, string, string][] = [
    ['slope * boardThickness', `slope·board${thin}thickness`, '8×19_mm'],
    ['length / (2 * n)', '{length|2·n}', `{5' 3 1/2"|2×4}`],
    ['(length + rise) / n', '{length+rise|n}', `{5' 3 1/2"+(−3_mm)|4}`],
    ['length^2', 'length^{2}', `(5' 3 1/2")^{2}`],
    ['n^(1/2)', 'n^{{1|2}}', '4^{{1|2}}'],
    ['(length / n)^2', '({length|n})^{2}', `({5' 3 1/2"|4})^{2}`],
    ['boardThickness^2', `board${thin}thickness^{2}`, '(19_mm)^{2}'],
    ['sqrt(n^2 + 1)', '√{n^{2}+1}', '√{4^{2}+1}'],
    ['sin(angle)', 'sin(angle)', 'sin(12°)'],
    ['atan2(rise, length)', 'atan2(rise,length)', `atan2((−3_mm),5' 3 1/2")`],
    ['abs(n - 1) + floor(n) + ceil(n)', '|n−1|+⌊n⌋+⌈n⌉', '|4−1|+⌊4⌋+⌈4⌉'],
    ['ceil(length, 1 mm)', 'ceil(length,1_mm)', `ceil(5' 3 1/2",1_mm)`],
    ['-n', '−n', '−4'],
    ['n * (slope - 1)', 'n·(slope−1)', '4×(8−1)'],
    ['25 mm + 1/4 in + 12°', '25_mm+{1|4}_in+12°', '25_mm+{1|4}_in+12°'],
    ['n * 14 5/8 in - 1e-3 m', 'n·14{5|8}_in−1e−3_m', '4×14{5|8}_in−1e−3_m'],
    ['n * 1/2 + 1.5e3', '{n·1|2}+1.5e3', '{4×1|2}+1.5e3'],
    ['length - 1.5 N/mm² * n', 'length−1.5_N/mm²·n', `5' 3 1/2"−1.5_N/mm²×4`],
    ['pi * g * rad', 'π·g·rad', 'π×g×rad'],
    ['tightestRadius(length)', `tightest${thin}radius(length)`, `tightest${thin}radius(5' 3 1/2")`],
    ['n > 3 and not (n == 4) or n <= 2', 'n>3 and not (n=4) or n≤2', '4>3 and not (4=4) or 4≤2'],
    [
      'n != 3 ? length : rise',
      '{length;if n≠3rise;otherwise'.replace(';if', 'if').replace('rise;', ';rise'),
      `{5' 3 1/2"if 4≠3;(−3_mm)otherwise`,
    ],
    [
      'timber == "whiteOak" ? 1 : 2',
      '{1if timber=white oak;2otherwise',
      '{1if white oak=white oak;2otherwise',
    ],
  ];
  test.each(cases)('%s', (text, symbols, numbers) => {
    expect(print(text)).toBe(symbols);
    expect(print(text, true)).toBe(numbers);
  });
  test('is one row of MathML elements, each with text or children', () => {
    const allowed = 'mrow mfrac msup msqrt mi mn mo mtext mspace mtable mtr mtd'.split(' ');
    const nodes = (node: MathNode): MathNode[] => [node, ...(node.children ?? []).flatMap(nodes)];
    for (const [text] of cases) {
      const read = formula(text, { tightestRadius: { takes: ['length'], gives: 'length', run: (x) => x } });
      if (isIssue(read)) throw new Error(read.issue);
      const math = mathOf(read, { symbol: wordsOf });
      expect(math.tag).toBe('mrow');
      for (const { tag, text, children } of nodes(math)) {
        expect(allowed).toContain(tag);
        expect([tag === 'mspace' ? 'text' : typeof text, typeof children]).toContain('undefined');
        expect(tag === 'mfrac' || tag === 'msup' ? children?.length : 2).toBe(2);
      }
    }
  });
});
