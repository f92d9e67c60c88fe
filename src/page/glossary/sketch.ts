/** A small drawing of what a word of the trade means. */
import { useMemo } from 'preact/hooks';
import { setOut, svgTree } from '../../drawing';
import { sayWith, useBench } from '../bench';
import { html } from '../html';
import { toVNode } from '../picture/vnode';
import { sketches } from './sketches';
import './words.css';

/** Of the sheet, px: as wide as a narrow phone leaves. */
const WIDTH = 310;
const HIGH = 190;

export function Sketch({ of, line }: { of: string; line: number }) {
  const bench = useBench();
  const { shown } = bench;
  const svg = useMemo(() => {
    const draw = sketches[of];
    const sheet =
      draw && setOut(draw(sayWith(bench)), { width: WIDTH, maxHeight: HIGH, bar: false, caption: false });
    return sheet ? toVNode(svgTree(sheet)) : null;
  }, [of, shown.value]);
  return svg
    ? html`<figure class="drawing sketch">${svg}</figure>`
    : html`<p class="notice">Line ${line}: there is no small drawing called "${of}".</p>`;
}
