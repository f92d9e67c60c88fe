/** A card's drawing or chart: drawn anew for the paper's width, in letters of 14 pt, no taller than it is given. */
import { MM_PER_INCH } from '../../measure/si';
import type { VNode } from 'preact';
import type { Chart, Instance } from '../../cells';
import {
  collisions,
  type Drawing,
  extents,
  LEAST_TEXT,
  overlay,
  type ScaleUnits,
  setOut,
  type Sheet,
  svgTree,
} from '../../drawing';
import { type Bench, versionWords } from '../bench';
import { html } from '../html';
import type { drawChart } from '../picture/chart';
import { toVNode } from '../picture/vnode';
import { picturesOf } from '../picture/pictures-of';
import { sameData } from '../picture/same-data';
import { graphsOf } from './versions';

export interface Picture {
  /** What is said beside it, in the card's own lines. */
  readonly title: string;
  readonly says: readonly string[];
  /** How tall it would be with nothing in its way, px. */
  readonly wants: number;
  /** The picture and how tall it came out, px, for at most this much room; taller where it can't be read any smaller. */
  readonly draw: (height: number, width?: number) => FittedPicture;
}

export interface FittedPicture {
  readonly node: VNode;
  readonly height: number;
  /** It is not too small for its letters, which stay as large as they are: they leave room for what they speak of. */
  readonly legible: boolean;
}

/** The card's width in px of CSS: 190 mm. */
export const CARD_WIDTH = Math.floor((190 / MM_PER_INCH) * 96);
/** 14 pt in px, and a hair more, so that no rounding falls below. */
const LETTERS = 18.75;
/** Pictures are drawn as for a screen, whose smallest letters are 13 px, and enlarged until these are 14 pt. */
const ENLARGED = LETTERS / LEAST_TEXT;

/** The pictures a cell has, the foremost first; none while a number is missing. */
export async function cardPictures(instance: Instance, bench: Bench): Promise<Picture[]> {
  const [first, second] = graphsOf(bench).map(
    ([, graph]) => picturesOf(['drawing', 'chart'], instance, graph, bench, null)?.drawn,
  );
  const pictures: Picture[] = [];
  const least = instance.cell.wide ? LEAST_WIDE : LEAST_EXTENT;
  if (first?.drawing)
    pictures.push(drawn(first.drawing, other(first.drawing, second?.drawing), bench, least));
  if (first?.chart) {
    const { drawChart: draw } = await import('../picture/chart');
    pictures.push(charted(first.chart, other(first.chart, second?.chart), bench, draw));
  }
  return pictures;
}

function other<T>(first: T, second: T | undefined): T | undefined {
  return second !== undefined && !sameData(second, first) ? second : undefined;
}

/**
 * @param leastExtent of what is drawn, px as on a screen
 * @param options `caption`: whether its title stands under it
 */
export function drawn(
  drawing: Drawing,
  second: Drawing | undefined,
  bench: Bench,
  leastExtent: number,
  { caption = true } = {},
): Picture {
  const both = second ? overlay(drawing, second, versionWords) : drawing;
  const units: ScaleUnits = bench.shown.value.length === 'mm' ? 'metric' : 'inch';
  // The same sizes are asked for again and again while the card is fitted to its page.
  const made = new Map<string, Sized>();
  const sheetIn =
    (width: number): SheetFor =>
    (maxHeight) => {
      const key = `${width} ${maxHeight}`;
      const known = made.get(key);
      if (known) return known;
      const room = { width: Math.floor(width / ENLARGED), maxHeight, units, text: LEAST_TEXT, caption };
      const sheet = setOut(both, room);
      const sized = { sheet, collisions: collisions(sheet).length };
      made.set(key, sized);
      return sized;
    };
  const free = sheetIn(CARD_WIDTH)(TALLEST);
  const { left, right, bottom, top } = extents(both);
  const extent = Math.max(right - left, top - bottom);
  const least = Math.min(leastExtent, extent * free.sheet.scale);
  return {
    title: '',
    says: [],
    wants: free.sheet.height * ENLARGED,
    draw: (height, width = CARD_WIDTH) => {
      const { sheet, ...sized } = tallestWithin(height / ENLARGED, sheetIn(width));
      const tree = svgTree(sheet);
      const size = { width: sheet.width * ENLARGED, height: sheet.height * ENLARGED };
      return {
        node: toVNode({ ...tree, attrs: { ...tree.attrs, ...size } }) as VNode,
        height: size.height,
        legible: sized.collisions <= free.collisions && extent * sheet.scale >= least,
      };
    },
  };
}

interface Sized {
  readonly sheet: Sheet;
  readonly collisions: number;
}
type SheetFor = (field: number) => Sized;

/** Of a drawing's field, without what stands under it, px. */
const TALLEST = 560;
const LOWEST_FIELD = 60;
/** Of what is drawn, the longer way, px: 40 mm on the card, eight letters high. With less, letters crowd it out. */
const LEAST_EXTENT = ((40 / MM_PER_INCH) * 96) / ENLARGED;
/** The same of a drawing that has the whole width in the notebook: 120 mm on the card. */
export const LEAST_WIDE = 3 * LEAST_EXTENT;
/** Each try is lower by this much at least. */
const LESS = 0.8;

/**
 * The largest sheet that is no taller than it may be; where none is, the lowest. Letters take what
 * they need whatever the scale, and in a low field some go to lines below it, so that a sheet is tried
 * and not reckoned.
 */
function tallestWithin(height: number, sheetFor: SheetFor): Sized {
  let lowest: Sized | null = null;
  let field = Math.floor(height);
  while (field > LOWEST_FIELD) {
    const sized = sheetFor(field);
    const high = sized.sheet.height;
    if (high <= height) return sized;
    if (!lowest || high < lowest.sheet.height) lowest = sized;
    field = Math.floor(Math.min(field * LESS, field - (high - height)));
  }
  return lowest ?? sheetFor(LOWEST_FIELD);
}

/** The lowest that the page draws a graph, px, and its height over its width. */
const LOWEST_CHART = 210;
const ASPECT = 0.55;

function charted(chart: Chart, second: Chart | undefined, bench: Bench, draw: typeof drawChart): Picture {
  return {
    title: chart.title,
    says: [chart.says, ...(second ? [`${versionWords.second}: ${second.says}`] : [])],
    wants: Math.ceil(CARD_WIDTH * ASPECT),
    draw: (height, widest = CARD_WIDTH) => {
      const most = widest / ENLARGED;
      const width = Math.floor(Math.min(most, Math.max(LOWEST_CHART / ASPECT, height / ENLARGED / ASPECT)));
      const { figure } = draw(chart, second, {
        width,
        shown: bench.shown.value,
        names: versionWords,
        extents: null,
      });
      const high = Number(figure.getAttribute('height')) * ENLARGED;
      figure.setAttribute('width', String(width * ENLARGED));
      figure.setAttribute('height', String(high));
      return {
        node: html`<div ref=${(at: Element | null) => at?.replaceChildren(figure)}></div>`,
        height: high,
        legible: true,
      };
    },
  };
}
