import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { designQuery } from '../api/get-design.ts';
import { DesignSheet } from '../components/design-sheet.tsx';

export function DesignScreen() {
  const { designId = '' } = useParams({ strict: false });
  const design = useQuery(designQuery(designId));
  if (design.data) return <DesignSheet key={designId} design={design.data.value} etag={design.data.etag} />;
  return (
    <Sheet>
      <SheetHeader title="Design" path={<Link to="/designs">Designs</Link>} />
      {design.isPending && <Loading />}
      {design.isError && <ErrorNotice error={design.error} retry={() => void design.refetch()} />}
    </Sheet>
  );
}
