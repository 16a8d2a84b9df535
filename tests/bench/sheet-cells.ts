import { requireSized } from '@scantling/costing';
import { workshopSheet } from './workshop-sheet.ts';

/** Values that many lines of the sheet share. */
export const SHARED = {
  lengthAllowance: 25,
  widthAllowance: 6,
  yield: 0.7,
  labour: 32,
  overhead: 7.6,
  contingency: 0.05,
  freight: 50,
  margin: 0.3,
};
type SharedValues = Readonly<Record<keyof typeof SHARED, number | string>>;
const WRITTEN_OUT: SharedValues = SHARED;

/**
 * The same sheet as cells: one row a part (sizes, rough face, need, price, cost), one row an operation (hours, rate,
 * cost), the totals and the price below.
 * @param shared what stands in the formulas for the values that many lines share: numbers, or the cells they are in
 */
export function sheetCells(lines: number, shared: SharedValues = WRITTEN_OUT): (string | number)[][] {
  const drawn = { bill: workshopSheet(lines).bill, parameters: [], variants: [] };
  const { bill } = requireSized(drawn, {}, 'mm');
  const rows: (string | number)[][] = [];
  bill.parts.forEach((part, index) => {
    const row = index + 1;
    rows.push([
      part.quantity,
      Number(part.length),
      Number(part.width),
      `=B${row}+${shared.lengthAllowance}`,
      `=C${row}+${shared.widthAllowance}`,
      `=D${row}*E${row}/1000000`,
      `=F${row}*A${row}`,
      `=G${row}*10.7639104167*MAX(1,25.4/25.4)`,
      `=H${row}/${shared.yield}`,
      `=IF(I${row}>=200,5.4,6)`,
      `=I${row}*J${row}`,
    ]);
  });
  bill.operations.forEach((operation) => {
    const row = rows.length + 1;
    rows.push([
      Number(operation.setupHours),
      Number(operation.runHours),
      `=A${row}+B${row}*1`,
      `=${shared.labour}`,
      '',
      '',
      '',
      '',
      '',
      '',
      `=C${row}*D${row}`,
    ]);
  });
  const last = rows.length;
  const parts = bill.parts.length;
  rows.push([
    `=SUM(K1:K${last})`,
    `=SUM(C${parts + 1}:C${last})*${shared.overhead}`,
    `=A${last + 1}+B${last + 1}`,
    `=C${last + 1}*(1+${shared.contingency})+${shared.freight}`,
    `=ROUND(D${last + 1}/(1-${shared.margin}),2)`,
  ]);
  return rows;
}
