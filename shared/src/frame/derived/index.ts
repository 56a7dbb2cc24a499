import { ARM } from './arm.ts';
import { BODY } from './body.ts';
import type { DerivedFields } from './derived-field.ts';
import { ELECTRONICS } from './electronics.ts';
import { MOTOR } from './motor.ts';
import { STANDOFFS } from './standoffs.ts';
import { WHOLE } from './whole.ts';

export { withTypical } from './derived-field.ts';

/** Values that follow from a record, by the path under which calculators ask for them. */
export const DERIVED: DerivedFields = { ...WHOLE, ...ARM, ...MOTOR, ...BODY, ...STANDOFFS, ...ELECTRONICS };
