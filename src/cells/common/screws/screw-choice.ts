/** Which screw for a part screwed on and the timber under it, and the holes it wants: the same wherever screws go. */
import { INCH } from '../../../measure/si';
import { putUp } from '../../../measure';
import { pilotShelf, shankShelf } from '../../../trade/drills';
import { screwLengths, screwShelf } from '../../../trade/lengths-sold';
import {
  headDegrees,
  leadHoleShare,
  screwSize,
  screwToBuy,
  shankPlay,
  usualGauge,
} from '../../../trade/screws';
import { type CellFunction, choice, input, step } from '../../form/define';
import { chosenFromShop } from '../../form/from-shop';
import { CUSTOM, GEOMETRY, NDS } from '../../../trade/sources';

putUp('pilotDrill', pilotShelf);
putUp('shankDrill', shankShelf);
putUp('screwLength', screwShelf);

export const screwInputs = {
  held: choice('The joint is', {
    options: [
      { id: 'glued', label: 'glued: screws clamp while it sets' },
      { id: 'dry', label: 'dry: the screws carry it' },
    ],
    preset: 'glued',
  }),
  gauge: input('number', 'Screw gauge, no.', {
    from: '{self}.usualGauge',
    preset: '8',
    min: '4',
    max: '14',
    step: '2',
  }),
  soldIn: chosenFromShop('screwsIn'),
  screwLength: input('screwLength', 'Screw length', {
    from: '{self}.lengthToBuy',
    preset: '30 mm',
    min: '5 mm',
    max: '300 mm',
    step: '5 mm',
    note: 'over all, head included',
  }),
} as const;

/** Over the inputs above and what the cell calls `topThickness`, `depth` and `gravity`. */
export const screwSteps = {
  usualGauge: step('number', 'gaugeFor(topThickness)', 'gauge usual for this thickness', CUSTOM),
  diameter: step(
    'caliper',
    'shank(gauge)',
    'shank diameter',
    'from memory: ASME B18.6.1, 0.060 in + 0.013 in for each gauge',
  ),
  root: step(
    'caliper',
    'rootOf(gauge)',
    'root diameter of the thread',
    `from memory: ${NDS}, Appendix Table L3; charts differ by a few per cent`,
  ),
  head: step(
    'caliper',
    'headOf(gauge)',
    'head diameter, to countersink',
    'flat heads of ASME B18.6.1, trade list',
  ),
  sink: step(
    'caliper',
    `(head - diameter) / (2 * tan(${headDegrees}° / 2))`,
    'how deep the countersink goes for a flush head',
    'from memory: ASME B18.6.1, heads of 80 to 82° included; geometry',
  ),
  wantedHold: step(
    'length',
    '6 * diameter',
    'least depth in the timber, point included',
    `${NDS}: 6 diameters`,
    'least',
  ),
  fullLength: step('length', 'topThickness + wantedHold', 'screw length that gives it', GEOMETRY),
  customLength: step(
    'length',
    '3 * topThickness',
    'screw length by shop custom: three times what is screwed on, so that all the thread is in the timber',
    CUSTOM,
  ),
  longest: step(
    'length',
    'topThickness + depth - 3 mm',
    'longest screw that stays inside',
    'common practice: 3 mm (1/8 in) short of the far face',
    'most',
  ),
  longestSold: step(
    'screwLength',
    'soldIn == "inch" ? longestInch(longest) : longestMetric(longest)',
    'longest screw sold that stays inside; 0 where none does',
    'common practice: lengths that shops keep',
  ),
  lengthToBuy: step(
    'screwLength',
    'soldIn == "inch" ? soldInch(fullLength, longest) : soldMetric(fullLength, longest)',
    'length to buy: what the code asks, as shops sell it',
    'common practice: lengths that shops keep',
  ),
  hold: step('length', 'screwLength - topThickness', 'depth in the timber', GEOMETRY),
  holdInDiameters: step('ratio', 'hold / diameter', 'depth in the timber, in diameters', GEOMETRY),
  behind: step('length', 'depth - hold', 'wood left beyond the point', GEOMETRY),
  pilot: step(
    'pilotDrill',
    'partOfRoot(gravity) * root',
    'drill for the thread',
    `${NDS} 12.1.5, screws pulled out: 0.9 of the root above a gravity of 0.6, 0.7 above 0.5; lighter woods are drilled the same in boats, common practice; the drill sold next below: from memory, ASME B94.11M and ISO 235`,
  ),
  pilotSideways: step(
    'pilotDrill',
    'gravity > 0.6 ? root : 7 / 8 * root',
    'drill for the thread of a screw pushed sideways',
    `${NDS} 12.1.5, screws pushed sideways: the root above a gravity of 0.6, about 7/8 of it below`,
  ),
  shankHole: step(
    'shankDrill',
    `diameter + ${(shankPlay / INCH) * 1000} thou`,
    'drill for the shank, through the part screwed on: two thousandths of an inch (0.05 mm) of play',
    `${CUSTOM}; the drill sold next above: from memory, ASME B94.11M and ISO 235`,
  ),
} as const;

