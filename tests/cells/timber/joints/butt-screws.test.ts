/** The screws of a butt block are crosses that stand apart, whatever the scale. */
import { expect, test } from 'vitest';
import { starters } from '../../../../src/boat';
import { butt } from '../../../../src/cells/timber/joints/butt';
import { tryCell } from '../../try-cell';

test.each(starters)('$id: no cross of the block meets another, in mm', ({ table }) => {
  const strokes = (tryCell(butt, {}, table).drawing?.shapes ?? []).flatMap((shape) =>
    shape.shape === 'line' && shape.layer === 'screws' ? [shape.points] : [],
  );
  const boxes = Array.from({ length: strokes.length / 2 }, (_, i) => {
    const points = [...strokes[2 * i]!, ...strokes[2 * i + 1]!];
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
    return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)] as const;
  });
  expect(boxes.length).toBeGreaterThan(8);
  const meeting = boxes.flatMap((a, i) =>
    boxes.slice(i + 1).filter((b) => a[0] < b[1] && b[0] < a[1] && a[2] < b[3] && b[2] < a[3]),
  );
  expect(meeting).toStrictEqual([]);
});
