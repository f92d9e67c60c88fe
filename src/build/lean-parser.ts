/**
 * Leaves out of the page what the formula parser brings and never runs here: its writers of formulas as text, HTML,
 * LaTeX and JSON (ours are written as MathML by `src/measure/mathml.ts`) and of numbers of any length. Together they
 * are a twelfth of the script before the first answer.
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

/** A method of a node of the parser's tree that writes it out, as it stands in the package: four spaces in. */
const writer = /^ {4}(?:static )?(?:_toString|_toHTML|_toTex|toJSON|fromJSON)\(.*\) \{\n(?:.*\n)*? {4}\}\n/gm;
const NODE = /\/mathjs\/lib\/esm\/expression\/node\/\w+Node\.js$/;

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
    transform: (code, id) => (NODE.test(id) ? { code: code.replace(writer, ''), map: null } : null),
    load: (id) => (id.startsWith(MARK) ? substitutes[id.slice(MARK.length)] : null),
  };
}
