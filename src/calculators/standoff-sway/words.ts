import type { LimitName } from '@frameworthy/shared/standoff';

/** What happens when a limit is reached, as the subject and the verb of a sentence. */
export const LIMIT_WORDS: Record<LimitName, string> = {
  standoff: 'a standoff bends for good',
  screw: 'a screw stretches for good',
  'bottom plate': 'the bottom plate cracks at a standoff',
  'top plate': 'the top plate cracks at a standoff',
  buckling: 'a standoff buckles',
};
