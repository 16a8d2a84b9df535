import { workOutRisk } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { figuresOfSheet, resultId } from './figures-of-sheet.ts';

/** The share of the cost that the sheet's terms add for what may come; the simulation answers that itself. */
const CONTINGENCY = 'terms/contingency';

export const answerWorkOutRisk = handle(workOutRisk, async ({ params, body, services, request }) => {
  const { quantity, quoted, ...asked } = body;
  const sheet = await figuresOfSheet(services, params.id, quantity);
  const { figures, column } = sheet;
  const isAdded = Object.hasOwn(figures, CONTINGENCY) && !Object.hasOwn(asked.uncertain, CONTINGENCY);
  const price = quoted.price ?? figures[column.price.netPrice]?.value ?? '0';
  const question = {
    ...asked,
    figures,
    results: asked.results.map((name) => resultId(sheet, name)),
    changes: { ...(isAdded ? { [CONTINGENCY]: '0' } : {}), ...asked.changes },
    quoted: { ...quoted, cost: resultId(sheet, quoted.cost), price },
  };
  return services.calculations.ask('risk', question, request);
});
