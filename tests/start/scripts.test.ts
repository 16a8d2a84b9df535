import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const checkout = fileURLToPath(new URL('../../', import.meta.url));

/** Runs a line of JavaScript against a module of scripts/lib, as the scripts themselves do: on a bare Node. */
function runScript(module: string, line: string): { status: number | null; out: string; err: string } {
  const code = `import * as script from './scripts/lib/${module}.mjs'; ${line}`;
  const ran = spawnSync(process.execPath, ['--input-type=module', '-e', code], {
    cwd: checkout,
    encoding: 'utf8',
  });
  return { status: ran.status, out: ran.stdout.trim(), err: ran.stderr };
}

function evaluate(module: string, expression: string): unknown {
  const ran = runScript(module, `console.log(JSON.stringify(${expression}))`);
  expect(ran.err).toBe('');
  return JSON.parse(ran.out);
}

describe('the check of the Node version', () => {
  it('ends with a sentence on an older Node', () => {
    const ran = runScript('node-version', `script.requireNode('20.18.3')`);
    expect(ran.status).toBe(1);
    expect(ran.err).toContain('Scantling needs Node 20.19 or newer; this is Node 20.18.3.');
  });

  it.each(['20.19.0', '20.20.2', '22.0.0'])('lets Node %s pass', (version) => {
    expect(runScript('node-version', `script.requireNode('${version}')`).status).toBe(0);
  });
});

describe('whether packages must be installed', () => {
  const isInstalled = (wanted: object, installed: object) =>
    evaluate('install', `script.isInstalled(${JSON.stringify(wanted)}, ${JSON.stringify(installed)})`);
  const wood = { 'node_modules/wood': { version: '1.0.0', integrity: 'sha512-a' } };

  it('not where everything named is there', () => expect(isInstalled(wood, wood)).toBe(true));
  it('where one is missing', () => expect(isInstalled(wood, {})).toBe(false));
  it('where one has another version', () =>
    expect(isInstalled(wood, { 'node_modules/wood': { version: '1.0.1', integrity: 'sha512-b' } })).toBe(
      false,
    ));
  it('not for an optional one of another kind of machine', () =>
    expect(isInstalled({ 'node_modules/saw': { version: '1.0.0', optional: true } }, {})).toBe(true));
});

describe('the totals of the tests', () => {
  const addTotals = (runs: object[]) => evaluate('test-totals', `script.addTotals(${JSON.stringify(runs)})`);
  const report = (numPassedTests: number, numFailedTests: number, testResults: object[] = []) => ({
    numPassedTests,
    numFailedTests,
    testResults,
  });

  it('are summed over the runs', () => {
    const runs = [
      { report: report(3, 1, [{ status: 'failed', assertionResults: [{ status: 'failed' }] }]), exitCode: 1 },
      { report: report(4, 0), exitCode: 0 },
    ];
    expect(addTotals(runs)).toEqual({ passed: 7, failed: 1 });
  });

  it('count a file that cannot be loaded as a failure', () => {
    const unloaded = { report: report(2, 0, [{ status: 'failed', assertionResults: [] }]), exitCode: 1 };
    expect(addTotals([unloaded])).toEqual({ passed: 2, failed: 1 });
  });

  it('count a run that ended without a report, or failed beside its tests, as a failure', () => {
    expect(addTotals([{ exitCode: 1 }])).toEqual({ passed: 0, failed: 1 });
    expect(addTotals([{ report: report(2, 0), exitCode: 1 }])).toEqual({ passed: 2, failed: 1 });
  });
});
