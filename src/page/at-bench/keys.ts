/**
 * The keypad for a gloved thumb: which keys there are in the units chosen, and what each does to the text typed so
 * far. A fraction is added mark by mark, as it is read off a tape: a quarter and an eighth make 3/8.
 */
import type { Given } from '../../boat';
import type { Shown } from '../../measure';

/** A digit, a sign, a fraction of an inch such as `1/8`, `ft` after the feet, or `rub out`. */
export type PadKey = string;

export const RUB_OUT: PadKey = 'rub out';
export const FEET: PadKey = 'ft';

/** The keys row by row, four to a row; null where a place is left free for the keys that turn to another number. */
export function padFor({ kind, min }: Pick<Given, 'kind' | 'min'>, shown: Shown): readonly (PadKey | null)[] {
  const inFractions = kind === 'length' && shown.length === 'feet';
  const minus = min === undefined || min.trim().startsWith('-') ? '-' : null;
  const fractions = inFractions
    ? ['1/2', '1/4', '1/8', '1/16', '1/32'].filter((key) => Number(key.slice(2)) <= shown.fraction)
    : [];
  const rows = ['7', '8', '9', RUB_OUT, '4', '5', '6', inFractions ? FEET : null, '1', '2', '3', minus];
  const decimal = kind === 'count' ? null : '.';
  // The finest tape needs the place of the point, which nobody uses with fractions.
  const last = fractions.length > 4 ? ['0', ...fractions] : ['0', decimal, ...fractions];
  return [...rows, ...last, ...Array.from({ length: (6 - (last.length % 4)) % 4 }, () => null)];
}

/** The text after a key; the same text where the key can't be meant there. */
export function pressed(text: string, key: PadKey): string {
  if (key === RUB_OUT) return rubbedOut(text);
  if (key === '-') return text.startsWith('-') ? text.slice(1) : `-${text}`;
  const { head, whole, over, under } = partsOf(text);
  const hasFraction = over !== '';
  if (key === FEET) return head.includes("'") || whole === '' || hasFraction ? text : `${head}${whole}' `;
  if (key === '.') return whole.includes('.') || hasFraction ? text : `${text}.`;
  if (!key.includes('/')) return joined(head, `${whole}${key}`, over, under);
  if (whole.includes('.')) return text;
  const [one, parts] = fractionOf(key);
  const [n, d] = hasFraction ? [Number(over), Number(under)] : [0, 1];
  const common = Math.max(d, parts);
  const sum = (n * common) / d + (one * common) / parts;
  if (!Number.isInteger(sum)) return text;
  const inches = Math.floor(sum / common);
  const grown = inches > 0 ? String(Number(whole) + inches) : whole;
  const [left, of] = reduced(sum - inches * common, common);
  const feet = grown === '12' ? aFootMore(head) : null;
  const [before, stands] = feet === null ? [head, grown] : [feet, ''];
  return left === 0 ? joined(before, stands, '', '') : joined(before, stands, String(left), String(of));
}

/** Twelve inches after the feet are one more of them; null where no feet stand before. */
const aFootMore = (head: string): string | null =>
  head.includes("'") ? head.replace(/\d+/, (feet) => String(Number(feet) + 1)) : null;

/** What stands before the last number (a sign, feet), its whole inches, and its fraction. */
function partsOf(text: string) {
  const [, before = text, over = '', under = ''] = /^(.*?)\s*\b(\d+)\/(\d+)$/.exec(text) ?? [];
  const [, head = '', whole = ''] = /^(.*?)(\d*(?:\.\d*)?)$/.exec(before) ?? [];
  return { head, whole, over, under };
}

const joined = (head: string, whole: string, over: string, under: string): string => {
  const inches = [whole, over && `${over}/${under}`].filter((part) => part !== '').join(' ');
  return `${head.trimEnd()}${head.includes("'") ? ' ' : ''}${inches}`;
};

/** A fraction goes whole, the foot mark with the space after it. */
const rubbedOut = (text: string): string => text.replace(/(?:\s*\d+\/\d+|'\s*|.)$/s, '');

const fractionOf = (key: string): readonly [number, number] => {
  const [over = '', under = ''] = key.split('/');
  return [Number(over), Number(under)];
};

function reduced(over: number, under: number): readonly [number, number] {
  return over > 0 && over % 2 === 0 && under % 2 === 0 ? reduced(over / 2, under / 2) : [over, under];
}
