/** What still has to come home, on the roof rack: sheets below, boards above, and how far the longest stands out. */
import { arrow, dim, type Drawing, drawing, label, line, mm, type Point, rectHatch } from '../../drawing';
import type { OnHand } from '../form/define';
import type { BuyListValues } from './buy-list-steps';

const TITLE = 'What goes on the roof rack';

export function drawRack(v: BuyListValues, { say }: Pick<OnHand<BuyListValues>, 'say'>): Drawing {
  const bars = mm(v.barsApart);
  const long = mm(v.longest);
  const broad = Math.max(1.6 * bars, long);
  // Drawn by the length of what is shown, so that it reads alike for a dinghy and for a launch.
  const unit = broad / 40;
  const sheet = v.sheetsMass > 0 ? mm(v.sheetLength) : 0;
  const deepSheets = v.sheetsMass > 0 ? 1.5 * unit : 0;
  const deepBoards = v.boardsMass > 0 ? 2 * unit : 0;
  const foot = 1.5 * unit;
  const top = foot + deepSheets + deepBoards;
  const roof: Point[] = [
    [-1.4 * bars, -4 * unit],
    [-0.8 * bars, 0],
    [0.8 * bars, 0],
    [1.15 * bars, -4 * unit],
    [2 * bars, -5.5 * unit],
  ];
  const bar = (x: number) => rectHatch(x - unit / 4, 0, unit / 2, foot, 'plain');
  const boards = v.boardsMass > 0 ? Math.max(long, unit) : 0;
  const nothing = v.rackMass <= 0;
  return drawing({
    title: TITLE,
    says: nothing
      ? 'Nothing is left to carry home: sheets and boards are there or bought.'
      : `From the side, the car going to the right: ${say(v.rackMass, 'mass')} of sheets and boards, the longest ${say(v.longest, 'length')}, which stands out ${say(v.beyond, 'length')} beyond each bar.`,
    shapes: [
      line(roof, { pen: 'outline' }),
      bar(-bars / 2),
      bar(bars / 2),
      ...(deepSheets > 0
        ? [
            rectHatch(-sheet / 2, foot, sheet, deepSheets, 'ply'),
            label([-0.3 * sheet, foot + deepSheets / 2], `sheets ${say(v.sheetsMass, 'mass')}`, {
              toward: 'sw',
            }),
          ]
        : []),
      ...(deepBoards > 0
        ? [
            rectHatch(-boards / 2, foot + deepSheets, boards, deepBoards, 'cedar'),
            label([0.2 * boards, top - deepBoards / 2], `boards ${say(v.boardsMass, 'mass')}`, {
              toward: 'ne',
            }),
          ]
        : []),
      ...(nothing
        ? []
        : [dim([-long / 2, top], [long / 2, top], say(v.longest, 'length'), { side: 'above' })]),
      dim([-bars / 2, 0], [bars / 2, 0], say(v.barsApart, 'length'), { side: 'below' }),
      ...(nothing ? [] : [arrow([0, top + 6 * unit], [0, top + 0.4 * unit])]),
      ...(nothing ? [] : [label([0, top + 6 * unit], `${say(v.rackMass, 'mass')} in all`, { toward: 'n' })]),
    ],
  });
}
