/** What no plan of panels and parts on sheets can cost less than, wherever the joints stand. */
import { distance2 } from '../../kernel';
import type { NestProblem } from '../../kernel/nest';
import { areaKept, costForArea, costForTall } from '../../kernel/nest-bound';
import { tallStretch } from '../../kernel/tall-stretch';
import { outlineArea } from '../../kernel/outline';
import type { CutPanel } from './panel-spots';
import { type OtherPiece, type SheetGroup, type SheetsProblem, timesCut } from './sheet-sections';

/**
 * No plan can cost less: the area of all that is cut, in the cheapest sheets that have it; or the lengths of panels that
 * take up the sheet's width, laid end to end.
 *
 * @param fewest the fewest joints of each panel on one side
 */
export const sheetsCostAtLeast = (problem: SheetsProblem, fewest: readonly number[]): number =>
  problem.groups.reduce((sum, group) => sum + groupAtLeast(problem, group, fewest), 0);

function groupAtLeast(problem: SheetsProblem, group: SheetGroup, fewest: readonly number[]): number {
  const { panels, gap, rules, together } = problem;
  const sold = { stocks: group.stocks, gap, edge: rules.edge };
  const times = (at: number) => timesCut(problem, at);
  const isWhole = (at: number) => panels[at]!.whole;
  const partsOf = (pairs: boolean) =>
    group.others
      .filter((other) => other.pairs === pairs)
      .reduce((area, other) => area + other.count * eachKept(other, gap), 0);
  const least = (own: readonly number[], often: (at: number) => number, parts: number) =>
    atLeast(
      own.map((at) => ({ panel: panels[at]!, fewest: fewest[at]!, times: often(at) })),
      parts,
      rules.more,
      sold,
    );
  if (!together) return least(group.panels, times, partsOf(true) + partsOf(false));
  const inPairs = group.panels.filter((at) => !isWhole(at));
  return (
    2 * least(inPairs, () => 1, partsOf(true) / 2) +
    least(group.panels.filter(isWhole), () => 1, partsOf(false))
  );
}

const eachKept = ({ outline }: OtherPiece, gap: number) => areaKept({ outline }, gap);

interface Skin {
  readonly panel: CutPanel;
  readonly fewest: number;
  /** How often it is cut from these sheets. */
  readonly times: number;
}

function atLeast(
  skin: readonly Skin[],
  parts: number,
  more: number,
  sold: Omit<NestProblem, 'pieces'>,
): number {
  // What all its pieces keep others off is no less than what the whole would; the laps are cut twice.
  const area = skin.reduce((sum, { panel: { outline, spots, lap }, fewest, times }) => {
    const shortest = Math.min(...spots.map(({ line }) => distance2(line[0], line[1])));
    const laps = fewest > 0 ? fewest * lap * shortest : 0;
    return sum + times * (Math.abs(outlineArea(outline)) + laps);
  }, parts);
  // A piece that may lie across the sheet takes up none of its length for itself.
  const along = skin.filter(({ panel: { turns } }) => turns.every((turn) => turn % 2 === 0));
  const tall = (height: number) =>
    along.reduce((sum, { panel, fewest, times }) => sum + times * tallOf(panel, fewest + more, height), 0);
  return Math.max(costForArea(area, sold), along.length > 0 ? costForTall(tall, sold) : 0);
}

/**
 * What of a panel's length is higher than a height in one piece, wherever its joints stand, m: a joint that runs askew
 * parts an upright line for as long as it is itself.
 *
 * @param most joints that it has at the most, unless one is chosen by hand
 */
function tallOf({ outline, spots, held }: CutPanel, most: number, height: number): number {
  const askew = spots
    .map(({ line: [inner, outer] }) => Math.abs(outer[0] - inner[0]))
    .toSorted((a, b) => b - a);
  const parted = (held === null ? askew.slice(0, most) : askew).reduce((sum, one) => sum + one, 0);
  return Math.max(0, tallStretch(outline, height) - parted);
}
