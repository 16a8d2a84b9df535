import { spawn } from 'node:child_process';
import { checkout } from './checkout.mjs';

/**
 * Runs a program in the checkout to its end, its output on this terminal.
 * @returns its exit code; 1 where a signal ended it
 */
export function run(program, args, options = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, {
      cwd: checkout,
      stdio: 'inherit',
      ...options,
      env: { ...process.env, ...options.env },
    });
    child.once('error', reject);
    child.once('close', (code) => resolve(code ?? 1));
  });
}

/** Runs a JavaScript file with this Node. */
export function runNode(args, options) {
  return run(process.execPath, args, options);
}
