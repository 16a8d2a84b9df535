import { editWorkshop } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeWorkshop } from './change-workshop.ts';

export const answerEditWorkshop = handle(editWorkshop, ({ body, expectedVersion, services }) =>
  services.database.$transaction((transaction) => changeWorkshop(transaction, expectedVersion(), body)),
);
