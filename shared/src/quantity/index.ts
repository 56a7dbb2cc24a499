export * from './kinds.ts';
