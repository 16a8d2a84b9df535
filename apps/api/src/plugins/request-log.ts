import { randomUUID } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import type { FastifyInstance, FastifyRequest, FastifyServerOptions } from 'fastify';

const REQUEST_ID = /^[\w.-]{8,64}$/;

/** Addresses go into the log without what could open a door: secrets in a query, and those in clients' links. */
export function withoutSecrets(url: string): string {
  return url
    .replace(/([?&](?:token|password|code|secret)=)[^&]*/gi, '$1[redacted]')
    .replace(/(\/offers\/)[^/?#]+/gi, '$1[redacted]');
}

type LogOptions = { level: string; stream?: { write: (line: string) => void } | undefined };

/** Structured logs (one JSON object a line), each line with the request's id; secrets are blotted out. */
export function requestLog(options: LogOptions): Pick<FastifyServerOptions, 'logger' | 'genReqId'> {
  return {
    logger: {
      level: options.level,
      ...(options.stream === undefined ? {} : { stream: options.stream }),
      redact: {
        paths: [
          '*.authorization',
          '*.cookie',
          '*.password',
          '*.token',
          '*.headers.authorization',
          '*.headers.cookie',
          '*.headers["set-cookie"]',
        ],
        censor: '[redacted]',
      },
      serializers: {
        req: (request: FastifyRequest) => ({
          method: request.method,
          url: withoutSecrets(request.url),
          remoteAddress: request.ip,
        }),
      },
    },
    // The id a proxy gave goes on; anything that could forge a log line does not.
    genReqId: (request: IncomingMessage) => {
      const given = request.headers['x-request-id'];
      return typeof given === 'string' && REQUEST_ID.test(given) ? given : randomUUID();
    },
  };
}

/** Tells callers the id their request has in the log. */
export function giveRequestIds(app: FastifyInstance): void {
  app.addHook('onRequest', async (request, reply) => {
    reply.header('x-request-id', request.id);
  });
}
