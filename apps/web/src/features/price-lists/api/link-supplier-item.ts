import { linkSupplierItem } from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export function useLinkSupplierItem(id: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (materialId: string | null) =>
      callApi(linkSupplierItem, { params: { id }, body: { materialId } }),
    onSuccess: () => client.invalidateQueries({ queryKey: ['price-lists'] }),
  });
}
