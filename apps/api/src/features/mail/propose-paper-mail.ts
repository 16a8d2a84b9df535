import { proposePaperMail } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { mailsWith, toMailSummary } from './mail-records.ts';
import { findPaperToMail } from './paper-mail.ts';

export const answerProposePaperMail = handle(
  proposePaperMail,
  async ({ params: { id }, services: { database } }) => {
    const { to, subject, text } = await findPaperToMail(database, id);
    const mails = await mailsWith(database, id);
    return { to, subject, text, mails: mails.map(toMailSummary) };
  },
);
