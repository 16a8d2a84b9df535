import { downloadToolRegister, REGISTER_MEDIA_TYPES } from '@scantling/contracts';
import { REGISTER_AMOUNTS, type ToolRegister } from '@scantling/costing';
import { roundHalfAway } from '@scantling/decimals';
import type { Figure } from '@scantling/figures';
import { type Currency, minorUnits } from '@scantling/money';
import { type WrittenCell, writeCsv, writeWorkbook } from '@scantling/renderers';
import { FileAnswer, handle } from '../../handle.ts';
import { readRegister } from './read-register.ts';

const FIRST_HEADERS = ['tool', 'name', 'acquisition', 'method'];
const AMOUNT_HEADERS = ['opening', 'addition', 'depreciation', 'disposed', 'closing', 'gain on disposal'];

export const answerDownloadToolRegister = handle(downloadToolRegister, async ({ query, services }) => {
  const { register, currency } = await readRegister(services.database, query.year);
  const name = `tool-register-${query.year}.${query.format}`;
  const rows = toRows(register, currency);
  const content =
    query.format === 'csv'
      ? Buffer.from(writeCsv(rows), 'utf8')
      : await writeWorkbook([
          { name: `Tools ${query.year}`, rows },
          {
            name: 'Notes',
            rows: [['note'], [register.note], ...register.leftOut.map((tool) => [hired(tool)])],
          },
        ]);
  return new FileAnswer(name, REGISTER_MEDIA_TYPES[query.format], content);
});

function hired(tool: string): string {
  return `Left out, hired: ${tool}`;
}

function toRows({ rows, totals }: ToolRegister, currency: Currency): WrittenCell[][] {
  const places = minorUnits(currency);
  const amount = (figure: Figure | null): WrittenCell =>
    figure === null ? '' : { number: roundHalfAway(figure.value, places).toFixed(places) };
  return [
    [...FIRST_HEADERS, ...AMOUNT_HEADERS.map((header) => `${header} (${currency})`)],
    ...rows.map((row) => [
      row.toolId,
      row.toolName,
      row.acquisition,
      row.method,
      ...REGISTER_AMOUNTS.map((name) => amount(row[name])),
      amount(row.gain),
    ]),
    ['total', '', '', '', ...REGISTER_AMOUNTS.map((name) => amount(totals[name])), amount(totals.gain)],
  ];
}
