import { arms } from './arms.ts';
import { bonds } from './bonds.ts';
import { drawings } from './drawings.ts';
import { fasteners } from './fasteners.ts';
import { fit } from './fit.ts';
import { impact } from './impact.ts';
import { joints } from './joints.ts';
import { laminates } from './laminates.ts';
import { mass } from './mass.ts';
import { mechanics } from './mechanics.ts';
import { mount } from './mount.ts';
import { notches } from './notches.ts';
import { plates } from './plates.ts';
import { rotor } from './rotor.ts';
import { standoffs } from './standoffs.ts';
import { trade } from './trade.ts';
import { vibration } from './vibration.ts';
import type { Source } from './source.ts';

/** The bibliography. A key is author-year-word; a wrong key is a compile error. */
export const sources = {
  ...mechanics,
  ...notches,
  ...joints,
  ...bonds,
  ...standoffs,
  ...plates,
  ...mass,
  ...rotor,
  ...fasteners,
  ...fit,
  ...impact,
  ...trade,
  ...laminates,
  ...vibration,
  ...mount,
  ...arms,
  ...drawings,
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
export type { Source };
