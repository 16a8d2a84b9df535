import type { NoticeRule } from './notice.ts';

/** A pool to be recovered at the year as it went, which is not entered. */
export const noActualOverhead: NoticeRule = (_column, { input }) => {
  if (input.terms.overheadAt !== 'actual') return [];
  return [input.rates.workshopOverhead, input.rates.administrationOverhead]
    .filter((pool) => pool.actual === undefined)
    .map((pool) => ({
      kind: 'no-actual-overhead',
      weight: 'warning',
      about: pool.name,
      message: `${pool.name} is recovered as planned: how the year went is not entered`,
      mend: 'enter what was spent and the base there was, or recover it as planned',
      record: `overhead:${pool.id}`,
    }));
};
