import { expect, test } from 'vitest';
import fit from '~/calculators/electronics-fit/index.ts';
import { frameValue } from '@frameworthy/shared/frame';
import { SAMPLES } from '~/frame/samples.ts';
import { filledFrom } from './filled.ts';

const revision = (name: string) => SAMPLES.find((record) => record.revision === name)!;

test('A is the arrangement in use and B the other one, each with the transmitter that it has', () => {
  const filled = filledFrom(fit, revision('D'));
  expect(filled).toMatchObject({ aTransmitter: 'analogue', analogueSide: 0.022, analogueHeight: 0.007 });
  expect(filled).toMatchObject({ aPlace: 'behind', aTransmitterAt: -0.032, aFront: 0.036, aRear: -0.036 });
  expect(filled).toMatchObject({ bTransmitter: 'digital', digitalLength: 0.034, digitalWidth: 0.03 });
  expect(filled).toMatchObject({ digitalHeight: 0.014, bStackAt: 0.006, bFront: 0.036, bRear: -0.056 });
});

test('a frame with one arrangement leaves B to the reader', () => {
  const c = revision('C');
  expect(filledFrom(fit, c)).toMatchObject({ aTransmitter: 'digital', aPlace: 'on', digitalLength: 0.03 });
  expect(frameValue(c, 'electronics.other.board.x')).toBeUndefined();
  expect(filledFrom(fit, c)['bStackAt']).toBe(fit.inputs.bStackAt.default);
});
