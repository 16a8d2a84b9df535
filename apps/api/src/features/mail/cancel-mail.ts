import { cancelMail } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeMail } from './mail-records.ts';

export const answerCancelMail = handle(cancelMail, ({ params, services }) =>
  services.database.$transaction((transaction) =>
    changeMail(transaction, params.id, {
      from: ['waiting', 'failed', 'cancelled'],
      data: { state: 'cancelled' },
      refusal: 'The mail is being sent or was sent already; it cannot be called back.',
    }),
  ),
);
