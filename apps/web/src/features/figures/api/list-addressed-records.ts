import { listLabourGrades, listMaterials, listSuppliers, listTools } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { everyItem } from '../../../lib/record-calls.ts';

/** Where each record that a working can name by its code is shown, by "kind:code". */
export const recordAddressesQuery = queryOptions({
  queryKey: ['figures', 'record-addresses'],
  queryFn: async ({ signal }) => {
    const [materials, tools, grades, suppliers] = await Promise.all([
      everyItem(listMaterials, {}, signal),
      everyItem(listTools, {}, signal),
      everyItem(listLabourGrades, {}, signal),
      everyItem(listSuppliers, {}, signal),
    ]);
    return new Map<string, string>([
      ...materials.map(({ code, id }) => [`material:${code}`, `/materials/${id}`] as const),
      ...tools.map(({ code, id }) => [`tool:${code}`, `/tools/${id}`] as const),
      ...grades.map(({ code, id }) => [`labour-grade:${code}`, `/labour-grades/${id}`] as const),
      ...suppliers.map(({ code, id }) => [`supplier:${code}`, `/suppliers/${id}`] as const),
    ]);
  },
});
