// A printed sheet as an SVG file, sizes in mm.

import type { Ink } from './full-size-ink';
import { PAPER_PENS } from './full-size-pens';
import { type SvgNode, written } from './svg';
import type { Page } from './tiles-page';

const round = (value: number): number => Math.round(value * 1000) / 1000 + 0;

/** The text of the file. Lines keep the name of their part as `data-part`. */
export function pageSvg(page: Page): string {
  const { width, height, within, title } = page;
  const node = (ink: Ink): SvgNode => inkNode(ink, height);
  const kids: SvgNode[] = [{ tag: 'title', attrs: {}, kids: [title] }];
  if (within) {
    const { left, right, bottom, top } = within.window;
    const window = {
      x: round(left),
      y: round(height - top),
      width: round(right - left),
      height: round(top - bottom),
    };
    kids.push(
      { tag: 'clipPath', attrs: { id: 'window' }, kids: [{ tag: 'rect', attrs: window, kids: [] }] },
      { tag: 'g', attrs: { 'clip-path': 'url(#window)' }, kids: within.ink.map(node) },
    );
  }
  return `${written({
    tag: 'svg',
    attrs: {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${round(width)}mm`,
      height: `${round(height)}mm`,
      viewBox: `0 0 ${round(width)} ${round(height)}`,
      'font-family': '"Source Sans 3",Arial,sans-serif',
    },
    kids: [...kids, ...page.ink.map(node)],
  })}\n`;
}

function inkNode(ink: Ink, height: number): SvgNode {
  if (ink.ink === 'text') {
    const [x, y] = [round(ink.at[0]), round(height - ink.at[1])];
    return {
      tag: 'text',
      attrs: {
        x,
        y,
        'font-size': round(ink.size),
        'text-anchor': ink.anchor,
        ...(ink.bold ? { 'font-weight': 600 } : {}),
        ...(ink.turn === 0 ? {} : { transform: `rotate(${round((-ink.turn * 180) / Math.PI)} ${x} ${y})` }),
        stroke: '#fff',
        'stroke-width': 0.8,
        'paint-order': 'stroke',
      },
      kids: [ink.text],
    };
  }
  const d = ink.points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(height - y)}`).join('');
  if (ink.ink === 'solid') return { tag: 'path', attrs: { d, fill: ink.white ? '#fff' : '#000' }, kids: [] };
  const { width, dash } = PAPER_PENS[ink.pen];
  return {
    tag: 'path',
    attrs: {
      d,
      fill: 'none',
      stroke: '#000',
      'stroke-width': width,
      ...(dash.length === 0 ? {} : { 'stroke-dasharray': dash.join(' ') }),
      ...(ink.part === undefined ? {} : { 'data-part': ink.part }),
    },
    kids: [],
  };
}
