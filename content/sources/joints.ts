import type { Source } from './source.ts';

export const joints = {} as const satisfies Record<string, Source>;
