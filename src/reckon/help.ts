/** What `--help` prints. */
import { starters } from '../boat';

export const help = `Reckons named quantities of a boat, by the same graph as the notebook in the browser.

  npm run --silent reckon -- BOAT NAME... [--set NAME='ENTRY']...

BOAT    a starter (${starters.map(({ id }) => id).join(', ')}) or the path of a boat file
NAME    a quantity, as in docs/quantities.md: scarf.taper, chine.length, frame3.chine.side.bevel
--set   writes an entry over the boat's own, as if typed into the notebook: keelson.thickness='3/4 in',
        scarf.slope=10, keelson.timber=sitkaSpruce, scarf.thickness='2 * side.thickness'.
        A formula's lines are set alike: mine.lines='half = hull.length / 2', and then mine.half is a name.
        A bare number takes the unit that the notebook shows under metric: mm, kg, L, °, ...

Prints JSON, one member a name: {"scarf.taper": {"value": 0.144, "unit": "m"}}. Values are in SI: m, m2, m3,
kg, N, Pa, s, K, rad; "1" is the unit of plain numbers (a slope of 1 in 8 is 8, 12 % is 0.12). A choice is
its id, with the unit "".

Where a name, an entry or the boat is at fault, or a quantity has no value, nothing is printed; the reason
stands on the error stream as a sentence, and the exit code is 2.
`;
