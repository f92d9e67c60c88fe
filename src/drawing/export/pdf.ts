// Printed sheets as a PDF file: nothing but strokes, solids and the two Helvetica faces that every reader has.
// Written by hand, for reasons in docs/method.md; read back by another's reader in the tests.

import { MM_PER_INCH } from '../../measure/si';
import type { Ink, InkText } from './full-size-ink';
import { PAPER_PENS } from './full-size-pens';
import { ansi } from './pdf-text';
import type { Point } from '../shapes';
import { textWidth } from '../set-out/text-size';
import type { Page } from './tiles-page';

const PT_PER_MM = 72 / MM_PER_INCH;
/** Of white round a text, mm, both sides together. */
const RIM = 0.8;

/** The file's bytes. Asks the print dialogue not to scale. */
export function pdf(pages: readonly Page[], title: string): Uint8Array {
  const first = 6;
  const kids = pages.map((_, i) => `${first + 2 * i} 0 R`).join(' ');
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R /ViewerPreferences << /PrintScaling /None >> >>',
    `<< /Type /Pages /Kids [${kids}] /Count ${pages.length} >>`,
    `<< /Title ${written(title)} >>`,
    font('Helvetica'),
    font('Helvetica-Bold'),
    ...pages.flatMap((page, i) => {
      const content = contentOf(page);
      const box = [0, 0, page.width * PT_PER_MM, page.height * PT_PER_MM].map(figure).join(' ');
      return [
        `<< /Type /Page /Parent 2 0 R /MediaBox [${box}] /Resources << /Font << /F1 4 0 R /F2 5 0 R >> >> /Contents ${first + 2 * i + 1} 0 R >>`,
        `<< /Length ${content.length} >>\nstream\n${content}\nendstream`,
      ];
    }),
  ];
  let file = '%PDF-1.6\n';
  const starts = objects.map((object, i) => {
    const start = file.length;
    file += `${i + 1} 0 obj\n${object}\nendobj\n`;
    return start;
  });
  const count = objects.length + 1;
  const rows = starts.map((start) => `${String(start).padStart(10, '0')} 00000 n \n`).join('');
  file += `xref\n0 ${count}\n0000000000 65535 f \n${rows}trailer\n<< /Size ${count} /Root 1 0 R /Info 3 0 R >>\nstartxref\n${file.length}\n%%EOF\n`;
  // Every character is one byte by now.
  return Uint8Array.from(file, (character) => character.charCodeAt(0));
}

const font = (name: string): string =>
  `<< /Type /Font /Subtype /Type1 /BaseFont /${name} /Encoding /WinAnsiEncoding >>`;

const figure = (value: number): string => String(Math.round(value * 10_000) / 10_000 + 0);

const written = (text: string): string => `(${ansi(text).replaceAll(/[\\()]/g, (sign) => `\\${sign}`)})`;

/** What is drawn on a page, in mm. */
function contentOf({ within, ink }: Page): string {
  const parts = [`${PT_PER_MM} 0 0 ${PT_PER_MM} 0 0 cm 1 j`];
  if (within) {
    const { left, bottom, right, top } = within.window;
    parts.push(`q ${[left, bottom, right - left, top - bottom].map(figure).join(' ')} re W n`);
    parts.push(...within.ink.map((one) => (one.ink === 'text' ? rim(one) : '') + operators(one)), 'Q');
  }
  return [...parts, ...ink.map(operators)].join('\n');
}

function operators(ink: Ink): string {
  if (ink.ink === 'text') return `0 g ${shown(ink, 0)}`;
  if (ink.ink === 'solid') return `${ink.white ? 1 : 0} g ${path(ink.points)} f`;
  const { width, dash } = PAPER_PENS[ink.pen];
  return `0 G ${width} w [${dash.join(' ')}] 0 d ${path(ink.points)} S`;
}

const path = (points: readonly Point[]): string =>
  points.map(([x, y], i) => `${figure(x)} ${figure(y)} ${i === 0 ? 'm' : 'l'}`).join(' ');

/** The text in outline, in white: under its letters it keeps them readable where they cross a line. */
const rim = (text: InkText): string => `1 G ${RIM} w [] 0 d ${shown(text, 1)}\n`;

/** @param mode of the letters: 0 filled, 1 in outline */
function shown({ at, text, size, anchor, turn, bold }: InkText, mode: 0 | 1): string {
  const share = { start: 0, middle: 0.5, end: 1 }[anchor];
  const back = share * textWidth(text, size);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const matrix = [cos, sin, -sin, cos, at[0] - back * cos, at[1] - back * sin].map(figure).join(' ');
  return `BT /${bold ? 'F2' : 'F1'} ${figure(size)} Tf ${matrix} Tm ${mode} Tr ${written(text)} Tj ET`;
}
