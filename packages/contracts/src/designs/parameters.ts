import {
  MOST_PARAMETERS,
  MOST_VARIANTS,
  PARAMETER_KINDS,
  type Parameter,
  type Variant,
} from '@scantling/costing';
import { z } from 'zod';
import { recordCode, rowId } from './bill.ts';
import { formulaSchema } from './formula.ts';

/** A value as chosen: millimetres or a number as decimal text, or the code of a material. */
export const parameterValue = z.string().trim().min(1).max(60);
const parameterId = z
  .string()
  .min(1)
  .max(40)
  .meta({ examples: ['length', 'drawers'] });
const label = z.string().trim().min(1).max(120);

/** What may be chosen about a design. */
export const parametersSchema: z.ZodType<readonly Parameter[], readonly Parameter[]> = z
  .array(
    z
      .strictObject({
        id: parameterId,
        label,
        kind: z.enum(PARAMETER_KINDS),
        value: z.union([parameterValue, formulaSchema]),
        least: parameterValue.exactOptional(),
        greatest: parameterValue.exactOptional(),
        choices: z.array(recordCode).max(50).exactOptional(),
      })
      .meta({ id: 'DesignParameter' }),
  )
  .max(MOST_PARAMETERS);

/** Values of parameters, by their ids. */
export const parameterValuesSchema = z.record(parameterId, parameterValue);

/** Named sets of values. */
export const variantsSchema: z.ZodType<readonly Variant[], readonly Variant[]> = z
  .array(z.strictObject({ id: rowId, name: label, values: parameterValuesSchema }).meta({ id: 'Variant' }))
  .max(MOST_VARIANTS);

export const exampleParameters: readonly Parameter[] = [
  { id: 'length', label: 'Length', kind: 'length', value: '1200', least: '600', greatest: '2000' },
];
export const exampleVariants: readonly Variant[] = [{ id: 'long', name: 'Long', values: { length: '1350' } }];
