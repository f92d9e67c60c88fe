/** The boards one above the other, each with its number, and every piece with its own from the cut list. */
import { attempt } from '../../../boat';
import { type Drawing, drawing, line, mm, note, rect, rectHatch, type Shape } from '../../../drawing';
import { lengthsOn, taken } from '../../../kernel/cutting';
import { isIssue } from '../../../measure';
import type { OnHand } from '../../form/define';
import { asksHull, best, type BoughtSection, type PieceToCut } from './boards-facts';
import type { BoardsValues } from './boards-steps';

/** A board with the pieces cut from it; the first has this number in the cut list. */
interface NumberedBoard {
  readonly number: number;
  readonly first: number;
  readonly section: BoughtSection;
  readonly length: number;
  readonly cuts: readonly PieceToCut[];
  readonly left: number;
}

/** Sizes as shares of the longest board, so that on the narrowest sheet a text fits its row. */
const PITCH = 1 / 5.3;
const BAR = 0.92 * PITCH;
/** Width of a letter, and of what all rows together leave it where they fill the lowest sheet. */
const LETTER = 1 / 20;
const ROWS_OF_LETTER = 11;

export function drawBoards(v: BoardsValues, on: OnHand): Drawing {
  const title = 'The boards and their cuts';
  const sections = attempt(() => {
    if (!on.hull && asksHull(v)) throw new Error('There is no hull to cut boards for.');
    return on.ask(best);
  });
  if (isIssue(sections)) return drawing({ title, says: sections.issue, shapes: [note(sections.issue)] });
  const boards = boardsOf(sections);
  const longest = mm(Math.max(...boards.map(({ length }) => length)));
  const rows = boards.length + sections.length;
  const sizes = {
    kerf: mm(v.kerf),
    slope: v.slope,
    pitch: PITCH * longest,
    letter: LETTER * longest * Math.max(1, rows / ROWS_OF_LETTER),
  };
  let row = 0;
  return drawing({
    title,
    says: inWords(boards, on),
    shapes: [
      sections.map((section) => [
        headShape(section, { ...sizes, y: -sizes.pitch * row++ }, on),
        boards
          .filter((board) => board.section === section)
          .map((board) => boardShapes(board, { ...sizes, y: -sizes.pitch * row++ }, on)),
      ]),
      note(
        'Numbered as in the cut list, after ends to the left. Tapered beyond a line across. Hatched: left over.',
      ),
    ],
  });
}

function boardsOf(sections: readonly BoughtSection[]): readonly NumberedBoard[] {
  let first = 1;
  return sections
    .flatMap((section) => section.plan.boards.map((board) => ({ section, board })))
    .map(({ section, board }, i) => {
      const { kerf, stocks } = section.problem;
      const { length } = stocks[board.stock]!; // a plan is checked
      const drawn: NumberedBoard = {
        number: i + 1,
        first,
        section,
        length,
        cuts: board.parts.map((part) => section.cuts[part]!),
        // The cut that parts it from the last piece goes off it too.
        left: Math.max(0, length - taken(lengthsOn(board, section.problem), kerf) - kerf),
      };
      first += board.parts.length;
      return drawn;
    });
}

interface Place {
  readonly kerf: number;
  readonly slope: number;
  readonly pitch: number;
  readonly letter: number;
  /** Of the middle of the row. */
  readonly y: number;
}

/** The section of the boards in the rows below it. */
function headShape({ thickness, width }: BoughtSection, { letter, y }: Place, on: OnHand): Shape {
  // Of a size that is bought what the tape leaves out comes first.
  const size = (metres: number) => on.say(metres, 'length').replace(/^(.+) (strong|scant)$/, '$2 $1');
  const text = `${size(thickness)} × ${size(width)}`;
  return note(text, { at: [(text.length * letter) / 2, y] });
}

function boardShapes(board: NumberedBoard, { kerf, slope, pitch, letter, y }: Place, on: OnHand): Shape[] {
  const taper = slope * mm(board.section.thickness);
  const height = (BAR / PITCH) * pitch;
  const [low, high] = [y - height / 2, y + height / 2];
  const across = (at: number) =>
    line(
      [
        [at, low],
        [at, high],
      ],
      { pen: 'thin' },
    );
  const pieces: Shape[] = [];
  let x = 0;
  for (const [at, cut] of board.cuts.entries()) {
    const end = x + mm(cut.length);
    const clear = [x + (cut.scarfed.aft ? taper : 0), end - (cut.scarfed.fore ? taper : 0)] as const;
    const text = nameWithin((clear[1] - clear[0]) / letter, board.first + at, cut);
    pieces.push(
      rectHatch(x, low, end - x, height, 'plain'),
      ...(cut.scarfed.aft ? [across(clear[0])] : []),
      ...(cut.scarfed.fore ? [across(clear[1])] : []),
      note(text, { at: [(clear[0] + clear[1]) / 2, y] }),
    );
    x = end + kerf;
  }
  const length = mm(board.length);
  const name = `Board ${board.number}`;
  const long = on.say(board.length, 'stockLength');
  const beside = (text: string) => ((text.length + 1) * letter) / 2;
  return [
    note(name, { at: [-beside(name), y] }),
    ...pieces,
    length > x ? rectHatch(x, low, length - x, height, 'cedar') : rect(0, low, length, height),
    note(long, { at: [length + beside(long), y] }),
  ];
}

/** The number of a piece in the cut list, and as much of its name as there are letters' room for. */
function nameWithin(room: number, number: number, { name }: PieceToCut): string {
  const words = name.split(', ');
  const texts = words.map((_, at) => `${number}: ${words.slice(0, words.length - at).join(', ')}`);
  return texts.find((text) => text.length < room) ?? `${number}`;
}

/** A line or two, for lines of words take the height that the rows need: each piece stands in the cut list besides. */
function inWords(boards: readonly NumberedBoard[], on: OnHand): string {
  const pieces = boards.reduce((sum, { cuts }) => sum + cuts.length, 0);
  const most = boards.reduce((best, one) => (one.left > best.left ? one : best));
  const [board, piece] = [boards.length === 1 ? 'board' : 'boards', pieces === 1 ? 'piece' : 'pieces'];
  return `${boards.length} ${board} for ${pieces} ${piece}. The longest left over is ${on.say(most.left, 'length')}, of board ${most.number}.`;
}
