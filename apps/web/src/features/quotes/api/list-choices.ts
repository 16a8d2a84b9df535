import { listClients, listCostSheets } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export const clientChoicesQuery = queryOptions({
  queryKey: ['clients', 'choices'],
  queryFn: async ({ signal }) =>
    (await everyItem(listClients, {}, signal)).map(({ id, name }) => ({ id, label: name })),
});

/** A cost sheet to choose, and what a line made from it begins with. */
export interface SheetChoice {
  readonly id: string;
  readonly label: string;
  readonly note: string;
  readonly clientId: string | null;
  readonly designName: string;
  readonly pieces: number;
}

export const sheetChoicesQuery = queryOptions({
  queryKey: ['cost-sheets', 'choices'],
  queryFn: async ({ signal }) =>
    (await everyItem(listCostSheets, {}, signal)).map(
      (sheet): SheetChoice => ({
        id: sheet.id,
        label: sheet.title,
        note: sheet.designName,
        clientId: sheet.clientId,
        designName: sheet.designName,
        pieces: sheet.quantities[0] ?? 1,
      }),
    ),
});
