export * from './error.ts';
export * from './quantity/index.ts';
