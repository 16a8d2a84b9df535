import { solveCostSheet } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { figuresOfSheet, resultId } from './figures-of-sheet.ts';

export const answerSolveCostSheet = handle(solveCostSheet, async ({ params, body, services, request }) => {
  const { quantity, result, target, ...asked } = body;
  const sheet = await figuresOfSheet(services, params.id, quantity);
  const wanted = 'figure' in target ? { figure: resultId(sheet, target.figure) } : target;
  const question = { ...asked, figures: sheet.figures, result: resultId(sheet, result), target: wanted };
  return services.calculations.ask('solve', question, request);
});
