import helmet from '@fastify/helmet';
import type { FastifyInstance } from 'fastify';

/**
 * Content security policy without inline scripts, and the other protective headers. Style attributes are allowed
 * because charts set sizes with them; style elements are not.
 */
export async function setSecurityHeaders(app: FastifyInstance, publicUrl: string | undefined): Promise<void> {
  const isHttps = publicUrl?.startsWith('https:') === true;
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'"],
        styleSrcAttr: ["'unsafe-inline'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        fontSrc: ["'self'"],
        connectSrc: ["'self'"],
        objectSrc: ["'none'"],
        baseUri: ["'self'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
    strictTransportSecurity: isHttps ? { maxAge: 15_552_000 } : false,
    referrerPolicy: { policy: 'same-origin' },
    // Set only under https: browsers ignore it on plain http and log an error for it.
    crossOriginOpenerPolicy: isHttps,
    originAgentCluster: isHttps,
  });
}
