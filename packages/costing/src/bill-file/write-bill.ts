import { formatLength, type LengthUnit, parseLength } from '@scantling/units';
import type { Bill, Part } from '../bill-of-materials/index.ts';
import type { BillCells } from './bill-columns.ts';

/** The rows of a bill file; reading them back with the same unit gives the same bill. */
export function writeBill(bill: Bill, unit: LengthUnit): BillCells[] {
  return [
    ...bill.assemblies.map((one) =>
      cells({ row: 'assembly', id: one.id, name: one.name, quantity: String(one.quantity) }),
    ),
    ...bill.parts.map((part) => partCells(part, unit)),
    ...bill.components.map((one) =>
      cells({
        row: 'component',
        id: one.id,
        name: one.name,
        assembly: one.assembly,
        quantity: one.quantity,
        material: one.material,
      }),
    ),
    ...bill.finishes.map((one) =>
      cells({
        row: 'finish',
        id: one.id,
        name: one.name,
        material: one.material,
        coats: String(one.coats),
        'transfer efficiency': one.transferEfficiency,
        'dry film um': one.dryFilmUm,
        'batch rest l': one.batchRest,
        parts: one.parts.join(' '),
      }),
    ),
    ...bill.consumables.map((one) =>
      cells({
        row: 'consumable',
        id: one.id,
        name: one.name,
        material: one.material,
        quantity: one.quantity,
        per: one.per,
      }),
    ),
    ...bill.operations.map((one) =>
      cells({
        row: 'operation',
        id: one.id,
        name: one.name,
        assembly: one.assembly,
        'setup h': one.setupHours,
        'run h': one.runHours,
        'elapsed h': one.elapsedHours,
        grade: one.grade,
        machine: one.machine,
        'machine share': one.machineShare,
        'learning rate': one.learningRate,
      }),
    ),
  ];
}

function partCells(part: Part, unit: LengthUnit): BillCells {
  const length = (mm: string | undefined) => (mm === undefined ? undefined : writtenLength(mm, unit));
  return cells({
    row: 'part',
    id: part.id,
    name: part.name,
    assembly: part.assembly,
    quantity: String(part.quantity),
    material: part.material,
    length: length(part.length),
    width: length(part.width),
    thickness: length(part.thickness),
    grain: part.grain,
    'length allowance': length(part.lengthAllowance),
    'width allowance': length(part.widthAllowance),
    staves: part.staves?.toString(),
    resawn: part.isResawn === undefined ? undefined : part.isResawn ? 'yes' : 'no',
    'band material': part.edgeBand?.material,
    'band thickness': length(part.edgeBand?.thickness),
    'band long edges': part.edgeBand?.longEdges.toString(),
    'band end edges': part.edgeBand?.endEdges.toString(),
    'veneer material': part.veneer?.material,
    'veneer thickness': length(part.veneer?.thickness),
    'veneer faces': part.veneer?.faces.toString(),
    finished: part.facesFinished,
    spares: part.spares?.toString(),
    'reject share': part.rejectShare,
  });
}

/** As inches where a 64th says it exactly; in millimetres otherwise, so that nothing is lost on the way back. */
function writtenLength(mm: string, unit: LengthUnit): string {
  if (unit === 'mm') return mm;
  const inches = formatLength(mm, 'imperial', { denominator: 64 });
  const isExact = /^[0-9]/.test(inches) && parseLength(inches, 'in').eq(mm);
  return isExact ? inches : `${mm} mm`;
}

function cells(values: Readonly<Record<string, string | undefined>>): BillCells {
  return Object.fromEntries(
    Object.entries(values).filter(([, value]) => value !== undefined && value !== ''),
  );
}
