// Sets a drawing out on a sheet: true to scale, texts where they disturb nothing, margins
// as wide as the texts need. It runs on each move of a slider.

import { movedBerth, movedPaper, numbered, type Paper } from './berth';
import { EDGE, firstMargins, fit, marginsOf } from './fit';
import { extents } from '../flatten';
import { foot } from './foot';
import { mapGround } from './ground';
import { placeShape, placeText } from './placing';
import type { ScaleUnits } from './scale-bar';
import { giveWay, isAgain, seatAll, type Seat, type Seating } from './seating';
import { isFootNote, isText, type Drawing } from '../shapes';
import type { KeyLine, Margins, Placed, Sheet } from './sheet';

export interface SetOut {
  /** Of the sheet, px; not used with a fixed `scale`. */
  readonly width: number;
  /** The field of the drawing takes exactly this much where its texts allow, px. */
  readonly height?: number;
  /** The field of the drawing takes at most this much where its texts allow, px. */
  readonly maxHeight?: number;
  /** Size of the texts, px; never under 13. */
  readonly text?: number;
  /** Of the scale bar. */
  readonly units?: ScaleUnits;
  readonly bar?: boolean;
  /** Whether its title stands under the drawing, before its notes. */
  readonly caption?: boolean;
  /** Fixed, px for each mm: for patterns at full size. The sheet then takes what it needs. */
  readonly scale?: number;
  /** The last sheet of the same drawing, so that texts keep their places while a slider moves. */
  readonly like?: Pick<Sheet, 'width' | 'layout'>;
}

/** The smallest text that may stand on a screen, px. */
export const LEAST_TEXT = 13;
/** Margins are found in this many rounds; after the last, texts that don't fit go to the key. */
const ROUNDS = 3;
/** What it is worth to stay in place while a slider moves, so that texts don't jump about; and while only margins settle. */
const FIRM_LOYALTY = 2.5;
const LOOSE_LOYALTY = 0.3;

/**
 * The sheet of a drawing. The same list of shapes gives the same list of primitives, some
 * of them empty, whatever the numbers, so that a page need only set what changed.
 */
export function setOut(drawing: Drawing, options: SetOut): Sheet {
  const first = layOut(drawing, options);
  // Set out once more from itself, so that it is what a slider's next move starts from.
  const laid =
    options.like || options.scale
      ? first
      : layOut(drawing, { ...options, like: asGuide(first, drawing, options) });
  const { seats } = laid;

  // Only now is it known how far up (and, at a fixed scale, how far to the left) things reach.
  const reach = marginsOf(seats, laid.paper);
  const field = {
    top: laid.paper.top - reach.top,
    bottom: laid.paper.bottom + reach.bottom,
    left: laid.paper.left - reach.left,
    right: laid.paper.right + reach.right,
  };
  const spare = Math.max(0, (options.height ?? 0) - (field.bottom - field.top));
  const dx = options.scale ? EDGE - field.left : 0;
  const dy = EDGE - field.top + spare / 2;
  const paper = movedPaper(laid.paper, dx, dy);
  const width = options.scale ? Math.max(field.right - field.left + 2 * EDGE, LEAST_WIDTH) : options.width;

  const key = keyOf(seats);
  const slabs = seats.flatMap((s) => (s.berth.slab ? [movedBerth(s.berth, dx, dy).slab!] : []));
  const notes = drawing.shapes.flatMap((shape) => (isFootNote(shape) ? [shape.text] : []));
  const under = foot(
    {
      width,
      scale: paper.scale,
      size: paper.size,
      units: options.units ?? 'metric',
      bar: (options.bar ?? true) && drawing.toScale !== false,
      caption: (options.caption ?? true) ? [`${drawing.title}.`, ...notes] : notes,
      key,
      keyPlaces: seats.length,
    },
    field.bottom + dy + spare / 2 + EDGE,
  );
  const marks: Placed[] = [
    ...drawing.shapes.flatMap((shape, of) => (isText(shape) ? [] : placeShape(shape, of, paper, slabs))),
    ...seats.flatMap((seat) => placeText({ ...seat, berth: movedBerth(seat.berth, dx, dy) }, paper)),
    ...under.marks,
  ];
  return {
    title: drawing.title,
    // A drawing of nothing says in its note why.
    says: [...new Set([...notes, drawing.says])].join(' '),
    width,
    height: Math.ceil(under.bottom),
    scale: paper.scale,
    origin: paper.origin,
    marks,
    key,
    layout: layoutOf(laid, drawing),
  };
}

