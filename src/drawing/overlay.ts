// Two versions in one drawing. The convention, which needs no colour: the first is drawn
// as usual; the second's outlines lie over it dashed, and where its texts differ they
// follow in [square brackets]. A line under the drawing says so.

import { note } from './drawing';
import {
  isText,
  type AreaShape,
  type Drawing,
  type Pen,
  type PlainShape,
  type Shape,
  type TextShape,
} from './shapes';

export interface OverlayNames {
  readonly first: string;
  readonly second: string;
}

/**
 * The first drawing with the second's geometry dashed over it. Texts are paired by kind and
 * order; a text of the second without a partner is shown in brackets at its own place.
 */
export function overlay(
  first: Drawing,
  second: Drawing,
  names: OverlayNames = { first: 'this version', second: 'the other version' },
): Drawing {
  const partners = new Map<TextShape['shape'], TextShape[]>();
  for (const shape of second.shapes) {
    if (!isText(shape)) continue;
    const same = partners.get(shape.shape);
    if (same) same.push(shape);
    else partners.set(shape.shape, [shape]);
  }
  const paired = first.shapes.map((shape): Shape => {
    if (!isText(shape)) return shape;
    const partner = partners.get(shape.shape)?.shift();
    return partner && partner.text !== shape.text
      ? { ...shape, text: `${shape.text} [${partner.text}]` }
      : shape;
  });
  const alone = [...partners.values()].flat().map((shape): Shape => ({ ...shape, text: `[${shape.text}]` }));
  const ghosts = second.shapes.flatMap((shape): Shape[] => (isText(shape) ? [] : ghost(shape)));
  // Tints below, then the dashes, then the first version's own lines, which win where both run together.
  const tints = paired.flatMap((shape): Shape[] =>
    shape.shape === 'area' ? [{ ...shape, pen: 'none' }] : [],
  );
  const lines = paired.flatMap((shape): Shape[] =>
    shape.shape === 'area' ? edges(shape, shape.pen) : [shape],
  );

  const box = first.keepIn ?? second.keepIn;
  return {
    title: first.title,
    says: `${capital(names.first)}: ${first.says} ${capital(names.second)}, dashed: ${second.says}`,
    shapes: [
      ...tints,
      ...ghosts,
      ...lines,
      ...alone,
      note(`Solid: ${names.first}. Dashed and in [brackets]: ${names.second}.`),
    ],
    ...(box ? { keepIn: box } : {}),
    ...(first.toScale === false ? { toScale: false } : {}),
  };
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** The edges of an area as lines of their own; none where it was drawn without. */
function edges({ rings, part, layer }: AreaShape, pen: Pen | 'none'): Shape[] {
  if (pen === 'none') return [];
  const tag = { ...(part === undefined ? {} : { part }), ...(layer === undefined ? {} : { layer }) };
  return rings.map((points) => ({ shape: 'line', points, closed: true, pen, ...tag }));
}

/** A shape of the second version: its lines dashed, its hatching left out, so that the first stays readable. */
function ghost(shape: PlainShape): Shape[] {
  switch (shape.shape) {
    case 'area':
      return edges(shape, shape.pen === 'none' ? 'none' : 'ghost');
    // A mark has one size whatever the version and can't be dashed.
    case 'mark':
      return [];
    case 'line':
    case 'circle':
    case 'arc':
    case 'arrow':
      return [{ ...shape, pen: 'ghost' }];
  }
}
