/** What a link leaves at home, as lines. */
import type { BoatLink } from '../../notebook/link/link';
import type { NotebookHead } from '../../notebook';

/**
 * @param left ids of the notebooks that there was no room for
 * @param away how many of her notebooks are put away
 */
export function notInIt(
  { boat, isBoatless }: BoatLink,
  left: readonly string[],
  away: number,
  heads: readonly NotebookHead[],
): readonly string[] {
  const titleOf = (id: string) => heads.find((head) => head.id === id)?.title ?? id;
  const log = Object.keys(boat.log ?? {}).length;
  return [
    ...left.map((id) => `The notebook “${titleOf(id)}”: it is too long for a link. Save it to a file.`),
    ...(away > 0
      ? [`${away === 1 ? 'The notebook that is' : `The ${away} notebooks that are`} put away.`]
      : []),
    ...(log > 0 ? [`Her log (${log} ${log === 1 ? 'entry' : 'entries'}), with hours and money.`] : []),
    ...(Object.keys(boat.lessons ?? {}).length > 0 ? ['What was said to the questions of notebooks.'] : []),
    'The steps that Undo goes back by, and what is ticked off in lists.',
    isBoatless
      ? 'Your boats.'
      : 'Your other boats, and what is typed into notebooks that know no boat, such as Quick answers.',
  ];
}
