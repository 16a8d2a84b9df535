import { getToolRegister } from '@scantling/contracts';
import { FigureTableBuilder } from '@scantling/figures';
import { handle } from '../../handle.ts';
import { readRegister } from './read-register.ts';
import { toWorkedRegister } from './worked-register.ts';

export const answerGetToolRegister = handle(getToolRegister, async ({ query, services }) => {
  const { register } = await readRegister(services.database, query.year);
  return toWorkedRegister(register, new FigureTableBuilder({ withDerivations: query.working }));
});
