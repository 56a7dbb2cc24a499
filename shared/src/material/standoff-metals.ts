import type { Metal } from './material.ts';
import { ALUMINIUM_6061_T6, ALUMINIUM_7075_T6, TITANIUM_6AL_4V } from './metals.ts';

/** What standoffs are sold in. */
export type StandoffMetal = 'aluminium-6061' | 'aluminium-7075' | 'titanium' | 'aluminium-unnamed';

/** Yield strength [Pa] is the low end of the common alloy where the alloy is not known. */
export const STANDOFF_METALS: Readonly<Record<StandoffMetal, { metal: Metal; yieldStrength: number }>> = {
  'aluminium-6061': { metal: ALUMINIUM_6061_T6, yieldStrength: ALUMINIUM_6061_T6.yieldStrength.typical },
  'aluminium-7075': { metal: ALUMINIUM_7075_T6, yieldStrength: ALUMINIUM_7075_T6.yieldStrength.typical },
  titanium: { metal: TITANIUM_6AL_4V, yieldStrength: TITANIUM_6AL_4V.yieldStrength.typical },
  'aluminium-unnamed': { metal: ALUMINIUM_6061_T6, yieldStrength: ALUMINIUM_6061_T6.yieldStrength.low },
};
