import type { FrameRecord } from '@frameworthy/shared/frame';
import dunnockC from '../../content/frames/dunnock-c.json';
import dunnockD from '../../content/frames/dunnock-d.json';
import dunnockFlat from '../../content/frames/dunnock-flat.json';

/** Invented frames of an invented workshop, to start from. The test holds them against the schema. */
export const SAMPLES: readonly FrameRecord[] = [dunnockD, dunnockC, dunnockFlat] as unknown as readonly FrameRecord[];

export const FIRST_SAMPLE = SAMPLES[0] as FrameRecord;

/** Whether two records say the same. */
export const isSame = (a: FrameRecord | undefined, b: FrameRecord | undefined): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

export const titleOf = ({ name, revision }: FrameRecord): string => `${name} ${revision}`.trim();
