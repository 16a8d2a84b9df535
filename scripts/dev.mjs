// npm run dev: the API, started anew when its source changes, and the web with hot reload in front of it.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { checkout } from './lib/checkout.mjs';
import { endWithNpm } from './lib/end-with-npm.mjs';
import { prepareSources } from './lib/prepare.mjs';

endWithNpm();
await prepareSources();

const apiPort = Number(process.env.PORT || 4600);
const webPort = Number(process.env.WEB_PORT || apiPort + 1);
const apiAddress = `http://127.0.0.1:${apiPort}`;

const api = spawn(
  process.execPath,
  [
    join('node_modules', 'tsx', 'dist', 'cli.mjs'),
    'watch',
    '--clear-screen=false',
    join('apps', 'api', 'src', 'server.ts'),
  ],
  {
    cwd: checkout,
    // In a group of its own: it is told to end once, by this script, and then has the time it needs.
    detached: true,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, PORT: String(apiPort), HOST: '127.0.0.1' },
  },
);

const { createServer } = await import('vite');
const web = await createServer({
  root: join(checkout, 'apps', 'web'),
  server: {
    host: '127.0.0.1',
    port: webPort,
    strictPort: true,
    proxy: {
      '/api': {
        target: apiAddress,
        changeOrigin: true,
        // The API answers browsers from its own address only; here it is asked through the web server's.
        configure: (proxy) => {
          proxy.on('proxyReq', (request) => {
            if (request.getHeader('origin') !== undefined) request.setHeader('origin', apiAddress);
          });
        },
      },
    },
  },
});
await web.listen();
console.log(`The web with hot reload: http://127.0.0.1:${webPort} (API at ${apiAddress})`);

let isEnding = false;
async function end() {
  if (isEnding) return;
  isEnding = true;
  if (api.exitCode === null && api.signalCode === null) api.kill('SIGTERM');
  await web.close();
}
for (const name of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(name, end);
api.once('exit', (code) => {
  process.exitCode = code ?? 0;
  end();
});
