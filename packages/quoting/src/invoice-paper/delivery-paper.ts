import { decimal } from '@scantling/decimals';
import type { DeliveryDocument } from '../invoice/index.ts';
import { type Paper, paperLines } from '../paper/index.ts';
import { quantityText } from '../quote/line-unit.ts';
import { billingPaper, billingWriters, notes } from './billing-paper.ts';

/** The paper that goes with the pieces: what and how many, no prices, and where to sign. */
export function deliveryPaper(document: DeliveryDocument): Paper {
  const { deliveredOn, quoteNumber, orderNumber, note, lines } = document;
  const writers = billingWriters(document);
  const stillToCome = (outstanding: string, unit: string) =>
    decimal(outstanding).gt(0) ? [`Still to come: ${quantityText(outstanding, unit)}`] : [];
  return {
    ...billingPaper(document, {
      kind: 'delivery-note',
      heading: 'Delivery note',
      date: deliveredOn,
      facts: [
        ['Delivered on', writers.date(deliveredOn)],
        ['Our quote', quoteNumber],
        ['Your order', orderNumber],
      ],
    }),
    intro: notes(note),
    lines: paperLines(
      [
        {
          lines: lines.map((line) => ({
            description: line.description,
            details: stillToCome(line.outstanding, line.unit),
            quantity: quantityText(line.quantity, line.unit),
          })),
        },
      ],
      writers,
    ),
    acceptance: {
      heading: 'Received',
      text: 'I have received what is listed above, complete and without visible damage.',
      link: null,
      blanks: ['Place and date', 'Name in capitals', 'Signature'],
      facts: [],
    },
  };
}
