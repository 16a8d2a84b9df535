import { useQuery } from '@tanstack/react-query';
import { StaleNotice } from '../../../components/notices.tsx';
import { mailServiceQuery } from '../api/get-mail-service.ts';

/** Says that nothing goes out while no mail server is set; stands nowhere otherwise. */
export function MailServiceNote() {
  const service = useQuery(mailServiceQuery).data;
  if (service === undefined || service.canSend) return null;
  return (
    <StaleNotice>
      No mail server is set, so nothing goes out: mails wait here and can be read. Whoever starts the program
      sets SMTP_URL and MAIL_FROM (see the README); what waits is sent then.
    </StaleNotice>
  );
}
