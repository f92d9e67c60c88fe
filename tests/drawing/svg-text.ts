/** A sheet as a file that can be kept, looked at and compared. */
import { PX_PER_MM, type Sheet, svgTree, type SvgNode } from '../../src/drawing';
import { drawingStyle } from '../../src/drawing/style';
import { round } from '../../src/drawing/set-out/path';
import { written } from '../../src/drawing/export/svg';

/** The page's colours by day. */
const ON_WHITE = {
  ink: '#1a2433',
  'red-lead': '#b23a1e',
  'bottom-blue': '#1f5a8a',
  cedar: '#9a5b2d',
  chalk: '#c9c4b8',
  paper: '#ffffff',
} as const;

/** The page's style in plain colours, for drawing programmes know no variables. */
const fileStyle = `.drawing{font-family:"Source Sans 3",Arial,sans-serif}
${drawingStyle
  .replace(/\n\.drawing \.lit.*$/s, '')
  .replaceAll('var(--paper-under, var(--paper))', 'var(--paper)')
  .replaceAll(/var\(--([a-z-]+)\)/g, (_, colour: keyof typeof ON_WHITE) => ON_WHITE[colour])}`;

/**
 * The sheet as the text of an SVG file: sizes in mm, its own styles, title and description.
 * `mmPerPx` says how large it comes out; by default as large as on a screen of 96 px to the inch.
 */
export function svgText(
  sheet: Sheet,
  { mmPerPx = 1 / PX_PER_MM }: { readonly mmPerPx?: number } = {},
): string {
  const root = svgTree(sheet);
  const { 'aria-label': _, ...attrs } = root.attrs;
  const file: SvgNode = {
    ...root,
    attrs: {
      xmlns: 'http://www.w3.org/2000/svg',
      ...attrs,
      width: `${round(sheet.width * mmPerPx)}mm`,
      height: `${round(sheet.height * mmPerPx)}mm`,
      'aria-labelledby': 'title says',
    },
    kids: [
      { tag: 'title', attrs: { id: 'title' }, kids: [sheet.title] },
      { tag: 'desc', attrs: { id: 'says' }, kids: [sheet.says] },
      { tag: 'style', attrs: {}, kids: [fileStyle] },
      ...root.kids,
    ],
  };
  return `${written(file)}\n`;
}
