import { CuttingImpossibleError, CuttingInputError } from '../cutting-errors.ts';
import type { CuttingInstance, StockPiece } from './cutting-instance.ts';
import { greatestCommonDivisor, readMillionths } from './exact-length.ts';
import { fitsStock, nearestStockMend } from './nearest-stock.ts';

/**
 * A stock piece as the search sees it. Sizes are in steps: what is usable between the trims, plus one kerf; parts are
 * one kerf larger too. A row of parts fits exactly where the grown sizes fit, so that inside the search there is no
 * kerf at all.
 */
export interface ExactStock {
  readonly id: string;
  readonly length: number;
  readonly width: number;
  /** In the instance's least step of money. */
  readonly cost: number;
  readonly available: number;
  /** In millionths. */
  readonly trim: number;
  readonly usable: Readonly<{ length: number; width: number }>;
}

export interface ExactPart {
  readonly id: string;
  readonly length: number;
  readonly width: number;
  readonly quantity: number;
  readonly canTurn: boolean;
  readonly value: number;
  /** In millionths, without kerf. */
  readonly size: Readonly<{ length: number; width: number }>;
}

/** An instance in whole numbers; sticks are sheets of width 1 whose parts have width 1. */
export interface ExactInstance {
  readonly isSheets: boolean;
  readonly isMaxValue: boolean;
  /** Millionths of the unit of length in one step. */
  readonly step: number;
  /** Millionths of the unit of money in one step of it, and the same of values. */
  readonly moneyStep: number;
  readonly valueStep: number;
  /** In millionths. */
  readonly kerf: number;
  readonly stages: number;
  readonly firstCut: 'crosscut' | 'rip' | 'either';
  readonly stocks: readonly ExactStock[];
  readonly parts: readonly ExactPart[];
}

type Size = { length: number; width: number };

function requireUnique(list: readonly { id: string }[], name: 'stock' | 'parts'): void {
  const seen = new Set<string>();
  list.forEach(({ id }, index) => {
    if (seen.has(id))
      throw new CuttingInputError(
        `${name}.${index}.id`,
        `"${id}" is there twice`,
        'Give each an id of its own.',
      );
    seen.add(id);
  });
}

function requireCount(value: number, field: string): void {
  if (!Number.isSafeInteger(value) || value < 0 || value > 100_000)
    throw new CuttingInputError(field, `cannot be ${value}`, 'Enter a whole number from 0 to 100 000.');
}

function readSize(piece: Pick<StockPiece, 'length' | 'width'>, isSheets: boolean, field: string): Size {
  const length = readMillionths(piece.length, { field: `${field}.length`, isPositive: true });
  if (isSheets && piece.width === undefined)
    throw new CuttingInputError(
      `${field}.width`,
      'is missing',
      'Give every stock piece and part of sheets a width.',
    );
  if (!isSheets && piece.width !== undefined)
    throw new CuttingInputError(
      `${field}.width`,
      'has no place with sticks',
      'Leave it out, or ask for "2d-guillotine".',
    );
  const width = readMillionths(piece.width ?? 1, { field: `${field}.width`, isPositive: true });
  return { length, width };
}

function readStocks(instance: CuttingInstance, isSheets: boolean) {
  const ownTrim = readMillionths(instance.trim ?? 0, { field: 'trim' });
  return instance.stock.map((piece, index) => {
    const field = `stock.${index}`;
    const size = readSize(piece, isSheets, field);
    const trim = piece.trim === undefined ? ownTrim : readMillionths(piece.trim, { field: `${field}.trim` });
    if (piece.available !== undefined) requireCount(piece.available, `${field}.available`);
    const usable = { length: size.length - 2 * trim, width: isSheets ? size.width - 2 * trim : size.width };
    if (usable.length <= 0 || usable.width <= 0)
      throw new CuttingInputError(
        piece.trim === undefined ? 'trim' : `${field}.trim`,
        `leaves nothing of "${piece.id}"`,
        'Enter a smaller trim, or leave that stock out.',
      );
    const cost = readMillionths(piece.cost, { field: `${field}.cost` });
    return { id: piece.id, trim, usable, cost, available: piece.available ?? Number.POSITIVE_INFINITY };
  });
}

function readParts(instance: CuttingInstance, isSheets: boolean, isMaxValue: boolean) {
  return instance.parts.map((part, index) => {
    const field = `parts.${index}`;
    requireCount(part.quantity, `${field}.quantity`);
    if (isMaxValue && part.value === undefined)
      throw new CuttingInputError(`${field}.value`, 'is missing', 'Say what each part is worth.');
    return {
      id: part.id,
      size: readSize(part, isSheets, field),
      quantity: part.quantity,
      canTurn: isSheets && part.rotatable === true,
      value: readMillionths(part.value ?? 0, { field: `${field}.value` }),
    };
  });
}

/**
 * Reads an instance into whole numbers.
 * @throws CuttingInputError for a field that cannot be used, CuttingImpossibleError for a part that fits no stock
 */
export function readInstance(instance: CuttingInstance): ExactInstance {
  const isSheets = instance.kind === '2d-guillotine';
  const isMaxValue = instance.objective === 'max-value';
  requireUnique(instance.stock, 'stock');
  requireUnique(instance.parts, 'parts');
  const kerf = readMillionths(instance.kerf, { field: 'kerf' });
  const stages = instance.stages ?? Number.POSITIVE_INFINITY;
  if (instance.stages !== undefined && (!Number.isSafeInteger(stages) || stages < 1))
    throw new CuttingInputError('stages', `cannot be ${stages}`, 'Enter a whole number of 1 or more.');
  if (instance.stock.length === 0)
    throw new CuttingInputError('stock', 'is empty', 'Name at least one stock piece to cut from.');
  const stocks = readStocks(instance, isSheets);
  const parts = readParts(instance, isSheets, isMaxValue);
  const wanted = parts.filter(({ quantity }) => quantity > 0);
  if (!isMaxValue) {
    parts.forEach((part, index) => {
      if (part.quantity > 0 && !stocks.some((stock) => stock.available > 0 && fitsStock(part, stock)))
        throw new CuttingImpossibleError(`parts.${index}`, ...nearestStockMend(part, stocks, isSheets));
    });
  }
  const grown = wanted.flatMap(({ size }) =>
    isSheets ? [size.length + kerf, size.width + kerf] : [size.length + kerf],
  );
  const step = greatestCommonDivisor(grown);
  const moneyStep = greatestCommonDivisor(stocks.map(({ cost }) => cost));
  const valueStep = greatestCommonDivisor(parts.map(({ value }) => value));
  const total = wanted.reduce((sum, { quantity }) => sum + quantity, 0);
  const inSteps = (millionths: number) => Math.floor((millionths + kerf) / step);
  return {
    isSheets,
    isMaxValue,
    step,
    moneyStep,
    valueStep,
    kerf,
    stages,
    firstCut: instance.firstCut ?? 'either',
    stocks: stocks.map((stock) => ({
      ...stock,
      length: inSteps(stock.usable.length),
      width: isSheets ? inSteps(stock.usable.width) : 1,
      cost: stock.cost / moneyStep,
      available: Math.min(stock.available, total),
    })),
    parts: parts.map((part) => ({
      ...part,
      length: inSteps(part.size.length),
      width: isSheets ? inSteps(part.size.width) : 1,
      value: part.value / valueStep,
    })),
  };
}
