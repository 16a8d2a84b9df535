import { z } from 'zod';

/**
 * A text that must look a certain way, whose error tells what to write instead. The pattern also stands in
 * the API's description.
 */
export function writtenText(options: { pattern: RegExp; message: string; mend: string; example: string }) {
  return z
    .string()
    .refine((text) => options.pattern.test(text), {
      error: options.message,
      params: { mend: options.mend },
    })
    .meta({ pattern: options.pattern.source, examples: [options.example] });
}
