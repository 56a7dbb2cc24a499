import { toJsonSchema, type JsonSchema } from '@valibot/to-json-schema';
import { FrameSchema } from '~/frame/schema.ts';

/** Numbers in SI within their range, or text with a unit, which only the pages' own check can read. */
function quantityOf({ minimum, maximum, quantity }: Readonly<Record<string, unknown>>): JsonSchema | undefined {
  if (typeof minimum !== 'number' || typeof maximum !== 'number') return undefined;
  return {
    description: `${String(quantity)}, SI; or text with a unit`,
    anyOf: [{ type: quantity === 'count' ? 'integer' : 'number', minimum, maximum }, { type: 'string' }],
  };
}

/** The schema of a frame record, as JSON Schema, made from the one that every door uses. */
export function GET(): Response {
  const schema = toJsonSchema(FrameSchema, {
    typeMode: 'input',
    errorMode: 'ignore',
    overrideAction: ({ valibotAction }) =>
      'metadata' in valibotAction ? quantityOf(valibotAction.metadata as Readonly<Record<string, unknown>>) : undefined,
  });
  const named = {
    title: 'Frame record',
    description: 'One multirotor frame: SI numbers, or text with a unit.',
    ...schema,
  };
  return new Response(`${JSON.stringify(named, null, 2)}\n`, {
    headers: { 'content-type': 'application/schema+json' },
  });
}
