import { editSupplier } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeSupplier } from './supplier-records.ts';

export const answerEditSupplier = handle(editSupplier, ({ params, body, expectedVersion, services }) =>
  changeSupplier(services.database, { id: params.id, version: expectedVersion() }, body),
);