/** What the next setting out of the same drawing goes by: nothing of texts, where some went to the key. */
function layoutOf({ seats, margins }: SettledSheet, { shapes }: Drawing): Sheet['layout'] {
  const choices = keyOf(seats).length > 0 ? NONE : choicesOf(seats);
  return { margins, choices, shapes: shapes.length };
}

const asGuide = (
  laid: SettledSheet,
  drawing: Drawing,
  { width }: SetOut,
): Pick<Sheet, 'width' | 'layout'> => ({
  width,
  layout: layoutOf(laid, drawing),
});

const NONE: ReadonlyMap<number, number> = new Map();

/** The narrowest sheet that its foot can be read on, px. */
const LEAST_WIDTH = 160;

interface SettledSheet {
  readonly paper: Paper;
  readonly margins: Margins;
  readonly seats: readonly Seat[];
}

/** Settles margins, and with them the scale, together with the places of texts. */
function layOut(drawing: Drawing, options: SetOut): SettledSheet {
  const { shapes } = drawing;
  const box = extents(drawing);
  const size = Math.max(LEAST_TEXT, options.text ?? 14);
  const field = {
    width: options.width,
    maxHeight: options.height ?? options.maxHeight ?? 480,
    scale: options.scale ?? null,
  };

  // A sheet of another width or of other shapes is no guide, nor is one with texts in the key.
  const { like } = options;
  const guide =
    like && like.width === options.width && like.layout.shapes === shapes.length ? like.layout : null;

  let margins = guide?.margins ?? firstMargins(shapes, size);
  let before = guide?.choices;
  let keyed: ReadonlySet<number> | null = null;
  for (let round = 1; ; round++) {
    const paper = fit(box, margins, size, field);
    const firm = round >= ROUNDS;
    const edges = field.scale
      ? { left: -Infinity, right: Infinity, firm }
      : { left: EDGE, right: options.width - EDGE, firm };
    const seating: Seating = {
      paper,
      ground: mapGround(shapes, paper),
      edges,
      loyalty: guide ? FIRM_LOYALTY : LOOSE_LOYALTY,
      ...(before ? { before } : {}),
      ...(keyed ? { keyed } : {}),
    };
    const all = seatAll(shapes, seating);
    // What is said elsewhere too asks for no room.
    const seats = all.filter(({ shape }) => !isAgain(shape));
    const needed = marginsOf(seats, paper);
    const inside = seats.every((s) => s.berth.left >= edges.left && s.berth.right <= edges.right);
    const gain = fit(box, needed, size, field).scale / paper.scale;
    // Wider margins than needed are kept while giving them back would gain little.
    const settled = firm || (inside && gain > 0.97 && gain < 1.08);
    if (settled) giveWay(all, seating);
    const inKey = seats.filter((s) => s.manner !== 'full');
    if (settled && (keyed !== null || inKey.length === 0)) return { paper, margins, seats: all };

    if (settled) {
      // Labels in the key leave room to the rest: once more, with margins for that.
      keyed = new Set(inKey.filter((s) => s.shape.shape === 'label').map((s) => s.of));
      round = ROUNDS - 1;
    }
    margins = settled ? marginsOf(seats, paper) : needed;
    // The last round starts afresh: what was chosen with margins still growing may not fit any more.
    before = round + 1 < ROUNDS ? choicesOf(seats) : undefined;
  }
}

const choicesOf = (seats: readonly Seat[]): ReadonlyMap<number, number> =>
  new Map(seats.map((s) => [s.of, s.choice]));

/** The key's lines in the order of the shapes; gives the numbered seats their numbers. */
function keyOf(seats: readonly Seat[]): KeyLine[] {
  const lines: KeyLine[] = [];
  let number = 0;
  for (const seat of seats) {
    if (seat.manner === 'full' || isAgain(seat.shape)) continue;
    if (seat.manner === 'numbered') seat.berth = { ...seat.berth, setting: numbered(++number) };
    lines.push({ number: seat.manner === 'numbered' ? number : 0, text: seat.shape.text });
  }
  return lines;
}
