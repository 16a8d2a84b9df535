import { workOutSensitivity } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { figuresOfSheet, resultId } from './figures-of-sheet.ts';

export const answerWorkOutSensitivity = handle(
  workOutSensitivity,
  async ({ params, body, services, request }) => {
    const { quantity, result, ...asked } = body;
    const sheet = await figuresOfSheet(services, params.id, quantity);
    const question = { ...asked, figures: sheet.figures, result: resultId(sheet, result) };
    return services.calculations.ask('sensitivity', question, request);
  },
);
