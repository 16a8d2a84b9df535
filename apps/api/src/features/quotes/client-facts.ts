import type { Workshop } from '@scantling/contracts';
import type { DocumentFacts } from '@scantling/quoting';

const DAY_MS = 24 * 60 * 60 * 1000;

/** The day so many days later, YYYY-MM-DD. */
export function daysAfter(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

/** What the letterhead says on the day something is sent. */
export function documentWorkshop(workshop: Workshop): DocumentFacts['workshop'] {
  const { letterhead } = workshop.settings;
  const { tradingName, address, email, phone, website, taxNumber, registration, bankLines } = letterhead;
  return {
    name: tradingName === '' ? workshop.name : tradingName,
    addressLines: address.lines,
    email,
    phone,
    website,
    taxNumber,
    registration,
    bankLines,
    footer: letterhead.footer,
    logo: letterhead.logo,
    paperSize: letterhead.paperSize,
  };
}
