import { downloadToolRegister, REGISTER_MEDIA_TYPES, toWorkedSchedule } from '@scantling/contracts';
import { REGISTER_AMOUNTS, type ToolRegister } from '@scantling/costing';
import { roundHalfAway } from '@scantling/decimals';
import { type Figure, FigureTableBuilder } from '@scantling/figures';
import { type Currency, minorUnits } from '@scantling/money';
import { type WrittenCell, writeCsv } from '@scantling/renderers';
import { toolRegisterWorkbook } from '@scantling/workbooks';
import { FileAnswer, handle } from '../../handle.ts';
import { workbookAbout, workbookAnswer } from '../../workbook-answer.ts';
import { readRegister } from './read-register.ts';
import { toWorkedRegister } from './worked-register.ts';

const FIRST_HEADERS = ['tool', 'name', 'acquisition', 'method'];
const AMOUNT_HEADERS = ['opening', 'addition', 'depreciation', 'disposed', 'closing', 'gain on disposal'];

export const answerDownloadToolRegister = handle(downloadToolRegister, async ({ query, services }) => {
  const { register, currency } = await readRegister(services.database, query.year);
  const name = `tool-register-${query.year}`;
  if (query.format === 'csv')
    return new FileAnswer(
      `${name}.csv`,
      REGISTER_MEDIA_TYPES.csv,
      Buffer.from(writeCsv(toRows(register, currency)), 'utf8'),
    );
  const table = new FigureTableBuilder({ withDerivations: true });
  const schedules = register.rows.map(({ toolId, toolName, schedule }) => ({
    name: toolName,
    schedule: toWorkedSchedule(schedule, table, `${toolId}/schedule/`),
  }));
  const worked = { register: toWorkedRegister(register, table), schedules };
  return workbookAnswer(name, toolRegisterWorkbook(worked, await workbookAbout(services)));
});

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
