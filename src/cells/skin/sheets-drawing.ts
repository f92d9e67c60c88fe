/** The sheet in hand with its pieces, numbered in the order of the cuts; below it all sheets, small. */
import { attempt } from '../../boat';
import {
  arrow,
  dim,
  type Drawing,
  drawing,
  hatch,
  mm,
  note,
  type Point,
  rect,
  type Shape,
} from '../../drawing';
import { laidOutline } from '../../kernel/nest';
import { outlineBox, placeInside } from '../../kernel/lying-outlines';
import { isIssue } from '../../measure';
import type { Leaf, OnHand } from '../form/define';
import { inOrder, type PlannedSheet, sheetsOf } from './sheets-facts';
import { asksHull } from './sheets-problem';
import type { SheetsValues } from './sheets-steps';

/** Small sheets in a row, and how much of a sheet's place is left between two. */
const IN_ROW = 6;
const BETWEEN = 0.12;
/** Below each row, of the width of its sheets. */
const FOR_NUMBERS = 1.1;

export function drawSheets(v: SheetsValues, on: OnHand): Drawing {
  const sheets = attempt(() => {
    if (!on.hull && asksHull(v)) throw new Error('There is no hull to cut panels for.');
    return on.ask(sheetsOf);
  });
  const title = 'The cut map';
  if (isIssue(sheets)) return drawing({ title, says: sheets.issue, shapes: [note(sheets.issue)] });
  const shown =
    sheets.find(({ number, times }) => v.sheet >= number && v.sheet < number + times) ?? sheets.at(-1)!; // a plan has a sheet
  return drawing({
    title: `${title}, ${nameOf(shown)}`,
    says: inWords(shown, sheets, on),
    shapes: [
      largeSheet(shown, on),
      ...(sheets.length > 1 ? smallSheets(sheets, shown) : []),
      note(
        v.faces === 'one'
          ? 'Numbered in the order of the cuts, on the good face.'
          : 'Numbered in the order of the cuts; “from the back” in the list is marked on the other face.',
      ),
      note(namesOn(shown)),
    ],
  });
}

/** Each sheet for itself, to be laid on the bench. */
export function sheetLeaves(v: SheetsValues, on: OnHand): readonly Leaf[] {
  if (!on.hull && asksHull(v)) return [];
  const sheets = on.ask(sheetsOf);
  return sheets.map((sheet): Leaf => {
    const pieces = inOrder(sheet).length;
    return {
      title: `${nameOf(sheet)} of ${v.count}`,
      drawing: drawing({
        title: `The cut map, ${nameOf(sheet)}`,
        says: `Plywood ${on.say(sheet.section.thickness, 'length')} thick. The pieces stand in the order of the cuts; places are those of the box round a piece, from the sheet’s left end and its lower edge. Saw ${on.say(v.outside, 'length')} outside the lines.`,
        shapes: largeSheet(sheet, on),
      }),
      rows: Array.from({ length: pieces }, (_, i) => `cut${sheet.first + i}`),
    };
  });
}

const nameOf = ({ number, times }: PlannedSheet) =>
  times === 1 ? `sheet ${number}` : `sheets ${number} and ${number + 1}, sawn at once`;

interface Drawn {
  readonly outline: readonly Point[];
  readonly number: number;
  readonly name: string;
}

function piecesOn(sheet: PlannedSheet): readonly Drawn[] {
  const { pieces } = sheet.section.problem;
  return inOrder(sheet).map((laid, i) => ({
    outline: laidOutline(laid, pieces[laid.piece]!).map(([x, y]): Point => [mm(x), mm(y)]),
    number: sheet.first + i,
    name: pieces[laid.piece]!.name,
  }));
}

function largeSheet(sheet: PlannedSheet, on: OnHand): Shape[] {
  const [length, width] = [mm(sheet.stock.length), mm(sheet.stock.width)];
  const pieces = piecesOn(sheet);
  return [
    rect(0, 0, length, width),
    ...pieces.flatMap((piece) => pieceShapes(piece, length)),
    arrow([0, -0.07 * width], [length * 0.19, -0.07 * width], { pen: 'thin' }),
    note('grain', { at: [length * 0.27, -0.07 * width], inRow: true }),
    ...runningDims(pieces, sheet, on),
  ];
}

/** A number where there is room for it; smaller pieces are found by their place in the cut list. */
function pieceShapes({ outline, number }: Drawn, length: number): Shape[] {
  const at = placeInside(outline);
  return [hatch(outline, 'plain'), ...(at && isNumbered(outline, length) ? [note(`${number}`, { at })] : [])];
}

function isNumbered(outline: readonly Point[], length: number): boolean {
  const { from, to } = outlineBox(outline);
  return Math.min(to[0] - from[0], to[1] - from[1]) > NUMBERED * length;
}

/** What a piece is wide where it bears its number, of the length of the sheet: on a phone a number is so high. Smaller ones are found in the cut list. */
const NUMBERED = 1 / 12;

