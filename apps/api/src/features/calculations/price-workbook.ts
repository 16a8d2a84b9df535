import { priceWorkbook } from '@scantling/contracts';
import { priceWorkbook as layOut } from '@scantling/workbooks';
import { handle } from '../../handle.ts';
import { workbookAnswer } from '../../workbook-answer.ts';
import { workOutPrice } from './work-out-price.ts';

export const answerPriceWorkbook = handle(priceWorkbook, async ({ body, services }) => {
  const date = services.clock().toISOString().slice(0, 10);
  return workbookAnswer('price', layOut(workOutPrice(body), { currency: body.currency, date }));
});
