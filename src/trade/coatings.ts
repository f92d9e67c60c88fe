/** What coatings ask of the air and of the surface, by kind. The sheet of the coating in hand outranks every figure here. */
import { adhesives } from './adhesives';
import { type Cited, look, type TradeTable } from './table';

const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

/** The same resin as in a joint, and no colder. */
const epoxyFrom = look(adhesives, 'epoxy', 'leastTemperature')!; // the row has it

/** Guides put the limit for all coatings at this. */
const MOST: Cited = {
  value: 0.85,
  source: 'coating guides, which cite ISO 12944-7: 85 %',
  known: 'published',
};
const CLEAR = practice(0.75, '75 to 80 % where the coat stays clear, of which the surer');

export const coatings: TradeTable<'mostHumidity' | 'leastTemperature'> = {
  id: 'coating',
  columns: {
    mostHumidity: { kind: 'share', meaning: 'dampest air' },
    leastTemperature: { kind: 'temperature', meaning: 'least temperature' },
  },
  rows: [
    {
      id: 'epoxy',
      label: 'epoxy to be painted',
      cells: { mostHumidity: MOST, leastTemperature: epoxyFrom },
    },
    {
      id: 'clearEpoxy',
      label: 'epoxy that stays clear',
      cells: { mostHumidity: CLEAR, leastTemperature: epoxyFrom },
    },
    {
      id: 'paint',
      label: 'oil paint or enamel',
      cells: {
        mostHumidity: MOST,
        leastTemperature: practice(283.15, 'below 10 °C (50 °F) oil paints are long in drying'),
      },
    },
    {
      id: 'varnish',
      label: 'varnish',
      cells: {
        mostHumidity: CLEAR,
        leastTemperature: practice(283.15, 'below 10 °C (50 °F) varnish is long in drying'),
      },
    },
  ],
};
