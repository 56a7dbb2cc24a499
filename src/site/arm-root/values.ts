/** The *Dunnock* arm of the home page's figure: a 14 mm tube, 70 mm from the outer screw to the motor. SI. */
export const ARM = { length: 0.07, diameter: 0.014, edge: 0.01, screw: 0.003 } as const;
export const PULL = { start: 24, min: -40, max: 40, step: 1 } as const;
/** From the root that split, revision C's, to all that fits where four arms meet. */
export const SPACING = { start: 0.012, min: 0.008, max: 0.025, step: 0.001 } as const;