const longestWithin = (sold: readonly number[]): CellFunction => ({
  takes: ['length'],
  gives: 'length',
  how: 'longest sold length within it; 0 where the shortest is longer',
  run: (longest) => sold.findLast((length) => length <= longest + 1e-6) ?? 0,
});

/** The longest screw sold that stays within a length, by the shops of either system. */
export const longestScrew = {
  longestMetric: longestWithin(screwLengths.metric),
  longestInch: longestWithin(screwLengths.inch),
} as const;

export const screwFunctions: Readonly<Record<string, CellFunction>> = {
  gaugeFor: {
    takes: ['length'],
    gives: 'number',
    how: 'No. 6 through 6 mm (1/4 in), No. 8 through 9 mm (3/8 in), No. 10 through more',
    run: usualGauge,
  },
  shank: {
    takes: ['number'],
    gives: 'length',
    how: 'shank diameter of the gauge',
    run: (gauge) => screwSize(gauge, 'diameter'),
  },
  rootOf: {
    takes: ['number'],
    gives: 'length',
    how: 'root diameter of the gauge',
    run: (gauge) => screwSize(gauge, 'root'),
  },
  headOf: {
    takes: ['number'],
    gives: 'length',
    how: 'head diameter of the gauge',
    run: (gauge) => screwSize(gauge, 'head'),
  },
  soldMetric: {
    takes: ['length', 'length'],
    gives: 'length',
    how: 'shortest sold length that reaches the first, or the longest within the second',
    run: (wanted, longest) => screwToBuy(wanted, longest, screwLengths.metric),
  },
  soldInch: {
    takes: ['length', 'length'],
    gives: 'length',
    how: 'shortest sold length that reaches the first, or the longest within the second',
    run: (wanted, longest) => screwToBuy(wanted, longest, screwLengths.inch),
  },
  ...longestScrew,
  partOfRoot: {
    takes: ['ratio'],
    gives: 'ratio',
    how: '0.9 above a specific gravity of 0.6, else 0.7',
    run: leadHoleShare,
  },
};

/** How near and how far screws usually stand along the long timbers and on the frames, as each system has it. */
export const usualSpaces = {
  usualLeast: step(
    'length',
    'soldIn == "inch" ? 2.5 in : 60 mm',
    'closest that screws usually stand, with glue',
    CUSTOM,
  ),
  usualMost: step(
    'length',
    'soldIn == "inch" ? 5 in : 125 mm',
    'widest that screws usually stand, with glue',
    CUSTOM,
  ),
} as const;

/** Shown wherever screws are chosen. */
export const screwCautions = [
  'In a glued joint the screws clamp while the glue sets, and the glue carries the load. A screw that is to carry stands 6 of its diameters in the timber, by the American code.',
] as const;

/** What speaks against the screw itself, whatever it fastens. */
export const screwWarnings = [
  {
    when: 'behind < 0 mm and longestSold > 0 mm',
    says: 'The screw comes out of the far face: {longestSold} is the longest sold that stays inside.',
    limit: GEOMETRY,
    weight: 'stop',
  },
  {
    when: 'behind < 0 mm and longestSold <= 0 mm',
    says: 'The screw comes out of the far face, and none is sold that is short enough.',
    limit: GEOMETRY,
    weight: 'stop',
  },
  {
    when: 'behind >= 0 mm and behind < 3 mm',
    says: 'The point stops {behind} short of the far face.',
    limit: '3 mm (1/8 in) clear: common practice',
    weight: 'mind',
  },
  {
    when: 'held == "dry" and holdInDiameters < 6',
    says: 'The screw reaches {hold} into the timber, {holdInDiameters} diameters. Of a screw that carries 6 are asked: a longer or a thinner one, deeper timber, or glue.',
    limit: `${NDS}: penetration of at least 6 diameters`,
    weight: 'stop',
  },
  {
    when: 'sink >= topThickness',
    says: 'A flush head of this gauge wants {sink} of depth, and only {topThickness} is screwed on: it pulls through.',
    limit: GEOMETRY,
    weight: 'stop',
  },
] as const;
