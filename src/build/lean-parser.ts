/**
 * Leaves out of the page what the formula parser brings and never runs here. A sum is read by `src/measure/scan.ts`
 * before the parser sees it: names, calls, brackets, commas and the signs + - * / ^ ? : < > <= >= == != and or not, in
 * an order that can be one, and no number. So no string, matrix, object, unit or assignment is ever parsed,
 * and no tree is written out (ours are written as MathML by `src/measure/mathml.ts`).
 *
 * What is left reads every sum as the whole parser does: `tests/build/lean-parser.test.ts`.
 */
import type { Plugin } from 'vite';

const never = `const never = () => { throw new TypeError('this part of the parser is left out of the page'); };`;

/** What stands in for a module of the parser: the names that others import, as far as they do anything here. */
const substitutes: Readonly<Record<string, string>> = {
  'utils/latex.js': `${never}
export const escapeLatex = never;
export const toSymbol = never;
export const latexOperators = {};
export const latexFunctions = {};
export const defaultTemplate = '';`,
  // Texts and lists are none of a sum's.
  'utils/string.js': `${never}
export const format = String;
export const escape = never;`,
  'utils/collection.js': `${never}
export const deepMap = never;`,
  'utils/array.js': `export const map = (list, each) => list.map((one) => each(one));`,
  // Values come as a map, and no function takes its arguments unread.
  'utils/map.js': `export const createMap = (values) => values;`,
  'utils/scope.js': `${never}
export const createSubScope = never;`,
  // The factories are wired by hand, each with what it names.
  'utils/factory.js': `export const factory = (name, needs, make) => make;`,
  '@babel/runtime/helpers/defineProperty': `export default (on, name, value) =>
  Object.defineProperty(on, name, { value, enumerable: true, configurable: true, writable: true });`,
  '@babel/runtime/helpers/extends': `export default Object.assign;`,
};

/** What a node of the tree does besides being compiled and replaced; as it stands in the package, four spaces in. */
const method =
  /^ {4}(?:static )?(?:_toString|_toHTML|_toTex|_getCustomString|toString|toHTML|toTex|toJSON|fromJSON|forEach|traverse|filter|cloneDeep|equals|evaluate|getIdentifier|getContent)\(.*\) \{\n(?:.*\n)*? {4}\}\n/gm;
const NODE =
  /\/mathjs\/lib\/esm\/expression\/node\/(?:Symbol|Constant|Function|Operator|Parenthesis|Conditional)?Node\.js$/;

/** The levels of the parser's grammar that a sum never stops at, and the next one that it may. */
const passedBy: Readonly<Record<string, string>> = {
  parseBlock: 'parseConditional',
  parseAssignment: 'parseConditional',
  parseLogicalXor: 'parseLogicalAnd',
  parseBitwiseOr: 'parseRelational',
  parseShift: 'parseRange',
  parseImplicitMultiplication: 'parseUnary',
  parseNullishCoalescing: 'parseSymbol',
  parseString: 'parseParentheses',
};
/** What only those would call. */
const unreached = [
  'parseBitwiseXor',
  'parseBitwiseAnd',
  'parseConversion',
  'parseRule2',
  'parseUnaryPercentage',
  'parseLeftHandOperators',
  'parseCustomNodes',
  'parseStringToken',
  'parseMatrix',
  'parseRow',
  'parseObject',
  'parseNumber',
];
const level = /^ {2}function (\w+)\((.*)\) \{\n(?:.*\n)*? {2}\}\n/gm;
const PARSER = /\/mathjs\/lib\/esm\/expression\/parse\.js$/;

/** The parser's text with those levels passed by. Throws where one is not in it: the package has changed. */
function leanGrammar(code: string): string {
  const found = new Set<string>();
  const lean = code.replace(level, (whole, name: string, takes: string) => {
    found.add(name);
    const next = passedBy[name];
    if (next !== undefined) return `  function ${name}(${takes}) { return ${next}(${takes}); }\n`;
    return unreached.includes(name) ? '' : whole;
  });
  const lost = [...Object.entries(passedBy).flat(), ...unreached].filter((name) => !found.has(name));
  if (lost.length > 0) throw new Error(`not in the parser any more: ${lost.join(', ')}`);
  return lean;
}

const MARK = '\0lean ';

export function leanParser(): Plugin {
  return {
    name: 'lean-parser',
    enforce: 'pre',
    apply: 'build',
    resolveId(wanted, from) {
      if (from === undefined || !(NODE.test(from) || PARSER.test(from))) return null;
      const name = Object.keys(substitutes).find((end) => wanted.endsWith(end));
      return name === undefined ? null : MARK + name;
    },
    transform(code, id) {
      if (NODE.test(id)) return { code: code.replace(method, ''), map: null };
      return PARSER.test(id) ? { code: leanGrammar(code), map: null } : null;
    },
    load: (id) => (id.startsWith(MARK) ? substitutes[id.slice(MARK.length)] : null),
  };
}
