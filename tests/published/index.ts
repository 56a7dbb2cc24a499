/** Every check against something outside the project. One file a topic of the package. */
import type { MissingCheck, PublishedCase } from './row.ts';

const modules = import.meta.glob<{ cases?: readonly PublishedCase[]; missing?: readonly MissingCheck[] }>(
  ['./*.ts', '!./index.ts', '!./row.ts', '!./*.test.ts'],
  { eager: true },
);

export const cases: readonly PublishedCase[] = Object.values(modules).flatMap((module) => module.cases ?? []);
export const missing: readonly MissingCheck[] = Object.values(modules).flatMap((module) => module.missing ?? []);
export type { EvidenceKind, MissingCheck, PublishedCase } from './row.ts';
