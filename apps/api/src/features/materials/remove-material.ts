import { removeMaterial } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropMaterial } from './material-records.ts';

export const answerRemoveMaterial = handle(removeMaterial, async ({ params, expectedVersion, services }) => {
  await dropMaterial(services.database, { id: params.id, version: expectedVersion() });
  return undefined;
});
