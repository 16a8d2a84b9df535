import { price } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { workOutPrice } from './work-out-price.ts';

export const answerPrice = handle(price, async ({ body }) => workOutPrice(body));
