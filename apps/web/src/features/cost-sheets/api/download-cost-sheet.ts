import { downloadCostSheet } from '@scantling/contracts';
import { addressOf } from '../../../lib/api-client.ts';

/** Where a cost sheet is read as a spreadsheet that calculates. */
export function workbookAddress(id: string): string {
  return addressOf(downloadCostSheet, { params: { id } });
}
