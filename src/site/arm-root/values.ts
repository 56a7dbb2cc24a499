/** The *Dunnock* arm of the home page's figure: a 14 mm tube, screws 18 mm apart, 95 mm to the motor. SI. */
export const ARM = { length: 0.095, diameter: 0.014, edge: 0.009, screw: 0.003 } as const;
export const PULL = { start: 24, min: -40, max: 40, step: 1 } as const;
export const SPACING = { start: 0.018, min: 0.008, max: 0.03, step: 0.001 } as const;
