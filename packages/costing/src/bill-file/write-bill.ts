import { formatLength, type LengthUnit, parseLength } from '@scantling/units';
import {
  type DrawnDesign,
  type DrawnPart,
  type Formula,
  isFormula,
  type Parameter,
  type Variant,
} from '../design-parameters/index.ts';
import type { BillCells } from './bill-columns.ts';

/** The rows of a bill file, parameters and variants first; reading them back with the same unit gives the same bill. */
export function writeBill({ bill, parameters, variants }: DrawnDesign, unit: LengthUnit): BillCells[] {
  return [
    ...parameters.map((one) => parameterCells(one, unit)),
    ...variants.map((one) => variantCells(one, parameters, unit)),
    ...bill.assemblies.map((one) =>
      cells({ row: 'assembly', id: one.id, name: one.name, quantity: written(one.quantity) }),
    ),
    ...bill.parts.map((part) => partCells(part, unit)),
    ...bill.components.map((one) =>
      cells({
        row: 'component',
        id: one.id,
        name: one.name,
        assembly: one.assembly,
        quantity: written(one.quantity),
        material: one.material,
      }),
    ),
    ...bill.finishes.map((one) =>
      cells({
        row: 'finish',
        id: one.id,
        name: one.name,
        material: one.material,
        coats: written(one.coats),
        'transfer efficiency': one.transferEfficiency,
        'dry film um': written(one.dryFilmUm),
        'batch rest l': written(one.batchRest),
        parts: one.parts.join(' '),
      }),
    ),
    ...bill.consumables.map((one) =>
      cells({
        row: 'consumable',
        id: one.id,
        name: one.name,
        material: one.material,
        quantity: written(one.quantity),
        per: one.per,
      }),
    ),
    ...bill.operations.map((one) =>
      cells({
        row: 'operation',
        id: one.id,
        name: one.name,
        assembly: one.assembly,
        'setup h': written(one.setupHours),
        'run h': written(one.runHours),
        'run low h': written(one.runHoursLow),
        'run high h': written(one.runHoursHigh),
        'elapsed h': written(one.elapsedHours),
        grade: one.grade,
        machine: one.machine,
        'machine share': one.machineShare,
        'learning rate': one.learningRate,
      }),
    ),
  ];
}

/** A number as it is, a formula behind the "=" that marks it. */
function written(value: string | number | Formula | undefined): string | undefined {
  if (value === undefined) return undefined;
  return isFormula(value) ? `=${value.formula}` : String(value);
}

function parameterCells(parameter: Parameter, unit: LengthUnit): BillCells {
  const { id, label, kind, value, least, greatest, choices } = parameter;
  const text = (given: string | undefined) =>
    given === undefined || kind !== 'length' ? given : writtenLength(given, unit);
  return cells({
    row: 'parameter',
    id,
    name: label,
    kind,
    value: isFormula(value) ? written(value) : text(value),
    least: text(least),
    greatest: text(greatest),
    choices: choices?.join(' '),
  });
}

function variantCells(variant: Variant, parameters: readonly Parameter[], unit: LengthUnit): BillCells {
  const values = Object.entries(variant.values).map(([id, value]) => {
    const isLength = parameters.find((one) => one.id === id)?.kind === 'length';
    return `${id} = ${isLength ? writtenLength(value, unit) : value}`;
  });
  return cells({ row: 'variant', id: variant.id, name: variant.name, values: values.join('; ') });
}

function partCells(part: DrawnPart, unit: LengthUnit): BillCells {
  const length = (mm: string | Formula | undefined) =>
    mm === undefined || isFormula(mm) ? written(mm) : writtenLength(mm, unit);
  return cells({
    row: 'part',
    id: part.id,
    name: part.name,
    assembly: part.assembly,
    quantity: written(part.quantity),
    material: part.material,
    length: length(part.length),
    width: length(part.width),
    thickness: length(part.thickness),
    grain: part.grain,
    'length allowance': length(part.lengthAllowance),
    'width allowance': length(part.widthAllowance),
    staves: written(part.staves),
    resawn: part.isResawn === undefined ? undefined : part.isResawn ? 'yes' : 'no',
    'band material': part.edgeBand?.material,
    'band thickness': length(part.edgeBand?.thickness),
    'band long edges': part.edgeBand?.longEdges.toString(),
    'band end edges': part.edgeBand?.endEdges.toString(),
    'veneer material': part.veneer?.material,
    'veneer thickness': length(part.veneer?.thickness),
    'veneer faces': part.veneer?.faces.toString(),
    finished: part.facesFinished,
    spares: written(part.spares),
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
