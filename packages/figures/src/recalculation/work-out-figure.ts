import type { Decimal } from '@scantling/decimals';
import { MoneyInputError } from '@scantling/money';
import { OPERATIONS } from '../operations/index.ts';
import { NoAnswerError } from '../operations/operation.ts';
import type { PreparedFigure } from './prepare-table.ts';

// Far beyond any amount or quantity, and within what a float holds.
const GREATEST_EXPONENT = 300;

/** The value of a derived figure from the values of its inputs. @throws NoAnswerError, which names the figure */
export function workOutFigure(figure: PreparedFigure, inputs: readonly Decimal[]): Decimal {
  const { operation, settings, node } = figure;
  if (operation === null) throw new RangeError(`"${node.id}" is not derived`);
  let value: Decimal;
  try {
    value = OPERATIONS[operation].evaluate(inputs, settings);
  } catch (error) {
    throw new NoAnswerError(`${node.label}: ${reasonOf(error)}`);
  }
  if (value.isNaN()) throw new NoAnswerError(`${node.label}: there is no such number`);
  if (!value.isZero() && (!value.isFinite() || Math.abs(value.e) > GREATEST_EXPONENT))
    throw new NoAnswerError(`${node.label}: too large or too small to work with`);
  return value;
}

/** @throws what is no answer but a fault of ours */
function reasonOf(error: unknown): string {
  if (error instanceof NoAnswerError) return error.reason;
  if (error instanceof MoneyInputError) return error.message;
  if (error instanceof Error && error.message.startsWith('[DecimalError]')) return 'there is no such number';
  throw error;
}
