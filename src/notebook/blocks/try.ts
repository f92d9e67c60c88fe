/** A second version ready to look at: a line with a key that starts it. */
import { readEntries } from '../text/fence';
import { fencedKind } from '../text/block-kind';

const NAME = /^[a-z][A-Za-z0-9]*(\.[a-z][A-Za-z0-9]*)+$/;
const EXAMPLE = 'laminate.plies = 2';

export const trying = fencedKind('try', (fence, reading) => {
  const { info: title, raw } = fence;
  const { line, fault } = reading;
  if (!title) return [fault('Say what is to be tried, as in "try Two boards of half the thickness".', raw)];
  const { entries, faults } = readEntries(fence, reading, { form: NAME, example: EXAMPLE, twins: false });
  if (faults.length > 0) return faults;
  if (Object.keys(entries).length === 0)
    return [fault(`A second version needs at least one change, as in "${EXAMPLE}".`, raw)];
  return [{ type: 'try', title, changes: entries, line }];
});
