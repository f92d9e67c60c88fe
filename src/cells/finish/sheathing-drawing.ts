/** Wood with its sheathing in section, layer on layer, in millimetres. */
import { dim, hatch, label, line, type Point, type Shape } from '../../drawing';

/** Millimetres a layer and a coat. */
export interface Sheathing {
  readonly layers: number;
  readonly ply: number;
  readonly coats: number;
  readonly film: number;
}

/** The section, its wood surface on y = 0. */
export function sheathing(
  { layers, ply, coats, film }: Sheathing,
  says: { readonly ply: string; readonly film: string; readonly whole: string },
): Shape[] {
  const cloth = layers * ply;
  const top = cloth + coats * film;
  const thick = Math.max(top, 0.1);
  const wide = thick * 4;
  const surface: Point[] = [
    [0, 0],
    [wide, 0],
  ];
  return [
    hatch(band(wide, -thick * 0.8, thick * 0.8), 'ply', { pen: 'none', part: 'bottom' }),
    line(surface, { pen: 'outline' }),
    label([wide * 0.3, -thick * 0.4], 'plywood, sealed', { toward: 'w' }),
    ...bands(wide, 0, layers, ply, 'resin'),
    ...bands(wide, cloth, coats, film, 'plain'),
    ...(layers > 0
      ? [
          dim([wide, 0], [wide, ply], says.ply, { side: 'right' }),
          dim([0, 0], [0, top], says.whole, { side: 'left' }),
          label([wide * 0.3, cloth / 2], `${counted(layers, 'layer')} of cloth`, { toward: 'n' }),
        ]
      : []),
    ...(coats > 0 && film > 0
      ? [
          dim([wide, top - film], [wide, top], says.film, { side: 'right' }),
          label([wide * 0.7, (cloth + top) / 2], counted(coats, 'fill coat'), { toward: 'n' }),
        ]
      : []),
  ];
}

/** `1 layer`, `2 layers`. */
export function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}

/** Layers of one kind on each other, hatched by turns. */
function bands(wide: number, from: number, count: number, each: number, fill: 'resin' | 'plain'): Shape[] {
  return Array.from({ length: count }, (_, i) =>
    hatch(band(wide, from + i * each, each), fill, { falling: i % 2 === 1 }),
  );
}

function band(wide: number, from: number, thick: number): Point[] {
  return [
    [0, from],
    [wide, from],
    [wide, from + thick],
    [0, from + thick],
  ];
}
