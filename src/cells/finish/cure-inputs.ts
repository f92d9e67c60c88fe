/** What the cell of the cure asks for. */
import { hardeners } from '../../trade/hardeners';
import { paints } from '../../trade/paints';
import { choice, input } from '../form/define';
import { chosenFromShop, fromShop } from '../form/from-shop';
import { DAY, HOUR, WEEKDAYS } from './cure-clock';
import { CUSTOM } from '../../trade/sources';

const SHEET = 'from the sheet of the hardener';

/** A time of the day, in hours since midnight. */
const hour = (label: string, preset: string, note: string) =>
  input('time', label, { preset, min: '0 h', max: '24 h', step: '0.5 h', note });

const lasting = (label: string, preset: string, note: string) =>
  input('time', label, { preset, min: '0.25 h', max: '24 h', step: '0.5 h', note });

const medium = hardeners.rows.find(({ id }) => id === 'medium')!.cells; // the table has it
const hours = (seconds: number | undefined) => `${(seconds ?? 0) / HOUR} h`;
const days = (seconds: number | undefined) => `${(seconds ?? 0) / DAY} d`;

const age = (label: string, key: 'tackFree' | 'sandable' | 'cured', note = SHEET) =>
  input('time', label, {
    from: `hardener.{hardener}.${key}`,
    preset: key === 'cured' ? days(medium.cured?.value) : hours(medium[key]?.value),
    min: '0.5 h',
    max: '60 d',
    step: '1 h',
    note,
  });

/** Asked while the work is still to come. */
const slip = (label: string, work: (typeof BEFORE)[number] | 'paint') =>
  input('time', label, {
    ...(work === 'paint' || work === 'primer'
      ? {}
      : {
          when: BEFORE.slice(0, BEFORE.indexOf(work) + 1)
            .map((next) => `next == "${next}"`)
            .join(' or '),
        }),
    preset: '0 h',
    min: '0 h',
    max: '60 d',
    step: '1 h',
    note: 'later than it could be; all that follows moves along',
  });
/** Asked where several of a kind could. */
const slipCoat = (label: string, slips: string, coats: string) =>
  input('count', label, {
    when: `${slips} > 0 h and ${coats} > 1`,
    preset: '1',
    min: '1',
    max: '30',
    step: '1',
    note: 'which of them slips, the first being 1; past the last it is the last',
  });
const BEFORE = ['seal', 'cloth', 'fill', 'sand', 'primer'] as const;

