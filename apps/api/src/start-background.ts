import type { BackgroundWork } from './background-work.ts';
import { priceImpacts } from './features/price-impacts/begin-impact.ts';
import { mailSender } from './outbox/mail-sender.ts';

export const backgroundWork: readonly BackgroundWork[] = [mailSender, priceImpacts];
