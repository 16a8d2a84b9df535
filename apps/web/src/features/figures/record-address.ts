/** A screen; for a price also its list and the line on it. */
export type RecordAddress =
  | { readonly to: string; readonly list?: undefined }
  | { readonly list: string; readonly line: string };

const POOLS = ['workshop', 'administration'];

/**
 * The screen of the record a source names ("tool:planer", "price-line:<list>/<line>"), where there is one.
 * @param byCode addresses of the records that are named by code, by "kind:code"
 */
export function recordAddress(
  record: string,
  byCode: ReadonlyMap<string, string>,
): RecordAddress | undefined {
  const at = record.indexOf(':');
  const kind = record.slice(0, at);
  const id = record.slice(at + 1);
  switch (kind) {
    case 'price-line': {
      const [list, line] = id.split('/');
      return list === undefined || line === undefined ? undefined : { list, line };
    }
    case 'exchange-rate':
      return { to: '/exchange-rates' };
    case 'workshop':
      return { to: '/workshop' };
    case 'proof':
      return { to: '/overhead' };
    case 'enquiries':
      return { to: '/enquiries' };
    case 'enquiry':
      return { to: `/enquiries/${id}` };
    case 'cost-sheet':
      return { to: `/cost-sheets/${id}` };
    case 'person':
      return { to: `/people/${id}` };
    case 'overhead':
      // The pools themselves are settings of the workshop.
      if (id === 'lost-enquiries') return { to: '/enquiries' };
      return { to: POOLS.includes(id) ? '/workshop' : `/overhead/${id}` };
    default: {
      const to = byCode.get(record);
      return to === undefined ? undefined : { to };
    }
  }
}
