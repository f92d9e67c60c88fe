/** Moisture: where a piece of wood settles in this air, how far it moves, whether it is fit to glue. */
import type { Derived } from '../../../boat';
import { constantsOf } from '../../../boat/quantities/constants-of';
import { shrinkage } from '../../../trade/shrinkage';
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import { glueQuantities, ofGlue } from '../../common/glue/glues';
import { input, choice, defineCell } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { chosenFromBoat, chosenFromShop, fromShop } from '../../form/from-shop';
import { firstOf } from '../../form/in-words';
import { tableOf } from '../../form/row-quantities';
import { enlarged, boardEnd } from './board-end-drawing';
import { drawing, mm, note } from '../../../drawing';
import { isIssue } from '../../../measure';
import { moistureSteps } from './moisture-steps';
import { CUSTOM } from '../../../trade/sources';

const fromTable: readonly Derived[] = constantsOf(shrinkage);
const brings = () => [...tradeQuantities(), ...fromTable, ...glueQuantities()];

const coefficient = (label: string, column: string, preset: string) =>
  input('ratio', label, {
    from: `timber.{species}.${column}`,
    preset,
    min: '0',
    max: '0.006',
    step: '0.0001',
    note: 'Wood Handbook, Table 13-5, or from Table 4-3 by its formula',
  });
