import type { Contact } from './material.ts';
import { materialValue, spread } from './value.ts';

/** Plates on a tube, heads on a plate. */
export const CARBON_CLAMPED: Contact = {
  name: 'Carbon clamped on carbon or metal',
  friction: materialValue(
    spread(1, 0.1, 0.15, 0.25),
    'common practice',
    'common-practice',
    'Dry. Oil, dust and a polished ply lower it, a rough one raises it.',
  ),
};
