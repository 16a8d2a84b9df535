import { type DecimalLike, sumOf } from '@scantling/decimals';
import { type Figure, input, per, share, sum } from '@scantling/figures';
import { ENQUIRY_SOURCES, type EnquirySource } from './enquiry.ts';

/** One enquiry, as far as it counts. */
export interface CountedEnquiry {
  readonly source: EnquirySource;
  readonly outcome: 'won' | 'lost' | 'undecided';
  /** All hours entered on it. */
  readonly hours: DecimalLike;
}

/** What came of some enquiries. */
export interface EnquiryResult {
  readonly received: Figure<'ratio'>;
  readonly undecided: Figure<'ratio'>;
  readonly won: Figure<'ratio'>;
  readonly lost: Figure<'ratio'>;
  /** won / (won + lost); null while none is decided. */
  readonly winRate: Figure<'ratio'> | null;
  readonly hoursPerWon: Figure<'h/each'> | null;
  readonly hoursPerLost: Figure<'h/each'> | null;
}

type Outcome = CountedEnquiry['outcome'];

/** Counts, win rate and hours an enquiry takes, for each source that has any, and for all together. */
export function enquiryResults(enquiries: readonly CountedEnquiry[]): {
  readonly sources: readonly { readonly source: EnquirySource; readonly result: EnquiryResult }[];
  readonly all: EnquiryResult;
} {
  const sources = ENQUIRY_SOURCES.flatMap((source) => {
    const own = enquiries.filter((enquiry) => enquiry.source === source);
    return own.length === 0 ? [] : [{ source, result: resultOf(source, own) }];
  });
  return { sources, all: resultOf('all', enquiries) };
}

function resultOf(of: EnquirySource | 'all', enquiries: readonly CountedEnquiry[]): EnquiryResult {
  const where = of === 'all' ? '' : `, ${of}`;
  const among = (outcome: Outcome) => enquiries.filter((enquiry) => enquiry.outcome === outcome);
  const key = (what: string) => `enquiries/${of}/${what}`;
  const count = (outcome: Outcome) =>
    input({
      key: key(outcome),
      label: `enquiries ${outcome}${where}`,
      unit: 'ratio',
      value: among(outcome).length,
      source: { kind: 'entered', text: 'counted from the enquiries on record', record: 'enquiries:all' },
    });
  const hoursPer = (outcome: 'won' | 'lost') => {
    const own = among(outcome);
    if (own.length === 0) return null;
    const hours = input({
      key: key(`hours-${outcome}`),
      label: `hours on enquiries ${outcome}${where}`,
      unit: 'h',
      value: sumOf(own.map((enquiry) => enquiry.hours)),
      source: { kind: 'measured-time', text: 'hours entered on these enquiries', record: 'enquiries:all' },
    });
    const number = input({
      key: key(`number-${outcome}`),
      label: `number of enquiries ${outcome}${where}`,
      unit: 'each',
      value: own.length,
      source: { kind: 'entered', text: 'counted from the enquiries on record', record: 'enquiries:all' },
    });
    return per(`hours for an enquiry ${outcome}${where}`, hours, number);
  };
  const [won, lost, undecided] = [count('won'), count('lost'), count('undecided')];
  const decided = sum(`enquiries decided${where}`, 'ratio', [won, lost]);
  return {
    received: sum(`enquiries received${where}`, 'ratio', [won, lost, undecided]),
    undecided,
    won,
    lost,
    winRate: decided.value.isZero() ? null : share(`win rate${where}`, won, decided),
    hoursPerWon: hoursPer('won'),
    hoursPerLost: hoursPer('lost'),
  };
}
