import type { AnswerOf, workOutInvoice } from '@scantling/contracts';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Checkbox } from '../../../components/checkbox.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { mergedId } from '../../figures/merge-tables.ts';
import { useIssueInvoice } from '../api/invoice-acts.ts';
import type { InvoiceWanted } from '../api/work-out-invoice.ts';
import { BalanceRow } from './balance-row.tsx';
import { DocumentSection } from './document-section.tsx';
import { KIND_WORDS } from './invoice-words.ts';
import { TaxCaution } from './tax-caution.tsx';
import './invoice.css';

interface InvoicePreviewProps {
  readonly quoteId: string;
  readonly wanted: InvoiceWanted;
  readonly preview: AnswerOf<typeof workOutInvoice>;
}

/** What the invoice would say and how it is worked out; the act below gives it its number. */
export function InvoicePreview({ quoteId, wanted, preview }: InvoicePreviewProps) {
  const [sendMail, setSendMail] = useState(true);
  const issue = useIssueInvoice(quoteId);
  const navigate = useNavigate();
  const { document } = preview;
  const named = (id: string): string => mergedId('preview', id);
  return (
    <div className="money-preview">
      <BalanceRow
        label="How the invoice is worked out"
        sums={[
          { label: 'Agreed in all', figure: named(preview.contract.total) },
          { label: 'Invoiced before', figure: named(preview.invoicedBefore.total) },
          { label: 'Left to invoice', figure: named(preview.left.total) },
          { label: 'Without tax', figure: named(preview.own.net) },
          { label: 'Tax', figure: named(preview.own.tax) },
          { label: 'This invoice', figure: named(preview.own.total) },
        ]}
      />
      <DocumentSection
        document={document}
        title={`${KIND_WORDS[document.kind]}, not issued yet`}
        worked={preview.own}
        named={named}
      />
      <p className="money-note">
        To be paid by {document.dueOn}. Once issued it has a number and cannot be changed, only credited.
      </p>
      <TaxCaution of="invoice" />
      <Checkbox label="Mail it to the client" isSelected={sendMail} onChange={setSendMail} />
      {issue.isError && <ErrorNotice error={issue.error} />}
      <div>
        <Button
          look="main"
          isPending={issue.isPending}
          pendingText="Issuing ..."
          onPress={() =>
            // Other answers are read anew meanwhile, and this part of the screen may give way.
            void issue.mutateAsync({ wanted, sendMail }).then(
              ({ value }) => navigate({ to: '/invoices/$invoiceId', params: { invoiceId: value.id } }),
              () => undefined,
            )
          }
        >
          {`Issue the ${KIND_WORDS[document.kind].toLowerCase()}`}
        </Button>
      </div>
    </div>
  );
}
