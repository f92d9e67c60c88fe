/** A graph as Plot draws it, without the style that Plot puts into each. */
import * as Plot from '@observablehq/plot';
import { expect, test } from 'vitest';
import { plainShown } from '../../src/measure';
import { drawChart } from '../../src/page/picture/chart';

const put = (figure: Element) => document.body.appendChild(figure);

/** What Plot's own style sets of a figure and of the words in it. */
function lookOf(figure: Element) {
  const { display, maxWidth, height } = getComputedStyle(put(figure));
  const { whiteSpace } = getComputedStyle(figure.querySelector('text')!);
  return { display, maxWidth, height, whiteSpace };
}

test('a graph brings no style of its own, and stands as it would with Plot’s', () => {
  const { figure } = drawChart(
    {
      title: 'Pull',
      says: 'It grows.',
      x: { label: 'Thickness', kind: 'length' },
      y: { label: 'Pull', kind: 'force' },
      lines: [
        {
          name: 'pull',
          points: [
            [0.01, 1],
            [0.02, 8],
          ],
        },
      ],
    },
    undefined,
    { width: 400, shown: plainShown, names: { first: 'Kept', second: 'Trying' }, extents: null },
  );
  expect(figure.querySelector('style')).toBeNull();
  const plain = Plot.plot({
    width: 400,
    height: Number(figure.getAttribute('height')),
    marks: [Plot.lineY([1, 8])],
  });
  expect(plain.querySelector('style')).not.toBeNull();
  expect(lookOf(figure)).toStrictEqual(lookOf(plain));
});
