import type { Source } from './source.ts';

export const mass = {} as const satisfies Record<string, Source>;
