/** The transom that its cell speaks of, from the cell's values. */
import type { Hull } from '../../boat';
import { transomShape, type TransomShape } from '../../boat/hull/transom-shape';
import type { Values } from '../form/define';
import { thicknessKey } from '../common/frame/frame-in-hand';

/** What the shape follows from. */
export const SHAPE_INPUTS = ['end', 'face', 'sideThickness', 'bottomThickness', 'bilgeThickness'] as const;

const shapes = new WeakMap<Hull, { readonly key: string; readonly shape: TransomShape }>();

/** @throws a sentence where the boat has no such transom */
export function shapeInHand(hull: Hull, values: Values): TransomShape {
  const key = SHAPE_INPUTS.map((name) => values[name]).join(' ');
  const known = shapes.get(hull);
  if (known?.key === key) return known.shape;
  const shape = transomShape(
    hull,
    values['end'] === 'bowTransom' ? 'bow transom' : 'transom',
    (panel) => Number(values[thicknessKey(panel)]),
    values['face'] === 'inner' ? 'inner' : 'outer',
  );
  shapes.set(hull, { key, shape });
  return shape;
}
