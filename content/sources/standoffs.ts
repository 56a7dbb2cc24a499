import type { Source } from './source.ts';

export const standoffs = {} as const satisfies Record<string, Source>;
