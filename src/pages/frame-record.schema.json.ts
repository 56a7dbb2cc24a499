import { toJsonSchema } from '@valibot/to-json-schema';
import { FrameSchema } from '~/frame/schema.ts';

/** The schema of a frame record, as JSON Schema, made from the one that every door uses. */
export function GET(): Response {
  const schema = toJsonSchema(FrameSchema, { typeMode: 'input', errorMode: 'ignore' });
  const named = {
    title: 'Frame record',
    description: 'One multirotor frame: SI numbers, or text with a unit.',
    ...schema,
  };
  return new Response(`${JSON.stringify(named, null, 2)}\n`, {
    headers: { 'content-type': 'application/schema+json' },
  });
}
