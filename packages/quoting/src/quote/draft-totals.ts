import { entered } from '@scantling/figures';
import { QuotingInputError } from '../input-error.ts';
import { type QuoteTotals, quoteTotals, type TotalsLine } from '../quote-totals/index.ts';
import type { DraftLine, QuoteDraft } from './quote-draft.ts';

/** What a cost sheet says about the pieces of one line: its title, and the net price of them all. */
export interface SheetPrice {
  readonly costSheetId: string;
  readonly title: string;
  readonly netPrice: string;
}

function totalsLine(line: DraftLine, at: number, sheets: ReadonlyMap<string, SheetPrice>): TotalsLine {
  const { id, description: label, tax, choice } = line;
  const common = { id, label, tax, choice };
  switch (line.kind) {
    case 'cost-sheet': {
      const sheet = sheets.get(id);
      if (sheet === undefined)
        throw new QuotingInputError(
          `lines.${at}.costSheetId`,
          'names no cost sheet',
          'choose one of the cost sheets',
        );
      const pieces = String(line.pieces);
      return {
        ...common,
        quantity: pieces,
        priceBase: pieces,
        price: sheet.netPrice,
        isPriceWithoutTax: true,
        source: {
          kind: 'cost-sheet',
          text: `cost sheet "${sheet.title}", ${pieces} ${line.pieces === 1 ? 'piece' : 'pieces'}`,
          record: `cost-sheet:${sheet.costSheetId}`,
        },
      };
    }
    case 'free':
      return {
        ...common,
        quantity: line.quantity,
        price: line.price,
        source: entered('entered in the quote'),
      };
    case 'delivery':
      return { ...common, quantity: '1', price: line.price, source: entered('entered in the quote') };
  }
}

/**
 * The totals of a draft at the prices its cost sheets give.
 * @param sheets by line id
 * @throws QuotingInputError naming the field of the draft
 */
export function draftTotals(
  draft: QuoteDraft,
  sheets: ReadonlyMap<string, SheetPrice>,
  chosen: readonly string[] = [],
): QuoteTotals {
  const { currency, priceMode, taxes, discount, schedule } = draft;
  const lines = draft.lines.map((line, at) => totalsLine(line, at, sheets));
  return quoteTotals({ currency, priceMode, taxes, lines, chosen, discount, schedule });
}
