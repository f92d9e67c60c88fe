/** A formula of the writer's own: lines of sums under a name. What is amiss in them is told line by line where it stands. */
import { isTaken } from '../../boat/table/names';
import { fencedKind } from '../text/block-kind';
import type { FormulaPlace } from '../text/page-text';
import { STAYS } from './when';

const NAME = /^[a-z][A-Za-z0-9]{1,29}$/;
const MOST_SHOWN = 40;
/** As much as is kept of one with the boat. */
const LONGEST = 20_000;

export const formula = fencedKind('formula', ({ info, text, raw }, { found, line, turns, fault }) => {
  if (turns) return [fault(STAYS, raw)];
  const [name = ''] = info.split(/\s+/);
  if (info !== name || !NAME.test(name))
    return [fault('A formula has a name, one word with a small letter first, as in "formula keelDay".', raw)];
  if (isTaken(name, 'edge') || found.places.has(name))
    return [
      fault(`"${name}" is the name of a cell or of a part of the boat; give the formula another.`, raw),
    ];
  if (text.length > LONGEST)
    return [fault(`This formula is too long; ${LONGEST} characters is the most.`, raw.slice(0, 80))];
  const before = found.formulas.get(name);
  if (before && text.trim() !== '')
    return [
      fault(
        `"${name}" already stands on line ${before.line}; to show it again, leave this block empty.`,
        raw,
      ),
    ];
  if (!before && found.formulas.size === MOST_SHOWN)
    return [fault(`A notebook has ${MOST_SHOWN} formulas at most; this one is left out.`, raw)];
  const place: FormulaPlace = before ?? { name, text, line };
  const again = found.shownFormulas.get(name) ?? 0;
  found.shownFormulas.set(name, again + 1);
  found.formulas.set(name, place);
  return [{ type: 'formula', name, ...(again > 0 && { again }), line }];
});
