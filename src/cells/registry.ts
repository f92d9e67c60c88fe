/**
 * The registry: every calculator cell, in the order of a build. A new cell is a file and a line here.
 *
 * Each cell is fetched when it is first needed, so that forty of them cost a page no more than one.
 */
import { keepNames } from '../boat/table/names';
import type { Cell } from './form/define';

export interface Shelved {
  readonly id: string;
  readonly load: () => Promise<Cell>;
}

export const registry: readonly Shelved[] = [
  { id: 'offsets', load: async () => (await import('./shape/offsets')).offsets },
  { id: 'lines', load: async () => (await import('./shape/lines')).lines },
  { id: 'fair', load: async () => (await import('./shape/fair')).fair },
  { id: 'batten', load: async () => (await import('./shape/batten')).batten },
  { id: 'framePattern', load: async () => (await import('./frames/frame-pattern')).framePattern },
  { id: 'bevels', load: async () => (await import('./frames/bevels')).bevels },
  { id: 'rollingBevel', load: async () => (await import('./frames/rolling-bevel')).rollingBevel },
  { id: 'stemBevel', load: async () => (await import('./frames/stem-bevel')).stemBevel },
  { id: 'compoundCut', load: async () => (await import('./frames/compound-cut')).compoundCut },
  { id: 'limber', load: async () => (await import('./frames/limber')).limber },
  { id: 'notch', load: async () => (await import('./frames/notch')).notch },
  { id: 'strongback', load: async () => (await import('./frames/strongback')).strongback },
  { id: 'squareCheck', load: async () => (await import('./frames/square-check')).squareCheck },
  { id: 'transomCut', load: async () => (await import('./frames/transom-cut')).transomCut },
  { id: 'settingUp', load: async () => (await import('./frames/setting-up')).settingUp },
  { id: 'stemCheck', load: async () => (await import('./frames/stem-check')).stemCheck },
  { id: 'bend', load: async () => (await import('./timber/bending/bend')).bend },
  { id: 'holding', load: async () => (await import('./timber/bending/holding')).holding },
  { id: 'laminate', load: async () => (await import('./timber/bending/laminate')).laminate },
  { id: 'scarf', load: async () => (await import('./timber/joints/scarf')).scarf },
  { id: 'joints', load: async () => (await import('./timber/joints/joints')).joints },
  { id: 'fairing', load: async () => (await import('./skin/fairing')).fairing },
  { id: 'panels', load: async () => (await import('./skin/panels')).panels },
  { id: 'sheets', load: async () => (await import('./skin/sheets')).sheets },
  { id: 'butt', load: async () => (await import('./timber/joints/butt')).butt },
  { id: 'boards', load: async () => (await import('./timber/wood/boards')).boards },
  { id: 'fasten', load: async () => (await import('./timber/fastening/fasten')).fasten },
  { id: 'screwCount', load: async () => (await import('./timber/fastening/screw-count')).screwCount },
  {
    id: 'screwStrength',
    load: async () => (await import('./timber/fastening/screw-strength')).screwStrength,
  },
  { id: 'screwMap', load: async () => (await import('./timber/fastening/screw-map')).screwMap },
  { id: 'clamps', load: async () => (await import('./timber/gluing/clamps')).clamps },
  { id: 'glue', load: async () => (await import('./timber/gluing/glue')).glue },
  { id: 'moisture', load: async () => (await import('./timber/wood/moisture')).moisture },
  { id: 'fillet', load: async () => (await import('./finish/fillet')).fillet },
  { id: 'filler', load: async () => (await import('./finish/filler')).filler },
  { id: 'cloth', load: async () => (await import('./finish/cloth')).cloth },
  { id: 'weather', load: async () => (await import('./finish/weather')).weather },
  { id: 'resin', load: async () => (await import('./finish/resin')).resin },
  { id: 'batch', load: async () => (await import('./finish/batch')).batch },
  { id: 'cure', load: async () => (await import('./finish/cure')).cure },
  { id: 'sand', load: async () => (await import('./finish/sand')).sand },
  { id: 'paint', load: async () => (await import('./finish/paint')).paint },
];

keepNames(registry.map(({ id }) => id));
