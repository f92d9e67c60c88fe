// How pens and fills look: draughtsman's weights, and colours named from the yard. The page
// owns the colours (CSS variables, by theme); a file carries its own, on white paper.

import type { Fill, Pen } from './shapes';

export type Colour = 'ink' | 'red-lead' | 'bottom-blue' | 'cedar' | 'chalk' | 'paper';

interface Stroke {
  readonly width: number;
  readonly colour: Colour;
  readonly dash?: string;
  readonly opacity?: number;
}

const PENS: { readonly [pen in Pen]: Stroke } = {
  outline: { width: 2, colour: 'ink' },
  visible: { width: 1.3, colour: 'ink' },
  hidden: { width: 1.1, colour: 'ink', dash: '6 3' },
  centre: { width: 0.9, colour: 'ink', dash: '14 3 3 3' },
  dimension: { width: 0.8, colour: 'ink' },
  thin: { width: 0.7, colour: 'ink' },
  ghost: { width: 1.5, colour: 'bottom-blue', dash: '5 4' },
  grid: { width: 0.7, colour: 'ink', opacity: 0.4 },
  waterline: { width: 0.9, colour: 'bottom-blue' },
  design: { width: 1.9, colour: 'bottom-blue' },
  // Dotted, so that paper printed black tells it from a waterline.
  buttock: { width: 0.9, colour: 'ink', dash: '2 2' },
};

const FILLS: { readonly [fill in Fill]: { colour: Colour; opacity: number } } = {
  cedar: { colour: 'cedar', opacity: 0.16 },
  ply: { colour: 'cedar', opacity: 0.1 },
  glue: { colour: 'ink', opacity: 0.8 },
  resin: { colour: 'chalk', opacity: 0.4 },
  void: { colour: 'paper', opacity: 1 },
  plain: { colour: 'chalk', opacity: 0.35 },
};

const HATCHES: { readonly [fill in Fill]?: Stroke } = {
  cedar: { width: 0.9, colour: 'cedar' },
  ply: { width: 0.8, colour: 'cedar' },
  resin: { width: 0.8, colour: 'ink', dash: '3 3' },
};

function rules(paint: (colour: Colour) => string): string {
  const stroke = ({ colour, width, dash, opacity }: Stroke): string =>
    [
      `stroke:${paint(colour)};stroke-width:${width}`,
      ...(dash ? [`stroke-dasharray:${dash}`] : []),
      ...(opacity ? [`stroke-opacity:${opacity}`] : []),
    ].join(';');
  return [
    '.drawing path{fill:none;stroke-linecap:butt;stroke-linejoin:round}',
    ...Object.entries(FILLS).map(
      ([name, f]) =>
        `.drawing .fill-${name}{fill:${paint(f.colour)};fill-opacity:${f.opacity};fill-rule:evenodd}`,
    ),
    ...Object.entries(HATCHES).map(([name, hatch]) => `.drawing .hatch-${name}{${stroke(hatch)}}`),
    ...Object.entries(PENS).map(([name, pen]) => `.drawing .pen-${name}{${stroke(pen)}}`),
    `.drawing .arrowhead,.drawing .leader-dot,.drawing .bar-solid{fill:${paint('ink')}}`,
    `.drawing .key-ring{fill:${paint('paper')};stroke:${paint('ink')};stroke-width:1}`,
    // A rim of paper round each letter keeps a text readable where it must cross a line.
    `.drawing text{fill:${paint('ink')};stroke:${paint('paper')};stroke-width:3;stroke-linejoin:round;paint-order:stroke;font-variant-numeric:tabular-nums}`,
    '.drawing .dim-text,.drawing .number-text{font-weight:600}',
  ].join('\n');
}

/**
 * For the page: colours by variables `--ink --red-lead --bottom-blue --cedar --chalk --paper`,
 * and `--paper-under` where a drawing lies on another ground than the page's paper.
 */
export const drawingStyle: string = `${rules((colour) =>
  colour === 'paper' ? 'var(--paper-under, var(--paper))' : `var(--${colour})`,
)}
.drawing .lit[class*="pen-"]{stroke:var(--red-lead);stroke-width:2.6}`;
