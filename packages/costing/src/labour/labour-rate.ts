import type { DecimalLike } from '@scantling/decimals';
import { divide, type Figure, increment, type Source, scale } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';

/** A grade of labour: who works, what an hour is paid, how much of it is productive. */
export interface LabourGrade {
  readonly id: string;
  readonly name: string;
  /** Gross pay of a paid hour; for the owner, what an hour of theirs is held to be worth. */
  readonly payPerHour: DecimalLike;
  /** What comes on top of pay (social contributions, paid leave, insurance), as a share of it. */
  readonly burden: DecimalLike;
  /** Hours spent on jobs over hours paid, above 0 and at most 1. */
  readonly productiveShare: DecimalLike;
  /** The owner's hours are costed even if nobody pays them. */
  readonly isOwner: boolean;
}

export interface LabourRate {
  readonly gradeId: string;
  readonly name: string;
  readonly isOwner: boolean;
  readonly pay: Figure<'money/h'>;
  /** A paid hour with burden. */
  readonly paidHour: Figure<'money/h'>;
  /** A productive hour: what a job is charged. */
  readonly perHour: Figure<'money/h'>;
}

/**
 * Pay x (1 + burden) / productive share. Leaves are `labour/<id>/...` unless the context names another prefix.
 * @throws CostingInputError naming the field; an owner with no pay is one
 */
export function labourRate(grade: LabourGrade, context: CostingContext): LabourRate {
  const record: Source = {
    kind: 'shop-rate',
    text: `labour grade "${grade.name}"`,
    record: `labour-grade:${grade.id}`,
  };
  const reader = new LeafReader({
    keyPrefix: `${context.keyPrefix ?? 'labour'}/${grade.id}`,
    currency: context.currency,
    source: context.source ?? record,
    subject: grade.name,
  });
  const pay = reader.read('payPerHour', grade.payPerHour, { label: 'pay', unit: 'money/h', from: 0 });
  if (grade.isOwner && pay.value.isZero())
    throw new CostingInputError(
      'payPerHour',
      'cannot be 0 for the owner, whose hours are costed even if unpaid',
      'enter what an hour of theirs is worth',
    );
  const burden = reader.read('burden', grade.burden, {
    label: 'burden, share of pay',
    unit: 'ratio',
    from: 0,
  });
  const productiveShare = reader.read('productiveShare', grade.productiveShare, {
    label: 'productive share of paid hours',
    unit: 'ratio',
    above: 0,
    to: 1,
  });
  const paidHour = scale(`${grade.name}: a paid hour with burden`, pay, increment('1 + burden', burden));
  return {
    gradeId: grade.id,
    name: grade.name,
    isOwner: grade.isOwner,
    pay,
    paidHour,
    perHour: divide(`${grade.name}: labour rate`, paidHour, productiveShare),
  };
}

/** The rates of all grades. @throws CostingInputError naming the grade ("grades.2.burden"), also for an id twice */
export function labourRates(grades: readonly LabourGrade[], context: CostingContext): LabourRate[] {
  const seen = new Set<string>();
  return grades.map((grade, index) => {
    if (seen.has(grade.id))
      throw new CostingInputError(
        `grades.${index}.id`,
        `"${grade.id}" is there twice`,
        'give each grade its own id',
      );
    seen.add(grade.id);
    try {
      return labourRate(grade, context);
    } catch (error) {
      if (!(error instanceof CostingInputError)) throw error;
      throw new CostingInputError(`grades.${index}.${error.field}`, error.reason, error.mend);
    }
  });
}
