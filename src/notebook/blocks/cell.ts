/** A calculator cell: where it is shown, and, where it stands for the first time, what it is placed with. */
import { isTaken } from '../../boat/table/names';
import { readEntries } from '../text/fence';
import type { CellPlace, TextFault } from '../text/page-text';
import { type Fence, fencedKind, type BlockReading } from '../text/block-kind';
import { STAYS } from './when';

const KEY = /^[a-z][A-Za-z0-9]*$/;

/** A page of as many takes seconds to draw; the longest notebook that comes along shows a third. */
const MOST_SHOWN = 100;

export const cell = fencedKind('cell', (fence, reading) => {
  const { found, turns, fault } = reading;
  if (turns) return [fault(STAYS, fence.raw)];
  const place = readPlace(fence, reading);
  if (Array.isArray(place)) return place;
  const amiss = secondMeaning(place, found.places.get(place.instance));
  if (amiss !== null) return [fault(amiss, fence.raw)];
  found.cells += 1;
  if (found.cells > MOST_SHOWN) return found.cells === MOST_SHOWN + 1 ? [tooMany(reading)] : [];
  const { instance, line } = place;
  const again = found.shown.get(instance) ?? 0;
  found.shown.set(instance, again + 1);
  if (again === 0) found.places.set(instance, place);
  return [{ type: 'cell', instance, ...(again > 0 && { again }), line }];
});

const tooMany = ({ fault }: BlockReading): TextFault =>
  fault(`A notebook shows ${MOST_SHOWN} cells at most. This one and those below are left out.`, '');

/** A name may be shown again, but it stands for one cell, set up once. */
function secondMeaning(place: CellPlace, first: CellPlace | undefined): string | null {
  if (!first) return null;
  const { cell: id, instance, presets } = place;
  if (first.cell !== id)
    return `"${instance}" already stands for the cell "${first.cell}" on line ${first.line}; give this one another name.`;
  return Object.keys(presets).length === 0
    ? null
    : `"${instance}" is already set up on line ${first.line}; to show it again, leave this block without lines.`;
}

function readPlace(fence: Fence, reading: BlockReading): CellPlace | TextFault[] {
  const { info, raw } = fence;
  const { line } = reading;
  const fault = (sentence: string) => [reading.fault(sentence, raw)];
  const [id = '', as, instance, ...more] = info.split(/\s+/);
  if (id === '') return fault('Say which cell, as in "cell scarf".');
  if ((as !== undefined && as !== 'as') || (as === 'as' && !instance) || more.length > 0)
    return fault(`A cell is written "cell ${id}" or, with a name of its own, "cell ${id} as keelScarf".`);
  const odd = [id, instance ?? id].find((name) => !KEY.test(name));
  if (odd !== undefined)
    return fault(
      `"${odd}" can't be the name of a cell; a name has a small letter first, then letters and digits, as in keelScarf.`,
    );
  if (
    instance !== undefined &&
    (reading.found.formulas.has(instance) || (instance !== id && isTaken(instance, 'edge')))
  )
    return fault(
      `"${instance}" is the name of a part of the boat or of another cell or formula; give this one a name of its own.`,
    );
  const lines = { form: KEY, example: 'thickness = 18 mm', twins: true };
  const { entries: presets, faults } = readEntries(fence, reading, lines);
  if (faults.length > 0) return faults;
  if (Object.keys(presets).length > 0 && (instance ?? id) === id) {
    const named = `cell ${id} as my${id[0]?.toUpperCase() ?? ''}${id.slice(1)}`;
    return fault(
      `The plain cell keeps its own links, so lines in it are not taken; give it a name first, as in "${named}".`,
    );
  }
  return { cell: id, instance: instance ?? id, presets, line };
}
