import { getMaterial } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findMaterial } from './material-records.ts';

export const answerGetMaterial = handle(getMaterial, ({ params, services }) =>
  findMaterial(services.database, params.id),
);
