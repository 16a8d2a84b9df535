import { type DecimalLike, decimal } from '@scantling/decimals';
import { HyperFormula } from 'hyperformula';
import type { Operation, Settings } from './operation.ts';

/** One case of an operation: inputs, what comes out, and settings where it has any. */
export interface OperationCase {
  readonly inputs: readonly DecimalLike[];
  readonly gives: DecimalLike;
  readonly settings?: Settings;
}

/**
 * Runs an operation and, on the same inputs in cells, the spreadsheet expression it writes, in an independent
 * spreadsheet engine. @returns what differs, in words; nothing when both give the expected value
 */
export function operationFaults(operation: Operation, cases: readonly OperationCase[]): string[] {
  return cases.flatMap(({ inputs, gives, settings = {} }) => {
    const wanted = decimal(gives);
    const worked = operation.evaluate(inputs.map(decimal), settings);
    const cells = inputs.map((value) => Number(value));
    const names = cells.map((_, index) => `${String.fromCharCode(65 + index)}1`);
    const engine = HyperFormula.buildFromArray([[...cells, `=${operation.formula(names, settings)}`]], {
      licenseKey: 'gpl-v3',
    });
    const inSheet = engine.getCellValue({ sheet: 0, row: 0, col: cells.length });
    engine.destroy();
    const sheetAgrees = typeof inSheet === 'number' && Math.abs(inSheet - wanted.toNumber()) < 1e-9;
    return [
      ...(worked.minus(wanted).abs().lt('1e-30')
        ? []
        : [`${operation.name}: ${worked} instead of ${wanted}`]),
      ...(sheetAgrees ? [] : [`${operation.name} in a sheet: ${String(inSheet)} instead of ${wanted}`]),
    ];
  });
}
