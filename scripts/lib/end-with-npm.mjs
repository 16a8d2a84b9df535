const intervalMs = 100;

/**
 * npm passes a signal on to the shell between it and this process, and that shell ends without passing it further.
 * Under npm, the loss of the parent is therefore taken as SIGTERM. Started otherwise, a process may outlive its parent.
 */
export function endWithNpm() {
  if (process.env.npm_lifecycle_event === undefined || process.platform === 'win32') return;
  const parent = process.ppid;
  const timer = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(timer);
    process.kill(process.pid, 'SIGTERM');
  }, intervalMs);
  timer.unref();
}
