// npm run build: apps/web -> apps/web/dist, apps/api -> apps/api/dist; only what changed since the last time.
import { cpSync, existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { checkout } from './lib/checkout.mjs';
import { hashOf, isStamped, stamp } from './lib/stamp.mjs';

const common = ['package-lock.json', 'tsconfig.json', 'packages', 'scripts/build.mjs'];

async function buildStep(name, sources, result, build) {
  const hash = hashOf([...common, ...sources]);
  if (existsSync(join(checkout, result)) && isStamped(name, hash)) return;
  console.log(`Building ${result} ...`);
  await build();
  stamp(name, hash);
}

/** Built beside it and put in its place when whole: a build that fails leaves the last good one. */
async function inItsPlace(dist, make) {
  const outDir = `${dist}.next`;
  rmSync(outDir, { recursive: true, force: true });
  await make(outDir);
  rmSync(dist, { recursive: true, force: true });
  renameSync(outDir, dist);
}

async function buildWeb() {
  const { build } = await import('vite');
  const root = join(checkout, 'apps', 'web');
  await inItsPlace(join(root, 'dist'), (outDir) => build({ root, logLevel: 'warn', build: { outDir } }));
}

/** Packages of this repository are TypeScript and go into the bundle; those from npm stay where they are. */
const packagesStayOutside = {
  name: 'packages-stay-outside',
  setup(build) {
    build.onResolve({ filter: /^[^./]/ }, ({ path, kind }) => {
      if (kind === 'entry-point' || path.startsWith('@scantling/')) return undefined;
      return { path, external: true };
    });
  },
};

async function buildApi() {
  const { build } = await import('esbuild');
  const source = join(checkout, 'apps', 'api', 'src');
  const papers = join(checkout, 'packages', 'renderers', 'src', 'papers');
  await inItsPlace(join(checkout, 'apps', 'api', 'dist'), async (outdir) => {
    await build({
      // The thread stands beside the bundle: apps/api/src/calculation-threads/calculation-threads.ts.
      entryPoints: {
        server: join(source, 'server.ts'),
        'token-command': join(source, 'token-command.ts'),
        // Started by packages/cutting-solver/src/cutting-thread.ts, which looks for it beside the bundle.
        'cutting-worker': join(checkout, 'packages', 'cutting-solver', 'src', 'cutting-worker.ts'),
        'calculation-thread': join(source, 'calculation-threads', 'calculation-thread.ts'),
      },
      outdir,
      bundle: true,
      splitting: true,
      format: 'esm',
      platform: 'node',
      target: 'node20',
      sourcemap: true,
      logLevel: 'warning',
      plugins: [packagesStayOutside],
    });
    // Read at run time, beside the bundle: packages/renderers/src/papers/typesetting-thread.ts.
    for (const part of ['paper-worker.mjs', 'template'])
      cpSync(join(papers, part), join(outdir, part), { recursive: true });
  });
}

try {
  await buildStep('api', ['apps/api', 'prisma/schema.prisma'], 'apps/api/dist/server.js', buildApi);
  await buildStep('web', ['apps/web'], 'apps/web/dist/index.html', buildWeb);
} catch (error) {
  console.error(`The build failed: ${error.message}`);
  process.exit(1);
}
