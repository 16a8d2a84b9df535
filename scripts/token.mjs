// npm run token -- --role owner --name NAME: makes an API token and prints it alone on the last line.
import { join } from 'node:path';
import { checkout } from './lib/checkout.mjs';
import { prepareProduct } from './lib/prepare.mjs';
import { runNode } from './lib/run.mjs';

await prepareProduct();
const command = join(checkout, 'apps', 'api', 'dist', 'token-command.js');
process.exit(await runNode(['--enable-source-maps', command, ...process.argv.slice(2)]));
