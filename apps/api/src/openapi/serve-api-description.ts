import type { FastifyInstance } from 'fastify';
import { FIGURES_SCHEMA_PATH, figuresSchema } from './figures-schema.ts';
import { openApiDocument } from './openapi-document.ts';
import { READING_PAGE_STYLE, readingPage } from './reading-page.ts';

/** Serves the API's description for programs and for people; both are made once, when first asked for. */
export function serveApiDescription(app: FastifyInstance): void {
  let document: string | undefined;
  let page: string | undefined;
  let schema: string | undefined;
  app.get('/api/openapi.json', async (_, reply) => {
    document ??= JSON.stringify(openApiDocument());
    return reply.type('application/json; charset=utf-8').serializer(String).send(document);
  });
  app.get(FIGURES_SCHEMA_PATH, async (_, reply) => {
    schema ??= JSON.stringify(figuresSchema());
    return reply.type('application/schema+json; charset=utf-8').serializer(String).send(schema);
  });
  app.get('/api/docs', async (_, reply) => {
    page ??= readingPage();
    return reply.type('text/html; charset=utf-8').send(page);
  });
  app.get('/api/docs.css', async (_, reply) =>
    reply.type('text/css; charset=utf-8').send(READING_PAGE_STYLE),
  );
}
