import { describe, expect, test } from 'vitest';
import {
  drawing,
  drawingStyle,
  label,
  PX_PER_MM,
  rect,
  setOut,
  svgTree,
  type SvgNode,
} from '../../../src/drawing';
import { limber, scarf } from '../demonstrations';
import { svgText } from '../svg-text';

const sheet = setOut(limber(), { width: 340 });
const classes = (node: SvgNode): string[] =>
  node.kids.flatMap((k) => (typeof k === 'string' ? [] : [String(k.attrs['class'] ?? ''), ...classes(k)]));

describe('the tree for the page', () => {
  test('has one child for each primitive, in order, empty ones too', () => {
    const tree = svgTree(sheet);
    expect(tree.kids).toHaveLength(sheet.marks.length);
    expect(classes(tree).filter(Boolean)).toEqual(sheet.marks.map((m) => m.className));
  });

  test('has a role and a text alternative that says what it shows', () => {
    expect(svgTree(sheet).attrs).toMatchObject({
      role: 'img',
      'aria-label': `${limber().title}. ${sheet.says}`,
      viewBox: `0 0 ${sheet.width} ${sheet.height}`,
    });
  });

  test('marks the hull part of each primitive', () => {
    const parts = svgTree(sheet).kids.flatMap((k) => (typeof k === 'string' ? [] : [k.attrs['data-part']]));
    expect(parts.filter((p) => p === 'keelson').length).toBeGreaterThan(0);
  });

  test('keeps its shape while a slider moves', () => {
    const shape = (slope: number) =>
      svgTree(setOut(scarf(19, slope), { width: 340 })).kids.map((k) => (typeof k === 'string' ? k : k.tag));
    expect(shape(9)).toEqual(shape(12));
  });
});

describe('the file', () => {
  test('has its size in mm: at full size 100 mm of the boat are 100 mm of paper', () => {
    const full = setOut(drawing({ title: 't', says: 's', shapes: [rect(0, 0, 100, 50)] }), {
      width: 1,
      scale: PX_PER_MM,
    });
    const file = svgText(full);
    const width = Number(/ width="([\d.]+)mm"/.exec(file)?.[1]);
    const box = Number(/viewBox="0 0 ([\d.]+) /.exec(file)?.[1]);
    const [, left, right] = /class="pen-outline" d="M([\d.]+) [\d.]+L([\d.]+) /.exec(file) ?? [];
    expect(((Number(right) - Number(left)) / box) * width).toBeCloseTo(100, 1);
  });

  test('comes out larger or smaller when asked', () => {
    expect(svgText(sheet, { mmPerPx: 0.5 })).toContain(
      ` width="${sheet.width * 0.5}mm" height="${sheet.height * 0.5}mm"`,
    );
  });

  test('carries title, description and styles without variables', () => {
    const file = svgText(sheet);
    expect(file).toContain(`<title id="title">${limber().title}</title>`);
    expect(file).toContain(`<desc id="says">${sheet.says}</desc>`);
    expect(file).not.toContain('var(');
    const drawn = sheet.marks.map((m) => m.className).filter((name) => /^(pen|fill|hatch)-/.test(name));
    expect(drawn.length).toBeGreaterThan(10);
    for (const name of drawn) expect(file).toContain(`.${name}{`);
  });

  test('escapes what XML would read as its own and drops what it cannot write', () => {
    const nasty = drawing({
      title: 'a<b & "c"',
      says: '</desc><script>',
      shapes: [label([0, 0], '1 < 2\u0007\ud800 & 😀')],
    });
    const file = svgText(setOut(nasty, { width: 340 }));
    expect(file).toContain('a&lt;b &amp; "c"');
    expect(file).not.toContain('<script>');
    expect(file).toContain('1 &lt; 2 &amp; 😀');
  });

  test('rounds to hundredths', () => {
    for (const number of svgText(sheet).matchAll(/\d+\.(\d+)/g))
      expect(number[1]!.length).toBeLessThanOrEqual(2);
  });
});

test("the style draws every pen and fill from the page's colours alone", () => {
  const used = new Set(Array.from(drawingStyle.matchAll(/var\(--([a-z-]+)/g), (m) => m[1]));
  expect(used).toEqual(new Set(['bottom-blue', 'cedar', 'chalk', 'ink', 'paper', 'paper-under', 'red-lead']));
  expect(drawingStyle).not.toMatch(/#[0-9a-f]{3}/);
  for (const pen of ['outline', 'visible', 'hidden', 'centre', 'dimension', 'thin', 'ghost'])
    expect(drawingStyle).toContain(`.pen-${pen}{`);
  for (const fill of ['cedar', 'ply', 'glue', 'resin', 'void', 'plain'])
    expect(drawingStyle).toContain(`.fill-${fill}{`);
  // The second version and hidden lines are told apart by dashes, not by colour.
  for (const pen of ['hidden', 'centre', 'ghost'])
    expect(drawingStyle).toMatch(new RegExp(`\\.pen-${pen}\\{[^}]*stroke-dasharray`));
});
