import { listLabourGrades, listMaterials, listTools } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** Where each record that a working can name by its code is shown, by "kind:code". */
export const recordAddressesQuery = queryOptions({
  queryKey: ['cost-sheets', 'record-addresses'],
  queryFn: async ({ signal }) => {
    const [materials, tools, grades] = await Promise.all([
      everyItem(listMaterials, {}, signal),
      everyItem(listTools, {}, signal),
      everyItem(listLabourGrades, {}, signal),
    ]);
    return new Map<string, string>([
      ...materials.map(({ code, id }) => [`material:${code}`, `/materials/${id}`] as const),
      ...tools.map(({ code, id }) => [`tool:${code}`, `/tools/${id}`] as const),
      ...grades.map(({ code, id }) => [`labour-grade:${code}`, `/labour-grades/${id}`] as const),
    ]);
  },
});
