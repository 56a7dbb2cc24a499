/** Table of contents. Topics are namespaces here; import one alone from `@frameworthy/shared/<topic>`. */
export * from './error.ts';
export * from './quantity/index.ts';
export * as material from './material/index.ts';
export * as section from './section/index.ts';
export * as beam from './beam/index.ts';
export * as joint from './joint/index.ts';
export * as bond from './bond/index.ts';
export * as doubler from './doubler/index.ts';
export * as standoff from './standoff/index.ts';
export * as impact from './impact/index.ts';
export * as mass from './mass/index.ts';
export * as laminate from './laminate/index.ts';
export * as layout from './layout/index.ts';
export * as rotor from './rotor/index.ts';
export * as fastener from './fastener/index.ts';
export * as fit from './fit/index.ts';
export * as outline from './outline/index.ts';
export * from './vibration/index.ts';
