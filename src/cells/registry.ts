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

/** A cell's file exports it under its id. */
const shelved = <Id extends string>(id: Id, fetch: () => Promise<{ readonly [K in Id]: Cell }>): Shelved => ({
  id,
  load: async () => (await fetch())[id],
});

export const registry: readonly Shelved[] = [
  shelved('offsets', () => import('./shape/offsets')),
  shelved('lines', () => import('./shape/lines')),
  shelved('fair', () => import('./shape/fair')),
  shelved('batten', () => import('./shape/batten')),
  shelved('framePattern', () => import('./frames/frame-pattern')),
  shelved('bevels', () => import('./frames/bevels')),
  shelved('rollingBevel', () => import('./frames/rolling-bevel')),
  shelved('stemBevel', () => import('./frames/stem-bevel')),
  shelved('compoundCut', () => import('./frames/compound-cut')),
  shelved('limber', () => import('./frames/limber')),
  shelved('notch', () => import('./frames/notch')),
  shelved('strongback', () => import('./frames/strongback')),
  shelved('squareCheck', () => import('./frames/square-check')),
  shelved('transomCut', () => import('./frames/transom-cut')),
  shelved('settingUp', () => import('./frames/setting-up')),
  shelved('stemCheck', () => import('./frames/stem-check')),
  shelved('bend', () => import('./timber/bending/bend')),
  shelved('holding', () => import('./timber/bending/holding')),
  shelved('laminate', () => import('./timber/bending/laminate')),
  shelved('scarf', () => import('./timber/joints/scarf')),
  shelved('joints', () => import('./timber/joints/joints')),
  shelved('fairing', () => import('./skin/fairing')),
  shelved('plyBend', () => import('./skin/ply-bend')),
  shelved('panels', () => import('./skin/panels')),
  shelved('sheets', () => import('./skin/sheets')),
  shelved('butt', () => import('./timber/joints/butt')),
  shelved('boards', () => import('./timber/wood/boards')),
  shelved('fasten', () => import('./timber/fastening/fasten')),
  shelved('screwCount', () => import('./timber/fastening/screw-count')),
  shelved('screwStrength', () => import('./timber/fastening/screw-strength')),
  shelved('screwMap', () => import('./timber/fastening/screw-map')),
  shelved('clamps', () => import('./timber/gluing/clamps')),
  shelved('glue', () => import('./timber/gluing/glue')),
  shelved('moisture', () => import('./timber/wood/moisture')),
  shelved('fillet', () => import('./finish/fillet')),
  shelved('filler', () => import('./finish/filler')),
  shelved('cloth', () => import('./finish/cloth')),
  shelved('weather', () => import('./finish/weather')),
  shelved('resin', () => import('./finish/resin')),
  shelved('batch', () => import('./finish/batch')),
  shelved('cure', () => import('./finish/cure')),
  shelved('sand', () => import('./finish/sand')),
  shelved('paint', () => import('./finish/paint')),
  shelved('weights', () => import('./afloat/weights')),
  shelved('float', () => import('./afloat/float')),
  shelved('curves', () => import('./afloat/curves')),
  shelved('stability', () => import('./afloat/stability')),
  shelved('capacity', () => import('./afloat/capacity')),
  shelved('flotation', () => import('./afloat/flotation')),
  shelved('power', () => import('./afloat/power')),
  shelved('lift', () => import('./handling/lift')),
  shelved('roll', () => import('./handling/roll')),
  shelved('trailer', () => import('./handling/trailer')),
  shelved('buyList', () => import('./buying/buy-list')),
];

keepNames(registry.map(({ id }) => id));
