// Drawings as a DXF file in millimetres, layers named by part: what a cutting table or a drawing programme takes.

import DxfDrawing from 'dxf-writer';
import { flatten } from '../flatten';
import type { Ink, Inked } from './full-size-ink';
import { type Drawing, isText, type PlainShape, type Point } from '../shapes';

/** Layers of what the drawing says about its parts. */
const WORDS = 'texts';
const MEASURES = 'dimensions';
/** Between drawings that stand side by side, mm. */
const GAP = 100;
/** Of a cross for a point, mm. */
const ARM = 3;

type DashedPen = 'hidden' | 'centre' | 'ghost';
/** Line types as DXF names them, with what is drawn and left out, mm. */
const DASHES: Readonly<Record<DashedPen, readonly [name: string, elements: number[]]>> = {
  hidden: ['HIDDEN', [6, -3]],
  centre: ['CENTER', [16, -3, 3, -3]],
  ghost: ['PHANTOM', [4, -4]],
};
const isDashed = (pen: string): pen is DashedPen => pen in DASHES;

type OnLayer = (name: string, lineType?: string) => void;

/**
 * The text of the file: the drawings side by side, their lower left corners on a level line. Circles and arcs
 * are exact; dashed pens have layers of their own beside the part's.
 *
 * @param drawings with their texts as they were set out on paper
 */
export function dxf(drawings: readonly { readonly drawing: Drawing; readonly inked: Inked }[]): string {
  const file = new DxfDrawing();
  file.setUnits('Millimeters');
  for (const [name, elements] of Object.values(DASHES)) file.addLineType(name, name, elements);
  const layers = new Set<string>();
  const onLayer: OnLayer = (name, lineType = 'CONTINUOUS') => {
    if (!layers.has(name)) file.addLayer(name, DxfDrawing.ACI.WHITE, lineType);
    layers.add(name);
    file.setActiveLayer(name);
  };
  let x = 0;
  for (const { drawing, inked } of drawings) {
    const origin: Point = [x + inked.origin[0], inked.origin[1]];
    for (const shape of drawing.shapes) if (!isText(shape)) writeShape(file, shape, origin, onLayer);
    onLayer(WORDS);
    for (const ink of inked.ink) writeWords(file, ink, x);
    onLayer(MEASURES);
    for (const ink of inked.ink) writeMeasure(file, ink, x);
    x += inked.width + GAP;
  }
  return file.toDxfString();
}

/** Written to a millionth of a millimetre, so that no exponent is needed. */
const figure = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

function writeShape(file: DxfDrawing, shape: PlainShape, [dx, dy]: Point, onLayer: OnLayer): void {
  const pen = 'pen' in shape ? shape.pen : 'visible';
  if (pen === 'none') return;
  const part = layerName(shape.layer ?? shape.part ?? '');
  if (isDashed(pen)) onLayer(`${part} ${pen}`, DASHES[pen][0]);
  else onLayer(part);
  const place = ([x, y]: Point): [number, number] => [figure(x + dx), figure(y + dy)];
  switch (shape.shape) {
    case 'circle':
      file.drawCircle(...place(shape.at), figure(shape.radius));
      return;
    case 'arc':
      file.drawArc(...place(shape.at), figure(shape.radius), degrees(shape.from), degrees(shape.to));
      return;
    case 'mark': {
      const [x, y] = place(shape.at);
      file.drawLine(x - ARM, y, x + ARM, y);
      file.drawLine(x, y - ARM, x, y + ARM);
      return;
    }
    case 'area':
      for (const ring of shape.rings) file.drawPolyline(ring.map(place), true);
      return;
    case 'line':
      file.drawPolyline(shape.points.map(place), shape.closed);
      return;
    case 'arrow':
      for (const points of flatten(shape)) file.drawPolyline(points.map(place), false);
  }
}

function writeWords(file: DxfDrawing, ink: Ink, dx: number): void {
  if (ink.ink !== 'text') return;
  const align = { start: 'left', middle: 'center', end: 'right' } as const;
  // A DXF text is as high as its capitals, 0.7 of the font's size.
  file.drawText(
    figure(ink.at[0] + dx),
    figure(ink.at[1]),
    figure(0.7 * ink.size),
    degrees(ink.turn),
    oneLine(ink.text),
    align[ink.anchor],
    'baseline',
  );
}

/** Dimension and leader lines with their heads, which only the setting out knows. */
function writeMeasure(file: DxfDrawing, ink: Ink, dx: number): void {
  if (ink.ink === 'text') return;
  const drawn = ink.ink === 'line' ? ink.pen === 'dimension' : !ink.white;
  if (!drawn) return;
  file.drawPolyline(
    ink.points.map(([x, y]): [number, number] => [figure(x + dx), figure(y)]),
    ink.ink === 'solid',
  );
}

const degrees = (radians: number): number => figure((radians * 180) / Math.PI);

/** A value of a DXF file ends with its line. */
const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ');

/** Without the signs that layer names may not have. */
const layerName = (name: string): string =>
  oneLine(name.replaceAll(/[<>/\\":;?*|=`,']/g, ' ')).trim() || 'outline';
