import { decimal } from '@scantling/decimals';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { plainDecimal } from '../../../lib/percent.ts';
import { FigureValue } from '../../figures/figure-value.tsx';
import { Figures } from '../../figures/figures.tsx';
import { materialPriceQuery, type UsedPrice } from '../api/get-material-price.ts';
import { priceUnitWords } from './material-words.ts';
import '../../../components/record-editor/record-editor.css';

interface PriceTodayProps {
  readonly materialId: string;
  /** YYYY-MM-DD */
  readonly today: string;
}

/** Which price is used today for a quantity, and by which rule: what a cost sheet of today would take. */
export function PriceToday({ materialId, today }: PriceTodayProps) {
  const [typed, setTyped] = useState('1');
  const [unit, setUnit] = useState<UsedPrice['unit'] | null>(null);
  const quantity = plainDecimal(typed);
  const isNumber = /^\d{1,12}(\.\d{1,6})?$/.test(quantity) && decimal(quantity).gt(0);
  const used = useQuery({
    ...materialPriceQuery(materialId, { quantity, onDate: today, ...(unit === null ? {} : { unit }) }),
    enabled: isNumber,
  });
  const answer = used.data;
  const shown = unit ?? answer?.unit;
  return (
    <>
      <div className="list-acts">
        <TextInput
          label="For a need of"
          isNumeric
          value={typed}
          onChange={setTyped}
          error={
            isNumber ? undefined : { message: 'This is no quantity.', mend: 'Write digits, such as 12.5.' }
          }
        />
        {answer !== undefined && shown !== undefined && (
          <Select
            label="Unit"
            choices={[...new Set([...answer.units, shown])].map((id) => ({ id, label: priceUnitWords(id) }))}
            value={shown}
            onChange={(id) => setUnit(answer.units.find((one) => one === id) ?? null)}
          />
        )}
      </div>
      {isNumber && used.isPending && <Loading />}
      {isNumber && used.isError && <ErrorNotice error={used.error} retry={() => void used.refetch()} />}
      {isNumber && !used.isError && answer !== undefined && <Used answer={answer} />}
    </>
  );
}

function Used({ answer: { price, figures, onDate, currency } }: { readonly answer: UsedPrice }) {
  if (price === null)
    return (
      <p>{`No price of it in force on ${onDate} covers this need in ${currency}. Older lists stand below.`}</p>
    );
  const { list } = price;
  const listed = `${list.name} of ${list.date}`;
  return (
    <Figures table={figures}>
      <p>
        <strong>{price.supplier.name}</strong>, {price.code},{' '}
        {list.id === null ? (
          listed
        ) : (
          <Link to="/price-lists/$priceListId" params={{ priceListId: list.id }}>
            {listed}
          </Link>
        )}
        : <FigureValue id={price.unitCost} /> for <FigureValue id={price.bought} />, in all{' '}
        <FigureValue id={price.cost} look="total" />
      </p>
      <p>
        It is {price.rule}. A cost sheet of this day takes the same, tax that is not got back and exchange
        included.
      </p>
    </Figures>
  );
}
