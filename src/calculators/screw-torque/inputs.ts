import type { Inputs } from '~/island/declaration.ts';

export const inputs = {
  thread: { label: 'Thread', help: 'ISO metric coarse, as frames are screwed together with.', group: 'Screw', choices: { M2: 'M2', 'M2.5': 'M2.5', M3: 'M3', M4: 'M4' }, default: 'M3' },
  material: {
    label: 'Screw',
    help: 'What the head or the bag says. A black screw without a mark is not sure to be 12.9.',
    group: 'Screw',
    choices: { '8.8': 'steel 8.8', '10.9': 'steel 10.9', '12.9': 'steel 12.9', 'A2-70': 'stainless A2-70', titanium: 'titanium Ti-6Al-4V', aluminium: 'aluminium 7075' },
    default: '10.9',
  },
  torque: { quantity: 'moment', label: 'Torque', symbol: 'T', help: 'What you set the driver to. M3 by feel: 0.5 to 1 N·m.', group: 'Screw', default: 0.6, min: 0.02, max: 4, step: 0.05 },
  torqueCoefficient: { quantity: 'ratio', label: 'Torque coefficient', symbol: 'K', help: 'About 0.20 dry, 0.15 oiled. Thread-locker while wet acts much like oil.', group: 'Screw', default: 0.2, min: 0.1, max: 0.3, step: 0.01 },
  engagement: { quantity: 'length', label: 'Thread engaged', symbol: 'L_e', help: 'Length of screw inside the standoff or nut: screw length less plate and washer.', group: 'Tapped part', default: 0.006, min: 0.001, max: 0.02, step: 0.0005 },
  tappedShearStrength: { quantity: 'stress', label: 'Shear strength of the tapped metal', symbol: '\\tau', help: 'Aluminium of unknown alloy about 200 MPa, 7075-T6 typically 331 MPa, mild steel nut about 300 MPa.', group: 'Tapped part', default: 200e6, min: 50e6, max: 700e6, step: 5e6 },
  seat: {
    label: 'What presses on the plate',
    help: 'A countersunk head presses on a cone instead and splits a plate sooner; it is not covered here.',
    group: 'Plate',
    choices: { 'cap-head': 'cap head', 'button-head': 'button head', washer: 'washer under the head', 'press-nut': 'flange of a press nut' },
    default: 'button-head',
  },
  hole: { label: 'Hole in the plate', help: 'Series of ISO 273. Cut frames are often tighter than the fine series.', group: 'Plate', choices: { fine: 'fine', medium: 'medium', coarse: 'coarse' }, default: 'fine' },
  plateStrength: { quantity: 'stress', label: 'Pressure that the plate takes', symbol: 'p_\\mathrm{max}', help: 'Through its thickness, under a head with edges. 150 MPa is a cautious number of common practice for carbon plate.', group: 'Plate', default: 150e6, min: 20e6, max: 600e6, step: 5e6 },
} as const satisfies Inputs;
