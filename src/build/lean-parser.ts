/**
 * Leaves out of the page what the formula parser brings and never runs here: its writer of LaTeX (formulas are
 * written as MathML by `src/measure/mathml.ts`) and of numbers of any length. Together they are a
 * twentieth of the script before the first answer.
 */
import type { Plugin } from 'vite';

const never = `const never = () => { throw new TypeError('this part of the parser is left out of the page'); };`;

/** What stands in for a module of the parser: the names that others import, none of them to be called. */
const substitutes: Readonly<Record<string, string>> = {
  '/utils/latex.js': `${never}
export const escapeLatex = never;
export const toSymbol = never;
export const latexOperators = {};
export const latexFunctions = {};
export const defaultTemplate = '';`,
  '/bignumber/formatter.js': `${never}
export const format = never;`,
};

const MARK = '\0lean ';

export function leanParser(): Plugin {
  return {
    name: 'lean-parser',
    enforce: 'pre',
    apply: 'build',
    resolveId(wanted, from) {
      if (!from?.includes('/mathjs/')) return null;
      const name = Object.keys(substitutes).find((end) => wanted.endsWith(end));
      return name === undefined ? null : MARK + name;
    },
    load: (id) => (id.startsWith(MARK) ? substitutes[id.slice(MARK.length)] : null),
  };
}
