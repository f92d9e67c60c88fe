/** Comparisons on which a sentence of a notebook stands: read when the page is built, held against the boat by `holds.ts`. */
import type { Comparison, Condition } from './page-text';

const NAME = /^[a-z][A-Za-z0-9]*(\.[a-z][A-Za-z0-9]*)+$/;
const COMPARED = /^(\S+?)\s*(<=|>=|!=|=|<|>)\s*([^<>=!]+)$/;
const LONGEST = 300;
const EXAMPLE = 'chineLog.thickness > 18 mm';

/** @returns the comparisons, all of which must hold, or what is wrong with the text */
export function readCondition(text: string): Condition | string {
  if (text.trim() === '') return `Say what must hold, as in "${EXAMPLE}".`;
  if (text.length > LONGEST) return `What must hold is too long; ${LONGEST} characters is the most.`;
  const read = text.split(/\s+and\s+/).map((part) => readComparison(part.trim()));
  const wrong = read.find((one) => typeof one === 'string');
  return wrong ?? read.filter((one) => typeof one !== 'string');
}

function readComparison(text: string): Comparison | string {
  const [, without, alone = ''] = /^(no\s+)?(\S+)$/.exec(text) ?? [];
  if (NAME.test(alone)) return { of: alone, is: without === undefined ? 'there' : 'not there', than: '' };
  const [, of = '', is, than = ''] = COMPARED.exec(text) ?? [];
  if (!NAME.test(of) || is === undefined)
    return `"${text}" is no comparison; one has a name, a sign (< > <= >= = !=) and an entry, as in "${EXAMPLE}".`;
  return { of, is: is as Comparison['is'], than: than.trim() };
}
