import { toJsonSchema, type JsonSchema } from '@valibot/to-json-schema';
import type { GenericSchema } from 'valibot';
import { RUBRIC_VERSION, RubricSchema } from './rubric.ts';
import { JobSchema } from './schema.ts';
import { SCHEMA_VERSION } from './schemaFacts.ts';
import { SESSION_VERSION, SessionSchema } from './session.ts';
import { WORKSHOP_VERSION, WorkshopSchema } from './workshop.ts';

const DRAFT = 'https://json-schema.org/draft/2020-12/schema';

/**
 * The job file's JSON Schema, draft 2020-12, made from the same schema that `parseJob` uses.
 * It leaves out what JSON Schema cannot say: ids that exist and are unique, limits in their order,
 * and the geometry of outlines.
 */
export function jobJsonSchema(): JsonSchema {
  return {
    ...written(JobSchema),
    $schema: DRAFT,
    $id: `urn:crosscoat:job:${SCHEMA_VERSION}`,
    title: 'Crosscoat job',
    description: `A spray-finishing job, schema version ${SCHEMA_VERSION}: the part, the gun set-ups and the coats. Units are in the keys; x right, y up.`,
  };
}

/**
 * The session file's JSON Schema, draft 2020-12, made from the same schema that `parseSession` uses,
 * with the present job's inside it. It leaves out that the coat is one of the job's, and what the
 * strokes hold.
 */
export function sessionJsonSchema(): JsonSchema {
  const schema = written(SessionSchema);
  const job = jobJsonSchema();
  return {
    ...schema,
    properties: { ...schema.properties, job: { $ref: job.$id } },
    $defs: { ...schema.$defs, job },
    $schema: DRAFT,
    $id: `urn:crosscoat:session:${SESSION_VERSION}`,
    title: 'Crosscoat practice session',
    description: `A practice session, version ${SESSION_VERSION}: who sprayed, what for, the job as it was, and the strokes as recorded. An older job in it is upgraded in reading; this schema states the present one.`,
  };
}

/**
 * The rubric file's JSON Schema, draft 2020-12, made from the same schema that `parseRubric` uses.
 * It leaves out that each measure has one row, and that the mark falls from `limit` to `none`.
 */
export function rubricJsonSchema(): JsonSchema {
  return {
    ...written(RubricSchema),
    $schema: DRAFT,
    $id: `urn:crosscoat:rubric:${RUBRIC_VERSION}`,
    title: 'Crosscoat rubric',
    description: `How practice sessions are marked, version ${RUBRIC_VERSION}: weight and limits of each measure, in mm, percent, deg or s by the measure.`,
  };
}

/**
 * The JSON Schema of a workshop's manifest, draft 2020-12, made from the same schema that `parseWorkshop` uses. It leaves out
 * that the files are there and fit their digests.
 */
export function workshopJsonSchema(): JsonSchema {
  return {
    ...written(WorkshopSchema),
    $schema: DRAFT,
    $id: `urn:crosscoat:workshop:${WORKSHOP_VERSION}`,
    title: 'Crosscoat workshop',
    description: `What is in a workshop's zip, version ${WORKSHOP_VERSION}: its jobs, its practice sessions, and the SHA-256 of each file.`,
  };
}

function written(schema: GenericSchema): JsonSchema {
  return toJsonSchema(schema, { target: 'draft-2020-12', typeMode: 'input', errorMode: 'throw' });
}
