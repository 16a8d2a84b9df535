import { getDesignRevision } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readRevision } from './revision-records.ts';

export const answerGetDesignRevision = handle(getDesignRevision, ({ params, services }) =>
  readRevision(services.database, params.id, params.number),
);
