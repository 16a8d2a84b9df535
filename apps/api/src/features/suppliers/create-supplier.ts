import { createSupplier } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addSupplier } from './supplier-records.ts';

export const answerCreateSupplier = handle(createSupplier, ({ body, services }) =>
  addSupplier(services.database, body),
);
