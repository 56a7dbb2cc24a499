import type { Source } from './source.ts';

export const mechanics = {} as const satisfies Record<string, Source>;
