/** Dew: saturated vapour by the steam tables, dew points as charts and guides print them. */
import { weather } from '../../src/cells/finish/weather';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const of = (key: string, entries: Record<string, string>) => tryCell(weather, entries).number(key);
const celsius = (kelvin: number) => kelvin - 273.15;
const WMO = 'WMO-No. 8, Annex 4.B: dew point over water';

const saturation = (id: string, air: number, expected: number): Check => ({
  id,
  cell: 'weather',
  what: 'pressure of saturated vapour',
  input: `${air} °C`,
  expected: [expected],
  unit: 'kPa',
  // The formula lies 0.3 % under the tables.
  tolerance: 0.004 * expected,
  source: 'steam tables, saturated water by temperature',
  known: 'from memory',
  obtain: () => [of('saturation', { air: `${air} °C` }) / 1000],
});

const dew = (id: string, air: number, humidity: number, expected: number): Check => ({
  id,
  cell: 'weather',
  what: 'dew point',
  input: `air ${air} °C, ${humidity} %`,
  expected: [expected],
  unit: '°C',
  tolerance: 0.01,
  source: WMO,
  known: 'closed form',
  obtain: () => [celsius(of('dewPoint', { air: `${air} °C`, humidity: `${humidity} %` }))],
});

export const rows: readonly Check[] = [
  saturation('C64', 10, 1.2281),
  saturation('C64a', 20, 2.3392),
  saturation('C64b', 30, 4.2467),
  dew('C65', 20, 65, 13.22),
  dew('C66', 25, 60, 16.69),
  dew('C67', 15, 85, 12.5),
  dew('C67a', 5, 60, -2.13),
  {
    id: 'C68',
    cell: 'weather',
    what: 'dew point of vapour at 22 hPa',
    input: 'vapour 22 hPa, in air of 20 °C',
    expected: [19.0291],
    unit: '°C',
    tolerance: 0.05,
    source: 'D. Bolton, Monthly Weather Review 108 (1980), eq. 10, as a library of meteorology works it out',
    known: 'published',
    obtain: () => {
      const air = { air: '20 °C' };
      const humidity = `${2.2e5 / of('saturation', air)} %`;
      return [celsius(of('dewPoint', { ...air, humidity }))];
    },
  },
  {
    id: 'C68a',
    cell: 'weather',
    what: 'dew point as a guide prints it',
    input: 'air 30 °C, 55 %',
    expected: [20],
    unit: '°C',
    tolerance: 0.1,
    source: 'a coating guide’s table of dew points, in whole degrees',
    known: 'published',
    obtain: () => [celsius(of('dewPoint', { air: '30 °C', humidity: '55 %' }))],
  },
  {
    id: 'DP1',
    cell: 'weather',
    what: 'dew point in degrees Fahrenheit',
    input: 'air 70 °F, 65 %',
    expected: [57.69],
    unit: '°F',
    tolerance: 0.01,
    source: 'Magnus formula of WMO-No. 8, Annex 4.B; a chart for painters prints 57',
    known: 'closed form',
    obtain: () => [celsius(of('dewPoint', { air: '70 °F', humidity: '65 %' })) * 1.8 + 32],
  },
  dew('DP2', 30, 55, 19.97),
  dew('DP3', 25, 80, 21.31),
  {
    id: 'C69',
    cell: 'weather',
    what: 'dampest air that leaves 3 °C above the dew point on a surface as warm as the air',
    input: '20 °C; 10 °C',
    expected: [82.9, 81.6],
    unit: '%',
    tolerance: 0.1,
    source: WMO,
    known: 'closed form',
    obtain: () => ['20 °C', '10 °C'].map((air) => of('dampest', { air, surface: air, keep: '3 °C' }) * 100),
  },
];
