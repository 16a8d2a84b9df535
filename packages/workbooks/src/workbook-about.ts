import type { Currency } from '@scantling/money';

/** What every workbook of the shop's rates is told beside its figures. */
export interface WorkbookAbout {
  /** Whose they are. */
  readonly workshopName: string;
  readonly currency: Currency;
  /** The day they are worked out for, YYYY-MM-DD. */
  readonly date: string;
  readonly paper: 'a4' | 'letter';
}

/** The facts on top of its front sheet. */
export function factsOf(
  { workshopName, currency, date }: WorkbookAbout,
  ...more: readonly string[]
): string[] {
  return [`${workshopName}, ${date}, amounts in ${currency}.`, ...more];
}
