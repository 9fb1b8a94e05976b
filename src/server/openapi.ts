/** The API's own description, OpenAPI 3.1, made from the routes' schemas and served at `/api/openapi.json`. */
import swagger from '@fastify/swagger';
import type { FastifyInstance } from 'fastify';
import { jsonSchemaTransform, jsonSchemaTransformObject } from 'fastify-type-provider-zod';

export async function describeApi(app: FastifyInstance, version: string) {
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Umberpan',
        version,
        description:
          'Quantities are SI-based, with the unit in the field name. Times are RFC 3339 in UTC. Whatever is refused comes as a problem document (RFC 9457).',
        license: { name: 'MIT', identifier: 'MIT' },
      },
    },
    transform: jsonSchemaTransform,
    transformObject: jsonSchemaTransformObject,
  });
  app.get('/api/openapi.json', { schema: { hide: true } }, () => withOneNameEach(app.swagger()));
}

/**
 * The generator describes each named schema twice, as input and as output. What is taken here is taken exactly as it is
 * given back, so one description serves both.
 */
function withOneNameEach(document: ReturnType<FastifyInstance['swagger']>) {
  const merged = JSON.parse(JSON.stringify(document).replaceAll(/(#\/components\/schemas\/\w+?)Input"/g, '$1"'));
  const { schemas } = merged.components;
  for (const name of Object.keys(schemas)) if (name.endsWith('Input')) delete schemas[name];
  return merged;
}
