/** The lines in a fenced block of ours: entries by their names. */
import type { Fence, BlockReading } from './block-kind';
import type { TextFault } from './page-text';

/** What lines in a block are to look like. */
export interface LinesForm {
  /** Of the name before the sign. */
  readonly form: RegExp;
  readonly example: string;
  /** Whether an entry may have a twin in inches after a bar. */
  readonly twins: boolean;
}

/** Longer than any entry a field takes. */
const LONGEST = 300;
/** An entry, or one for millimetres and one for inches with a bar between. */
const TWINS = /^[^|]*[^|\s][^|]*(\|[^|]*[^|\s][^|]*)?$/;

/** Whether a line of a cell's block can hold an entry. */
export const isEntry = (entry: string): boolean =>
  entry.length <= LONGEST && !/[\r\n]/.test(entry) && TWINS.test(entry.trim());

/** Lines `name = entry`; blank ones are passed over. */
export function readEntries(fence: Fence, reading: BlockReading, lines: LinesForm) {
  const entries: Record<string, string> = {};
  const faults: TextFault[] = [];
  fence.text.split('\n').forEach((text, at) => {
    if (text.trim() === '') return;
    const middle = text.indexOf('=');
    const name = text.slice(0, Math.max(middle, 0)).trim();
    const entry = text.slice(middle + 1).trim();
    const amiss = Object.hasOwn(entries, name)
      ? `${name} is already given in this block.`
      : faultOf(name, entry, lines);
    if (amiss === null) entries[name] = entry;
    else faults.push(reading.fault(amiss, text, reading.line + 1 + at));
  });
  return { entries, faults };
}

function faultOf(name: string, entry: string, { form, example, twins }: LinesForm): string | null {
  if (!form.test(name) || entry === '')
    return `A line in this block is a name, "=" and an entry, as in "${example}".`;
  if (entry.length > LONGEST) return `The entry for ${name} is too long; ${LONGEST} characters is the most.`;
  if (!twins) return entry.includes('|') ? 'A second version has one entry a line, without a bar.' : null;
  return TWINS.test(entry)
    ? null
    : 'A bar parts an entry for millimetres from one for inches, as in "thickness = 18 mm | 3/4 in".';
}
