/** The working of the fastenings. */
import { screwFunctions, screwSteps, usualSpaces } from '../../common/screws/screw-choice';
import { ruleFunctions, ruleSteps, COMMENTARY, EC5 } from './screw-rules';
import { thinnestUndrilled } from '../../../trade/screw-spacing';
import { type CellFunction, step } from '../../form/define';
import { speciesIsOneOf, splitting } from '../../../trade/fastening-woods';
import { CUSTOM, GEOMETRY } from '../../../trade/sources';

export const fastenFunctions = {
  ...screwFunctions,
  ...ruleFunctions,
  thinnest: {
    takes: ['length', 'density', 'count'],
    gives: 'length',
    how: 'the larger of 7 diameters and (13 d - 30 mm) x density / 400; in wood that splits easily 14, and / 200',
    run: (d, density, easily) => thinnestUndrilled(d, density, easily > 0),
  },
} satisfies Readonly<Record<string, CellFunction>>;

export const fastenSteps = {
  onNarrow: step(
    'count',
    'lands == "narrow" or (lands == "part" and into == "chineLog" and skin == "bottom") ? 1 : 0',
    '1 where the panel lies on the narrow face of the timber, as a bottom does on a chine log',
    'geometry: the log’s width lies up the side',
  ),
  usualDepth: step(
    'length',
    'onNarrow > 0 ? width : thickness',
    'depth of the timber under that face',
    GEOMETRY,
  ),
  usualFace: step('length', 'onNarrow > 0 ? thickness : width', 'width of that face', GEOMETRY),
  ...screwSteps,
  thread: step(
    'length',
    'max(0 mm, min(2 / 3 * screwLength, hold))',
    'thread in the timber',
    'wood screws to ASME B18.6.1, as trade lists give them: thread is two thirds of the length',
  ),
  drilled: step('count', 'holes == "drilled" ? 1 : 0', '1 where holes are drilled', 'choice'),
  ...ruleSteps,
  ...usualSpaces,
  twoRows: step('length', 'soldIn == "inch" ? 1.75 in : 45 mm', 'face that takes two rows', CUSTOM),
  heaviest: step('density', '500 kg/m3', 'heavier wood is drilled', 'from memory: EN 1995-1-1, 8.3.1'),
  leastPitch: step(
    'length',
    'max(americanPitch, europeanPitch)',
    'least distance from screw to screw',
    'the larger of both tables',
    'least',
  ),
  leastRowGap: step(
    'length',
    'max(americanRows, europeanRows)',
    'least distance from row to row',
    'the larger of both tables',
    'least',
  ),
  leastEnd: step(
    'length',
    'max(americanEnd, europeanEnd)',
    'least distance from the end of the timber',
    'the larger of both tables',
    'least',
  ),
  leastEdge: step(
    'length',
    'max(americanEdge, europeanEdge)',
    'least distance from the edge of the timber',
    'the larger of both tables',
    'least',
  ),
  edgeDistance: step(
    'length',
    '(face - (rows - 1) * rowGap) / 2',
    'outer row from the edge of the timber',
    'geometry: rows in the middle of the face',
  ),
  firstToLast: step('length', 'max(0 mm, length - 2 * endDistance)', 'from first screw to last', GEOMETRY),
  perRow: step(
    'count',
    '1 + ceil(firstToLast / pitch - 0.001)',
    'screws in one row',
    'geometry; a thousandth of a space is forgiven',
  ),
  evenPitch: step(
    'length',
    'firstToLast / max(1, perRow - 1)',
    'screw to screw, shared out evenly',
    GEOMETRY,
  ),
  splitsEasily: step(
    'count',
    `splits == "easily" or (splits == "species" and ${speciesIsOneOf(splitting)}) ? 1 : 0`,
    '1 where the wood splits easily',
    'from memory: EN 1995-1-1, 8.3.1.2; common practice',
  ),
  undrilledFrom: step(
    'length',
    'thinnest(diameter, lowDensity, splitsEasily)',
    'timber thinner than this is drilled',
    'from memory: EN 1995-1-1, eq. 8.18 and 8.19',
    'least',
  ),
  mustDrill: step(
    'count',
    'depth < undrilledFrom or lowDensity > heaviest ? 1 : 0',
    '1 where the European code wants holes: thin timber, or more than 500 kg/m³ (31 lb/ft³)',
    'from memory: EN 1995-1-1, 8.3.1',
  ),
  beyondAny: step(
    'count',
    'edgeDistance < min(americanEdge, europeanEdge) or endDistance < min(americanQuietEnd, europeanQuietEnd) or (perRow > 1 and evenPitch < min(americanPitch, europeanPitch)) or drilled < mustDrill ? 1 : 0',
    '1 where no rule allows it: nearer to an edge, an end or each other than either table, or undrilled where holes are asked',
    `${COMMENTARY}; ${EC5}; edge 2.5 and space 5 diameters are shop custom too`,
  ),
  beyondOne: step(
    'count',
    'edgeDistance < leastEdge or endDistance < leastEnd or (perRow > 1 and evenPitch < leastPitch) or (rows > 1 and rowGap < leastRowGap) ? 1 : 0',
    '1 where the stricter rule is not kept',
    `${COMMENTARY}; ${EC5}`,
  ),
  light: step(
    'count',
    'beyondAny > 0 ? 2 : beyondOne',
    'splitting light: 0 green, 1 amber, 2 red',
    'green keeps both rules, amber one of them, red none; common practice, no source, for such a light',
  ),
  total: step('count', 'perRow * rows * sides', 'screws in all', 'count'),
  toBuy: step('count', 'ceil(total * (1 + spare) - 0.001)', 'screws to buy', 'count and spare'),
  boxes: step('count', 'ceil(toBuy / box)', 'boxes to buy', 'count'),
} as const;
