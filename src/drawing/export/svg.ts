// A sheet as SVG: as a plain tree for the page, and as the text of a file.

import { MM_PER_INCH } from '../../measure/si';
import { round } from '../set-out/path';
import type { Placed, PlacedText, Sheet } from '../set-out/sheet';
import { LINE } from '../set-out/text-size';

export interface SvgNode {
  readonly tag: string;
  readonly attrs: Readonly<Record<string, string | number>>;
  readonly kids: readonly (SvgNode | string)[];
}

/**
 * The sheet as one `svg` element with a child for each primitive, in the same order on each
 * call while the drawing's list of shapes is the same. It needs the style of drawings.
 */
export function svgTree(sheet: Sheet): SvgNode {
  const width = round(sheet.width);
  const height = round(sheet.height);
  return {
    tag: 'svg',
    attrs: {
      class: 'drawing',
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'aria-label': `${sheet.title}. ${sheet.says}`,
    },
    kids: sheet.marks.map(node),
  };
}

function node(mark: Placed): SvgNode {
  const data = {
    class: mark.className,
    ...(mark.part === undefined ? {} : { 'data-part': mark.part }),
  };
  if (mark.kind === 'path') return { tag: 'path', attrs: { ...data, d: mark.d }, kids: [] };
  return { tag: 'text', attrs: { ...data, ...textAttrs(mark) }, kids: textKids(mark) };
}

function textAttrs({ x, y, turn, anchor, size }: PlacedText): SvgNode['attrs'] {
  return {
    x: round(x),
    y: round(y),
    'font-size': size,
    'text-anchor': anchor,
    ...(turn === 0 ? {} : { transform: `rotate(${turn} ${round(x)} ${round(y)})` }),
  };
}

const textKids = ({ lines, x, size }: PlacedText): SvgNode['kids'] =>
  lines.length < 2
    ? lines
    : lines.map((words, i) => ({
        tag: 'tspan',
        attrs: { x: round(x), dy: i === 0 ? 0 : round(LINE * size) },
        kids: [words],
      }));

/** 96 px to the inch: with a sheet set out at that scale, a file at full size. */
export const PX_PER_MM = 96 / MM_PER_INCH;

/** The text of an element and what it holds. */
export function written({ tag, attrs, kids }: SvgNode): string {
  const head = Object.entries(attrs)
    .map(([name, value]) => ` ${name}="${escaped(String(value)).replaceAll('"', '&quot;')}"`)
    .join('');
  if (kids.length === 0) return `<${tag}${head}/>`;
  const inside = kids.map((kid) => (typeof kid === 'string' ? escaped(kid) : written(kid)));
  // One child a line, for a file that can be read and compared; not inside texts, where space counts.
  const rows = tag === 'svg' ? `\n${inside.join('\n')}\n` : inside.join('');
  return `<${tag}${head}>${rows}</${tag}>`;
}

/** Characters that XML 1.0 has no way to write: controls, and halves of surrogate pairs. */
// oxlint-disable-next-line no-control-regex
const UNWRITABLE = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;

const escaped = (text: string): string =>
  text.replaceAll(UNWRITABLE, '').replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
