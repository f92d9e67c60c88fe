/** Weather: the dew point of the air, and whether the surface is warm enough above it to be coated, now and later. */
import { isIssue } from '../../measure';
import { coatings } from '../../trade/coatings';
import { leastMargin, magnus } from '../../trade/dew-point';
import { citation } from '../../trade/table';
import { choice, defineCell, input, step } from '../form/define';
import { fromShop } from '../form/from-shop';
import { firstOf } from '../form/in-words';
import { coatTables } from './coat-tables';

const GEOMETRY = 'arithmetic';
const MAGNUS = `Magnus formula: ${citation(magnus.atFreezing)}`;
const SAME_VAPOUR = 'physics: air that cools keeps its vapour until it is saturated';
const SHEET = 'the sheet of the coating in hand';
const [AT_FREEZING, STEEPNESS, OFFSET] = [
  `${magnus.atFreezing.value} Pa`,
  magnus.steepness.value,
  magnus.offset.value,
];

/** Pressure of saturated vapour at a temperature of the cell. */
const saturated = (at: string): string => {
  const celsius = `(${at} - 273.15 K)`;
  return `${AT_FREEZING} * exp(${STEEPNESS} * ${celsius} / (${OFFSET} K + ${celsius}))`;
};

export const weather = defineCell({
  id: 'weather',
  stage: 'finish',
  title: 'Weather for a coat',
  question:
    'May I coat now: is the surface far enough above the dew point, and does it stay so until the coat is tack-free?',
  inputs: {
    coating: choice('Coating', {
      options: coatings.rows.map(({ id, label }) => ({ id, label })),
      preset: 'epoxy',
    }),
    air: fromShop('air', { hint: 'in the shade, beside the work' }),
    humidity: fromShop('humidity', { slider: true }),
    surface: input('temperature', 'Surface to be coated', {
      from: '{self}.asAir',
      preset: '20 °C',
      min: '-20 °C',
      max: '80 °C',
      step: '1 °C',
      note: 'by a thermometer laid on it, where it is coldest; until then as the air',
    }),
    fall: input('warmth', 'How far it cools until tack-free', {
      preset: '3 °C',
      presetInch: '5 °F',
      min: '0 °C',
      max: '40 °C',
      step: '1 °C',
      slider: true,
      note: 'air and surface alike, by the forecast for the night; an example',
    }),
    keep: input('warmth', 'Above the dew point, at least', {
      preset: `${leastMargin.value} °C`,
      presetInch: '5 °F',
      min: '0 °C',
      max: '20 °C',
      step: '1 °C',
      bound: 'least',
      note: citation(leastMargin),
    }),
    mostHumidity: input('share', 'Humidity of the air, at most', {
      from: 'coating.{coating}.mostHumidity',
      preset: '85 %',
      min: '30 %',
      max: '100 %',
      step: '1 %',
      bound: 'most',
      note: `from ${SHEET}`,
    }),
    coldest: input('temperature', 'Coldest it cures', {
      from: 'coating.{coating}.leastTemperature',
      preset: '10 °C',
      min: '0 °C',
      max: '40 °C',
      step: '1 °C',
      bound: 'least',
      note: `from ${SHEET}`,
    }),
  },
  groups: { 'The sheet of the coating': ['keep', 'mostHumidity', 'coldest'] },
  steps: {
    asAir: step(
      'temperature',
      'air',
      'as warm as the air, until it is measured',
      'common practice, no source',
    ),
    saturation: step('pressure', saturated('air'), 'pressure of vapour in saturated air this warm', MAGNUS),
    vapour: step(
      'pressure',
      'humidity * saturation',
      'pressure of the vapour in this air',
      'definition of relative humidity',
    ),
    logVapour: step(
      'number',
      `ln(vapour / (${AT_FREEZING}))`,
      'logarithm of that pressure over the one at freezing',
      MAGNUS,
    ),
    dewPoint: step(
      'temperature',
      `273.15 K + ${OFFSET} K * logVapour / (${STEEPNESS} - logVapour)`,
      'dew point: at this temperature the air is saturated',
      `${MAGNUS}, solved for the temperature`,
    ),
    margin: step('warmth', 'surface - dewPoint', 'surface above the dew point, − below it', GEOMETRY),
    leastSurface: step(
      'temperature',
      'dewPoint + keep',
      'surface as far above the dew point as is asked',
      citation(leastMargin),
      'least',
    ),
    coatFrom: step(
      'temperature',
      'max(leastSurface, coldest)',
      'coldest that the surface may be, by dew and by the coating',
      GEOMETRY,
      'least',
    ),
    dampest: step(
      'share',
      `min(1, ${saturated('(surface - keep)')} / saturation)`,
      'humidity at which air this warm would leave the surface no more than asked above the dew point',
      MAGNUS,
      'most',
    ),
    surfaceLater: step('temperature', 'surface - fall', 'surface when it has cooled', GEOMETRY),
    marginLater: step('warmth', 'surfaceLater - dewPoint', 'surface above the dew point then', SAME_VAPOUR),
    humidityLater: step(
      'share',
      `min(1, vapour / (${saturated('(air - fall)')}))`,
      'humidity of the air when it has cooled',
      SAME_VAPOUR,
    ),
    damper: step(
      'share',
      'mostHumidity - humidity',
      'how much damper the air may be for this coating',
      GEOMETRY,
    ),
  },
  answers: [
    { of: 'dewPoint', label: 'dew point', from: 'of this air: dew forms on anything as cold as that' },
    { of: 'margin', label: 'surface above it', from: 'as measured now; − where it is colder' },
    {
      of: 'coatFrom',
      label: 'coldest it may be',
      from: 'on the surface, now and until the coat is tack-free',
    },
  ],
  inWords: [
    firstOf(
      [
        { when: 'surface < coatFrom or humidity > mostHumidity', says: 'Wait.' },
        {
          when: 'surfaceLater < coatFrom or humidityLater > mostHumidity',
          says: 'Now these limits are met, but not until the coat is tack-free: wait for a warmer spell, or keep the work warm.',
        },
      ],
      [
        'Coat: these limits are met now',
        { when: 'fall > 0 K', says: ', and still when it has cooled by {fall}.', otherwise: '.' },
      ],
    ),
    'In this air dew forms on anything as cold as {dewPoint};',
    {
      when: 'margin > 0 K',
      says: 'the surface is {margin} above that.',
      otherwise: 'the surface is no warmer.',
    },
    { when: 'surface > coatFrom', says: 'It may fall to {coatFrom} and no further.' },
  ],
  warnings: [
    {
      when: 'margin <= 0 K',
      says: 'At {surface} the surface is no warmer than the dew point, {dewPoint}: it sweats, and no coat holds on it.',
      limit: MAGNUS,
      weight: 'stop',
    },
    {
      when: 'margin > 0 K and margin < keep',
      says: 'The surface is {margin} above the dew point, and {keep} is asked: warm it, or wait for drier air.',
      limit: citation(leastMargin),
      weight: 'stop',
    },
    {
      when: 'margin >= keep and marginLater < keep',
      says: 'Before the coat is tack-free the surface cools to {surfaceLater}; to stay {keep} above the dew point it needs {leastSurface} at least.',
      limit: citation(leastMargin),
      weight: 'mind',
    },
    {
      when: 'humidity > mostHumidity',
      says: 'The humidity is {humidity}; this coating takes {mostHumidity} at most.',
      limit: `the dampest air of the coating; ${SHEET} rules`,
      weight: 'stop',
    },
    {
      when: 'humidity <= mostHumidity and humidityLater > mostHumidity',
      says: 'When the air has cooled by {fall} its humidity is {humidityLater}; this coating takes {mostHumidity} at most.',
      limit: `the dampest air of the coating; ${SHEET} rules`,
      weight: 'mind',
    },
    {
      when: 'surface < coldest',
      says: 'At {surface} this coating may never cure: it asks for {coldest} at least.',
      limit: `the least temperature of the coating; ${SHEET} rules`,
      weight: 'stop',
    },
    {
      when: 'surface >= coldest and surfaceLater < coldest',
      says: 'Before the coat is tack-free the surface cools to {surfaceLater}; this coating asks for {coldest} at least.',
      limit: `the least temperature of the coating; ${SHEET} rules`,
      weight: 'mind',
    },
  ],
  cautions: [
    'No gas or paraffin heater without a flue while you coat: it gives off water and carbon dioxide, which cloud the coat, and carbon monoxide, which kills. No flame and no glowing wire near solvents.',
    'The sheet of the coating in hand outranks every figure here. This cell judges dew, damp and cold; wind, dust and rain you judge yourself.',
    'Wood, tins and wet cloth stay cold long after the air has warmed: lay the thermometer on the surface, and measure again before each coat.',
    'A shed shut against the damp holds the fumes too: follow the sheet on fresh air, gloves and mask.',
  ],
  sources: [
    { text: `Saturated vapour: ${citation(magnus.atFreezing)}`, known: 'published' },
    {
      text: 'D. Bolton, “The computation of equivalent potential temperature”, Monthly Weather Review 108 (1980), eq. 10: within a twentieth of a degree of it here',
      known: 'published',
    },
    { text: `Surface above the dew point: ${citation(leastMargin)}`, known: 'published' },
    {
      text: 'Coating guides, which cite ISO 12944-7: no coat in air of more than 85 %',
      known: 'published',
    },
    {
      text: 'Drier air for coats that stay clear, least temperatures: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['bottom', 'bilge', 'side', 'transom', 'bowTransom'],
  brings: coatTables,
  chart: (v, on) => {
    const swept = Array.from({ length: 29 }, (_, i) => on.with({ humidity: 0.3 + i * 0.025 })).flatMap(
      (one) => (isIssue(one) ? [] : [one]),
    );
    const say = (kelvin: number) => on.say(kelvin, 'temperature');
    return {
      title: 'How cold the surface may be, by the damp of the air',
      says: `The damper the air the warmer must the surface be: at ${on.say(v.humidity, 'share')} it sweats at ${say(v.dewPoint)} and is coated from ${on.say(v.coatFrom, 'temperature', { bound: 'least' })} up. It is at ${say(v.surface)} now, and at ${say(v.surfaceLater)} when it has cooled.`,
      x: { label: 'Humidity of air this warm', kind: 'share' },
      y: { label: 'Surface', kind: 'temperature' },
      lines: [
        { name: 'dew point', points: swept.map((one) => [one.humidity, one.dewPoint] as const), as: 'line' },
        { name: 'coat from', points: swept.map((one) => [one.humidity, one.coatFrom] as const), as: 'line' },
      ],
      points: [
        { x: v.humidity, y: v.surface, label: 'now' },
        // The lines are named at their ends.
        ...swept.slice(-1).flatMap((end) => [
          { x: end.humidity, y: end.coatFrom, label: 'coat from' },
          { x: end.humidity, y: end.dewPoint, label: 'sweats' },
        ]),
        ...(v.fall > 0 ? [{ x: v.humidity, y: v.surfaceLater, label: 'cooled' }] : []),
      ],
    };
  },
});
