import type { BackgroundWork } from './background-work.ts';
import { mailSender } from './outbox/mail-sender.ts';

export const backgroundWork: readonly BackgroundWork[] = [mailSender];
