/** The boards one above the other, each with its number, and every piece with its own from the cut list. */
import { attempt } from '../../boat';
import { type Drawing, drawing, line, mm, note, rect, rectHatch, type Shape } from '../../drawing';
import { lengthsOn, taken } from '../../kernel/cutting';
import { isIssue } from '../../measure';
import type { OnHand, Values } from '../define';
import { bestOf, type BoughtSection, type Cut } from './boards-plan';

/** A board with the pieces cut from it; the first has this number in the cut list. */
interface Drawn {
  readonly number: number;
  readonly first: number;
  readonly section: BoughtSection;
  readonly length: number;
  readonly cuts: readonly Cut[];
  readonly left: number;
}

/** Width of a letter, as a share of the longest board, on the narrowest sheet. */
const LETTER = 1 / 42;

export function drawBoards(v: Values, on: OnHand): Drawing {
  const title = 'The boards and their cuts';
  const sections = attempt(() => {
    if (!on.hull) throw new Error('There is no hull to cut boards for.');
    return bestOf(on.hull, v, on.found);
  });
  if (isIssue(sections)) return drawing({ title, says: sections.issue, shapes: [note(sections.issue)] });
  const boards = boardsOf(sections);
  const longest = mm(Math.max(...boards.map(({ length }) => length)));
  const kerf = mm(Number(v['kerf']));
  // High enough for a number inside, on a phone too.
  const height = longest / 18;
  return drawing({
    title,
    says: boards.map((board) => inWords(board, on)).join(' '),
    shapes: [
      boards.map((board, i) =>
        boardShapes(
          board,
          { kerf, slope: Number(v['slope']), y: -2.4 * height * (i + 1), height, longest },
          on,
        ),
      ),
      note(
        'Pieces are numbered as in the cut list, their after ends to the left. A line across: from there to the end the piece is tapered. Hatched: left over.',
      ),
    ],
  });
}

function boardsOf(sections: readonly BoughtSection[]): readonly Drawn[] {
  let first = 1;
  return sections
    .flatMap((section) => section.plan.boards.map((board) => ({ section, board })))
    .map(({ section, board }, i) => {
      const { length } = section.problem.stocks[board.stock]!; // a plan is checked
      const drawn: Drawn = {
        number: i + 1,
        first,
        section,
        length,
        cuts: board.parts.map((part) => section.cuts[part]!),
        left: Math.max(0, length - taken(lengthsOn(board, section.problem), section.problem.kerf)),
      };
      first += board.parts.length;
      return drawn;
    });
}

const headOf = ({ number, length, section }: Drawn, on: OnHand) =>
  `Board ${number}: ${on.say(length, 'stockLength')}, ${on.say(section.thickness, 'length')} × ${on.say(section.width, 'length')}`;

interface Place {
  readonly kerf: number;
  readonly slope: number;
  readonly y: number;
  readonly height: number;
  readonly longest: number;
}

function boardShapes(board: Drawn, { kerf, slope, y, height, longest }: Place, on: OnHand): Shape[] {
  const taper = slope * mm(board.section.thickness);
  const head = headOf(board, on);
  const pieces: Shape[] = [];
  let x = 0;
  for (const [at, cut] of board.cuts.entries()) {
    const long = mm(cut.length);
    const number = `${board.first + at}`;
    const texts = [
      `${number}: ${cut.name} · ${on.say(cut.length, 'length')}`,
      `${number}: ${cut.name}`,
      number,
    ];
    const text = texts.find((one) => one.length * LETTER * longest < long - height) ?? number;
    const across = (at: number) =>
      line(
        [
          [at, y],
          [at, y + height],
        ],
        { pen: 'thin' },
      );
    pieces.push(
      rectHatch(x, y, long, height, 'plain'),
      ...(cut.scarfed.aft ? [across(x + taper)] : []),
      ...(cut.scarfed.fore ? [across(x + long - taper)] : []),
      note(text, { at: [x + long / 2, y + height / 2] }),
    );
    x += long + kerf;
  }
  const left = mm(board.length) - x;
  return [
    note(head, {
      at: [Math.max(mm(board.length) / 2, (head.length * LETTER * longest) / 2), y + 1.6 * height],
    }),
    ...pieces,
    left > 0 ? rectHatch(x, y, left, height, 'cedar') : rect(0, y, mm(board.length), height),
  ];
}

function inWords(board: Drawn, on: OnHand): string {
  const cut = board.cuts.map((one) => `${one.name} at ${on.say(one.length, 'length')}`).join('; ');
  return `${headOf(board, on)}: ${cut}; ${on.say(board.left, 'length')} left over.`;
}
