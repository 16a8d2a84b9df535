import type { ToolRegisterAnswer } from '@scantling/contracts';
import type { ToolRegister } from '@scantling/costing';
import type { FigureTableBuilder } from '@scantling/figures';

/** Puts the register's figures into the table and answers their ids. */
export function toWorkedRegister(register: ToolRegister, table: FigureTableBuilder): ToolRegisterAnswer {
  const { totals } = register;
  return {
    year: register.year,
    rows: register.rows.map((row) => ({
      code: row.toolId,
      name: row.toolName,
      acquisition: row.acquisition,
      method: row.method,
      opening: table.add(`${row.toolId}/opening`, row.opening),
      addition: table.add(`${row.toolId}/addition`, row.addition),
      depreciation: table.add(`${row.toolId}/depreciation`, row.depreciation),
      disposed: table.add(`${row.toolId}/disposed`, row.disposed),
      closing: table.add(`${row.toolId}/closing`, row.closing),
      gain: row.gain === null ? null : table.add(`${row.toolId}/gain`, row.gain),
    })),
    totals: {
      opening: table.add('total/opening', totals.opening),
      addition: table.add('total/addition', totals.addition),
      depreciation: table.add('total/depreciation', totals.depreciation),
      disposed: table.add('total/disposed', totals.disposed),
      closing: table.add('total/closing', totals.closing),
      gain: table.add('total/gain', totals.gain),
    },
    leftOut: [...register.leftOut],
    note: register.note,
    figures: table.table(),
  };
}
