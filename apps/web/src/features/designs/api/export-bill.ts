import { exportBill } from '@scantling/contracts';
import { addressOf } from '../../../lib/api-client.ts';

/** Where the bill of a design is read as a file. */
export function billFileAddress(id: string, format: 'csv' | 'xlsx'): string {
  return addressOf(exportBill, { params: { id }, query: { format } });
}
