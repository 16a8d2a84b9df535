// npm start: whatever a fresh clone needs, then the product itself.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { checkout } from './lib/checkout.mjs';
import { endWithNpm } from './lib/end-with-npm.mjs';
import { prepareProduct } from './lib/prepare.mjs';

endWithNpm();
await prepareProduct();
process.setSourceMapsEnabled(true);
// In this same process: a signal sent to it reaches the server without being passed on.
await import(pathToFileURL(join(checkout, 'apps', 'api', 'dist', 'server.js')).href);
