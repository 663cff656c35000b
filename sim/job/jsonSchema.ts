import { toJsonSchema, type JsonSchema } from '@valibot/to-json-schema';
import { JobSchema, SCHEMA_VERSION } from './schema.ts';

/**
 * The job file's JSON Schema, draft 2020-12, made from the same schema that `parseJob` uses.
 * It leaves out what JSON Schema cannot say: ids that exist and are unique, limits in their order,
 * and the geometry of outlines.
 */
export function jobJsonSchema(): JsonSchema {
  const schema = toJsonSchema(JobSchema, { target: 'draft-2020-12', typeMode: 'input', errorMode: 'throw' });
  return {
    ...schema,
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:crosscoat:job:${SCHEMA_VERSION}`,
    title: 'Crosscoat job',
    description: `A spray-finishing job, schema version ${SCHEMA_VERSION}: the part, the gun set-ups and the coats. Units are in the keys; x right, y up.`,
  };
}
