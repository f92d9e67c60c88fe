/** A text as a square code (QR, ISO/IEC 18004), drawn as one path; null where none holds so much. */
import { encodeQR } from 'qr';
import type { VNode } from 'preact';
import { html } from '../html';

/** Bytes that the largest code holds at the lowest level of correction: version 40-L of the standard's table. */
export const MOST_IN_CODE = 2953;
/** From here on a phone has to come near and hold still. Common practice, no source. */
export const DENSE = 1000;

export const bytesOf = (text: string): number => new TextEncoder().encode(text).length;

/** Rows of dark (true) and light, with four light modules round them, as the standard asks. */
export function squaresOf(text: string): readonly (readonly boolean[])[] | null {
  return bytesOf(text) > MOST_IN_CODE
    ? null
    : encodeQR(text, 'raw', { ecc: 'low', encoding: 'byte', border: 4, scale: 1 });
}

export function SquareCode({ text, what }: { text: string; what: string }): VNode | null {
  const squares = squaresOf(text);
  if (!squares) return null;
  const size = squares.length;
  const dark = squares.flatMap((row, y) => row.flatMap((is, x) => (is ? [`M${x} ${y}h1v1h-1z`] : [])));
  return html`<svg class="square-code" role="img" aria-label=${`Square code of ${what}`} viewBox=${`0 0 ${size} ${size}`} shape-rendering="crispEdges">
    <rect width=${size} height=${size} fill="#fff" />
    <path d=${dark.join('')} fill="#000" />
  </svg>`;
}
