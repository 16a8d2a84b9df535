/**
 * Adds up what Vitest's JSON reporter wrote, one report per run. A file that could not even be loaded and a run that
 * failed beside its tests (an unhandled error, a broken set-up) count as one failure each.
 */
export function addTotals(runs) {
  let passed = 0;
  let failed = 0;
  for (const { report, exitCode } of runs) {
    let failedHere = report?.numFailedTests ?? 0;
    for (const file of report?.testResults ?? []) {
      const hasFailedTest = file.assertionResults.some((test) => test.status === 'failed');
      if (file.status === 'failed' && !hasFailedTest) failedHere += 1;
    }
    if (exitCode !== 0 && failedHere === 0) failedHere = 1;
    passed += report?.numPassedTests ?? 0;
    failed += failedHere;
  }
  return { passed, failed };
}
