/** Setting a paper takes longer than a statement, and others who bill the same quote wait for it. In ms. */
export const PAPER_TIME = { timeout: 60_000, maxWait: 60_000 } as const;
