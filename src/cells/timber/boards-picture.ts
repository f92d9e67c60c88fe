/** The boards of a cutting plan with their cuts, one above the other; boards cut alike are drawn once. */
import { type Drawing, drawing, mm, note, rect, rectHatch } from '../../drawing';
import { taken } from '../../kernel/cutting';
import type { OnHand, Values } from '../define';
import { bestOf, type BoughtSection } from './boards-plan';

/** Boards of one stock cut alike: the same kinds of part, of the same length. */
interface Alike {
  readonly times: number;
  readonly length: number;
  readonly pieces: readonly { readonly kind: string; readonly length: number }[];
  readonly left: number;
}

/** More rows than these make a strip too long to read; the sentence tells of all. */
const MOST_DRAWN = 9;

/** Width of a letter, as a share of the longest board, on the narrowest sheet. */
const LETTER = 1 / 42;

export function drawBoards(v: Values, on: OnHand): Drawing {
  const sections = bestOf(v, on.found).map((section) => ({ section, rows: rowsOf(section) }));
  const longest = mm(
    Math.max(...sections.flatMap(({ section }) => section.problem.stocks.map(({ length }) => length))),
  );
  const all = sections.reduce((sum, { rows }) => sum + rows.length, 0);
  const kerf = v['kerf'] as number; // an input of the cell
  // High enough for a text inside, on a phone too.
  const height = longest / 11;
  let y = 0;
  let drawn = 0;
  const shapes = sections.flatMap(({ section, rows }) => {
    const shown = rows.slice(0, MOST_DRAWN - drawn);
    if (shown.length === 0) return [];
    drawn += shown.length;
    y -= 1.2 * height;
    const head = note(`${on.say(section.thickness, 'length')} by ${on.say(section.width, 'length')}`, {
      at: [longest / 2, y + 0.4 * height],
    });
    const boards = shown.map((row) => {
      y -= 1.25 * height;
      return boardShapes(row, { kerf: mm(kerf), y, height, longest }, on);
    });
    return [head, boards];
  });
  return drawing({
    title: 'The boards and their cuts',
    says: `${capital(sections.flatMap(({ rows }) => rows.map((row) => inWords(row, on))).join('; '))}.`,
    shapes: [
      ...shapes,
      note('Hatched: left over. A part in pieces is scarfed; their lengths take in the taper.'),
      all > MOST_DRAWN ? note(`The first ${MOST_DRAWN} of ${all} ways to cut are drawn.`) : [],
    ],
  });
}

function rowsOf({ plan, problem }: BoughtSection): Alike[] {
  const rows = new Map<string, Alike>();
  const inPieces = (part: number) =>
    plan.boards.flatMap(({ pieces }) => pieces).filter((piece) => piece.part === part).length > 1;
  for (const { stock, pieces } of plan.boards) {
    const { length } = problem.stocks[stock]!;
    const cut = pieces.map(({ part, length: long }) => ({
      // Whole, one chine log is as good as the other; in pieces, it must be told which belong together.
      kind: inPieces(part) ? problem.parts[part]!.name : problem.parts[part]!.name.replace(/ \d+$/, ''),
      length: long,
    }));
    const key = JSON.stringify([stock, cut.map((piece) => [piece.kind, Math.round(piece.length * 1e4)])]);
    const times = (rows.get(key)?.times ?? 0) + 1;
    rows.set(key, { times, length, pieces: cut, left: Math.max(0, length - taken(pieces, problem.kerf)) });
  }
  return [...rows.values()];
}

interface Place {
  readonly kerf: number;
  readonly y: number;
  readonly height: number;
  readonly longest: number;
}

function boardShapes({ times, length, pieces }: Alike, { kerf, y, height, longest }: Place, on: OnHand) {
  let x = 0;
  const cut = pieces.map((piece, at) => {
    const long = mm(piece.length);
    const many = at === 0 && times > 1 ? `${times} × ` : '';
    const size = on.say(piece.length, 'length');
    // What finds no room inside its piece stands in the sentence below.
    const text = [`${many}${piece.kind} ${size}`, size].find((one) => one.length * LETTER * longest < long);
    const shape = [
      rectHatch(x, y, long, height, 'plain'),
      text ? note(text, { at: [x + long / 2, y + height / 2] }) : [],
    ];
    x += long + kerf;
    return shape;
  });
  const left = mm(length) - x;
  return [cut, left > 0 ? rectHatch(x, y, left, height, 'cedar') : rect(0, y, mm(length), height)];
}

function inWords({ times, length, pieces, left }: Alike, on: OnHand): string {
  const cut = pieces.map(({ kind, length: long }) => `${kind} ${on.say(long, 'length')}`).join(', ');
  const boards = times === 1 ? 'one board' : `${times} boards`;
  return `${boards} of ${on.say(length, 'length')}${times === 1 ? ' gives' : ', each gives'} ${cut}, ${on.say(left, 'length')} left`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
