import dunnockC from '../../content/frames/dunnock-c.json';
import dunnockD from '../../content/frames/dunnock-d.json';
import dunnockFlat from '../../content/frames/dunnock-flat.json';

/** The samples as they lie in their files. */
export const SAMPLE_FILES: readonly (readonly [name: string, value: unknown])[] = [
  ['dunnock-c', dunnockC],
  ['dunnock-d', dunnockD],
  ['dunnock-flat', dunnockFlat],
];