export const cureInputs = {
  next: choice('Next comes', {
    options: [
      { id: 'seal', label: 'sealing' },
      { id: 'cloth', label: 'cloth' },
      { id: 'fill', label: 'a fill coat' },
      { id: 'sand', label: 'wash and sand' },
      { id: 'primer', label: 'paint' },
    ],
    preset: 'seal',
  }),
  startDay: choice('Begin on', {
    options: WEEKDAYS.map((day) => ({ id: day.toLowerCase() as Lowercase<typeof day>, label: day })),
    preset: 'saturday',
  }),
  startHour: hour('Begin at', '9 h', 'hours since midnight: 9 h is nine o’clock, 14.5 h half past two'),
  air: fromShop('air', { hint: 'by day, or at the warmest of a day' }),
  cold: input('temperature', 'By night, or at the coldest', {
    preset: '16 °C',
    presetInch: '60 °F',
    min: '-50 °C',
    max: '60 °C',
    step: '1 °C',
    note: 'by the forecast, where the boat stands; not warmer than by day',
  }),
  told: choice('The two are', {
    options: [
      { id: 'steady', label: 'steady' },
      { id: 'swinging', label: 'warmest, coldest' },
    ],
    preset: 'swinging',
  }),
  dayFrom: hour('Daylight from', '7 h', 'hours since midnight'),
  dayTo: hour('Daylight until', '19 h', 'hours since midnight'),
  hardener: chosenFromShop('hardener'),
  tackFree: age('Tack-free after, at 25 °C (77 °F)', 'tackFree'),
  window: age(
    'Unsanded until, at 25 °C (77 °F)',
    'sandable',
    `${SHEET}; until it is hard enough to be sanded: ${CUSTOM}; a supplier says 8 to 24 h`,
  ),
  sandable: age('Sand from, at 25 °C (77 °F)', 'sandable'),
  cured: {
    ...age('Cured through, at 25 °C (77 °F)', 'cured'),
    when: '(next == "seal" or next == "cloth" or next == "fill") and primerCoats + paintCoats == 0',
  },
  factor: input('ratio', 'Times as quick, 10 K warmer', {
    preset: '2',
    min: '1',
    max: '4',
    step: '0.1',
    note: 'twice: makers’ sheets; in a thin film only 1.3 times, says one supplier',
  }),
  stops: input('temperature', 'Coldest it cures', {
    from: 'coating.epoxy.leastTemperature',
    preset: '10 °C',
    min: '-10 °C',
    max: '40 °C',
    step: '1 °C',
    bound: 'least',
    note: `${SHEET}; colder hours are not counted`,
  }),
  fillCoats: input('count', 'Fill coats over the cloth', {
    when: 'next == "seal" or next == "cloth" or next == "fill"',
    from: 'resin.fillCoats',
    preset: '3',
    min: '0',
    max: '10',
    step: '1',
  }),
  primerCoats: input('count', 'Coats of primer', {
    preset: '1',
    min: '0',
    max: '6',
    step: '1',
    note: `one or two; ${CUSTOM}`,
  }),
  paint: choice('Paint', {
    options: paints.rows.map(({ id, label }) => ({ id, label })),
    from: 'paint.paint',
    preset: 'enamel',
  }),
  paintCoats: input('count', 'Coats of paint', {
    from: 'paint.coats',
    preset: '2',
    min: '0',
    max: '30',
    step: '1',
  }),
  paintAfter: input('time', 'Epoxy cures before paint', {
    preset: '3 d',
    min: '0 d',
    max: '60 d',
    step: '1 d',
    bound: 'least',
    note: `at 25 °C (77 °F); three to seven days: ${CUSTOM}`,
  }),
  primerRecoat: input('time', 'From primer to the next coat', {
    from: 'paints.primer.recoat',
    preset: '20 h',
    min: '0.5 h',
    max: '30 d',
    step: '1 h',
    note: 'from the sheet of the tin; at 20 °C (68 °F)',
  }),
  recoat: input('time', 'From paint to the next coat', {
    from: 'paints.{paint}.recoat',
    preset: '20 h',
    min: '0.5 h',
    max: '30 d',
    step: '1 h',
    note: 'from the sheet of the tin; at 20 °C (68 °F)',
  }),
  hard: input('time', 'Paint is hard after', {
    from: 'paints.{paint}.hard',
    preset: '7 d',
    min: '0 d',
    max: '90 d',
    step: '1 d',
    note: 'from the sheet of the tin; straps and chocks mark it until then',
  }),
  leastDry: input('temperature', 'Coldest that paint dries', {
    from: 'coating.paint.leastTemperature',
    preset: '10 °C',
    min: '-10 °C',
    max: '40 °C',
    step: '1 °C',
    bound: 'least',
    note: 'from the sheet of the tin; colder hours are not counted',
  }),
  job: input('count', 'Job looked at', {
    preset: '1',
    min: '1',
    max: '99',
    step: '1',
    note: '1 is the next',
  }),
  when: choice('You work', {
    options: [
      { id: 'daily', label: 'every day' },
      { id: 'weekends', label: 'at weekends' },
    ],
    preset: 'daily',
  }),
  workFrom: hour('Your hours begin at', '8 h', 'hours since midnight'),
  workLasts: lasting('And so long', '12 h', 'an evening has three, a free day twelve'),
  coatTime: lasting('One coat takes', '2 h', 'an example: mixing, laying, cleaning up'),
  sandTime: lasting('Washing and sanding takes', '4 h', 'an example; drying included'),
  sealSlip: slip('Sealing slips by', 'seal'),
  clothSlip: slip('Cloth slips by', 'cloth'),
  fillSlip: slip('Fill coat slips by', 'fill'),
  sandSlip: slip('Washing and sanding slips by', 'sand'),
  primerSlip: slip('Primer slips by', 'primer'),
  paintSlip: slip('Paint slips by', 'paint'),
  fillSlipCoat: slipCoat('Of the fill coats, number', 'fillSlip', 'fillCoats'),
  primerSlipCoat: slipCoat('Of the primers, number', 'primerSlip', 'primerCoats'),
  paintSlipCoat: slipCoat('Of the paints, number', 'paintSlip', 'paintCoats'),
} as const;
