export * from './format.ts';
export * from './kinds.ts';
export * from './names.ts';
export * from './parse.ts';
export * from './units.ts';
