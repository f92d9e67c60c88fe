// Drawings at full size as files: sheets to print, tiles as SVG, the whole as SVG and as DXF.

import { dxf } from './dxf';
import { type Inked, inked } from './full-size-ink';
import { pdf } from './pdf';
import type { Drawing } from '../shapes';
import type { PaperName } from './tiles';
import { moved, type Page, pagesOf } from './tiles-page';
import { pageSvg } from './tiles-svg';

export type { PaperName } from './tiles';

export interface FullSizeFiles {
  /** Sheets of the paper chosen: for each drawing one that shows how its sheets are joined, then the sheets. */
  readonly pdf: Uint8Array;
  /** The same sheets, a file each. */
  readonly svg: readonly string[];
  /** All drawings side by side at full size in one file, uncut. */
  readonly whole: string;
  /** The same in millimetres for drawing programmes and cutting tables. */
  readonly dxf: string;
}

/** Between drawings in the uncut file, mm. */
const GAP = 20;

export function fullSizeFiles(
  drawings: readonly Drawing[],
  { paper, title }: { readonly paper: PaperName; readonly title?: string },
): FullSizeFiles {
  const all = drawings.map((drawing) => ({ drawing, inked: inked(drawing) }));
  const sheets = all.map((one) => one.inked);
  const pages = sheets.flatMap((one) => pagesOf(one, paper));
  const name = title ?? drawings[0]?.title ?? 'Full size';
  return {
    pdf: pdf(pages, name),
    svg: pages.map(pageSvg),
    whole: pageSvg(uncut(sheets, name)),
    dxf: dxf(all),
  };
}

/** One sheet as large as all drawings side by side. */
function uncut(all: readonly Inked[], title: string): Page {
  let x = 0;
  const ink = all.flatMap((one) => {
    const shift = x;
    x += one.width + GAP;
    return one.ink.map((mark) => moved(mark, [shift, 0]));
  });
  return {
    title,
    width: Math.max(0, x - GAP),
    height: Math.max(0, ...all.map(({ height }) => height)),
    within: null,
    ink,
  };
}
