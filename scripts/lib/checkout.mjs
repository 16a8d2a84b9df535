import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the whole project. */
export const checkout = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
