/** What bend and twist take of what the plywood allows, all along the panel, both ways of the grain. */
import { attempt } from '../../boat';
import { isIssue } from '../../measure';
import type { Chart, OnHand } from '../form/define';
import { judged } from './panels-facts';
import type { PanelsValues } from './panels-steps';

/** More than this is drawn as this: it does not bend either way. */
const TOP = 3;

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;

export function panelsChart(v: PanelsValues, { say, ask, hull }: Saying): Chart {
  const axes = {
    title: 'Bend and twist along the panel',
    x: { label: 'Along the straight edge', kind: 'length', from: 0 },
    y: { label: 'Share of what a common panel takes', kind: 'share', from: 0 },
  } as const;
  const found = attempt(() => {
    if (!hull) throw new Error('There is no hull to lay flat.');
    return ask(judged);
  });
  if (isIssue(found)) return { ...axes, says: found.issue, lines: [] };
  const lineOf = (of: (typeof found)['as'], name: string) => ({
    name,
    points: of.map(({ place, common }) => [place.along, Math.min(TOP, common.both)] as const),
  });
  const other = v.grain === 'along' ? 'across' : 'along';
  return {
    ...axes,
    says: `It takes most ${say(v.hardestAt, 'length')} along the straight edge: ${say(v.share, 'share')} with the face grain ${v.grain}, ${say(v.otherShare, 'share')} at most with it ${other}. More than ${say(TOP, 'share')} is drawn as that.`,
    lines: [lineOf(found.as, `face grain ${v.grain}`), lineOf(found.other, `face grain ${other}`)],
    limits: [{ at: 1, axis: 'y', label: 'common panel' }],
  };
}
