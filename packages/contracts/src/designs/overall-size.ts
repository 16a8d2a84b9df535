import { z } from 'zod';
import { lengthText } from '../length.ts';

const side = lengthText('mm').refine((text) => /^[^-]*[1-9]/.test(text), {
  error: 'is no size',
  params: { mend: 'Give a length above 0.' },
});

/** Length, width and height of a piece over all, read to mm; a bare number is in mm. */
export const overallSizeText = z
  .strictObject({ length: side, width: side, height: side })
  .meta({ id: 'OverallSizeText' });
export type OverallSizeText = z.output<typeof overallSizeText>;
