import { editMaterial } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeMaterial } from './material-records.ts';

export const answerEditMaterial = handle(editMaterial, ({ params, body, expectedVersion, services }) =>
  changeMaterial(services.database, { id: params.id, version: expectedVersion() }, body),
);
