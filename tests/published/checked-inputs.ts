import { z } from 'zod';

/** What a file may write for a decimal: a number as printed, or text. */
export const number = z.union([z.number(), z.string().regex(/^-?\d+(\.\d+)?$/)]);
export const numbers = z.array(number);

/** A runner whose inputs are read first, so that a misspelt name in a file fails by that name. */
export function runner<Shape extends z.ZodRawShape>(
  shape: Shape,
  run: (inputs: z.output<z.ZodObject<Shape>>) => Readonly<Record<string, unknown>>,
): (inputs: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>> {
  const schema = z.strictObject(shape);
  return (inputs) => run(schema.parse(inputs));
}
