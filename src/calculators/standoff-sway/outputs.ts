import { MEASURED_OVER_LINEAR } from '@frameworthy/shared/impact';
import type { LimitName } from '@frameworthy/shared/standoff';
import type { Output } from '~/island/declaration.ts';
import { LIMIT_WORDS, verdictOfSpeed } from '../limit-words.ts';
import { closing, firstSpeed, foldingForce, movement, preload, standoffMass, wallStress } from '../standoff-outputs.ts';
import type { SwayValues } from './inputs.ts';
import type { SwayResult } from './compute.ts';

type SwayOutput = Output<SwayValues, SwayResult>;

const speedOf = (key: string, name: LimitName, label: string, meaning: string): SwayOutput => ({
  key,
  label,
  quantity: 'speed',
  group: 'Speed at which',
  meaning,
  // A limit that nothing loads in this hit is far off: shown as a hundred times the speed.
  value: (r, { speed }) => r.limit(name)?.speed ?? 100 * speed,
  verdict: (r, { speed }) =>
    r.limit(name)
      ? verdictOfSpeed(r.limit(name)!.speed, speed, LIMIT_WORDS[name])
      : { level: 'good', text: 'not counted with these ends' },
});

export const outputs: readonly SwayOutput[] = [
  {
    ...firstSpeed((_, { speed }) => speed),
    meaning:
      'Speed of this hit at which the first limit is reached. For ranking two bodies; the real peak may be half as high again.',
  },
  { ...movement, meaning: 'How far the top plate moves at the boards, the folding of the standoffs included.' },
  {
    key: 'firstSpeedLow',
    label: 'The same, at the upper end of the band',
    quantity: 'speed',
    digits: 2,
    meaning: 'If the peak is 1.5 times the linear one, as measured drops were.',
    value: (r) => r.first.speed / MEASURED_OVER_LINEAR,
    group: 'Hit',
  },
  {
    key: 'peakForce',
    label: 'Peak force',
    symbol: 'F',
    quantity: 'force',
    meaning:
      'Lower end of the band, as if nothing yielded. A body that folds is pushed with little more than its folding force.',
    value: (r) => r.peakForce,
    group: 'Hit',
  },
  {
    key: 'peakForceHigh',
    label: 'Upper end of the band',
    quantity: 'force',
    meaning: 'Measured peaks of small frames lie about here.',
    value: (r) => r.band.high,
    group: 'Hit',
  },
  {
    key: 'effectiveMass',
    label: 'Mass behind the blow',
    symbol: 'm_{\\mathrm{eff}}',
    quantity: 'mass',
    meaning: 'Less than the all-up mass where the blow also turns the frame.',
    value: (r) => r.effectiveMass,
    group: 'Hit',
  },
  {
    key: 'frameStiffness',
    label: 'Stiffness of the standoffs',
    symbol: 'k_s',
    quantity: 'stiffness',
    meaning: 'Force over movement where the nose is hit, contact left out.',
    value: (r) => r.frameStiffness,
    group: 'Hit',
  },
  {
    key: 'shear',
    label: 'Largest share of one standoff',
    symbol: 'H',
    quantity: 'force',
    meaning: 'Side force on the standoff that is bent most.',
    value: (r) => r.worstForces.shear,
    group: 'Standoffs',
  },
  {
    key: 'footMoment',
    label: 'Largest foot moment',
    symbol: 'M_f',
    quantity: 'moment',
    meaning: 'What screw and bottom plate have to hold at one standoff.',
    value: (r) => r.footMoment,
    group: 'Standoffs',
  },
  { ...wallStress((r) => r.limit('standoff')!.applied), meaning: 'At its outer fibre, at the end that is bent most.' },
  {
    key: 'elastic',
    label: 'Movement that springs back',
    quantity: 'length',
    digits: 2,
    meaning: 'The elastic part alone, as if nothing ever yielded.',
    value: (r) => r.elastic,
    group: 'Standoffs',
  },
  {
    ...foldingForce,
    meaning: 'With a hinge at each held end. From there on the body goes on folding at about this force.',
  },
  {
    key: 'tension',
    label: 'Largest pull along a standoff',
    symbol: 'N',
    quantity: 'force',
    meaning: 'A blow above the top plate rocks it: the rear or front ones are pulled.',
    value: (r) => r.tension,
    group: 'Standoffs',
  },
  {
    key: 'screwTension',
    label: 'Screw tension once the face has lifted',
    symbol: 'T_s',
    quantity: 'force',
    meaning: 'From pull and rocking of the standoff about its face.',
    value: (r) => r.limit('screw')!.applied,
    group: 'Screws',
  },
  {
    ...closing,
    meaning: 'With less, a rim of the face lifts and the end is no longer held as assumed.',
    group: 'Screws',
  },
  { ...preload, group: 'Screws' },
  speedOf('speedStandoff', 'standoff', 'a standoff yields', 'The wall at foot or head reaches its yield strength.'),
  speedOf('speedScrew', 'screw', 'a screw yields', 'Tension reaches the proof load of its class.'),
  speedOf(
    'speedBottom',
    'bottom plate',
    'the bottom plate cracks',
    'Bending stress round a foot reaches the plate’s strength.',
  ),
  speedOf('speedTop', 'top plate', 'the top plate cracks', 'Bending stress round a head reaches the plate’s strength.'),
  {
    key: 'speedTouch',
    label: 'the electronics are touched',
    quantity: 'speed',
    meaning: 'Movement, folding included, uses up the gap.',
    value: (r) => r.touches,
    verdict: (r, { speed }) => verdictOfSpeed(r.touches, speed, 'the top plate reaches them'),
    group: 'Speed at which',
  },
  standoffMass,
];
