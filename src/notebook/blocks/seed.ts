/** Where a learner gets numbers of his or her own: what may change, and what must hold of the numbers drawn. */
import { fencedKind } from '../text/block-kind';
import { readCondition } from '../text/condition';
import type { Condition, SeedChange } from '../text/page-text';

const NAMED = /^([a-z][A-Za-z0-9]*(?:\.[A-Za-z0-9]+)+)\s*=\s*(\S.*)$/;
const RANGE = /^(.+?)\s+to\s+(.+?)\s+by\s+(.+)$/;
const KEEP = /^keep\s*:\s*(.*)$/;
const MOST = 30;

export const seed = fencedKind('seed', (fence, { line, depth, turns, found, fault }) => {
  if (turns || depth > 0)
    return [
      fault('Numbers of one’s own stand by themselves, not in a list, a quote or a comparison.', fence.raw),
    ];
  if (found.hasSeed)
    return [fault('A notebook has one block of numbers of one’s own; put its lines together.', fence.raw)];
  found.hasSeed = true;
  const read = fence.text
    .split('\n')
    .map((text, at) => ({ text, line: line + 1 + at, means: meaningOf(text.trim()) }))
    .filter(({ text }) => text.trim() !== '');
  const amiss = read.flatMap(({ text, line: at, means }) =>
    typeof means === 'string' ? [fault(means, text, at)] : [],
  );
  const may = read.flatMap(({ means }) => (typeof means === 'object' && 'of' in means ? [means] : []));
  const keep = read.flatMap(({ means }) => (typeof means === 'object' && 'keep' in means ? means.keep : []));
  if (amiss.length > 0) return amiss;
  const twice = may.find((one, at) => may.findIndex(({ of }) => of === one.of) < at);
  if (twice) return [fault(`${twice.of} is already given in this block.`, fence.raw)];
  if (may.length === 0 || may.length > MOST)
    return [fault(`Say what may change, as in "${EXAMPLE}", in ${MOST} lines at most.`, fence.raw)];
  return [{ type: 'seed', may, keep, line }];
});

const EXAMPLE = 'shortScarf.thickness = 12 mm to 25 mm by 1 mm';

function meaningOf(text: string): SeedChange | { readonly keep: Condition } | string {
  const [, condition] = KEEP.exec(text) ?? [];
  if (condition !== undefined) {
    const keep = readCondition(condition);
    return typeof keep === 'string' ? keep : { keep };
  }
  const [, of = '', entry = ''] = NAMED.exec(text) ?? [];
  const [, first = '', last = '', by = ''] = RANGE.exec(entry) ?? [];
  if (first !== '') return { of, first, last, by };
  const among = entry.split(/\s+or\s+/);
  if (among.length > 1) return { of, among };
  return `A line says what may change, as in "${EXAMPLE}" or "shortScarf.slope = 8 or 10 or 12", or what must hold: "keep: shortScarf.taper < 300 mm".`;
}
