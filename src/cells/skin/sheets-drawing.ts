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
import type { OnHand } from '../form/define';
import { inOrder, type PlannedSheet, sheetsOf } from './sheets-facts';
import { asksHull } from './sheets-problem';
import type { SheetsValues } from './sheets-steps';

/** Small sheets in a row, and how much of a sheet's place is left between two. */
const IN_ROW = 4;
const BETWEEN = 0.12;
/** Below each row, of the width of its sheets. */
const FOR_NUMBERS = 0.6;

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
    ],
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
    arrow([length * 0.03, width * 1.06], [length * 0.22, width * 1.06], { pen: 'thin' }),
    note('grain', { at: [length * 0.3, width * 1.06] }),
    dim([0, 0], [length, 0], on.say(sheet.stock.length, 'length'), { run: 'horizontal', level: 1 }),
    dim([0, 0], [0, width], on.say(sheet.stock.width, 'length'), { run: 'vertical', level: 1 }),
    ...placeDims(pieces, on),
  ];
}

/** A number where there is room for it; smaller pieces are found by their place in the cut list. */
function pieceShapes({ outline, number }: Drawn, length: number): Shape[] {
  const { from, to } = outlineBox(outline);
  const at = placeInside(outline);
  const room = Math.min(to[0] - from[0], to[1] - from[1]);
  return [hatch(outline, 'plain'), ...(at && room > LETTER * length ? [note(`${number}`, { at })] : [])];
}

/** Height of a number, of the length of the sheet. */
const LETTER = 1 / 22;

/** From two edges to the boxes of the pieces, where there is room to say it: the rest stands in the cut list. */
function placeDims(pieces: readonly Drawn[], on: OnHand): Shape[] {
  const largest = pieces.toSorted((a, b) => areaOf(b) - areaOf(a)).slice(0, MOST_DIMS);
  return largest.flatMap(({ outline }): Shape[] => {
    const { from } = outlineBox(outline);
    const left = outline.find(([x]) => x === from[0])!; // a box touches its outline
    const low = outline.find(([, y]) => y === from[1])!;
    return [
      ...(from[0] > LEAST_DIM
        ? [dim([0, left[1]], left, on.say(from[0] / 1000, 'length'), { run: 'horizontal', side: 'below' })]
        : []),
      ...(from[1] > LEAST_DIM
        ? [dim([low[0], 0], low, on.say(from[1] / 1000, 'length'), { run: 'vertical', side: 'left' })]
        : []),
    ];
  });
}

const MOST_DIMS = 2;
/** A shorter one has no room for its figure, mm. */
const LEAST_DIM = 150;

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
  const foot = -0.32 * mm(shown.stock.width);
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
      }),
    ];
  });
}

/** The sheet in hand, and how many there are of each thickness: where each piece lies stands in the cut list. */
function inWords(shown: PlannedSheet, sheets: readonly PlannedSheet[], on: OnHand): string {
  const { pieces } = shown.section.problem;
  const names = inOrder(shown).map((laid, i) => `${shown.first + i}, ${pieces[laid.piece]!.name}`);
  const told = names.slice(0, MOST_NAMES);
  const rest = names.length - told.length;
  const name = nameOf(shown);
  const thick = ({ section }: PlannedSheet) => on.say(section.thickness, 'length');
  const counts = new Map<string, number>();
  for (const sheet of sheets) counts.set(thick(sheet), (counts.get(thick(sheet)) ?? 0) + sheet.times);
  return [
    `${name.charAt(0).toUpperCase()}${name.slice(1)}, ${thick(shown)} thick: ${told.join('; ')}`,
    rest > 0 ? `; and ${rest} more.` : '.',
    ` In all: ${[...counts].map(([size, count]) => `${count} of ${size}`).join(', ')}.`,
  ].join('');
}

/** More names of pieces than this make a text that nobody reads, and leave the map no room. */
const MOST_NAMES = 4;
