import { createServer } from 'node:net';

/** The port that could be listened on; nothing where another program has it or the host is not this machine's. */
function tryPort(host: string, port: number): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', (error) => {
      if ('code' in error && error.code === 'EADDRINUSE') resolve(undefined);
      else reject(error);
    });
    server.listen({ port, host, exclusive: true }, () => {
      const address = server.address();
      const free = typeof address === 'object' && address !== null ? address.port : undefined;
      server.close(() => resolve(free));
    });
  });
}

/**
 * Whether a server could listen there.
 * @throws Error where the host is no address of this machine, or the port needs rights that the user lacks
 */
export async function isPortFree(host: string, port: number): Promise<boolean> {
  return (await tryPort(host, port)) !== undefined;
}

/** A port of 127.0.0.1 that nobody listens on: the preferred one, or any. */
export async function findFreePort(preferred?: number): Promise<number> {
  const kept = preferred === undefined ? undefined : await tryPort('127.0.0.1', preferred);
  const port = kept ?? (await tryPort('127.0.0.1', 0));
  if (port === undefined) throw new Error('No free port on 127.0.0.1');
  return port;
}
