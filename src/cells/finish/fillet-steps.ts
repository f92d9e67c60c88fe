/** The working of the fillet. */
import { filletSeams } from '../../boat/quantities/fillet-quantities';
import { filletRadius, radiusToPanel } from '../../trade/paste';
import { citation } from '../../trade/table';
import { custom } from '../common/sizes/custom-sizes';
import { packsToBuy } from '../common/sizes/packs-sold';
import { step } from '../form/define';
import { fact, tell } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';

const MIXING = 'geometry of mixing: volumes add up, the air between the grains is driven out';

/** Those that are filleted, port and starboard. */
const seams = fact(
  'each seam by its own angles: chines and keel station by station, stem and sternpost at tenths of their height, a transom at the corners; no corner taken as sharper than 30°',
  GEOMETRY,
  ({ laid }: { readonly laid: 'none' | 'here' | 'all' | 'seams' }, at) => {
    const all = laid === 'all' || laid === 'seams' ? filletSeams(at.hull) : [];
    const counted = all.filter(({ of }) => laid === 'seams' || of === 'chine');
    const sum = (of: typeof all, size: (seam: (typeof all)[number]) => number) =>
      of.reduce((total, seam) => total + size(seam), 0);
    const run = sum(counted, (seam) => seam.run);
    return {
      run,
      chines: sum(
        counted.filter(({ of }) => of === 'chine'),
        (seam) => seam.run,
      ),
      ratio: run > 0 ? sum(counted, (seam) => seam.run * seam.ratio) / run : 0,
    };
  },
);

export const filletSteps = {
  thinner: step('length', 'min(lowerThickness, upperThickness)', 'the thinner panel', GEOMETRY),
  usualRadius: step(
    'length',
    `max(${custom(`${filletRadius.value * 1000} mm`, '3/8 in')}, ${radiusToPanel.value} * thinner)`,
    'radius usual between these panels',
    `${citation(filletRadius)}; ${citation(radiusToPanel)}`,
  ),
  section: step(
    'area',
    'radius^2 * (1 / tan(angle / 2) - (180° - angle) / rad / 2)',
    'section of the fillet, square to the seam',
    'geometry: the kite between corner and centre, less the sector of the tool',
  ),
  width: step(
    'length',
    'radius / tan(angle / 2)',
    'width of the fillet on each face, from the corner',
    GEOMETRY,
  ),
  throat: step(
    'length',
    'radius * (1 / sin(angle / 2) - 1)',
    'thickness from the corner to the hollow of the fillet',
    GEOMETRY,
  ),
  evenRadius: step(
    'length',
    'radius * (sqrt(2) - 1) / (1 / sin(angle / 2) - 1)',
    'radius that makes the fillet as thick here as this tool does in a square corner',
    GEOMETRY,
  ),
  wedge: step(
    'area',
    'lowerThickness * upperThickness / 2 * sin(angle)',
    'section of the gap outside, between square edges',
    'geometry: the triangle between the edges and the line across them',
  ),
  net: step(
    'volume',
    'sides * length * (section + (outside == "filled" ? wedge : 0 m^2))',
    'paste that stays in the seams',
    GEOMETRY,
  ),
  paste: step(
    'volume',
    '(1 + waste) * net',
    'paste to mix, with scrapings',
    'scrapings as a share added to the net amount',
  ),
  pasteYield: step(
    'ratio',
    '1 + fillerShare * epoxyDensity / fillerDensity',
    'paste from one volume of epoxy',
    MIXING,
  ),
  pasteDensity: step(
    'density',
    '(1 + fillerShare) * epoxyDensity / pasteYield',
    'density of the paste',
    MIXING,
  ),
  epoxy: step(
    'volume',
    'paste / pasteYield',
    'mixed epoxy in the paste, resin and hardener together',
    MIXING,
  ),
  toBuy: packsToBuy('epoxy', 'epoxy to buy for it, resin and hardener together'),
  epoxyMass: step('mass', 'epoxy * epoxyDensity', 'the same by weight', GEOMETRY),
  fillerMass: step('mass', 'fillerShare * epoxyMass', 'filler to weigh out', MIXING),
  perMetre: step(
    'mass',
    '(section + (outside == "filled" ? wedge : 0 m^2)) * 1 m / pasteYield * epoxyDensity',
    'epoxy in 1 m (3 ft 3 in) of it, without scrapings',
    GEOMETRY,
  ),
  // A row of the table has steps of its own, and no inputs.
  openHere: step('angle', 'angleHere', 'inside angle at the station', GEOMETRY),
  sectionHere: step(
    'area',
    'radius^2 * (1 / tan(angleHere / 2) - (180° - angleHere) / rad / 2)',
    'section of the fillet at the station',
    GEOMETRY,
  ),
  widthHere: step('length', 'radius / tan(angleHere / 2)', 'width on each face there', GEOMETRY),
  throatHere: step('length', 'radius * (1 / sin(angleHere / 2) - 1)', 'throat there', GEOMETRY),
  seamRun: tell(
    seams,
    'length',
    'all those seams together, port and starboard; 0 where they are not asked for',
    ({ run }) => run,
  ),
  chineRun: tell(
    seams,
    'length',
    'her chines among them: there a gap may be filled outside',
    ({ chines }) => chines,
  ),
  seamMean: tell(
    seams,
    'number',
    'section along them on average, in squares of the radius',
    ({ ratio }) => ratio,
  ),
  onBoat: step(
    'mass',
    'laid == "none" ? 0 g : laid == "here" ? epoxyMass : (1 + waste) * (seamRun * radius^2 * seamMean + (outside == "filled" ? chineRun * wedge : 0 m^3)) / pasteYield * epoxyDensity',
    'epoxy for the fillets on this boat, with scrapings',
    GEOMETRY,
  ),
} as const;
