/** The fenced blocks of our own: a calculator cell, a second version ready to look at, and a boat to be brought. */
import { boatsToBring } from './front-matter';
import type { BoatPlace, CellPlace, Fault, TryPlace } from './page-text';

export interface Fence {
  /** What stands after the opening fence: `cell scarf as keelsonScarf`. */
  readonly info: string;
  readonly text: string;
  /** As typed, with its fences. */
  readonly raw: string;
  readonly line: number;
}

const KEY = /^[a-z][A-Za-z0-9]*$/;
const NAME = /^[a-z][A-Za-z0-9]*(\.[a-z][A-Za-z0-9]*)+$/;
/** Longer than any entry a field takes. */
const LONGEST = 300;

/** A fence that begins with one of our words; null where it is a plain code block. */
export function readFence(fence: Fence): CellPlace | TryPlace | BoatPlace | Fault[] | null {
  const word = fence.info.split(/\s+/, 1)[0];
  if (word !== 'cell' && word !== 'try' && word !== 'boat') return null;
  const open = openFault(fence);
  if (open) return [open];
  const rest = fence.info.slice(word.length).trim();
  if (word === 'boat') return readBoat(fence, rest);
  return word === 'cell' ? readCell(fence, rest) : readTry(fence, rest);
}

function readBoat(fence: Fence, boat: string): BoatPlace | Fault[] {
  if (!boatsToBring.includes(boat))
    return [
      faultOf(fence, `A boat to be brought is one of ${boatsToBring.join(', ')}; "${boat}" is none of them.`),
    ];
  if (fence.text.trim() !== '') return [faultOf(fence, 'A block that brings a boat has no lines in it.')];
  return { type: 'boat', boat, line: fence.line };
}

/** A fence that is never closed swallows all below it. */
export function openFault(fence: Fence): Fault | null {
  return /\n {0,3}(`{3,}|~{3,})\s*$/.test(fence.raw)
    ? null
    : faultOf(fence, 'This block is never closed: end it with ``` on a line of its own.');
}

function readCell(fence: Fence, rest: string): CellPlace | Fault[] {
  const [cell, as, instance, ...more] = rest.split(/\s+/);
  if (!cell) return [faultOf(fence, 'Say which cell, as in "cell scarf".')];
  if ((as !== undefined && as !== 'as') || (as === 'as' && !instance) || more.length > 0) {
    return [
      faultOf(
        fence,
        `A cell is written "cell ${cell}" or, with a name of its own, "cell ${cell} as keelScarf".`,
      ),
    ];
  }
  for (const name of [cell, instance ?? cell]) {
    if (KEY.test(name)) continue;
    const form = 'a small letter first, then letters and digits, as in keelScarf';
    return [faultOf(fence, `"${name}" can't be the name of a cell; a name has ${form}.`)];
  }
  const { entries, faults } = readEntries(fence, KEY, 'thickness = 18 mm', true);
  if (faults.length > 0) return faults;
  if (Object.keys(entries).length > 0 && (instance === undefined || instance === cell)) {
    const why = `The plain cell keeps its own links, so lines in it are not taken; give it a name first`;
    return [
      faultOf(fence, `${why}, as in "cell ${cell} as my${cell[0]?.toUpperCase() ?? ''}${cell.slice(1)}".`),
    ];
  }
  return { type: 'cell', cell, instance: instance ?? cell, presets: entries, line: fence.line };
}

function readTry(fence: Fence, title: string): TryPlace | Fault[] {
  if (!title)
    return [faultOf(fence, 'Say what is to be tried, as in "try Two boards of half the thickness".')];
  const { entries, faults } = readEntries(fence, NAME, 'laminate.plies = 2');
  if (faults.length > 0) return faults;
  if (Object.keys(entries).length === 0) {
    return [faultOf(fence, 'A second version needs at least one change, as in "laminate.plies = 2".')];
  }
  return { type: 'try', title, changes: entries, line: fence.line };
}

/** Lines `name = entry`; blank ones are passed over. An entry may have a twin in inches after a bar where `twins`. */
function readEntries(fence: Fence, form: RegExp, example: string, twins = false) {
  const entries: Record<string, string> = {};
  const faults: Fault[] = [];
  fence.text.split('\n').forEach((text, at) => {
    const fault = (says: string) => faults.push({ type: 'fault', line: fence.line + 1 + at, says, text });
    if (text.trim() === '') return;
    const middle = text.indexOf('=');
    const name = text.slice(0, Math.max(middle, 0)).trim();
    const entry = text.slice(middle + 1).trim();
    if (!form.test(name) || entry === '')
      fault(`A line in this block is a name, "=" and an entry, as in "${example}".`);
    else if (entry.length > LONGEST)
      fault(`The entry for ${name} is too long; ${LONGEST} characters is the most.`);
    else if (!(twins ? /^[^|]*[^|\s][^|]*(\|[^|]*[^|\s][^|]*)?$/ : /^[^|]*$/).test(entry))
      fault(
        twins
          ? 'A bar parts an entry for millimetres from one for inches, as in "thickness = 18 mm | 3/4 in".'
          : 'A second version has one entry a line, without a bar.',
      );
    else if (Object.hasOwn(entries, name)) fault(`${name} is already given in this block.`);
    else entries[name] = entry;
  });
  return { entries, faults };
}

export function faultOf(fence: Fence, says: string): Fault {
  return { type: 'fault', line: fence.line, says, text: fence.raw };
}
