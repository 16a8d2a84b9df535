import type { supplierItemSchema } from '@scantling/contracts';
import type { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';

export const WITH_MATERIAL = {
  material: { select: { id: true, code: true, name: true } },
} as const satisfies Prisma.SupplierItemInclude;

type Row = Prisma.SupplierItemGetPayload<{ include: typeof WITH_MATERIAL }>;

export function toSupplierItem({
  id,
  supplierId,
  code,
  description,
  material,
}: Row): z.output<typeof supplierItemSchema> {
  return { id, supplierId, code, description, material };
}
