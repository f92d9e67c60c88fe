/** How far a number is usually out goes by what its field says that it is, and by no word in its name. */
import { expect, test } from 'vitest';
import { cells } from '../../src/cells/all';
import { usualDoubt } from '../../src/trade/doubts';

const stresses = cells.flatMap(({ id, inputs }) =>
  Object.entries(inputs).flatMap(([key, spec]) =>
    spec.kind === 'stress' ? [[`${id}.${key}`, spec.label, spec.doubted] as const] : [],
  ),
);
const entryOf = (name: string) => {
  const [, label, doubted] = stresses.find(([one]) => one === name)!;
  return usualDoubt(`${name} ${label}`, 'stress', 1e7, doubted).entry;
};

test('woods differ by twice the published coefficients of variation: 22, 16 and 14 %', () => {
  // Wood Handbook (FPL-GTR-190), table 5-6, from memory: modulus of elasticity, of rupture, shear parallel to grain.
  expect(entryOf('bend.modulus')).toBe('44 %');
  expect(entryOf('bend.rupture')).toBe('32 %');
  expect(entryOf('holding.shear')).toBe('28 %');
});

test('each modulus and each strength of a wood says so, and what is no wood has a doubt of none', () => {
  const unsaid = stresses.filter(([, , doubted]) => doubted === undefined).map(([name]) => name);
  expect(unsaid.toSorted()).toStrictEqual([
    'butt.glassStrength',
    'butt.panelStrength',
    'butt.pull',
    'butt.rollingShear',
    'screwStrength.yieldStress',
  ]);
  // Common practice, no source: as wide as a rule of thumb.
  for (const name of unsaid) expect(entryOf(name)).toBe('20 %');
});
