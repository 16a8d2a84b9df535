import { useQuery } from '@tanstack/react-query';
import { recordAddressesQuery } from './api/list-addressed-records.ts';
import { type RecordAddress, recordAddress } from './record-address.ts';

const NONE: ReadonlyMap<string, string> = new Map();

/** Finds the screens of records; `isWanted` while a working is open, so that nothing is read before. */
export function useRecordAddress(isWanted: boolean): (record: string) => RecordAddress | undefined {
  const { data = NONE } = useQuery({ ...recordAddressesQuery, enabled: isWanted });
  return (record) => recordAddress(record, data);
}
