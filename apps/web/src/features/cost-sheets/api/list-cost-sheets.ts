import { listCostSheets } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

export const costSheetsQuery = queryOptions({
  queryKey: ['cost-sheets', 'list'],
  queryFn: ({ signal }) => everyItem(listCostSheets, {}, signal),
});
