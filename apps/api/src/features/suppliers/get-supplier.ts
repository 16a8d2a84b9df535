import { getSupplier } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findSupplier } from './supplier-records.ts';

export const answerGetSupplier = handle(getSupplier, ({ params, services }) =>
  findSupplier(services.database, params.id),
);
