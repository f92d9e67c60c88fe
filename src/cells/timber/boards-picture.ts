/** Every board of a cutting plan with its cuts, one above the other. */
import { type Drawing, drawing, label, mm, note, rect, rectHatch } from '../../drawing';
import { taken } from '../../kernel/cutting';
import type { OnHand, Values } from '../define';
import { bestOf, type BoughtSection } from './boards-plan';

/** More than these make a strip too long to read; the sentence tells of all. */
const MOST_DRAWN = 14;

export function drawBoards(v: Values, on: OnHand): Drawing {
  const sections = bestOf(v, on.found);
  const longest = mm(
    Math.max(...sections.flatMap(({ problem }) => problem.stocks.map(({ length }) => length))),
  );
  const height = longest / 22;
  const pitch = 2.6 * height;
  let row = 0;
  let left = MOST_DRAWN;
  const shapes = sections.flatMap((section) => {
    const drawn = section.plan.boards.slice(0, left);
    left -= drawn.length;
    if (drawn.length === 0) return [];
    const head = label(
      [0, -row * pitch + height],
      `${on.say(section.thickness, 'length')} by ${on.say(section.width, 'length')}`,
      { toward: 'ne' },
    );
    row += 0.6;
    const boards = drawn.map((board) => {
      const shape = boardShapes(section, board, -row * pitch - height, height, on);
      row += 1;
      return shape;
    });
    row += 0.3;
    return [head, boards];
  });
  const bought = sections.reduce((sum, { plan }) => sum + plan.boards.length, 0);
  const joints = sections.some(
    ({ problem, plan }) => plan.boards.flatMap((b) => b.pieces).length > problem.parts.length,
  );
  return drawing({
    title: 'The boards and their cuts',
    says: `${bought} boards: ${sections
      .flatMap((section) => section.plan.boards.map((board) => inWords(section, board, on)))
      .join('; ')}.`,
    shapes: [
      ...shapes,
      note(
        joints
          ? 'Hatched: pieces, tapers included. Plain: left over. Pieces of one name are scarfed together.'
          : 'Hatched: pieces. Plain: left over.',
      ),
      bought > MOST_DRAWN ? note(`The first ${MOST_DRAWN} of ${bought} boards are drawn.`) : [],
    ],
  });
}

type Plan = BoughtSection['plan']['boards'][number];

function boardShapes(
  { problem }: BoughtSection,
  { stock, pieces }: Plan,
  y: number,
  height: number,
  on: OnHand,
) {
  const length = mm(problem.stocks[stock]!.length);
  let x = 0;
  const cut = pieces.map((piece, at) => {
    const long = mm(piece.length);
    const shape = [
      rectHatch(x, y, long, height, 'cedar', { falling: at % 2 === 1 }),
      label(
        [x + long / 2, y + height / 2],
        `${problem.parts[piece.part]!.name} ${on.say(piece.length, 'length')}`,
        {
          toward: 'n',
        },
      ),
    ];
    x += long + mm(problem.kerf);
    return shape;
  });
  return [rect(0, y, length, height), cut];
}

function inWords({ problem }: BoughtSection, { stock, pieces }: Plan, on: OnHand): string {
  const { length } = problem.stocks[stock]!;
  const left = Math.max(0, length - taken(pieces, problem.kerf));
  const cut = pieces.map(
    ({ part, length: long }) => `${problem.parts[part]!.name} ${on.say(long, 'length')}`,
  );
  return `one of ${on.say(length, 'length')} gives ${cut.join(', ')}, ${on.say(left, 'length')} left`;
}
