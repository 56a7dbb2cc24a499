import type { Source } from './source.ts';

export const bonds = {} as const satisfies Record<string, Source>;
