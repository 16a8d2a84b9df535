import { getPastPiece } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { readPastPiece } from './past-piece.ts';

export const answerGetPastPiece = handle(getPastPiece, ({ params, services }) =>
  readPastPiece(services.database, params.id, services.clock().toISOString().slice(0, 10)),
);