export const moisture = defineCell({
  id: 'moisture',
  stage: 'timber',
  title: 'Moisture and movement',
  question:
    'Where will this wood settle in my shop’s air, how far does it move on the way, and is it fit to glue?',
  inputs: {
    part: choice('Part', {
      options: [
        { id: 'keelson', label: 'keelson', ofBoat: true },
        { id: 'chineLog', label: 'chine log', ofBoat: true },
        { id: 'sheerClamp', label: 'sheer clamp', ofBoat: true },
        { id: 'rubRail', label: 'rub rail', ofBoat: true },
        { id: 'thwart', label: 'thwart', ofBoat: true },
      ],
      preset: 'keelson',
    }),
    now: fromShop('woodMoisture', { slider: true }),
    air: fromShop('air'),
    humidity: input('share', 'Humidity of that air', {
      preset: '60 %',
      min: '5 %',
      max: '98 %',
      step: '1 %',
      slider: true,
      note: 'the mean of some weeks, not this morning’s',
    }),
    later: input('share', 'Moisture it goes to', {
      from: '{self}.settled',
      preset: '11 %',
      min: '0 %',
      max: '40 %',
      step: '0.5 %',
      note: 'where it settles in this air; a hull in use 12 to 18 %: common practice',
    }),
    sawn: choice('How it lies in the log', {
      options: [
        { id: 'flat', label: 'flat-sawn: rings run along the width' },
        { id: 'quarter', label: 'quarter-sawn: rings stand across it' },
        { id: 'plywood', label: 'plywood, in the plane of the sheet' },
      ],
      preset: 'flat',
      note: 'look at the end grain',
    }),
    species: chosenFromBoat('{part}.timber'),
    width: fromBoat('{part}.width'),
    thickness: fromBoat('{part}.thickness'),
    pith: input('length', 'From the face to the pith', {
      when: 'sawn == "flat"',
      preset: '100 mm',
      presetInch: '4 in',
      min: '1 mm',
      max: '2 m',
      step: '10 mm',
      note: 'of a flat-sawn board: carry the rings on to their centre; only the cup asks for it',
    }),
    moveTangential: coefficient('Moves for 1 %, flat-sawn', 'moveTangential', '0.00267'),
    moveRadial: coefficient('Moves for 1 %, quarter-sawn', 'moveRadial', '0.00165'),
    shrinkage: input('share', 'Shrinks along rings, green to dry', {
      from: 'timber.{species}.shrinkTangential',
      preset: '7.6 %',
      min: '0 %',
      max: '20 %',
      step: '0.1 %',
      note: 'of its green width, green to oven dry: Wood Handbook, Table 4-3 or 4-4',
    }),
    gravity: input('ratio', 'Specific gravity at 12 %', {
      from: 'timber.{species}.gravity',
      preset: '0.48',
      min: '0.1',
      max: '1.1',
      step: '0.01',
      note: 'oven-dry weight over the volume at 12 %, Wood Handbook; single boards vary by a tenth',
    }),
    glue: chosenFromShop('glue'),
    driest: ofGlue('share', 'Driest wood for it', 'driest', ['0 %', '40 %']),
    wettest: ofGlue('share', 'Wettest wood for it', 'wettest', ['0 %', '40 %']),
  },
  groups: {
    'The board': ['sawn', 'width', 'thickness', 'pith'],
    'How it moves': ['later', 'moveTangential', 'moveRadial', 'shrinkage', 'gravity'],
    'The glue': ['glue', 'driest', 'wettest'],
  },
  steps: moistureSteps,
  answers: [
    { of: 'settled', label: 'settles at', from: 'water over oven-dry wood, in this air, given time' },
    { of: 'change', label: 'change of the width', from: 'across the grain, + growing, − shrinking' },
    {
      of: 'offGlue',
      label: 'outside the glue’s range',
      from: 'moisture now; 0 % where the wood is fit to glue',
    },
  ],
  inWords: [
    'In this air wood settles at {settled}. Now it holds {now},',
    firstOf(
      [
        {
          when: 'offGlue > 0 and now > wettest',
          says: 'too much for this glue, which takes {wettest} at most.',
        },
        { when: 'offGlue > 0', says: 'too little for this glue, which asks for {driest} at least.' },
      ],
      'and this glue takes {driest} to {wettest}.',
    ),
    'On the way to {later} a width of {width} changes by {change}',
    { when: 'offGlue > 0', says: '.', otherwise: ', to {widthLater}. The wood weighs {density} now.' },
  ],
  table: tableOf({
    caption: 'The same wood and air, part by part',
    over: 'part',
    columns: [
      { of: 'change', label: 'change' },
      { of: 'widthLater', label: 'width then' },
      { of: 'cup', label: 'cup' },
    ],
  }),
  warnings: [
    {
      when: 'now > 20 %',
      says: 'At {now} no glue can be relied on, and rot can live.',
      limit: `20 %: ${CUSTOM}`,
      weight: 'stop',
    },
    {
      when: 'now > wettest',
      says: 'The wood holds {now}; this glue takes {wettest} at most. Stack it with laths between, in the shop, until a fresh cut reads lower.',
      limit: `the glue’s own range; ${CUSTOM}, the sheet rules`,
      weight: 'stop',
    },
    {
      when: 'now < driest',
      says: 'The wood holds {now}; this glue asks for {driest} at least.',
      limit: `the glue’s own range; ${CUSTOM}, the sheet rules`,
      weight: 'mind',
    },
    {
      when: 'now < 10 % or now > 14 %',
      says: 'Wood for a boat is built in at 10 to 14 %, and this holds {now}: it will move once she is in use, and the joints will work.',
      limit: `10 to 14 % to build: ${CUSTOM}`,
      weight: 'mind',
    },
    {
      when: 'min(now, later) < 6 % or max(now, later) > 14 %',
      says: 'The coefficients hold from 6 to 14 %. From {now} to {later} the change is only a rough one.',
      limit: 'Wood Handbook, Table 13-5: from 6 to 14 % moisture',
      weight: 'mind',
    },
  ],
  cautions: [
    'Wet dust and rot: a mask when you cut or sand doubtful wood. The sheet of the glue in hand outranks its range here.',
    'How long it takes to settle nobody can promise: it depends on the wood, its thickness and the moving air. Go by a meter.',
    'Wood in a hull is seldom free: glue, screws and paint hold it, and what cannot move pulls or splits. Single boards move more or less than the mean.',
    'Coefficients and strengths are for clear wood; damp wood bends more easily and breaks at less. For strength go by the tables of the wood at its own moisture.',
  ],
  sources: [
    {
      text: 'W. T. Simpson, Equilibrium moisture content of wood in outdoor locations, USDA FPL-RN-0268 (1998)',
      known: 'published',
    },
    {
      text: 'Wood Handbook, USDA FPL-GTR-190 (2010), Tables 4-3 and 13-5: shrinkage and coefficients; each wood says which of its figures were read',
      known: 'published',
    },
    {
      text: 'Wood Handbook, Table 4-4, eq. 13-3 and ch. 4: imported woods, coefficient from shrinkage, density with moisture',
      known: 'from memory',
    },
    {
      text: 'American Wood Council: 1 % for each 4 % of moisture, for a wood without figures of its own',
      known: 'published',
    },
    { text: 'Hollow of a board with its rings about the pith', known: 'geometry' },
    {
      text: '10 to 14 % to build, 12 to 18 % in a hull in use, 20 % for glue and rot; ranges of the glues',
      known: 'common practice',
    },
  ],
  about: ['{part}'],
  brings,

  draw: (v, on) => {
    const say = (metres: number) => on.say(metres, 'length');
    const ply = v.sawn === 'plywood';
    const moves = {
      across: ply ? v.inPlane : v.acrossRings,
      along: ply ? v.acrossRings : v.alongRings,
    };
    const factor = enlarged(moves);
    return drawing({
      title: 'The end of the board, now and settled',
      says: `A width of ${say(v.width)} at ${on.say(v.now, 'share')} of moisture becomes ${say(v.widthLater)} at ${on.say(v.later, 'share')}${v.cup >= 0.00005 ? `; left free it goes hollow by ${say(v.cup)}` : ''}.`,
      shapes: [
        boardEnd(
          {
            width: mm(v.width),
            thickness: mm(v.thickness),
            pith: v.sawn === 'flat' ? mm(v.pith) : null,
            ply,
            across: factor * moves.across,
            along: factor * moves.along,
          },
          v.part,
          { width: say(v.width), thickness: say(v.thickness), later: `then ${say(v.widthLater)}` },
        ),
        note(
          factor === 1
            ? 'Dashed: settled, as it is.'
            : `Dashed: settled, the movement drawn ${factor} times too large.`,
        ),
      ],
    });
  },

  chart: (v, on) => {
    const line = (air: number) =>
      Array.from({ length: 19 }, (_, i) => on.with({ humidity: 0.05 + i * 0.05, air })).flatMap((one) =>
        isIssue(one) ? [] : [[one.humidity, one.settled] as const],
      );
    const other = v.air >= 293.15 ? v.air - 15 : v.air + 15;
    return {
      title: 'Where wood settles, by the humidity of the air',
      says: `The damper the air the wetter the wood; warmth changes it little. At ${on.say(v.humidity, 'share')} and ${on.say(v.air, 'temperature')} it settles at ${on.say(v.settled, 'share')}.`,
      x: { label: 'Humidity of the air', kind: 'share', from: 0, to: 1 },
      y: { label: 'Moisture of the wood', kind: 'share', from: 0 },
      lines: [
        { name: `at ${on.say(v.air, 'temperature')}`, points: line(v.air), as: 'line' },
        { name: `at ${on.say(other, 'temperature')}`, points: line(other), as: 'line' },
      ],
      limits: [
        { at: v.driest, axis: 'y', label: 'driest for the glue' },
        { at: v.wettest, axis: 'y', label: 'wettest for the glue' },
      ],
      points: [
        { x: v.humidity, y: v.settled, label: 'settles here' },
        { x: v.humidity, y: v.now, label: 'now' },
      ],
    };
  },
});
