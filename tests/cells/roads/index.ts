/** All second roads, by cell and step. */
import { fastening } from './fastening';
import { frames } from './frames';
import { gluing } from './gluing';
import type { Roads } from './road';
import { shape } from './shape';
import { wood } from './wood';

export const roads: Roads = { ...shape, ...frames, ...wood, ...fastening, ...gluing };

/** Settings in which something comes about that is nothing on a starter as it stands. */
export const tried: Readonly<Record<string, readonly Readonly<Record<string, string>>[]>> = {
  stemCheck: [
    { portLength: '4 m', starboardLength: '3.99 m' },
    { portLength: '3.9 m', starboardLength: '3.95 m' },
  ],
  settingUp: [
    {
      portLength: '1.5 m',
      starboardLength: '1.49 m',
      out: '600 mm',
      portHeight: '500 mm',
      starboardHeight: '510 mm',
    },
  ],
  joints: ['1.2 m', '1.7 m', '2.2 m', '2.6 m'].map((portFirst) => ({
    portFirst,
    starboardFirst: '2 m',
    hardShare: '60 %',
    easyBend: '1000',
  })),
};
