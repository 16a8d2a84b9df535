import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { EmptyState, ErrorNotice, StaleNotice } from '../../../components/notices.tsx';
import { Loading, Progress } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { formatNumber } from '../../../lib/format.ts';
import { type PriceImport, priceImportQuery } from '../api/price-import-calls.ts';
import { DropImport } from '../components/drop-import.tsx';
import { ImportPreview } from '../components/import-preview.tsx';
import { PHASE_WORDS, shareRead } from '../components/import-words.ts';
import { MappingForm } from '../components/mapping-form.tsx';
import { UnlinkedArticles } from '../components/unlinked-articles.tsx';
import '../../../components/record-editor/record-editor.css';

const FORMATS = { csv: 'CSV', xlsx: 'XLSX' } as const;
const MARKS = { point: '1.5', comma: '1,5' } as const;

const rowsOf = ({ rowsRead }: PriceImport): string => `${formatNumber(rowsRead, 0)} rows`;

/** How far the reading is; one may leave and come back, or drop it. */
function Reading({ priceImport }: { readonly priceImport: PriceImport }) {
  const percent = shareRead(priceImport);
  const share = percent === undefined ? '' : `, ${percent} % of the file`;
  return (
    <Section
      title={PHASE_WORDS[priceImport.phase ?? 'reading']}
      note="It goes on when you leave this page; the price lists show it again."
    >
      <Progress
        label={PHASE_WORDS[priceImport.phase ?? 'reading']}
        text={`${rowsOf(priceImport)}${share}`}
        {...(percent === undefined ? {} : { percent })}
      />
      <div className="form-acts">
        <DropImport importId={priceImport.id} />
      </div>
    </Section>
  );
}

function Stand({ priceImport }: { readonly priceImport: PriceImport }) {
  const again = <Link to="/price-lists/import">Import another list</Link>;
  switch (priceImport.status) {
    case 'reading':
      return <Reading priceImport={priceImport} />;
    case 'waiting':
      return (
        <Section
          title="Which column is which"
          note={`Still open: ${priceImport.missingColumns.join(', ')}. The answer is kept for this supplier.`}
        >
          <MappingForm priceImport={priceImport} />
          <DropImport importId={priceImport.id} />
        </Section>
      );
    case 'previewed':
      return priceImport.phase === 'taking-over' ? (
        <Progress label={PHASE_WORDS['taking-over']} text={rowsOf(priceImport)} />
      ) : (
        <ImportPreview priceImport={priceImport} />
      );
    case 'applied':
      return (
        <>
          <EmptyState title="These prices are taken over." action={again}>
            {priceImport.priceListId !== null && (
              <>
                <Link
                  to="/price-lists/$priceListId/impact"
                  params={{ priceListId: priceImport.priceListId }}
                  className="button button-main"
                >
                  See what it moves
                </Link>{' '}
                <Link to="/price-lists/$priceListId" params={{ priceListId: priceImport.priceListId }}>
                  Open the list
                </Link>
              </>
            )}
          </EmptyState>
          <UnlinkedArticles supplierId={priceImport.supplierId} />
        </>
      );
    case 'unchanged':
      return <EmptyState title="This file was taken over before. Nothing is to be done." action={again} />;
    case 'discarded':
      return <EmptyState title="This import was dropped. Prices are as they were." action={again} />;
    case 'failed':
      return (
        <StaleNotice action={again}>
          The file could not be read: {priceImport.problem ?? 'the reason is in the server’s log'}
        </StaleNotice>
      );
  }
}

/** One import, from reading to taken over. */
export function PriceImportScreen() {
  const { importId = '' } = useParams({ strict: false });
  const read = useQuery(priceImportQuery(importId));
  const found = read.data?.found;
  return (
    <Sheet>
      <SheetHeader
        title={read.data?.fileName ?? 'Import'}
        path={<Link to="/price-lists">Price lists</Link>}
        facts={
          read.data
            ? [
                { label: 'Prices hold from', value: read.data.validFrom },
                { label: 'Currency', value: read.data.currency },
                { label: 'Rows read', value: formatNumber(read.data.rowsRead, 0) },
                { label: 'List', value: read.data.isComplete ? 'complete' : 'not complete' },
                ...(found
                  ? [
                      {
                        label: 'Written as',
                        value: `${FORMATS[found.format]}, decimals as ${MARKS[found.decimalMark]}`,
                      },
                    ]
                  : []),
              ]
            : []
        }
      />
      {read.isPending && <Loading />}
      {read.isError && <ErrorNotice error={read.error} retry={() => void read.refetch()} />}
      {read.data && <Stand priceImport={read.data} />}
    </Sheet>
  );
}
