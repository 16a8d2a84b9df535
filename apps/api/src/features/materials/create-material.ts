import { createMaterial } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addMaterial } from './material-records.ts';

export const answerCreateMaterial = handle(createMaterial, ({ body, services }) =>
  addMaterial(services.database, body),
);
