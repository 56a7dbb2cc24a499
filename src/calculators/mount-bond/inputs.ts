import { EPOXY_PASTE } from '@frameworthy/shared/material';
import type { Values } from '~/island/declaration.ts';
import { adhesive } from '../adhesive-inputs.ts';
import { loadInputs, plateInputs } from '../mount-inputs.ts';
import { outerDiameter } from '../root-inputs.ts';

const MM = 1e-3;
const MPA = 1e6;

export const inputs = {
  outerDiameter: { ...outerDiameter, group: 'Plate on the tube' },
  ...plateInputs,
  bondLength: {
    label: 'Length of the bond',
    symbol: 'L',
    quantity: 'length',
    default: 26 * MM,
    min: 6 * MM,
    max: 60 * MM,
    step: 0.5 * MM,
    group: 'Plate on the tube',
    frameField: 'mount.plateLength',
    parameters: ['plateLength'],
    help: 'Along the tube, less any slot or hole in the glue.',
  },
  fillLimit: {
    label: 'Gap that the adhesive fills',
    symbol: 'g_{max}',
    quantity: 'length',
    default: 0.6 * MM,
    min: 0.1 * MM,
    max: 3 * MM,
    step: 0.05 * MM,
    group: 'Glue',
    frameField: 'mount.fillLimit',
    help: 'Without sagging or bubbles. Thin epoxy 0.3 mm, structural paste 0.5 to 2 mm.',
  },
  filletRadius: {
    label: 'Fillet radius',
    symbol: 'r',
    quantity: 'length',
    default: 2 * MM,
    min: 0,
    max: 3.9 * MM,
    step: 0.1 * MM,
    group: 'Glue',
    frameField: 'mount.fillet',
    help: 'Drawn along both edges with a rounded stick. 0 for glue wiped off flush.',
  },
  adhesiveStrength: { ...adhesive.adhesiveStrength, group: 'Glue' },
  tensionStrength: {
    label: 'Strength across the bond',
    symbol: '\\sigma_a',
    quantity: 'stress',
    default: EPOXY_PASTE.acrossStrength.typical,
    min: 1 * MPA,
    max: 40 * MPA,
    step: 0.5 * MPA,
    group: 'Glue',
    frameField: 'materials.adhesive.tensionStrength',
    help: 'Pull at which glue, or the tube’s outer ply, lets go. Nobody publishes it for tubes; 5 to 10 MPa is cautious.',
  },
  kept: { ...adhesive.kept, group: 'Glue' },
  ...loadInputs,
} as const;

export const GLUE_DENSITY = EPOXY_PASTE.density.typical;
export type BondValues = Values<typeof inputs>;
