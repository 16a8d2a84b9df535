// npm run generate: makes the database client in apps/api/src/generated/prisma from prisma/schema.prisma.
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkout } from './lib/checkout.mjs';
import { hashOf, isStamped, stamp } from './lib/stamp.mjs';

const tool = join(checkout, 'node_modules', 'prisma');
const version = JSON.parse(readFileSync(join(tool, 'package.json'), 'utf8')).version;
const hash = `${version} ${hashOf(['prisma/schema.prisma', 'prisma/prisma.config.ts'])}`;
const made = join(checkout, 'apps', 'api', 'src', 'generated', 'prisma', 'client.ts');

if (!existsSync(made) || !isStamped('generate', hash)) {
  console.log('Making the database client ...');
  try {
    execFileSync(
      process.execPath,
      [join(tool, 'build', 'index.js'), 'generate', '--config', join('prisma', 'prisma.config.ts')],
      {
        cwd: checkout,
        encoding: 'utf8',
        stdio: 'pipe',
        env: {
          ...process.env,
          // The tool looks for a program that only migrations need and would fetch it; any existing one will do here.
          PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
          PRISMA_HIDE_UPDATE_MESSAGE: '1',
          CHECKPOINT_DISABLE: '1',
        },
      },
    );
    stamp('generate', hash);
  } catch (error) {
    console.error(
      `The database client could not be made:\n${error.stdout ?? ''}${error.stderr ?? error.message}`,
    );
    process.exit(1);
  }
}
