import { roundTubeSection } from '@frameworthy/shared/section';
import { stripSection } from '@frameworthy/shared/arm';
import type { Step } from '~/island/declaration.ts';
import { slotOf } from '../slot-of.ts';
import type { ArmResult } from './compute.ts';
import type { ArmValues } from './inputs.ts';
import { tubeMaterial } from './materials.ts';

const [length, force, moment, modulus, inertia, angle] = [
  slotOf('length'),
  slotOf('force'),
  slotOf('moment'),
  slotOf('modulus'),
  slotOf('secondMomentOfArea'),
  slotOf('angle'),
];
const tubeInertia = ({ outerDiameter, wall }: ArmValues): number =>
  roundTubeSection({ outerDiameter, wall }).vertical.secondMomentOfArea;
const middle = ({ rootWidth, tipWidth, thickness, edges }: ArmValues) =>
  stripSection({ width: (rootWidth + tipWidth) / 2, thickness, edges });

export const steps: readonly Step<ArmValues, ArmResult>[] = [
  {
    id: 'tube-section',
    says: 'Second moment of the tube, the same in both planes.',
    formula: 'I = \\frac{\\pi}{64}\\bigl(D^4-(D-2t)^4\\bigr)',
    numbers: 'I = \\frac{\\pi}{64}\\bigl((\\slot{d})^4-(\\slot{b})^4\\bigr) = \\slot{i}',
    slots: (values, { bore }) => ({
      d: length(values.outerDiameter),
      b: length(bore),
      i: inertia(tubeInertia(values)),
    }),
  },
  {
    id: 'strip-section',
    says: 'The strip half way out. Round edges take a little off.',
    formula: 'I_v \\approx \\frac{b h^3}{12},\\quad I_h \\approx \\frac{h b^3}{12}',
    numbers: '\\slot{b}\\times\\slot{h}:\\quad I_v = \\slot{v},\\quad I_h = \\slot{w}',
    slots: (values) => ({
      b: length((values.rootWidth + values.tipWidth) / 2),
      h: length(values.thickness),
      v: inertia(middle(values).vertical.secondMomentOfArea),
      w: inertia(middle(values).horizontal.secondMomentOfArea),
    }),
  },
  {
    id: 'tube-rise',
    says: 'Rise of the tube under full thrust, by bending and shear.',
    formula: 'w = \\frac{T L^3}{3EI} + \\frac{T L}{\\kappa A G}',
    numbers: 'w = \\frac{\\slot{t}\\cdot(\\slot{l})^3}{3\\cdot\\slot{e}\\cdot\\slot{i}} + \\dots = \\slot{w}',
    slots: (values, { tube }) => ({
      t: force(values.thrust),
      l: length(values.armLength),
      e: modulus(tubeMaterial(values).youngsModulus),
      i: inertia(tubeInertia(values)),
      w: length(tube.thrust.deflection),
    }),
  },
  {
    id: 'strip-rise',
    says: 'Rise and tilt of the strip, summed over twenty-four stretches as its width changes.',
    formula: 'w = \\int_0^L \\frac{T (L-x)^2}{E\\,I(x)}\\,dx + \\dots',
    numbers: 'w = \\slot{w},\\quad \\theta = \\slot{a}',
    slots: (_, { strip }) => ({ w: length(strip.thrust.deflection), a: angle(strip.thrust.tilt) }),
  },
  {
    id: 'torque',
    says: 'The reaction torque bends the arm sideways, the same all along.',
    formula: 'Q = \\kappa\\,T,\\quad \\psi = \\frac{Q L}{E I}',
    numbers:
      'Q = \\slot{k}\\cdot\\slot{t} = \\slot{q},\\quad \\psi_{\\mathrm{tube}} = \\slot{a},\\quad \\psi_{\\mathrm{strip}} = \\slot{b}',
    slots: (values, { tube, strip }) => ({
      k: length(values.torquePerThrust),
      t: force(values.thrust),
      q: moment(tube.torque.moment),
      a: angle(tube.torque.turn),
      b: angle(strip.torque.turn),
    }),
  },
  {
    id: 'strength',
    says: 'Force at the motor that the drilled root can bear.',
    formula: 'F = \\frac{\\sigma\\,I_{\\mathrm{net}}}{c\\,L}',
    numbers:
      'F_{\\mathrm{tube}} = \\frac{\\slot{s}\\cdot I_{\\mathrm{net}}}{c\\cdot\\slot{l}} = \\slot{f},\\quad F_{\\mathrm{strip}} = \\slot{g}',
    slots: (values, { tube, strip }) => ({
      s: slotOf('stress')(tubeMaterial(values).strength),
      l: length(values.armLength),
      f: force(tube.root.vertical),
      g: force(strip.root.vertical),
    }),
  },
  {
    id: 'mass',
    says: 'Mass of each arm from end to end.',
    formula:
      'm_{\\mathrm{tube}} = \\rho A L_{\\mathrm{all}} + m_{\\mathrm{mount}},\\quad m_{\\mathrm{strip}} = \\rho h A_{\\mathrm{plan}}',
    numbers: 'm_{\\mathrm{tube}} = \\slot{t},\\quad m_{\\mathrm{strip}} = \\slot{s}',
    slots: (_, { tube, strip }) => ({
      t: slotOf('mass')(tube.mass),
      s: slotOf('mass')(strip.mass),
    }),
  },
  {
    id: 'wires',
    says: 'Circle round three wires whose centres stand on a triangle of side d.',
    formula: 'D_3 = \\Bigl(1+\\frac{2}{\\sqrt3}\\Bigr)d',
    numbers: 'n = \\slot{n},\\quad d = \\slot{d}:\\quad D_n = \\slot{r}',
    slots: (values, { wireRoom }) => ({
      n: slotOf('count')(values.wireCount),
      d: length(values.wireDiameter),
      r: length(wireRoom),
    }),
  },
];