/**
 * From the left end and from the lower edge to each numbered piece, as a tape lies: all from one end, the sheet's own
 * length and width last. Pieces that begin at one line share it; where they are too many the largest are told, and the
 * rest stands in the cut list.
 */
function runningDims(pieces: readonly Drawn[], { stock }: PlannedSheet, on: OnHand): Shape[] {
  const largest = pieces
    .filter(({ outline }) => isNumbered(outline, mm(stock.length)))
    .toSorted((a, b) => areaOf(b) - areaOf(a))
    .slice(0, MOST_DIMS);
  const [length, width] = [mm(stock.length), mm(stock.width)];
  const [ends, edges] = ([0, 1] as const).map((axis) =>
    linesOf(
      largest.map(({ outline }) => outlineBox(outline).from[axis]),
      (at) => on.say(at / 1000, 'length'),
    ),
  ) as [readonly Told[], readonly Told[]]; // one an axis
  return [
    ...[...ends, { at: length, text: on.say(stock.length, 'length') }].map(({ at, text }, level) =>
      dim([0, width], [at, width], text, { run: 'horizontal', side: 'above', level }),
    ),
    ...[...edges, { at: width, text: on.say(stock.width, 'length') }].map(({ at, text }, level) =>
      dim([0, 0], [0, at], text, { run: 'vertical', side: 'left', level }),
    ),
  ];
}

interface Told {
  readonly at: number;
  readonly text: string;
}

/** Each line once, as a tape tells it, nearest first; what begins at the edge itself needs none. */
function linesOf(starts: readonly number[], say: (mm: number) => string): readonly Told[] {
  const told = new Map<string, number>();
  for (const at of starts.toSorted((a, b) => a - b))
    if (at > AT_EDGE && !told.has(say(at))) told.set(say(at), at);
  return [...told].map(([text, at]) => ({ text, at }));
}

/** Pieces whose places stand beside the sheet. */
const MOST_DIMS = 4;
/** What begins nearer to the edge begins at the trim, mm. */
const AT_EDGE = 30;

const areaOf = ({ outline }: Drawn) => {
  const { from, to } = outlineBox(outline);
  return (to[0] - from[0]) * (to[1] - from[1]);
};

/** All of them in rows, the one in hand with a heavy outline. */
function smallSheets(sheets: readonly PlannedSheet[], shown: PlannedSheet): Shape[] {
  const longest = mm(Math.max(...sheets.map(({ stock }) => stock.length)));
  const widest = mm(Math.max(...sheets.map(({ stock }) => stock.width)));
  const whole = mm(shown.stock.length);
  const scale = whole / (longest * (IN_ROW + (IN_ROW - 1) * BETWEEN));
  const foot = -0.2 * mm(shown.stock.width);
  return sheets.flatMap((sheet, i): Shape[] => {
    const column = i % IN_ROW;
    const row = Math.floor(i / IN_ROW);
    const x = column * longest * scale * (1 + BETWEEN);
    const y = foot - widest * scale * (1 + row * (1 + FOR_NUMBERS));
    const put = ([px, py]: Point): Point => [x + px * scale, y + py * scale];
    const corner = put([mm(sheet.stock.length), mm(sheet.stock.width)]);
    return [
      ...piecesOn(sheet).map(({ outline }) => hatch(outline.map(put), 'plain', { pen: 'thin' })),
      rect(x, y, corner[0] - x, corner[1] - y, { pen: sheet === shown ? 'outline' : 'thin' }),
      note(sheet.times === 1 ? `${sheet.number}` : `${sheet.number}, ${sheet.number + 1}`, {
        at: [x + (longest * scale) / 2, y - (widest * scale * FOR_NUMBERS) / 2],
        inRow: true,
      }),
    ];
  });
}

/** How many sheets there are of each thickness, and of which the sheet in hand is. */
function inWords(shown: PlannedSheet, sheets: readonly PlannedSheet[], on: OnHand): string {
  const thick = ({ section }: PlannedSheet) => on.say(section.thickness, 'length');
  const counts = new Map<string, number>();
  for (const sheet of sheets) counts.set(thick(sheet), (counts.get(thick(sheet)) ?? 0) + sheet.times);
  const all = [...counts].map(([size, count]) => `${count} of ${size}`).join(', ');
  return `It is ${thick(shown)} thick. In all: ${all}.`;
}

/** The key to the numbers: where each piece lies stands in the cut list. */
function namesOn(shown: PlannedSheet): string {
  const { pieces } = shown.section.problem;
  const names = inOrder(shown).map((laid, i) => `${shown.first + i}, ${pieces[laid.piece]!.name}`);
  const rest = names.length - MOST_NAMES;
  return `${names.slice(0, MOST_NAMES).join('; ')}${rest > 0 ? `; and ${rest} more` : ''}.`;
}

/** More names of pieces than this make a text that nobody reads, and leave the map no room. */
const MOST_NAMES = 4;
