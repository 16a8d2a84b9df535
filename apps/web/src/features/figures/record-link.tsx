import { AddressLink } from './address-link.tsx';
import { useRecordAddress } from './use-record-address.ts';

interface RecordLinkProps {
  /** As sources name it ("material:OAK-4"). */
  readonly record: string;
  readonly children: React.ReactNode;
}

/** A link to the screen of a record that is named as sources of figures name it. */
export function RecordLink({ record, children }: RecordLinkProps) {
  const addressOf = useRecordAddress(true);
  return <AddressLink address={addressOf(record)}>{children}</AddressLink>;
}
