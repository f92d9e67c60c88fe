/** What `--help` prints. */
import { starters } from '../boat';

export const help = `Reckons named quantities of a boat, by the same graph as the notebook in the browser.

  npm run --silent reckon -- BOAT NAME... [--set NAME='ENTRY']...
  npm run --silent reckon -- BOAT NAME... --against NUMBER [--from 'ENTRY'] [--to 'ENTRY']
  npm run --silent reckon -- BOAT NAME --wanted 'ENTRY' --by NUMBER

BOAT    a starter (${starters.map(({ id }) => id).join(', ')}) or the path of a boat file
NAME    a quantity, as in docs/quantities.md: scarf.taper, chine.length, frame3.chine.side.bevel
--set   writes an entry over the boat's own, as if typed into the notebook: keelson.thickness='3/4 in',
        scarf.slope=10, keelson.timber=sitkaSpruce, scarf.thickness='2 * side.thickness'.
        A formula's lines are set alike: mine.lines='half = hull.length / 2', and then mine.half is a name.
        A bare number takes the unit that the notebook shows under metric: mm, kg, L, °, ...
--against  works each NAME out at a row of values of this number, which it hangs on: all that its entry takes,
        or as much of that as lies between --from and --to
--wanted   asks what NUMBER brings NAME to this: 50 %, 'at most 200 mm', 'at least 1/2 in'. All that the entry of
        NUMBER takes is looked through, and nothing beyond it

Prints JSON, one member a name: {"scarf.taper": {"value": 0.144, "unit": "m"}}. Values are in SI: m, m2, m3,
kg, N, Pa, s, K, rad; "1" is the unit of plain numbers (a slope of 1 in 8 is 8, 12 % is 0.12). A choice is
its id, with the unit "".

With --against a member holds "rows", each a value of NUMBER and what NAME comes to there, or null where it has no
value. With --wanted it holds "met", the stretches [from, to] in which NAME is as wanted (a point where both are the
same, and none where it can't be had), and "write", an entry for each: as a builder writes it, with what it gives
where that is not quite what is wanted. "says" tells the same in sentences, with the least and the most there is.

Where a name, an entry or the boat is at fault, or a quantity has no value, nothing is printed; the reason
stands on the error stream as a sentence, and the exit code is 2.
`;
