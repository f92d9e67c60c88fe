/** The working of the bevels of a frame. */
import { step } from '../form/define';
import { GEOMETRY } from '../../trade/sources';

const SLOPES =
  'geometry: tangent of the bevel = slope in plan x cosine of the flare - slope in profile x sine of the flare';

export const bevelSteps = {
  hasChine: step('number', 'chine == "none" ? 0 : 1', 'whether the boat has a chine', GEOMETRY),
  chineBevel: step(
    'angle',
    'atan(chinePlan * cos(flare) - chineProfile * sin(flare))',
    'bevel of the side at the chine, off square; + opens going forward',
    SLOPES,
  ),
  sheerBevel: step(
    'angle',
    'atan(sheerPlan * cos(sheerFlare) - sheerProfile * sin(sheerFlare))',
    'bevel of the side at the sheer, off square; + opens going forward',
    SLOPES,
  ),
  bottomBevel: step(
    'angle',
    'atan(chinePlan * sin(deadrise) - chineProfile * cos(deadrise))',
    'bevel of the bottom at the chine, off square; + opens going forward',
    `${SLOPES}; the flare of a bottom is 90° less its deadrise`,
  ),
  keelBevel: step(
    'angle',
    'atan(-keelProfile * cos(keelDeadrise))',
    'bevel of the bottom at the keel, off square; + opens going forward',
    `${SLOPES}; the keel lies on the centreline, so it has no slope in plan`,
  ),
  chineInPlan: step('angle', 'atan(chinePlan)', 'angle of the chine in plan, off the centreline', GEOMETRY),
  chineInProfile: step('angle', 'atan(chineProfile)', 'angle of the chine in profile, off level', GEOMETRY),
  sheerInPlan: step('angle', 'atan(sheerPlan)', 'angle of the sheer in plan, off the centreline', GEOMETRY),
  sheerInProfile: step('angle', 'atan(sheerProfile)', 'angle of the sheer in profile, off level', GEOMETRY),
  flareThere: step('angle', 'flare', 'flare of the side’s skin at the chine', GEOMETRY),
  deadriseThere: step('angle', 'deadrise', 'deadrise of the bottom’s skin at the chine', GEOMETRY),
  chineGauge: step(
    'angle',
    '90° - abs(chineBevel)',
    'bevel gauge at the chine, stock on the face that loses nothing',
    GEOMETRY,
  ),
  sheerGauge: step(
    'angle',
    '90° - abs(sheerBevel)',
    'bevel gauge at the sheer, stock on the face that loses nothing',
    GEOMETRY,
  ),
  bottomGauge: step(
    'angle',
    '90° - abs(bottomBevel)',
    'bevel gauge on the bottom edge, stock on the face that loses nothing',
    GEOMETRY,
  ),
  chineRemoval: step(
    'length',
    'siding * tan(abs(chineBevel))',
    'planed off the smaller face at the chine',
    GEOMETRY,
  ),
  sheerRemoval: step(
    'length',
    'siding * tan(abs(sheerBevel))',
    'planed off the smaller face at the sheer',
    GEOMETRY,
  ),
  bottomRemoval: step(
    'length',
    'siding * tan(abs(bottomBevel))',
    'planed off the bottom edge at the chine, on its smaller face',
    GEOMETRY,
  ),
  keelRemoval: step(
    'length',
    'siding * tan(abs(keelBevel))',
    'planed off the bottom edge at the keel, on its smaller face',
    GEOMETRY,
  ),
  forwardOnLine: step(
    'number',
    'side == "aft" or side == "custom" and (custom == "aft" or custom == "larger" and hasChine * chineBevel + sheerBevel >= 0°) ? 1 : 0',
    '1 where the forward face stands on the station line, 0 where the after face does',
    'a frame that stands aft of its line has its forward face on it',
  ),
  proudChine: step(
    'length',
    'forwardOnLine > 0 and chineBevel < 0° or forwardOnLine < 1 and chineBevel > 0° ? chineRemoval : 0 mm',
    'wood to leave outside the line at the chine',
    GEOMETRY,
  ),
  proudSheer: step(
    'length',
    'forwardOnLine > 0 and sheerBevel < 0° or forwardOnLine < 1 and sheerBevel > 0° ? sheerRemoval : 0 mm',
    'wood to leave outside the line at the sheer',
    GEOMETRY,
  ),
  proudBottom: step(
    'length',
    'forwardOnLine > 0 and bottomBevel < 0° or forwardOnLine < 1 and bottomBevel > 0° ? bottomRemoval : 0 mm',
    'wood to leave outside the line on the bottom’s edge, at the chine',
    GEOMETRY,
  ),
  proud: step(
    'length',
    'max(hasChine * proudChine, proudSheer, hasChine * proudBottom)',
    'most wood to leave outside the line',
    GEOMETRY,
  ),
  wind: step('angle', 'abs(sheerBevel - chineBevel)', 'wind of the side edge from chine to sheer', GEOMETRY),
  chineAngle: step(
    'angle',
    'acos(-(tan(chineBevel) * tan(bottomBevel) + sin(flare + deadrise)) * cos(chineBevel) * cos(bottomBevel))',
    'angle between side and bottom inside the hull, square to the chine',
    'geometry: from the normals of the two panels',
  ),
  logPlaning: step(
    'length',
    'logThickness * tan(chineAngle - 90°)',
    'planed off the edge of a square chine log, so that the bottom lies on it; at its outer face where the angle is over 90°',
    GEOMETRY,
  ),
} as const;
