import {
  createSupplier,
  editSupplier,
  getSupplier,
  listSuppliers,
  removeSupplier,
} from '@scantling/contracts';
import { recordCalls } from '../../../lib/record-calls.ts';

export const supplierCalls = recordCalls('suppliers', {
  list: listSuppliers,
  get: getSupplier,
  create: createSupplier,
  edit: editSupplier,
  remove: removeSupplier,
});
