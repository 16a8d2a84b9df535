import { getMailService } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerGetMailService = handle(getMailService, async ({ services }) => {
  const { smtp } = services.config;
  if (smtp === undefined) return { canSend: false, from: null, server: null };
  return { canSend: true, from: smtp.from.address, server: `${smtp.host}:${smtp.port}` };
});
