import { downloadQuoteLine } from '@scantling/contracts';
import { addressOf } from '../../../lib/api-client.ts';

/** Where the cost sheet behind a line of a quote is read as a spreadsheet that calculates. */
export function lineWorkbookAddress(revisionId: string, lineId: string): string {
  return addressOf(downloadQuoteLine, { params: { id: revisionId, lineId } });
}
