const WINDOW_MS = 15 * 60 * 1000;
const MOST_KEYS = 20_000;

/**
 * Counts failed attempts per key (an e-mail address, a network address) in a sliding quarter of an hour.
 * An attempt counts as failed from its start, so that many at once do not slip through; success takes it back.
 */
export class FailedAttempts {
  readonly #clock: () => Date;
  readonly #most: number;
  readonly #starts = new Map<string, number[]>();

  constructor(options: { clock: () => Date; most: number }) {
    this.#clock = options.clock;
    this.#most = options.most;
  }

  /** Counts an attempt. @returns seconds to wait, 0 where it may go on */
  begin(key: string): number {
    const now = this.#clock().getTime();
    const starts = (this.#starts.get(key) ?? []).filter((start) => now - start < WINDOW_MS);
    const oldest = starts[0];
    if (oldest !== undefined && starts.length >= this.#most)
      return Math.max(1, Math.ceil((oldest + WINDOW_MS - now) / 1000));
    this.#starts.delete(key);
    this.#starts.set(key, [...starts, now]);
    this.#forgetOldest();
    return 0;
  }

  /** Takes the newest attempt back: it did not fail. */
  succeeded(key: string): void {
    const rest = (this.#starts.get(key) ?? []).slice(0, -1);
    if (rest.length === 0) this.#starts.delete(key);
    else this.#starts.set(key, rest);
  }

  // Keys come from outside; without a bound they would fill the memory.
  #forgetOldest(): void {
    if (this.#starts.size <= MOST_KEYS) return;
    const first = this.#starts.keys().next();
    if (!first.done) this.#starts.delete(first.value);
  }
}
