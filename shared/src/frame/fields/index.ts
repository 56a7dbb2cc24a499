import { ARM_FIELDS } from './arm.ts';
import { BODY_FIELDS } from './body.ts';
import { CRAFT_FIELDS } from './craft.ts';
import type { Field, LeafPath } from './field.ts';
import { CASE_FIELDS, MATERIAL_FIELDS } from './rest.ts';

export type { ChoiceField, Field, LeafPath, NumberField, SpreadField } from './field.ts';

/** Every single value of the record: what it is called, its kind and range, and where it is explained. */
export const FIELDS: Readonly<Record<LeafPath, Field>> = {
  ...CRAFT_FIELDS,
  ...ARM_FIELDS,
  ...BODY_FIELDS,
  ...MATERIAL_FIELDS,
  ...CASE_FIELDS,
};
