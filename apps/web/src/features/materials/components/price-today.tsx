import { offersInForce } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import { toTable } from '@scantling/figures';
import { useMemo, useState } from 'react';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { plainDecimal } from '../../../lib/percent.ts';
import { FigureValue } from '../../figures/figure-value.tsx';
import { Figures } from '../../figures/figures.tsx';
import type { MaterialPrice } from '../api/list-material-prices.ts';
import { priceUnitWords } from './material-words.ts';
import { costOfNeed, offersOf, usedOffer } from './price-choice.ts';
import '../../../components/record-editor/record-editor.css';

interface PriceTodayProps {
  readonly prices: readonly MaterialPrice[];
  readonly preferredSupplierId: string | null;
  /** YYYY-MM-DD */
  readonly today: string;
}

/** Which price is used today for a quantity, and by which rule. */
export function PriceToday({ prices, preferredSupplierId, today }: PriceTodayProps) {
  const offers = useMemo(() => offersOf(prices), [prices]);
  const kinds = useMemo(() => {
    const found = offersInForce(offers, today).map(({ unit, currency }) => ({ unit, currency }));
    return [...new Map(found.map((kind) => [`${kind.unit} ${kind.currency}`, kind])).entries()];
  }, [offers, today]);
  const [chosen, setChosen] = useState<string | null>(null);
  const [typed, setTyped] = useState('1');
  const entry = kinds.find(([key]) => key === chosen) ?? kinds[0];
  if (!entry) return <p>No price of it is in force today. Older lists stand below.</p>;
  const [key, kind] = entry;
  const quantity = plainDecimal(typed);
  const isNumber = /^\d{1,12}(\.\d{1,6})?$/.test(quantity) && decimal(quantity).gt(0);
  const need = { ...kind, quantity };
  const used = isNumber ? usedOffer(offers, today, preferredSupplierId, need) : null;
  const made = used && toTable({ cost: costOfNeed(used.offer, need) }, { withDerivations: true });
  return (
    <>
      <div className="list-acts">
        <TextInput
          label="For a need of"
          isNumeric
          value={typed}
          onChange={setTyped}
          suffix={priceUnitWords(kind.unit)}
          error={
            isNumber ? undefined : { message: 'This is no quantity.', mend: 'Write digits, such as 12.5.' }
          }
        />
        {kinds.length > 1 && (
          <Select
            label="Asked for in"
            choices={kinds.map(([id, one]) => ({
              id,
              label: `${one.currency} per ${priceUnitWords(one.unit)}`,
            }))}
            value={key}
            onChange={setChosen}
          />
        )}
      </div>
      {isNumber && used === null && (
        <p>The preferred supplier has a price in force, but in another unit or currency.</p>
      )}
      {used && made && (
        <Figures table={made.figures}>
          <p>
            <strong>{used.offer.supplierName}</strong>, {used.offer.code}, {used.offer.listName} of{' '}
            {used.offer.listDate}: <FigureValue id={made.ids.cost} look="total" />
          </p>
          <p>
            It is {used.rule}. As listed; a cost sheet adds tax that is not got back and changes the currency.
          </p>
        </Figures>
      )}
    </>
  );
}
