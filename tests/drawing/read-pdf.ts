/** A PDF read back by pdf.js (as unpdf packs it for Node): strokes, clips and texts of each page, in mm. */
import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';

export interface ReadPage {
  /** mm */
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly ReadStroke[];
  readonly fills: readonly (readonly (readonly [number, number])[])[];
  readonly texts: readonly string[];
}

export interface ReadStroke {
  /** Polylines on the page, mm. */
  readonly points: readonly (readonly [number, number])[];
  readonly width: number;
  readonly dashed: boolean;
  /** The window it is clipped to, mm; null outside any. */
  readonly clip: Clip | null;
}

export interface Clip {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

const MM_PER_PT = 25.4 / 72;

export async function readPdf(bytes: Uint8Array): Promise<{ title: string; pages: readonly ReadPage[] }> {
  const { OPS } = await getResolvedPDFJS();
  const document = await getDocumentProxy(bytes.slice());
  const { info } = await document.getMetadata();
  const pages: ReadPage[] = [];
  for (let i = 1; i <= document.numPages; i++) {
    const page = await document.getPage(i);
    const [, , width = 0, height = 0] = page.view;
    const { fnArray, argsArray } = await page.getOperatorList();
    const strokes: ReadStroke[] = [];
    const fills: (readonly (readonly [number, number])[])[] = [];
    let scale = 1;
    let pen = { width: 0, dashed: false };
    let clip: Clip | null = null;
    let clips = false;
    fnArray.forEach((operator, at) => {
      const args = argsArray[at] as unknown[];
      if (operator === OPS.transform) scale = Number(args[0]) * MM_PER_PT;
      if (operator === OPS.setLineWidth) pen = { ...pen, width: Number(args[0]) * scale };
      if (operator === OPS.setDash) pen = { ...pen, dashed: (args[0] as number[]).length > 0 };
      if (operator === OPS.clip) clips = true;
      if (operator === OPS.restore) clip = null;
      if (operator !== OPS.constructPath) return;
      const points = pathOf(args, scale);
      if (clips) {
        clip = boundsOf(points);
        clips = false;
      } else if (args[0] === OPS.stroke) strokes.push({ ...pen, points, clip });
      else if (args[0] === OPS.fill) fills.push(points);
    });
    const { items } = await page.getTextContent();
    pages.push({
      width: width * MM_PER_PT,
      height: height * MM_PER_PT,
      strokes,
      fills,
      texts: items.flatMap((item) => ('str' in item && item.str !== '' ? [item.str] : [])),
    });
  }
  return { title: String((info as Record<string, unknown>)['Title']), pages };
}

/** A path as pdf.js hands it on: 0 x y for a move, 1 x y for a line, 3 or 4 to close. */
function pathOf(args: readonly unknown[], scale: number): (readonly [number, number])[] {
  const [data] = args[1] as [ArrayLike<number>];
  const points: (readonly [number, number])[] = [];
  for (let i = 0; i < data.length;) {
    if (data[i]! > 1) {
      i += 1;
      continue;
    }
    points.push([data[i + 1]! * scale, data[i + 2]! * scale]);
    i += 3;
  }
  return points;
}

function boundsOf(points: readonly (readonly [number, number])[]): Clip {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    bottom: Math.min(...ys),
    top: Math.max(...ys),
  };
}
