import { Link } from '@tanstack/react-router';
import type { RecordAddress } from './record-address.ts';

interface AddressLinkProps {
  readonly address: RecordAddress | undefined;
  readonly children: React.ReactNode;
}

/** The words as a link to a record's screen, or bare where there is none. */
export function AddressLink({ address, children }: AddressLinkProps) {
  if (address === undefined) return children;
  if (address.list === undefined) return <Link to={address.to}>{children}</Link>;
  return (
    <Link
      to="/price-lists/$priceListId"
      params={{ priceListId: address.list }}
      search={{ line: address.line }}
    >
      {children}
    </Link>
  );
}
