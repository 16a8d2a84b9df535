import { getWorkshop } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';

export const answerGetWorkshop = handle(getWorkshop, ({ services }) => readWorkshop(services.database));
