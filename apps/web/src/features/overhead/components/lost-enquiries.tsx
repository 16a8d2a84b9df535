import { Link } from '@tanstack/react-router';
import { FigureValue } from '../../figures/figure-value.tsx';
import './overhead.css';
import type { OverheadRecovery } from '../api/get-overhead-recovery.ts';

interface LostEnquiriesProps {
  readonly lost: NonNullable<OverheadRecovery['lostEnquiries']>;
}

/** What hours on lost enquiries cost, and in which one place they come back. */
export function LostEnquiries({ lost }: LostEnquiriesProps) {
  const spent = (
    <>
      In the last twelve months <FigureValue id={lost.hours} /> went into{' '}
      <Link to="/enquiries">enquiries that were lost</Link>; at what a paid hour costs with burden that is{' '}
      <FigureValue id={lost.perYear} places={2} />.
    </>
  );
  return lost.home === 'administration-pool' ? (
    <p className="lost-enquiries">
      {spent} They are paid hours, so they are taken off pay and burden and off what labour rates bring back,
      and stand among the yearly amounts as “Hours on lost enquiries”, in the administration pool. This holds
      where the productive shares of the labour grades are shares of the other hours. Where a share leaves
      these hours out already, its labour rate recovers them: say so in the{' '}
      <Link to="/workshop">workshop settings</Link>.
    </p>
  ) : (
    <p className="lost-enquiries">
      {spent} The workshop says that its productive shares leave these hours out already: the labour rates
      recover them, and no pool does. This is chosen in the <Link to="/workshop">workshop settings</Link>.
    </p>
  );
}
