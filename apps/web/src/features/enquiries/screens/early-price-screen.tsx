import { type WorkedEarlyPrice, workOutEarlyPrice } from '@scantling/contracts';
import { CostingInputError } from '@scantling/costing';
import type { EarlyPriceInput } from '@scantling/quoting';
import type { LengthSystem } from '@scantling/units';
import { useQueries, useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useCurrency } from '../../../lib/use-session.ts';
import { Figures } from '../../figures/figures.tsx';
import { enquiryCalls } from '../api/enquiry-calls.ts';
import { workshopUnitsQuery } from '../api/get-workshop.ts';
import { type PastPieceAnswer, pastPieceQuery } from '../api/past-pieces.ts';
import { EarlyPriceRange, EarlyPriceWorking } from '../components/early-price-answer.tsx';
import {
  type EarlyPriceDraft,
  NEW_DRAFT,
  SIDES,
  sizeTexts,
  toEarlyPriceInput,
} from '../components/early-price-draft.ts';
import { AskedFields, MoreFields } from '../components/early-price-form.tsx';
import { problemWords } from '../components/early-price-words.ts';
import { KeepEarlyPrice } from '../components/keep-early-price.tsx';
import { PastPiecesPicker } from '../components/past-pieces-picker.tsx';

type Outcome =
  | { readonly input: EarlyPriceInput; readonly worked: WorkedEarlyPrice; readonly problem: null }
  | { readonly worked: null; readonly problem: string };

/** Worked out here, as the API works it out, so that the range is there while one types. */
function workOut(draft: EarlyPriceDraft, past: readonly PastPieceAnswer[], system: LengthSystem): Outcome {
  try {
    const input = toEarlyPriceInput(draft, past, system);
    return { input, worked: workOutEarlyPrice(input, { withDerivations: true }), problem: null };
  } catch (error) {
    if (!(error instanceof CostingInputError)) throw error;
    const names = past.map(({ piece }) => piece.name);
    return { worked: null, problem: problemWords(error, names) };
  }
}

/** A range in two minutes: a past piece, a size or hours, and what that makes. */
export function EarlyPriceScreen() {
  const { enquiryId = '' } = useParams({ strict: false });
  const enquiry = useQuery(enquiryCalls.recordQuery(enquiryId));
  const system = useQuery(workshopUnitsQuery);
  const name = enquiry.data?.value.name ?? 'Enquiry';
  return (
    <>
      {(enquiry.isPending || system.isPending) && (
        <Sheet>
          <SheetHeader title="Early price" path={<Link to="/enquiries">Enquiries</Link>} />
          <Loading />
        </Sheet>
      )}
      {enquiry.isError && <ErrorNotice error={enquiry.error} retry={() => void enquiry.refetch()} />}
      {system.isError && <ErrorNotice error={system.error} retry={() => void system.refetch()} />}
      {enquiry.data && system.data && (
        <EarlyPriceSheet key={enquiryId} enquiryId={enquiryId} enquiryName={name} system={system.data} />
      )}
    </>
  );
}

interface SheetProps {
  readonly enquiryId: string;
  readonly enquiryName: string;
  readonly system: LengthSystem;
}

function EarlyPriceSheet({ enquiryId, enquiryName, system }: SheetProps) {
  const currency = useCurrency();
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [typed, setTyped] = useState<Partial<EarlyPriceDraft>>({});
  const queries = useQueries({ queries: chosen.map((id) => pastPieceQuery(id)) });
  const failed = queries.find((query) => query.isError);
  const isReading = queries.some((query) => query.isPending);
  const past = queries.flatMap(({ data }) => (data === undefined ? [] : [data]));
  const [first] = past;
  // The form starts with the size of the first past piece, until a size is typed.
  const start = first === undefined ? null : sizeTexts(first.piece, system);
  const draft: EarlyPriceDraft = { ...NEW_DRAFT, ...start, ...typed };
  const outcome = past.length === 0 || isReading ? null : workOut(draft, past, system);
  const change = (next: Partial<EarlyPriceDraft>): void => {
    const touchesSize = SIDES.some((side) => next[side] !== undefined);
    setTyped({ ...(touchesSize ? start : {}), ...typed, ...next });
  };
  return (
    <Figures table={outcome?.worked?.figures ?? {}}>
      <Sheet>
        <SheetHeader
          title="Early price"
          path={
            <Link to="/enquiries/$enquiryId" params={{ enquiryId }}>
              {enquiryName}
            </Link>
          }
          facts={[
            { label: 'Standing', value: 'before a bill of materials' },
            { label: 'Currency', value: currency },
          ]}
        />
        {outcome?.worked && <EarlyPriceRange worked={outcome.worked} />}
        {outcome?.problem && (
          <p role="status" className="early-problem">
            {outcome.problem}
          </p>
        )}
        {failed?.error && <ErrorNotice error={failed.error} retry={() => void failed.refetch()} />}
        {isReading && <Loading />}
        <div className="early-form">
          <PastPiecesPicker chosen={chosen} onChange={setChosen} />
          {chosen.length > 0 && (
            <>
              <AskedFields draft={draft} onChange={change} />
              <details className="early-more">
                <summary>Own judgement, price policy, how each class grows</summary>
                <MoreFields draft={draft} onChange={change} past={past} currency={currency} />
              </details>
            </>
          )}
        </div>
        {outcome?.worked && (
          <Section title="Keep it" note="Kept with all its figures; a correction is another one.">
            <KeepEarlyPrice enquiryId={enquiryId} input={outcome.input} worked={outcome.worked} />
          </Section>
        )}
        {outcome?.worked && <EarlyPriceWorking worked={outcome.worked} />}
      </Sheet>
    </Figures>
  );
}
