import { getEnquiryResults } from '@scantling/contracts';
import { type Figure, FigureTableBuilder } from '@scantling/figures';
import { type EnquiryResult, enquiryResults } from '@scantling/quoting';
import { handle } from '../../handle.ts';
import { countedEnquiries } from './enquiry-records.ts';

export const answerGetEnquiryResults = handle(getEnquiryResults, async ({ query, services }) => {
  const { sources, all } = enquiryResults(await countedEnquiries(services.database, query.from));
  const table = new FigureTableBuilder({ withDerivations: query.working });
  return {
    sources: sources.map(({ source, result }) => ({ source, ...toResult(source, result, table) })),
    all: toResult('all', all, table),
    figures: table.table(),
  };
});

function toResult(at: string, result: EnquiryResult, table: FigureTableBuilder) {
  const add = (name: string, figure: Figure) => table.add(`${at}/${name}`, figure);
  const maybe = (name: string, figure: Figure | null) => (figure === null ? null : add(name, figure));
  return {
    received: add('received', result.received),
    undecided: add('undecided', result.undecided),
    won: add('won', result.won),
    lost: add('lost', result.lost),
    winRate: maybe('win-rate', result.winRate),
    hoursPerWon: maybe('hours-per-won', result.hoursPerWon),
    hoursPerLost: maybe('hours-per-lost', result.hoursPerLost),
  };
}
