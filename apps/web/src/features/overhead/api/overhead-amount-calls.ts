import {
  createOverheadAmount,
  editOverheadAmount,
  getOverheadAmount,
  listOverheadAmounts,
  removeOverheadAmount,
} from '@scantling/contracts';
import { recordCalls } from '../../../lib/record-calls.ts';

export const overheadAmountCalls = recordCalls('overhead', {
  list: listOverheadAmounts,
  get: getOverheadAmount,
  create: createOverheadAmount,
  edit: editOverheadAmount,
  remove: removeOverheadAmount,
});
