import type { WorkedCostSheet } from '@scantling/contracts';
import { type Decimal, decimal } from '@scantling/decimals';
import { useQuery } from '@tanstack/react-query';
import { useLocale } from 'react-aria-components';
import { formatMoney } from '../../../lib/format.ts';
import { triedCostSheetQuery } from '../api/try-cost-sheet.ts';
import { piecesWords } from './class-rows.ts';
import { asDrawn, type DesignChoice, isSameChoice } from './design-choice.ts';
import './cost-sheet.css';

interface DrawnDifferenceProps {
  readonly sheetId: string;
  readonly choice: DesignChoice;
  readonly worked: WorkedCostSheet;
}

type Column = WorkedCostSheet['columns'][number];

/** What the choice changes against the design as drawn: cost and price of a piece, at each number of pieces. */
export function DrawnDifference({ sheetId, choice, worked }: DrawnDifferenceProps) {
  const { locale } = useLocale();
  const isChosen = !isSameChoice(choice, asDrawn(choice));
  const drawn = useQuery({ ...triedCostSheetQuery(sheetId, asDrawn(choice)), enabled: isChosen }).data;
  if (!isChosen || drawn === undefined) return null;
  const away = (column: Column, key: 'cost' | 'price'): Decimal | null => {
    const before = drawn.columns.find(({ quantity }) => quantity === column.quantity);
    const [is, was] = [worked.figures[column.perPiece[key]], before && drawn.figures[before.perPiece[key]]];
    return is && was ? decimal(is.value).minus(was.value) : null;
  };
  const words = (amount: Decimal): string =>
    `${amount.isNegative() ? '−' : '+'}${formatMoney(amount.abs(), worked.currency, { locale })}`;
  return (
    <ul className="drawn-difference" aria-label="Against as drawn">
      {worked.columns.map((column) => {
        const [cost, price] = [away(column, 'cost'), away(column, 'price')];
        if (cost === null || price === null) return null;
        return (
          <li key={column.quantity}>
            {column.quantity === 1 ? 'One piece' : `A piece of ${piecesWords(column.quantity)}`}, against as
            drawn: cost {words(cost)}, price {words(price)}
          </li>
        );
      })}
    </ul>
  );
}
