const MINUTES = [1, 5, 15, 30, 60, 120, 240, 480] as const;
const HALF_A_DAY = 720;
// With the delays above this gives up after five days and a half: RFC 5321, 4.5.4.1, asks for four to five at least.
const MOST_ATTEMPTS = 18;

/** Seconds until the next attempt after this many, each wait longer than the one before; undefined: no more. */
export function retryDelayS(attempts: number): number | undefined {
  if (attempts >= MOST_ATTEMPTS) return undefined;
  return (MINUTES[attempts - 1] ?? HALF_A_DAY) * 60;
}
