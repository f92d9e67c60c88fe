/** A number drawn against another that it hangs on; what it names is for the page to find. */
import { fencedKind } from '../text/block-kind';
import { readWorded } from '../text/worded-lines';

const NAME = /^[a-z][A-Za-z0-9]*(\.[A-Za-z0-9]+)+$/;
const EXAMPLE = 'lines: shortScarf.slope at 6 or 8 or 12';
const LONGEST = 300;

export const sweep = fencedKind('sweep', (fence, reading) => {
  const { info, raw } = fence;
  const { line, fault } = reading;
  if (info !== '')
    return [fault('After "sweep" stands nothing; what is drawn stands in lines below it.', raw)];
  const { lines, faults } = readWorded(fence, reading, ['result', 'against', 'from', 'to', 'lines']);
  const twice = lines.find(({ word }, at) => lines.findIndex((other) => other.word === word) < at);
  const said = (word: string) => lines.find((one) => one.word === word)?.text ?? '';
  const [, family = '', at = ''] = /^(\S+)(?:\s+at\s+(.+))?$/.exec(said('lines')) ?? [];
  const ask = {
    result: said('result'),
    against: said('against'),
    from: said('from'),
    to: said('to'),
    lines: family,
    at,
  };
  if (faults.length > 0) return faults;
  if (twice) return [fault(`"${twice.word}:" is already said in this block.`, raw, twice.line)];
  if (!NAME.test(ask.result) || !NAME.test(ask.against))
    return [
      fault(
        'Say which number is drawn and against which, as in "result: shortScarf.taper" and "against: shortScarf.thickness".',
        raw,
      ),
    ];
  if (said('lines') !== '' && !NAME.test(family))
    return [fault(`Lines are of a second number and its values, as in "${EXAMPLE}".`, raw)];
  if (Object.values(ask).some((text) => text.length > LONGEST))
    return [fault(`A line in this block is too long; ${LONGEST} characters is the most.`, raw)];
  return [{ type: 'sweep', ask, line }];
});
